import Dexie, { type EntityTable } from "dexie";

/** One record of the log, as written: one line of JSON. */
export interface StoredRecord {
  readonly id: string;
  readonly line: string;
}

/** A choice of this device's own, never part of the log. */
export interface Setting {
  readonly key: string;
  readonly value: unknown;
}

/** A picture kept on this device, under the hash the log names. */
export interface StoredPhoto {
  readonly hash: string;
  readonly blob: Blob;
}

export type Database = Dexie & {
  records: EntityTable<StoredRecord, "id">;
  settings: EntityTable<Setting, "key">;
  photos: EntityTable<StoredPhoto, "hash">;
};

/** Opens this browser's own database. Strict: a write is on the disk before it counts as kept. */
export function openDatabase(name = "jetwright"): Database {
  const database = new Dexie(name, { chromeTransactionDurability: "strict" }) as Database;
  database.version(1).stores({ records: "id", settings: "key", photos: "hash" });
  return database;
}
