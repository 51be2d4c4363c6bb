import { writeRecord } from "@jetwright/records";
import { type Arriving, readArriving } from "./shop/arriving.ts";

// Records for the tests, written as a device writes them.

export interface Said {
  readonly kind?: string;
  readonly bike?: string;
  readonly text?: string;
  readonly body?: Record<string, string | number>;
}

export const lineOf = (
  id: string,
  { kind = "note", bike, text = "hello", body = { text } }: Said = {},
): string =>
  writeRecord({
    id,
    kind,
    v: 1,
    at: "2026-05-02T10:15:00Z",
    ...(bike === undefined ? {} : { bike }),
    body,
  });

export function arriving(id: string, said?: Said): Arriving {
  const read = readArriving(lineOf(id, said));
  if (!read.ok) throw new RangeError(read.detail);
  return read.value;
}
