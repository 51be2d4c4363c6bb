import type { StoredRecord } from "./tables.ts";

/**
 * Every record once more, in the browser's store for pages instead of its database. Killed in the middle of a write,
 * Chromium may throw a whole database away when it opens it next (LevelDB goes on writing behind a torn record: issue
 * 1287 of google/leveldb, open; read in a stored copy). Then the records come back from here. A browser without that
 * store, or with no room in it, has the database alone.
 */
export interface SecondCopy {
  /** Adds records; taken back by the function it gives, where the database refused them. */
  readonly add: (records: readonly StoredRecord[]) => Promise<() => Promise<void>>;
  readonly all: () => Promise<readonly StoredRecord[]>;
  /** Notes that records are about to be changed or taken away: until it is rewritten it may have what they had. */
  readonly fallBehind: () => Promise<void>;
  readonly isBehind: () => Promise<boolean>;
  /** Holds what this reads and nothing older from now on; what is added meanwhile stays. */
  readonly rewrite: (read: () => Promise<readonly StoredRecord[]>) => Promise<void>;
  /** In how many pieces it lies. */
  readonly pieces: () => Promise<number>;
}

const FOLDER = "/second-copy/";

export function secondCopy(name: string, storage: CacheStorage | undefined): SecondCopy {
  const open = async () => storage?.open(`${name}-second-copy`);
  /** Being there is all it says. */
  const behind = `${name}-second-copy-behind`;
  const quietly = async <T>(work: () => Promise<T>, otherwise: T): Promise<T> => {
    try {
      return await work();
    } catch {
      return otherwise;
    }
  };
  /** One piece an adding: its name is new each time. */
  const put = async (records: readonly StoredRecord[]): Promise<string> => {
    const piece = `${FOLDER}${crypto.randomUUID()}`;
    await (await open())?.put(piece, new Response(JSON.stringify(records)));
    return piece;
  };
  return {
    add: (records) =>
      quietly(
        async () => {
          const piece = await put(records);
          return () => quietly(async () => void (await (await open())?.delete(piece)), undefined);
        },
        async () => undefined,
      ),
    all: () =>
      quietly(async () => {
        const cache = await open();
        const pieces = await Promise.all(
          ((await cache?.keys()) ?? []).map((piece) =>
            quietly<readonly StoredRecord[]>(async () => (await cache!.match(piece))?.json() ?? [], []),
          ),
        );
        const byId = new Map(pieces.flat().map((record) => [record.id, record]));
        return [...byId.values()];
      }, []),
    fallBehind: () => quietly(async () => void (await storage?.open(behind)), undefined),
    isBehind: () => quietly(async () => (await storage?.has(behind)) ?? false, false),
    rewrite: (read) =>
      quietly(async () => {
        const cache = await open();
        if (cache === undefined) return;
        const before = await cache.keys();
        const records = await read();
        const write = async () => records.length > 0 && put(records);
        // Where both have no room the older goes first, as words may have to go with it.
        const written = await quietly(async () => write().then(() => true), false);
        await Promise.all(before.map((piece) => cache.delete(piece)));
        if (!written) await write();
        await storage!.delete(behind);
      }, undefined),
    pieces: () => quietly(async () => (await (await open())?.keys())?.length ?? 0, 0),
  };
}
