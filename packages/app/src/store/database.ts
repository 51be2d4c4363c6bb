import { type DBSchema, type IDBPDatabase, openDB } from "idb";

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

interface Tables extends DBSchema {
  records: { key: string; value: StoredRecord };
  settings: { key: string; value: Setting };
  photos: { key: string; value: StoredPhoto };
}

const VERSION = 1;

/** What lies under a key, and how to put it there; a put resolves once it is on the disk. */
export interface Shelf<Value> {
  readonly get: (key: string) => Promise<Value | undefined>;
  readonly put: (value: Value) => Promise<void>;
  readonly delete: (key: string) => Promise<void>;
}

/** The records of the log: added, never changed. */
export interface RecordShelf {
  readonly all: () => Promise<readonly StoredRecord[]>;
  readonly some: (ids: readonly string[]) => Promise<readonly StoredRecord[]>;
  /** Adds those whose id is not there yet, together or not at all. */
  readonly add: (records: readonly StoredRecord[]) => Promise<void>;
  readonly count: () => Promise<number>;
  readonly clear: () => Promise<void>;
}

export interface Database {
  readonly records: RecordShelf;
  readonly settings: Shelf<Setting>;
  readonly photos: Shelf<StoredPhoto>;
}

/** Opens this browser's own database. Strict: a write is on the disk before it counts as kept. */
export async function openDatabase(name = "jetwright"): Promise<Database> {
  const database = await openDB<Tables>(name, VERSION, {
    upgrade(fresh) {
      fresh.createObjectStore("records", { keyPath: "id" });
      fresh.createObjectStore("settings", { keyPath: "key" });
      fresh.createObjectStore("photos", { keyPath: "hash" });
    },
    // A newer page wants to change the tables: let it, this one is asked to load again.
    blocking: (_now, _wanted, event) => (event.target as IDBDatabase).close(),
  });
  return {
    records: recordShelf(database),
    settings: shelf(database, "settings"),
    photos: shelf(database, "photos"),
  };
}

const writing = <Store extends "records" | "settings" | "photos">(
  database: IDBPDatabase<Tables>,
  store: Store,
) => database.transaction(store, "readwrite", { durability: "strict" });

function recordShelf(database: IDBPDatabase<Tables>): RecordShelf {
  return {
    all: () => database.getAll("records"),
    some: async (ids) => {
      const { store } = database.transaction("records");
      const found = await Promise.all(ids.map((id) => store.get(id)));
      return found.filter((record) => record !== undefined);
    },
    add: async (records) => {
      const transaction = writing(database, "records");
      const { store, done } = transaction;
      try {
        const there = await Promise.all(records.map(({ id }) => store.getKey(id)));
        await Promise.all([
          ...records.filter((_, i) => there[i] === undefined).map((record) => store.add(record)),
          done,
        ]);
      } catch (error) {
        // The transaction has failed as a whole; its own end says so too and is heard here.
        await done.catch(() => undefined);
        throw transaction.error ?? error;
      }
    },
    count: () => database.count("records"),
    clear: async () => {
      const { store, done } = writing(database, "records");
      await Promise.all([store.clear(), done]);
    },
  };
}

function shelf<Store extends "settings" | "photos">(
  database: IDBPDatabase<Tables>,
  store: Store,
): Shelf<Tables[Store]["value"]> {
  return {
    get: (key) => database.get(store, key),
    put: async (value) => {
      const { store: table, done } = writing(database, store);
      await Promise.all([table.put(value), done]);
    },
    delete: async (key) => {
      const { store: table, done } = writing(database, store);
      await Promise.all([table.delete(key), done]);
    },
  };
}
