import { createHash } from "node:crypto";

// Pictures for the tests: bytes that look like nothing, and the fingerprint of them.

export interface TestBlob {
  readonly bytes: Uint8Array<ArrayBuffer>;
  readonly hash: string;
}

export const sha256 = (bytes: Uint8Array): string => createHash("sha256").update(bytes).digest("hex");

/** So many bytes that depend on the number. */
export function blob(size: number, number = 1): TestBlob {
  const bytes = new Uint8Array(size);
  let state = number;
  for (let i = 0; i < size; i++) {
    // A common generator: the tests need bytes that differ, not good ones.
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    bytes[i] = state >>> 24;
  }
  return { bytes, hash: sha256(bytes) };
}
