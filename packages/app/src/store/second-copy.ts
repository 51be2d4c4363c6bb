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
  /** Holds these and no others from now on; what is added meanwhile stays. */
  readonly rewrite: (records: readonly StoredRecord[]) => Promise<void>;
  /** In how many pieces it lies. */
  readonly pieces: () => Promise<number>;
}

const FOLDER = "/second-copy/";

export function secondCopy(name: string, storage: CacheStorage | undefined): SecondCopy {
  const open = async () => storage?.open(`${name}-second-copy`);
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
          ((await cache?.keys()) ?? []).map(async (piece) => (await cache!.match(piece))?.json()),
        );
        const byId = new Map((pieces.flat() as StoredRecord[]).map((record) => [record.id, record]));
        return [...byId.values()];
      }, []),
    rewrite: (records) =>
      quietly(async () => {
        const cache = await open();
        const before = (await cache?.keys()) ?? [];
        if (records.length > 0) await put(records);
        await Promise.all(before.map((piece) => cache!.delete(piece)));
      }, undefined),
    pieces: () => quietly(async () => (await (await open())?.keys())?.length ?? 0, 0),
  };
}
