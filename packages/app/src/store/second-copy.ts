import { inTurn } from "./in-turn.ts";
import type { StoredRecord } from "./tables.ts";

/**
 * Every record once more, in the browser's store for pages instead of its database. Killed in the middle of a write,
 * Chromium may throw a whole database away when it opens it next (LevelDB goes on writing behind a torn record: issue
 * 1287 of google/leveldb, open; read in a stored copy). Then the records come back from here. A browser without that
 * store, or with no room in it, has the database alone.
 */
export interface SecondCopy {
  /** Adds records, while the database does: what came of that is told to what it gives. */
  readonly add: (records: readonly StoredRecord[]) => Promise<Added>;
  readonly all: () => Promise<readonly StoredRecord[]>;
  /** Does work of one page at a time: changes of the records with what follows from them here. */
  readonly alone: <T>(work: () => Promise<T>) => Promise<T>;
  /** Notes that records are about to be changed or taken away: until it is rewritten it may have what they had. */
  readonly fallBehind: () => Promise<void>;
  readonly isBehind: () => Promise<boolean>;
  /** Holds what this reads and nothing older from now on; what is added meanwhile stays. */
  readonly rewrite: (read: () => Promise<readonly StoredRecord[]>) => Promise<void>;
  /** In how many pieces it lies. */
  readonly pieces: () => Promise<number>;
}

export interface Added {
  /** The database has them too: puts them in once more where a rewriting took them away that did not know of them. */
  readonly confirm: () => Promise<void>;
  /** The database refused them. */
  readonly takeBack: () => Promise<void>;
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
  const all = () =>
    quietly(async () => {
      const cache = await open();
      const pieces = await Promise.all(
        ((await cache?.keys()) ?? []).map((piece) =>
          quietly<readonly StoredRecord[]>(async () => (await cache!.match(piece))?.json() ?? [], []),
        ),
      );
      const byId = new Map(pieces.flat().map((record) => [record.id, record]));
      return [...byId.values()];
    }, []);
  return {
    add: (records) =>
      quietly(
        async () => {
          const piece = await put(records);
          const gone = async () => (await (await open())?.match(piece)) === undefined;
          return {
            confirm: () => quietly(async () => void ((await gone()) && (await put(records))), undefined),
            takeBack: () => quietly(async () => void (await (await open())?.delete(piece)), undefined),
          };
        },
        { confirm: async () => undefined, takeBack: async () => undefined },
      ),
    alone: (work) => inTurn(`${name}-second-copy`, work),
    all,
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
        // Of what was added between the reading and this, the piece may have gone with the others.
        const now = await read();
        const here = new Set((await all()).map(({ id }) => id));
        const late = now.filter(({ id }) => !here.has(id));
        if (late.length > 0) await put(late);
        await storage!.delete(behind);
      }, undefined),
    pieces: () => quietly(async () => (await (await open())?.keys())?.length ?? 0, 0),
  };
}
