import { accept, type Outcome, refuse } from "@jetwright/core";
import { type JsonObject, writeRecord } from "@jetwright/records";
import type { Words } from "../words/en.ts";
import type { Language } from "../words/figures.ts";
import { english, wordsAtHand } from "../words/languages.ts";
import type { Database } from "./database.ts";
import type { StoredRecord } from "./tables.ts";

export type NotKept = keyof Words["backup"]["notKept"];

const lineOf = (stored: StoredRecord): string =>
  typeof stored.line === "string" ? stored.line : JSON.stringify(stored);

const toStored = (record: JsonObject): StoredRecord => ({ id: String(record.id), line: writeRecord(record) });

/** The log in this browser's database: append only, but for words that a person asked to have removed. */
export class LogStore {
  readonly #database: Database;
  /** The language in which it says that something was not kept. */
  readonly #language: () => Language;

  constructor(database: Database, language: () => Language) {
    this.#database = database;
    this.#language = language;
  }

  /** Every record as written. What is there without a line of text, as a damaged disk may leave it, is told as it is. */
  async all(): Promise<readonly string[]> {
    return (await this.#database.records.all()).map(lineOf);
  }

  /** The lines of the records with these ids, for another tab's news. */
  async some(ids: readonly string[]): Promise<readonly string[]> {
    return (await this.#database.records.some(ids)).map(lineOf);
  }

  /** Keeps records together or not at all; gives the lines once they are on the disk. */
  async keep(records: readonly JsonObject[]): Promise<Outcome<readonly string[], NotKept>> {
    return this.keepLines(records.map(toStored));
  }

  /** The same for records already written. A record that is there already is left as it is. */
  async keepLines(records: readonly StoredRecord[]): Promise<Outcome<readonly string[], NotKept>> {
    try {
      await this.#database.records.add(records);
      return accept(records.map(({ line }) => line));
    } catch (error) {
      const reason = reasonOf(error);
      const { notKept } = (wordsAtHand(this.#language()) ?? english).backup;
      return refuse(reason, notKept[reason]);
    }
  }

  count(): Promise<number> {
    return this.#database.records.count();
  }

  /** Writes records without their words over the whole ones. */
  empty(records: readonly StoredRecord[]): Promise<void> {
    return this.#database.records.replace(records);
  }

  /** Takes records off this device that nobody wrote here. */
  remove(ids: readonly string[]): Promise<void> {
    return this.#database.records.remove(ids);
  }

  /** Empties the log of this device, after a copy was made. */
  clear(): Promise<void> {
    return this.#database.records.clear();
  }
}

/** Why the browser did not write. */
function reasonOf(error: unknown): NotKept {
  const name = error instanceof DOMException ? error.name : "";
  if (name === "QuotaExceededError") return "storage-full";
  // A connection that was closed under the page, by a newer version of it or by the system.
  return name === "InvalidStateError" ? "storage-lost" : "storage-closed";
}
