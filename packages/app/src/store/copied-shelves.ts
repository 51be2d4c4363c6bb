import type { SecondCopy } from "./second-copy.ts";
import type { RecordShelf, SyncShelf } from "./shelves.ts";

// The shelves of the log with their second copy kept in step.

/** The records; an adding is done when both have it, and leaves neither with it when the database refuses. */
export const copiedRecords = (records: RecordShelf, copy: SecondCopy): RecordShelf => ({
  ...records,
  add: async (some) => {
    const adding = copy.add(some);
    try {
      await records.add(some);
    } catch (error) {
      await (await adding)();
      throw error;
    }
    await adding;
  },
  clear: async () => {
    await records.clear();
    await copy.rewrite([]);
  },
  replace: async (some) => {
    await records.replace(some);
    await copy.rewrite(await records.all());
  },
  remove: async (ids) => {
    await records.remove(ids);
    await copy.rewrite(await records.all());
  },
});

/** What the server sends; where it takes the place of something, the second copy forgets that too. */
export const copiedSync = (sync: SyncShelf, records: RecordShelf, copy: SecondCopy): SyncShelf => ({
  ...sync,
  arrive: async (some, same, progress) => {
    const arrived = await sync.arrive(some, same, progress);
    if (arrived.replaced.length > 0) await copy.rewrite(await records.all());
    else if (arrived.added.length > 0) await copy.add(arrived.added);
    return arrived;
  },
});

/** More pieces of the second copy than this are put together when the app opens. */
const MANY_PIECES = 64;

/**
 * At the opening of the database: made anew, it gets back what the second copy holds; an older one is copied where it
 * never was, or lies in many pieces.
 */
export async function bringTogether(fresh: boolean, records: RecordShelf, copy: SecondCopy): Promise<void> {
  if (fresh) {
    const saved = await copy.all();
    if (saved.length > 0) await records.add(saved);
    return;
  }
  const pieces = await copy.pieces();
  if (pieces === 0 || pieces > MANY_PIECES) await copy.rewrite(await records.all());
}
