import { type IDBPDatabase, openDB } from "idb";
import { bringBack, copiedRecords, copiedSync, tidy } from "./copied-shelves.ts";
import { type PhotoShelf, photoShelf } from "./photo-shelf.ts";
import { secondCopy } from "./second-copy.ts";
import type { RecordShelf, SettingShelf, SyncShelf } from "./shelves.ts";
import type { Tables } from "./tables.ts";

const VERSION = 2;

export interface Database {
  readonly records: RecordShelf;
  readonly settings: SettingShelf;
  readonly photos: PhotoShelf;
  readonly sync: SyncShelf;
}

/** The setting that says how far the shop's log was read. */
export const SYNC_CURSOR = "sync-cursor";

/** Opens this browser's own database. Strict: a write is on the disk before it counts as kept. */
export async function openDatabase(name = "jetwright"): Promise<Database> {
  let fresh = false;
  const database = await openDB<Tables>(name, VERSION, {
    async upgrade(tables, before, _now, transaction) {
      if (before < 1) {
        fresh = true;
        tables.createObjectStore("records", { keyPath: "id" });
        tables.createObjectStore("settings", { keyPath: "key" });
        tables.createObjectStore("photos", { keyPath: "hash" });
      }
      if (before < 2) {
        const unsent = tables.createObjectStore("unsent");
        for (const id of await transaction.objectStore("records").getAllKeys()) void unsent.put(id, id);
      }
    },
    // A newer page wants to change the tables: let it, this one is asked to load again.
    blocking: (_now, _wanted, event) => (event.target as IDBDatabase).close(),
  });
  const copy = secondCopy(name, globalThis.caches);
  const records = recordShelf(database);
  await bringBack(fresh, records, copy);
  tidy(records, copy).catch(() => undefined);
  return {
    records: copiedRecords(records, copy),
    settings: settingShelf(database),
    photos: photoShelf(database),
    sync: copiedSync(syncShelf(database), records, copy),
  };
}

const writingLog = (database: IDBPDatabase<Tables>) =>
  database.transaction(["records", "unsent", "settings"], "readwrite", { durability: "strict" });

function recordShelf(database: IDBPDatabase<Tables>): RecordShelf {
  return {
    all: () => database.getAll("records"),
    some: async (ids) => {
      const { store } = database.transaction("records");
      const found = await Promise.all(ids.map((id) => store.get(id)));
      return found.filter((record) => record !== undefined);
    },
    add: async (records) => {
      const transaction = writingLog(database);
      const { done } = transaction;
      const store = transaction.objectStore("records");
      const unsent = transaction.objectStore("unsent");
      try {
        const there = await Promise.all(records.map(({ id }) => store.getKey(id)));
        await Promise.all([
          ...records
            .filter((_, i) => there[i] === undefined)
            .flatMap((record) => [store.add(record), unsent.put(record.id, record.id)]),
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
      const transaction = writingLog(database);
      const [records, unsent] = [transaction.objectStore("records"), transaction.objectStore("unsent")];
      const progress = transaction.objectStore("settings").delete(SYNC_CURSOR);
      await Promise.all([records.clear(), unsent.clear(), progress, transaction.done]);
    },
    replace: async (records) => {
      const transaction = writingLog(database);
      const log = transaction.objectStore("records");
      const there = await Promise.all(records.map(({ id }) => log.getKey(id)));
      await Promise.all([
        ...records.filter((_, i) => there[i] !== undefined).map((record) => log.put(record)),
        transaction.done,
      ]);
    },
    remove: async (ids) => {
      const transaction = writingLog(database);
      const [records, unsent] = [transaction.objectStore("records"), transaction.objectStore("unsent")];
      await Promise.all([...ids.flatMap((id) => [records.delete(id), unsent.delete(id)]), transaction.done]);
    },
  };
}

function settingShelf(database: IDBPDatabase<Tables>): SettingShelf {
  const writing = () => database.transaction("settings", "readwrite", { durability: "strict" });
  return {
    get: (key) => database.get("settings", key),
    startingWith: (prefix) =>
      database.getAll("settings", IDBKeyRange.bound(prefix, `${prefix}\uffff`, false, true)),
    put: async (value) => {
      const { store, done } = writing();
      await Promise.all([store.put(value), done]);
    },
    delete: async (key) => {
      const { store, done } = writing();
      await Promise.all([store.delete(key), done]);
    },
  };
}

function syncShelf(database: IDBPDatabase<Tables>): SyncShelf {
  return {
    unsent: async (most) => {
      const transaction = database.transaction(["records", "unsent"]);
      const ids = await transaction.objectStore("unsent").getAllKeys(undefined, most);
      const records = transaction.objectStore("records");
      const found = await Promise.all(ids.map((id) => records.get(id)));
      return found.filter((record) => record !== undefined);
    },
    unsentCount: () => database.count("unsent"),
    markSent: async (ids) => {
      const transaction = writingLog(database);
      const unsent = transaction.objectStore("unsent");
      await Promise.all([...ids.map((id) => unsent.delete(id)), transaction.done]);
    },
    markAllUnsent: async () => {
      const transaction = writingLog(database);
      const ids = await transaction.objectStore("records").getAllKeys();
      const unsent = transaction.objectStore("unsent");
      await Promise.all([...ids.map((id) => unsent.put(id, id)), transaction.done]);
    },
    arrive: async (records, same, anew, progress) => {
      const transaction = writingLog(database);
      const log = transaction.objectStore("records");
      const unsent = transaction.objectStore("unsent");
      const there = await Promise.all(records.map(({ id }) => log.get(id)));
      const added = records.filter((_, i) => there[i] === undefined);
      const pairs = records.flatMap((theirs, i) => {
        const here = there[i];
        return here === undefined || same(theirs.line, here.line) ? [] : [{ here, theirs }];
      });
      const moved = pairs.flatMap(({ here, theirs }) => {
        const record = anew(here.line, theirs.line);
        return record === null ? [] : [{ id: here.id, record }];
      });
      await Promise.all([
        ...[...added, ...pairs.map(({ theirs }) => theirs)].map((record) => log.put(record)),
        ...records.map(({ id }) => unsent.delete(id)),
        ...moved.flatMap(({ record }) => [log.put(record), unsent.put(record.id, record.id)]),
        transaction.objectStore("settings").put(progress),
        transaction.done,
      ]);
      return {
        added,
        replaced: pairs.map(({ here }) => here),
        moved: moved.map(({ id, record }) => ({ id, to: record.id })),
      };
    },
  };
}
