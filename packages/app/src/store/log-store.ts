import { accept, type Outcome, refuse } from "@jetwright/core";
import { type JsonObject, writeRecord } from "@jetwright/records";
import type { Database, StoredRecord } from "./database.ts";

export type NotKept = "storage-full" | "storage-closed" | "another-record";

const toStored = (record: JsonObject): StoredRecord => ({ id: String(record.id), line: writeRecord(record) });

/** The log in this browser's database: append only. */
export class LogStore {
  readonly #database: Database;

  constructor(database: Database) {
    this.#database = database;
  }

  /** Every record as written. */
  async all(): Promise<readonly string[]> {
    return (await this.#database.records.all()).map(({ line }) => line);
  }

  /** The lines of the records with these ids, for another tab's news. */
  async some(ids: readonly string[]): Promise<readonly string[]> {
    return (await this.#database.records.some(ids)).map(({ line }) => line);
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
      return notKept(error);
    }
  }

  count(): Promise<number> {
    return this.#database.records.count();
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

function notKept(error: unknown): Outcome<never, NotKept> {
  if (error instanceof DOMException && error.name === "QuotaExceededError") {
    return refuse(
      "storage-full",
      "Not kept: this phone's storage is full. Free some space and keep it again; nothing is lost.",
    );
  }
  return refuse(
    "storage-closed",
    "Not kept: the browser would not open its storage. A private window or a blocked site can do that. Copy the log to a file, then open the page in a normal window.",
  );
}
