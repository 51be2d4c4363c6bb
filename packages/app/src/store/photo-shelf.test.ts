import "fake-indexeddb/auto";
import { beforeEach, expect, test } from "vitest";
import { type Database, openDatabase } from "./database.ts";

// A browser's own database, by a second implementation of it that keeps everything in memory.

const DAY = 24 * 3_600_000;
let database: Database;
let shelves = 0;

beforeEach(async () => {
  database = await openDatabase(`photos${++shelves}`);
});

/** Letters as bytes of a picture. */
const picture = (letters: string): Blob => new Blob([letters], { type: "image/jpeg" });
// SHA-256 of "abc": FIPS 180-4's worked example, from memory.
const ABC = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";

test("a picture is found under the SHA-256 of its bytes, and comes back as it was", async () => {
  const { photos } = database;
  expect(await photos.has(ABC)).toBe(false);
  expect(await photos.get(ABC)).toBeUndefined();
  expect(await photos.put(picture("abc"))).toBe(ABC);
  expect(await photos.put(picture("abc"))).toBe(ABC);
  expect(await photos.has(ABC)).toBe(true);
  expect(await (await photos.get(ABC))!.text()).toBe("abc");
  await photos.put(picture("defgh"));
  expect((await photos.held()).map(({ bytes }) => bytes).sort()).toEqual([3, 5]);
});

test("goes a day after the last name is gone, and no named one with it", async () => {
  const { photos } = database;
  await photos.put(picture("abc"));
  const other = await photos.put(picture("def"));
  const named = { hashes: [other], records: 0 };
  expect(await photos.sweep(named, 0)).toBe(0);
  expect(await photos.sweep(named, DAY - 1)).toBe(0);
  expect(await photos.has(ABC)).toBe(true);
  expect(await photos.sweep(named, DAY)).toBe(1);
  expect((await photos.held()).map(({ hash }) => hash)).toEqual([other]);
});

test("stays while the log has gone on, work half done names it, or it was kept anew", async () => {
  const { photos, records, settings } = database;
  await photos.put(picture("abc"));
  const nothing = { hashes: [], records: 0 };
  await photos.sweep(nothing, 0);

  await records.add([{ id: "r1", line: "{}" }]);
  expect(await photos.sweep(nothing, 2 * DAY)).toBe(0);

  const now = { hashes: [], records: 1 };
  await settings.put({ key: "change:b", value: { photos: [{ hash: ABC }] } });
  expect(await photos.sweep(now, 2 * DAY)).toBe(0);
  await settings.delete("change:b");
  expect(await photos.sweep(now, 2 * DAY)).toBe(0);

  await photos.put(picture("abc"));
  expect(await photos.sweep(now, 3 * DAY)).toBe(0);
  expect(await photos.sweep(now, 4 * DAY)).toBe(1);
});
