import { isJsonObject, type JsonObject } from "./json.ts";
import type { AnyKind } from "./kind.ts";

/**
 * The body of an old record as the newest version of its kind would have written it, one version at a time.
 * Null when the body is so broken that an upcaster fails on it; a kind without an upcaster for a version below
 * its own is a bug of ours and throws RangeError.
 */
export function upcast(kind: AnyKind, version: number, body: JsonObject): JsonObject | null {
  let now = body;
  for (let v = version; v < kind.v; v++) {
    const step = kind.upcasters[v];
    if (step === undefined)
      throw new RangeError(`${kind.kind} has no upcaster from version ${v} to ${v + 1}`);
    try {
      now = step(now);
    } catch {
      return null;
    }
    if (!isJsonObject(now)) return null;
  }
  return now;
}
