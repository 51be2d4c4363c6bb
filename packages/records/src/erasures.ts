import { blankRecord, isErased } from "./blank-record.ts";
import { CORE_VOCABULARY } from "./core-vocabulary.ts";
import type { Entry, UsedEntryOf } from "./entry.ts";
import { isJsonObject, type JsonObject } from "./json.ts";
import { KINDS_BY_NAME } from "./known-kinds.ts";
import { readRecord } from "./read-record.ts";

type Erasure = UsedEntryOf<"person-erased">;

export const isErasure = (entry: Entry): entry is Erasure =>
  entry.reading === "used" && entry.kind === "person-erased";

/** Kinds of which a record is about a customer by the field `customer` of its body. */
const ABOUT_CUSTOMERS: ReadonlySet<string> = new Set(["customer-described", "order-opened"]);

/** The erasures of a log: which records they cover, whenever those arrive. */
export class Erasures {
  readonly #records = new Set<string>();
  readonly #customers = new Set<string>();
  /** Up to when each bike's records are covered, milliseconds since 1970. */
  readonly #bikes = new Map<string, number>();

  constructor(erasures: Iterable<Erasure>) {
    for (const { at, body } of erasures) {
      for (const record of body.records ?? []) this.#records.add(record);
      if (body.customer !== undefined) this.#customers.add(body.customer);
      for (const bike of body.bikes ?? [])
        this.#bikes.set(bike, Math.max(at, this.#bikes.get(bike) ?? -Infinity));
    }
  }

  get none(): boolean {
    return this.#records.size + this.#customers.size + this.#bikes.size === 0;
  }

  #covers(entry: Entry): boolean {
    if (entry.kind === "person-erased") return false;
    if (this.#records.has(entry.id)) return true;
    if (entry.bike !== null && entry.at <= (this.#bikes.get(entry.bike) ?? -Infinity)) return true;
    const { body } = entry.source;
    if (!ABOUT_CUSTOMERS.has(entry.kind) || !isJsonObject(body)) return false;
    return this.#customers.has(String((body as JsonObject).customer));
  }

  /** The record as it may be kept: itself, or without its words. */
  apply(entry: Entry): Entry {
    if (this.none || isErased(entry.source) || !this.#covers(entry)) return entry;
    const knowing = { kinds: KINDS_BY_NAME, words: CORE_VOCABULARY };
    const read = readRecord(blankRecord(entry.source), entry.line, knowing).entry;
    if (read === null) throw new RangeError(`Record ${entry.id} cannot be read without its words`);
    return read;
  }
}
