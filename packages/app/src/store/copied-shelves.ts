import type { SecondCopy } from "./second-copy.ts";
import type { RecordShelf, SyncShelf } from "./shelves.ts";

// The shelves of the log with their second copy kept in step.

/** The records; an adding is done when both have it, and leaves neither with it when the database refuses. */
export function copiedRecords(records: RecordShelf, copy: SecondCopy): RecordShelf {
  const changed = (change: () => Promise<void>) =>
    copy.alone(async () => {
      await copy.fallBehind();
      await change();
      await copy.rewrite(records.all);
    });
  return {
    ...records,
    add: async (some) => {
      // The whole form of a record whose words were taken out is not to come back here.
      const there = new Set((await records.some(some.map(({ id }) => id))).map(({ id }) => id));
      const adding = copy.add(some.filter(({ id }) => !there.has(id)));
      try {
        await records.add(some);
      } catch (error) {
        await (await adding).takeBack();
        throw error;
      }
      await (await adding).confirm();
    },
    clear: () => changed(records.clear),
    replace: (some) => changed(() => records.replace(some)),
    remove: (ids) => changed(() => records.remove(ids)),
  };
}

/** What the server sends; where it takes the place of something, the second copy forgets that too. */
export const copiedSync = (sync: SyncShelf, records: RecordShelf, copy: SecondCopy): SyncShelf => ({
  ...sync,
  arrive: (some, ...how) =>
    copy.alone(async () => {
      const arrived = await sync.arrive(some, ...how);
      if (arrived.replaced.length > 0) {
        await copy.fallBehind();
        await copy.rewrite(records.all);
      } else if (arrived.added.length > 0) await copy.add(arrived.added);
      return arrived;
    }),
});

/** More pieces of the second copy than this are put together when the app opens. */
const MANY_PIECES = 64;

/**
 * At the opening of the database: an empty one gets back what the second copy holds.
 * @param fresh it was made just now; an older one may be empty because its records were taken away
 */
export async function bringBack(fresh: boolean, records: RecordShelf, copy: SecondCopy): Promise<void> {
  if ((await records.count()) > 0 || (!fresh && (await copy.isBehind()))) return;
  const saved = await copy.all();
  if (saved.length > 0) await records.add(saved);
}

/** Writes the second copy anew where it never was, is behind, or lies in many pieces. */
export const tidy = (records: RecordShelf, copy: SecondCopy): Promise<void> =>
  copy.alone(async () => {
    const pieces = await copy.pieces();
    if (pieces === 0 || pieces > MANY_PIECES || (await copy.isBehind())) await copy.rewrite(records.all);
  });
