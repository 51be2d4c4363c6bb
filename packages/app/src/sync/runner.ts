import type { Arrived } from "../store/shelves.ts";
import type { Shop } from "../store/shop.ts";
import { blobRemoteBy } from "./blob-remote.ts";
import { blobFetcher } from "./fetch-blobs.ts";
import { fetchFromShop, shopRounds, syncLine } from "./paired.ts";
import { ask, Refused, remoteBy } from "./remote.ts";
import { type BlobLocal, type Settled, sendBlobs } from "./send-blobs.ts";
import { type SyncState, syncState } from "./state.ts";
import { StateLine } from "./state-line.tsx";
import { type NotTaken, syncOnce } from "./sync-once.ts";

/** Not asked more often than this after a failure, and at most so seldom. */
const FIRST_WAIT = 2000;
const LONGEST_WAIT = 300_000;
/** Asked now and then even where news come by themselves: they may have stopped unheard. */
const NOW_AND_THEN = 60_000;
const SETTING = "sync-not-taken";
const SETTLED = "sync-pictures";
const MOST_NOT_TAKEN = 200;

let running: { readonly soon: () => void; readonly end: () => void } | null = null;

/** Asks for a round of sharing now. */
export const syncSoon = (): void => running?.soon();

/** Ends the sharing, when the device leaves its shop. */
export function endSync(): void {
  running?.end();
  running = null;
  syncLine.set(null);
  fetchFromShop.set(null);
}

/**
 * Shares the log with the shop: at the start, when the network or the page comes back, after each record, and
 * when the server says there is news. One tab of the browser at a time.
 */
export function beginSync(shop: Shop): void {
  if (running !== null) return;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let wait = FIRST_WAIT;
  let busy = false;
  let again = false;
  let ended = false;
  const { sync, settings, photos } = shop.database;
  const say = (change: Partial<SyncState>): void => syncState.set({ ...syncState.get(), ...change });

  const count = async () => say({ waiting: await sync.unsentCount() });

  async function setAside(records: readonly NotTaken[]): Promise<void> {
    if (records.length === 0) return;
    const before = ((await settings.get(SETTING))?.value as readonly NotTaken[] | undefined) ?? [];
    const fresh = new Set(records.map(({ id }) => id));
    const notTaken = [...before.filter(({ id }) => !fresh.has(id)), ...records].slice(-MOST_NOT_TAKEN);
    await settings.put({ key: SETTING, value: notTaken });
    say({ notTaken });
  }

  const pictures: BlobLocal = {
    photos,
    settled: async () =>
      ((await settings.get(SETTLED))?.value as Settled | undefined) ?? { there: [], never: [] },
    settle: (settled) => settings.put({ key: SETTLED, value: settled }),
    left: (count) => say({ pictures: count }),
    kept: (never, noRoom) => say({ picturesKept: never, noRoom }),
    stop: () => again || ended,
  };

  async function round(): Promise<void> {
    const begunAnew = () => settings.delete(SETTLED);
    const arrived = (what: Arrived) => shop.heardFromShop(what);
    await syncOnce({ sync, settings, arrived, begunAnew, setAside }, remoteBy(ask));
    await count();
    shopRounds.set(shopRounds.get() + 1);
    await sendBlobs(pictures, blobRemoteBy(ask));
  }

  async function work(): Promise<void> {
    if (busy) {
      again = true;
      return;
    }
    if (ended || !navigator.onLine) return say({ connection: "away" });
    busy = true;
    say({ connection: "at-work" });
    try {
      // Without locks (a page that is not secure) two tabs may do it at once: slower, and no less right.
      await (navigator.locks?.request("jetwright-sync", round) ?? round());
      wait = FIRST_WAIT;
      say({ connection: "together" });
      later(NOW_AND_THEN);
    } catch (error) {
      const out = error instanceof Refused && error.status === 401;
      say({ connection: out ? "shut-out" : "away" });
      later(wait);
      wait = Math.min(wait * 2, LONGEST_WAIT);
    }
    busy = false;
    await count();
    if (again) {
      again = false;
      soon();
    }
  }

  function later(milliseconds: number): void {
    clearTimeout(timer);
    if (!ended) timer = setTimeout(() => void work(), milliseconds);
  }
  const soon = () => later(0);
  const seen = () => document.visibilityState === "visible" && soon();
  const gone = () => say({ connection: "away" });

  window.addEventListener("online", soon);
  window.addEventListener("offline", gone);
  document.addEventListener("visibilitychange", seen);
  // What came from the shop counts up too; a round with nothing to do is short.
  const unwatch = shop.version.watch(() => {
    void count().then(() => {
      if (syncState.get().waiting > 0) soon();
    });
  });
  const stopNews = hearNews(soon);
  running = {
    soon,
    end: () => {
      ended = true;
      clearTimeout(timer);
      window.removeEventListener("online", soon);
      window.removeEventListener("offline", gone);
      document.removeEventListener("visibilitychange", seen);
      unwatch();
      stopNews();
    },
  };
  syncLine.set(StateLine);
  fetchFromShop.set(blobFetcher(photos, blobRemoteBy(ask)));
  void settings.get(SETTING).then((kept) => say({ notTaken: (kept?.value as readonly NotTaken[]) ?? [] }));
  soon();
}

/** Hears of news while the page can be seen and the network is there. */
function hearNews(soon: () => void): () => void {
  let source: EventSource | null = null;
  const follow = () => {
    const wanted = document.visibilityState === "visible" && navigator.onLine;
    if (!wanted) {
      source?.close();
      source = null;
    } else if (source === null || source.readyState === EventSource.CLOSED) {
      source = new EventSource("/api/v1/live");
      source.addEventListener("records", soon);
    }
  };
  const changes = ["online", "offline"] as const;
  for (const change of changes) window.addEventListener(change, follow);
  document.addEventListener("visibilitychange", follow);
  follow();
  return () => {
    source?.close();
    for (const change of changes) window.removeEventListener(change, follow);
    document.removeEventListener("visibilitychange", follow);
  };
}
