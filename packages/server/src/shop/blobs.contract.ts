import { beforeAll, describe, expect, test } from "vitest";
import type { Database } from "../database/database.ts";
import { blob, sha256 } from "../test-blobs.ts";
import { arriving } from "../test-records.ts";
import { blobOf, isNamed, piecesOf } from "./blobs.ts";
import { addRecords } from "./log.ts";
import { sweepRemoved } from "./removed-blobs.ts";
import { addPiece, progressOf, type Wanted } from "./uploads.ts";
import { wantedBlobs } from "./wanted-blobs.ts";

const NOW = 1_780_000_000_000;
const DAY = 86_400_000;

/** What a database must do with pictures and clips. */
export function blobContract(open: () => Promise<{ on: Database; shop: string }>): void {
  let on: Database;
  let shop: string;
  beforeAll(async () => {
    ({ on, shop } = await open());
  });

  const wanted = (hash: string, size: number, device = "phone"): Wanted => ({
    shop,
    device,
    hash,
    size,
    type: "image/jpeg",
  });
  /** Adds a piece of what a record names. */
  async function add(who: Wanted, offset: number, bytes: Uint8Array, now = NOW, most?: number) {
    await addRecords(on, who.shop, [
      arriving(`names-${who.hash.slice(0, 40)}`, { body: { photo: who.hash } }),
    ]);
    return addPiece(on, who, offset, bytes, now, most);
  }
  const bytesOf = async (hash: string): Promise<Uint8Array | null> => {
    const found = await blobOf(on, shop, hash);
    if (found === null) return null;
    const pieces: Uint8Array[] = [];
    for await (const piece of piecesOf(on, found.upload, found.size)) pieces.push(piece);
    return new Uint8Array(Buffer.concat(pieces));
  };
  const piecesLeft = async () => (await on.all("SELECT upload FROM piece")).length;

  describe("sending", () => {
    test("goes on where it was cut off, and is whole at the end", async () => {
      const { bytes, hash } = blob(5000, 11);
      const who = wanted(hash, 5000);
      expect(await progressOf(on, who)).toEqual({ arrived: 0, whole: false });
      expect(await add(who, 0, bytes.slice(0, 1999))).toEqual({
        ok: true,
        value: { arrived: 1999, whole: false },
      });
      expect(await progressOf(on, who)).toEqual({ arrived: 1999, whole: false });
      expect(await blobOf(on, shop, hash)).toBeNull();
      // The same piece again, and one with a gap before it.
      for (const offset of [0, 1998, 2000]) {
        expect(await add(who, offset, bytes.slice(offset, offset + 500))).toMatchObject({
          reason: "wrong-offset",
        });
      }
      expect(await add(who, 1999, bytes.slice(1999))).toEqual({
        ok: true,
        value: { arrived: 5000, whole: true },
      });
      expect(await bytesOf(hash)).toEqual(bytes);
      expect(await on.all("SELECT id FROM upload")).toEqual([]);
      expect(await add(who, 0, bytes)).toEqual({ ok: true, value: { arrived: 5000, whole: true } });
    });

    test("what is not what its fingerprint says is thrown away, and can be sent anew", async () => {
      const { bytes, hash } = blob(1000, 12);
      const before = await piecesLeft();
      const wrong = Uint8Array.from(bytes, (byte, i) => (i === 700 ? byte ^ 1 : byte));
      await add(wanted(hash, 1000), 0, wrong.slice(0, 600));
      expect(await add(wanted(hash, 1000), 600, wrong.slice(600))).toMatchObject({ reason: "other-content" });
      expect(await piecesLeft()).toBe(before);
      expect(await progressOf(on, wanted(hash, 1000))).toEqual({ arrived: 0, whole: false });
      expect(await add(wanted(hash, 1000), 0, bytes)).toMatchObject({ value: { whole: true } });
      expect(await bytesOf(hash)).toEqual(bytes);
    });

    test("more bytes than were announced are refused, and another length begins anew", async () => {
      const { bytes, hash } = blob(900, 13);
      expect(await add(wanted(hash, 800), 0, bytes)).toMatchObject({ reason: "wrong-offset" });
      await add(wanted(hash, 800), 0, bytes.slice(0, 100));
      expect(await add(wanted(hash, 900), 100, bytes.slice(100))).toMatchObject({ reason: "wrong-offset" });
      expect(await add(wanted(hash, 900), 0, bytes)).toMatchObject({ value: { whole: true } });
    });

    test("two devices with the same picture do not mix their pieces, and it is kept once", async () => {
      const { bytes, hash } = blob(600, 14);
      const before = await piecesLeft();
      await add(wanted(hash, 600, "one"), 0, bytes.slice(0, 400));
      expect(await progressOf(on, wanted(hash, 600, "two"))).toEqual({ arrived: 0, whole: false });
      await add(wanted(hash, 600, "two"), 0, bytes.slice(0, 300));
      const ends = await Promise.all([
        add(wanted(hash, 600, "one"), 400, bytes.slice(400)),
        add(wanted(hash, 600, "two"), 300, bytes.slice(300)),
      ]);
      expect(ends.map((end) => end.ok && end.value.whole)).toEqual([true, true]);
      expect(await bytesOf(hash)).toEqual(bytes);
      expect(await piecesLeft()).toBe(before + 2);
    });

    test("the same piece from two requests at once counts once", async () => {
      const { bytes, hash } = blob(400, 15);
      const both = await Promise.all([0, 1].map(() => add(wanted(hash, 400), 0, bytes.slice(0, 250))));
      expect(both.map((one) => (one.ok ? "taken" : one.reason)).sort()).toEqual(["taken", "wrong-offset"]);
      expect(await add(wanted(hash, 400), 250, bytes.slice(250))).toMatchObject({ value: { whole: true } });
      expect(sha256((await bytesOf(hash))!)).toBe(hash);
    });
  });

  test("a shop has so much room; what is on its way counts, and old beginnings make room", async () => {
    const room = (await open()).shop;
    const of = (number: number, device = "phone"): Wanted => ({
      ...wanted(blob(100, number).hash, 100, device),
      shop: room,
    });
    const send = (who: Wanted, number: number, now: number, to = 100) =>
      add(who, 0, blob(100, number).bytes.slice(0, to), now, 250);
    expect(await send(of(21), 21, NOW)).toMatchObject({ value: { whole: true } });
    expect(await send(of(22), 22, NOW, 50)).toMatchObject({ value: { arrived: 50 } });
    expect(await send(of(23, "other"), 23, NOW)).toMatchObject({ reason: "shop-full" });
    expect(await send(of(23, "other"), 23, NOW + 6 * DAY)).toMatchObject({ reason: "shop-full" });
    expect(await send(of(23, "other"), 23, NOW + 8 * DAY)).toMatchObject({ value: { whole: true } });
    expect(await progressOf(on, of(22))).toEqual({ arrived: 0, whole: false });
  });

  test("a device that begins many uploads loses the oldest beginnings, nobody else's", async () => {
    await add(wanted(blob(100, 30).hash, 100, "other"), 0, blob(100, 30).bytes.slice(0, 1));
    for (let i = 31; i < 41; i++) {
      await add(wanted(blob(100, i).hash, 100, "many"), 0, blob(100, i).bytes.slice(0, 1), NOW + i);
    }
    const arrived = async (i: number, device: string) =>
      (await progressOf(on, wanted(blob(100, i).hash, 100, device))).arrived;
    expect(await Promise.all([32, 33, 40].map((i) => arrived(i, "many")))).toEqual([0, 1, 1]);
    expect(await arrived(30, "other")).toBe(1);
  });

  test("only what a record names that the caller sees is his to see", async () => {
    const { hash } = blob(10, 50);
    const all = { all: true } as const;
    const rider = (bike: string) => ({ all: false, bikes: [bike] }) as const;
    expect(await isNamed(on, shop, all, hash)).toBe(false);
    await addRecords(on, shop, [arriving("names-it", { bike: "bramble", body: { photo: hash } })]);
    expect(await isNamed(on, shop, all, hash)).toBe(true);
    expect(await isNamed(on, shop, rider("bramble"), hash)).toBe(true);
    expect(await isNamed(on, shop, rider("heron"), hash)).toBe(false);
    expect(await isNamed(on, (await open()).shop, all, hash)).toBe(false);
    const nobodys = blob(10, 51);
    expect(await addPiece(on, wanted(nobodys.hash, 10), 0, nobodys.bytes, NOW)).toMatchObject({
      reason: "not-named",
    });
    expect(await progressOf(on, wanted(nobodys.hash, 10))).toEqual({ arrived: 0, whole: false });
  });

  test("what is wanted is what counts, is not here, and the caller sees", async () => {
    const mine = (await open()).shop;
    const names = (id: string, bike: string, number: number) =>
      arriving(id, { bike, body: { photo: blob(100, number).hash } });
    const strike = (id: string, record: string) => arriving(id, { kind: "record-struck", body: { record } });
    await addRecords(on, mine, [
      ...[names("a", "bramble", 71), names("b", "heron", 72), names("c", "bramble", 73)],
      ...[names("here", "bramble", 74), names("again", "bramble", 71), strike("s", "c")],
    ]);
    const { bytes, hash } = blob(100, 74);
    await addPiece(on, { ...wanted(hash, 100), shop: mine }, 0, bytes, NOW);
    const hashes = (...numbers: number[]) => numbers.map((number) => blob(100, number).hash).sort();
    const rider = { all: false, bikes: ["bramble"] } as const;
    expect(await wantedBlobs(on, mine, { all: true })).toEqual(hashes(71, 72));
    expect(await wantedBlobs(on, mine, rider)).toEqual(hashes(71));
    await addRecords(on, mine, [strike("s2", "s")]);
    expect(await wantedBlobs(on, mine, rider)).toEqual(hashes(71, 73));
    expect(await wantedBlobs(on, (await open()).shop, { all: true })).toEqual([]);
  });

  test("a picture that was removed is deleted after a month, one that is named or had back is not", async () => {
    const mine = (await open()).shop;
    const strike = (id: string, record: string) =>
      arriving(id, { kind: "record-struck", bike: "bramble", body: { record } });
    const names = (id: string, number: number) =>
      arriving(id, { bike: "bramble", body: { photo: blob(100, number).hash } });
    const numbers = [61, 62, 63, 64];
    await addRecords(on, mine, [
      ...[
        names("gone", 61),
        names("back", 62),
        names("twice-a", 63),
        names("twice-b", 63),
        names("fine", 64),
      ],
      ...[strike("s1", "gone"), strike("s2", "back"), strike("s3", "s2"), strike("s4", "twice-a")],
    ]);
    for (const number of numbers) {
      const { bytes, hash } = blob(100, number);
      await addPiece(on, { ...wanted(hash, 100), shop: mine }, 0, bytes, NOW);
    }
    const there = async () =>
      Promise.all(numbers.map(async (number) => (await blobOf(on, mine, blob(100, number).hash)) !== null));
    await sweepRemoved(on, NOW);
    await sweepRemoved(on, NOW + 29 * DAY);
    expect(await there()).toEqual([true, true, true, true]);
    await addRecords(on, mine, [strike("s5", "fine")]);
    await sweepRemoved(on, NOW + 30 * DAY);
    expect(await there()).toEqual([false, true, true, true]);
    expect(await on.all("SELECT key FROM meta WHERE key LIKE 'unnamed%'")).toHaveLength(1);
    // Had back within its month, and removed once more: the month begins anew.
    await addRecords(on, mine, [strike("s6", "s5")]);
    await sweepRemoved(on, NOW + 50 * DAY);
    await addRecords(on, mine, [strike("s7", "fine")]);
    await sweepRemoved(on, NOW + 61 * DAY);
    expect(await there()).toEqual([false, true, true, true]);
    await sweepRemoved(on, NOW + 91 * DAY);
    expect(await there()).toEqual([false, true, true, false]);
    expect(
      await on.all(
        "SELECT place FROM piece WHERE upload NOT IN (SELECT upload FROM blob) AND upload NOT IN (SELECT id FROM upload)",
      ),
    ).toEqual([]);
  });
}
