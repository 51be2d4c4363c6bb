import { createHash } from "node:crypto";
import { accept, type Outcome } from "@jetwright/core";
import { type JsonObject, readBareRecord, writeRecord } from "@jetwright/records";

/** A record on its way into the log, as it will be kept. */
export interface Arriving {
  readonly id: string;
  readonly kind: string;
  readonly bike: string | null;
  /** The record that this one strikes; ERASING for one that removes a person's data, so that they are soon found. */
  readonly target: string | null;
  /** Fingerprints of pictures and clips that it names. */
  readonly blobs: readonly string[];
  /** In the one form a record is written in. */
  readonly line: string;
  readonly hash: string;
}

const ID = /^[A-Za-z0-9._:-]{1,64}$/;
const FINGERPRINT = /^[0-9a-f]{64}$/;
/** No record of ours names more. */
const MOST_BLOBS = 32;

/** Reads one line that a device sent; what it says is not judged, only whether it can be kept. */
export function readArriving(text: string): Outcome<Arriving, "not-a-record"> {
  const read = readBareRecord(text);
  if (!read.ok) return read;
  const { id, kind, bike, source } = read.value;
  const line = writeRecord(source);
  return accept({
    id,
    // PostgreSQL has no texts with the letter 0; the line writes it as JSON does.
    kind: kind.replaceAll("\0", "\ufffd"),
    bike,
    target: targetOf(kind, source),
    blobs: line.length > 64 ? blobsOf(source.body) : [],
    line,
    hash: createHash("sha256").update(line).digest("hex"),
  });
}

/** The kind of record that removes a person's data. */
export const ERASING = "person-erased";

function targetOf(kind: string, { body }: JsonObject): string | null {
  if (kind === ERASING) return ERASING;
  if (kind !== "record-struck" || typeof body !== "object" || body === null) return null;
  const { record } = body as JsonObject;
  return typeof record === "string" && ID.test(record) ? record : null;
}

/** Every text in it that has the form of a SHA-256: records of kinds we do not know may name pictures too. */
function blobsOf(value: unknown, found: string[] = []): string[] {
  if (typeof value === "string") {
    if (FINGERPRINT.test(value) && found.length < MOST_BLOBS && !found.includes(value)) found.push(value);
  } else if (typeof value === "object" && value !== null) {
    for (const one of Object.values(value)) blobsOf(one, found);
  }
  return found;
}
