import { SYNC_CURSOR } from "../store/database.ts";
import type { SyncShelf } from "../store/shelves.ts";
import type { Setting, StoredRecord } from "../store/tables.ts";
import type { Local } from "./sync-once.ts";

/** A device kept in memory, by the same rules as the browser's database. */
export function memoryDevice(): Local & {
  write: (record: StoredRecord) => Promise<void>;
  log: () => Promise<string[]>;
} {
  const records = new Map<string, string>();
  const unsent = new Set<string>();
  let progress: Setting | undefined;
  const sync: SyncShelf = {
    unsent: async (most) => [...unsent].slice(0, most).map((id) => ({ id, line: records.get(id)! })),
    unsentCount: async () => unsent.size,
    markSent: async (ids) => ids.forEach((id) => void unsent.delete(id)),
    markAllUnsent: async () => [...records.keys()].forEach((id) => void unsent.add(id)),
    arrive: async (arrived, same, anew, setting) => {
      const added = arrived.filter(({ id }) => !records.has(id));
      const replaced = arrived
        .filter(({ id, line }) => records.has(id) && !same(records.get(id)!, line))
        .map(({ id }) => ({ id, line: records.get(id)! }));
      const moved = replaced.flatMap(({ id, line }) => {
        const record = anew(line, arrived.find((one) => one.id === id)!.line);
        return record === null ? [] : [{ id, record }];
      });
      for (const { id, line } of arrived) {
        if (!records.has(id) || replaced.some((one) => one.id === id)) records.set(id, line);
        unsent.delete(id);
      }
      for (const { record } of moved) {
        records.set(record.id, record.line);
        unsent.add(record.id);
      }
      progress = setting;
      return { added, replaced, moved: moved.map(({ id, record }) => ({ id, to: record.id })) };
    },
  };
  return {
    sync,
    settings: { get: async (key) => (key === SYNC_CURSOR ? progress : undefined) },
    arrived: async () => undefined,
    begunAnew: async () => undefined,
    setAside: async () => undefined,
    write: async ({ id, line }) => {
      if (records.has(id)) return;
      records.set(id, line);
      unsent.add(id);
    },
    log: async () => [...records.values()].sort(),
  };
}
