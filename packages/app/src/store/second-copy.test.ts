import "fake-indexeddb/auto";
import { openDB } from "idb";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { copiedRecords } from "./copied-shelves.ts";
import { type Database, openDatabase } from "./database.ts";
import { secondCopy } from "./second-copy.ts";
import type { StoredRecord, Tables } from "./tables.ts";

/** The store for pages as a browser has it, as far as it is used. */
class Pages {
  readonly folders = new Map<string, Map<string, string>>();
  full = false;
  /** What the next piece waits for before it lies there. */
  gate: () => Promise<void> = async () => undefined;
  /** The page is killed before a piece is taken away. */
  killing = false;
  killed = false;
  async has(name: string) {
    return this.folders.has(name);
  }
  async delete(name: string) {
    return this.folders.delete(name);
  }
  async open(name: string) {
    const folder = this.folders.get(name) ?? new Map<string, string>();
    this.folders.set(name, folder);
    return {
      put: async (key: string, response: Response) => {
        await this.gate();
        if (this.full) throw new DOMException("no room", "QuotaExceededError");
        folder.set(key, await response.text());
      },
      keys: async () => [...folder.keys()],
      match: async (key: string) => (folder.has(key) ? new Response(folder.get(key)) : undefined),
      delete: async (key: string) => {
        if (!this.killing) return folder.delete(key);
        this.killed = true;
        return new Promise<boolean>(() => {});
      },
    };
  }
  pieces(name: string): number {
    return this.folders.get(`${name}-second-copy`)?.size ?? 0;
  }
}

let pages: Pages;
beforeEach(() => {
  pages = new Pages();
  vi.stubGlobal("caches", pages);
});
afterEach(() => vi.unstubAllGlobals());

const record = (id: string, text = ""): StoredRecord => ({ id, line: JSON.stringify({ id, text }) });
const ids = async ({ records }: Database) => (await records.all()).map(({ id }) => id).sort();

/** Everything in the store for pages, as text. */
const inPages = () => JSON.stringify([...pages.folders.values()].map((folder) => [...folder]));

/** Writes records into the database as another page does, past the second copy. */
async function onDisk(name: string, records: readonly StoredRecord[]): Promise<void> {
  const database = await openDB<Tables>(name);
  for (const one of records) await database.put("records", one);
  database.close();
}

/** The browser throws the database away, as after a torn write; then the app opens. */
async function afterTheLoss(name: string): Promise<Database> {
  await new Promise((resolve) => {
    indexedDB.deleteDatabase(name).onsuccess = resolve;
  });
  return openDatabase(name);
}

test("a database thrown away has every record back when it is opened next, and shares them anew", async () => {
  const first = await openDatabase("lost");
  await first.records.add([record("a"), record("b")]);
  await first.records.add([record("c")]);
  await first.sync.markSent(["a"]);
  const again = await afterTheLoss("lost");
  expect(await again.records.all()).toEqual([record("a"), record("b"), record("c")]);
  expect(await again.sync.unsentCount()).toBe(3);
});

test("what was taken off, or replaced by the shop's, does not come back", async () => {
  const first = await openDatabase("off");
  await first.records.add([record("a", "a name"), record("b"), record("c")]);
  await first.records.remove(["b"]);
  await first.sync.arrive(
    [record("a", "erased"), record("d")],
    () => false,
    () => null,
    { key: "k", value: 1 },
  );
  const again = await afterTheLoss("off");
  expect(await again.records.all()).toEqual([record("a", "erased"), record("c"), record("d")]);
  expect(inPages()).not.toContain("a name");
  await again.records.clear();
  expect(await ids(await afterTheLoss("off"))).toEqual([]);
});

test("words taken out of a record are in neither, and a whole form brought in again does not put them back", async () => {
  const first = await openDatabase("words");
  await first.records.add([record("a", "a name"), record("b")]);
  await first.records.replace([record("a", "erased"), record("never-here")]);
  expect(inPages()).not.toContain("a name");
  await first.records.add([record("a", "a name"), record("c")]);
  expect(inPages()).not.toContain("a name");
  const again = await afterTheLoss("words");
  expect(await again.records.all()).toEqual([record("a", "erased"), record("b"), record("c")]);
});

test("words leave the second copy also where there is no room for a new one", async () => {
  const first = await openDatabase("no-room");
  await first.records.add([record("a", "a name")]);
  pages.full = true;
  await first.records.replace([record("a", "erased")]);
  expect(inPages()).not.toContain("a name");
  pages.full = false;
  await openDatabase("no-room");
  await vi.waitFor(() => expect(inPages()).toContain("erased"));
});

test.each([
  ["words taken out", (db: Database) => db.records.replace([record("a", "erased")]), ["a", "b"]],
  ["a record taken off", (db: Database) => db.records.remove(["a"]), ["b"]],
  ["the log emptied", (db: Database) => db.records.clear(), []],
] as const)(
  "%s as the page is killed: the next opening brings the second copy after",
  async (name, change, left) => {
    const first = await openDatabase(name);
    await first.records.add([record("a", "a name"), record("b")]);
    pages.killed = true;
    void change(first);
    await vi.waitFor(async () => expect(JSON.stringify(await first.records.all())).not.toContain("a name"));
    pages.killed = false;
    const again = await openDatabase(name);
    expect(await ids(again)).toEqual(left);
    await vi.waitFor(() => expect(inPages()).not.toContain("a name"));
    expect(await ids(await afterTheLoss(name))).toEqual(left);
  },
);

/** Holds one thing up: whether it waits, and the way to let it go on. */
function held() {
  let go = () => {};
  const gate = new Promise<void>((resolve) => {
    go = resolve;
  });
  const state = { waits: false, go: () => go() };
  const wait = async () => {
    state.waits = true;
    pages.gate = async () => undefined;
    await gate;
  };
  return { state, wait };
}

test("two changes at once: the words that one takes out do not come back with the other", async () => {
  const [one, other] = [await openDatabase("at-once"), await openDatabase("at-once")];
  await one.records.add([record("a", "a name"), record("b"), record("c")]);
  const { state, wait } = held();
  pages.gate = wait;
  const removing = one.records.remove(["b"]);
  await vi.waitFor(() => expect(state.waits).toBe(true));
  const erasing = other.records.replace([record("a", "erased")]);
  await Promise.race([erasing, new Promise((done) => setTimeout(done, 50))]);
  state.go();
  await Promise.all([removing, erasing]);
  expect(inPages()).not.toContain("a name");
  expect(await ids(await afterTheLoss("at-once"))).toEqual(["a", "c"]);
});

test.each([
  ["before", true],
  ["after", false],
])(
  "a record added beside a change, on the disk %s the older pieces go, is in the second copy",
  async (_, early) => {
    const name = `beside-${early}`;
    const { records } = await openDatabase(name);
    await records.add([record("a"), record("b")]);
    const [commit, piece] = [held(), held()];
    // The shelf as another page of the browser has it, whose disk is slow.
    const slow = {
      ...records,
      add: async (some: readonly StoredRecord[]) => {
        await commit.wait();
        await onDisk(name, some);
      },
    };
    const before = pages.pieces(name);
    const adding = copiedRecords(slow, secondCopy(name, pages as unknown as CacheStorage)).add([record("c")]);
    await vi.waitFor(() => expect(pages.pieces(name)).toBe(before + 1));
    pages.gate = piece.wait;
    const removing = records.remove(["b"]);
    await vi.waitFor(() => expect(piece.state.waits).toBe(true));
    if (early) {
      commit.state.go();
      await adding;
    }
    piece.state.go();
    await removing;
    commit.state.go();
    await adding;
    expect(await ids(await afterTheLoss(name))).toEqual(["a", "c"]);
  },
);

test("killed before what was lost is back: the next opening brings it", async () => {
  const first = await openDatabase("twice");
  await first.records.add([record("a")]);
  vi.stubGlobal("caches", undefined);
  expect(await ids(await afterTheLoss("twice"))).toEqual([]);
  vi.stubGlobal("caches", pages);
  expect(await ids(await openDatabase("twice"))).toEqual(["a"]);
});

test("a piece that cannot be read does not hold the others back", async () => {
  const first = await openDatabase("torn");
  await first.records.add([record("a")]);
  await first.records.add([record("b")]);
  const [piece] = [...pages.folders.get("torn-second-copy")!.keys()];
  pages.folders.get("torn-second-copy")!.set(piece!, '[{"id":"a","li');
  expect(await ids(await afterTheLoss("torn"))).toEqual(["b"]);
});

test("what the database refused is in neither", async () => {
  const first = await openDatabase("refused");
  await first.records.add([record("a")]);
  const unfit = { id: undefined, line: "" } as unknown as StoredRecord;
  await expect(first.records.add([record("b"), unfit])).rejects.toThrow();
  expect(await ids(await afterTheLoss("refused"))).toEqual(["a"]);
});

test("without room for it, or in a browser without it, the database works alone", async () => {
  pages.full = true;
  const first = await openDatabase("full");
  await first.records.add([record("a")]);
  expect(await ids(first)).toEqual(["a"]);
  vi.stubGlobal("caches", undefined);
  const second = await openDatabase("none");
  await second.records.add([record("a")]);
  await second.records.remove(["a"]);
  expect(await ids(second)).toEqual([]);
});

test("many pieces are put together at the next opening, and an older log is copied then", async () => {
  const first = await openDatabase("many");
  for (let i = 0; i < 70; i++) await first.records.add([record(`r${i}`)]);
  expect(pages.pieces("many")).toBe(70);
  await openDatabase("many");
  await vi.waitFor(() => expect(pages.pieces("many")).toBe(1));
  pages.folders.clear();
  await openDatabase("many");
  await vi.waitFor(() => expect(pages.pieces("many")).toBe(1));
  expect((await ids(await afterTheLoss("many"))).length).toBe(70);
});
