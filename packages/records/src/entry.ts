import type { JsonObject } from "./json.ts";
import type { BodyOf, KindName } from "./kinds/all.ts";

/** What every record has, read; `source` is the record exactly as it was written. */
export interface Envelope {
  readonly id: string;
  readonly v: number;
  /** Milliseconds since 1970. */
  readonly at: number;
  readonly bike: string | null;
  /** Line of the log it was read from, from 1; null when it did not come from a file. */
  readonly line: number | null;
  readonly source: JsonObject;
}

/** A record that counts, its body read forward to the newest version of its kind. */
export type UsedEntryOf<Name extends KindName> = Envelope & {
  readonly reading: "used";
  readonly kind: Name;
  readonly body: BodyOf<Name>;
};
export type UsedEntry = { [Name in KindName]: UsedEntryOf<Name> }[KindName];

/** A record kept as written, in export and merge, though nothing can be made of it here. */
export interface KeptEntry extends Envelope {
  readonly reading: "unknown-kind" | "newer-version" | "faulty";
  readonly kind: string;
}

export type Entry = UsedEntry | KeptEntry;
