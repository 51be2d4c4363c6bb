import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import type { Database } from "../database/database.ts";
import { migrate } from "../database/migrate.ts";
import { openSqlite } from "../database/sqlite.ts";
import { callerOf, devicesOf, revoke } from "../shop/devices.ts";
import { epochOf, serverIdOf } from "../shop/epoch.ts";
import { addRecords, readPage } from "../shop/log.ts";
import { invite, openShop, type Paired, pair, setupCode } from "../shop/pairing.ts";
import { addPiece } from "../shop/uploads.ts";
import { blob } from "../test-blobs.ts";
import { arriving } from "../test-records.ts";
import { readBackup } from "./read-backup.ts";
import { writeBackup } from "./write-backup.ts";

const NOW = 1_780_000_000_000;
const ALL = { all: true } as const;
/** Records of the first shop that `fill` leaves. */
const FILLED = 6;
const WHOLE = arriving("jo", { kind: "customer-described", body: { customer: "jo", name: "Jo Ferrant" } });

function got<T>(outcome: { ok: true; value: T } | { ok: false; detail: string }): T {
  if (!outcome.ok) throw new RangeError(outcome.detail);
  return outcome.value;
}

/** All rows that a backup is to keep, in an order of their own. */
async function everything(on: Database): Promise<object> {
  const ask = (text: string) => on.all(text);
  const blobs = await on.all<{ shop: string; hash: string; upload: string }>(
    "SELECT shop, hash, upload, size, type, created_at FROM blob ORDER BY shop, hash",
  );
  const bytes = [];
  for (const { hash, upload } of blobs) {
    const pieces = await on.all<{ bytes: Uint8Array }>(
      "SELECT bytes FROM piece WHERE upload = ? ORDER BY place",
      [upload],
    );
    bytes.push([hash, Buffer.concat(pieces.map((piece) => piece.bytes)).toString("base64")]);
  }
  return {
    shops: await ask("SELECT id, name, created_at FROM shop ORDER BY id"),
    records: await ask("SELECT shop, id, kind, bike, target, hash, line FROM record ORDER BY shop, seq"),
    people: await ask("SELECT * FROM person ORDER BY shop, id"),
    bikes: await ask("SELECT * FROM person_bike ORDER BY shop, person, bike"),
    devices: await ask("SELECT * FROM device ORDER BY id"),
    uses: await ask("SELECT * FROM blob_use ORDER BY shop, hash, record"),
    blobs: blobs.map(({ upload: _, ...row }) => row),
    bytes,
  };
}

/** Two shops with people, strikes before what they strike, an erased person, pictures, a revoked device, an upload cut off. */
async function fill(on: Database): Promise<{ readonly owner: Paired; readonly shop: string }> {
  const opened = async (shop: string) => {
    const code = await setupCode(on, NOW);
    return got(await openShop(on, { code, shop, person: "Mara", device: "bench" }, NOW));
  };
  const [owner, other] = [await opened("Tarn End"), await opened("Elsewhere")];
  const { shop } = owner;
  const rider = { name: "Jo Ø", role: "rider", bikes: ["bramble", "heron"] } as const;
  const { code } = got(await invite(on, shop, rider, NOW));
  const phone = got(await pair(on, { code, device: "phone" }, NOW + 1));
  await revoke(on, shop, phone.device, NOW + 2);
  const picture = blob(700_001);
  await addRecords(on, shop, [
    arriving("strike", { kind: "record-struck", body: { record: "late" } }),
    arriving("seen", { bike: "bramble", body: { photo: picture.hash, text: 'ünï\u2028 "quoted"' } }),
  ]);
  await addRecords(on, shop, [arriving("late", { bike: "heron" }), arriving("last")]);
  await addRecords(on, shop, [WHOLE]);
  await addRecords(on, shop, [arriving("erase", { kind: "person-erased", body: { customer: "jo" } })]);
  await addRecords(on, other.shop, [arriving("seen", { text: "of the other shop" })]);
  const wanted = { shop, device: owner.device, hash: picture.hash, size: 700_001, type: "image/jpeg" };
  await addPiece(on, wanted, 0, picture.bytes.slice(0, 500_000), NOW);
  await addPiece(on, wanted, 500_000, picture.bytes.slice(500_000), NOW);
  const cut = { ...wanted, hash: blob(10).hash, size: 10 };
  await addPiece(on, cut, 0, blob(10).bytes.slice(0, 4), NOW);
  return { owner, shop };
}

/** What a backup of a database of one kind must hold, and that it goes into either. Who opens them closes them. */
export function backupContract(open: () => Promise<Database>): void {
  const folder = mkdtempSync(join(tmpdir(), "jetwright-backup-"));
  let number = 0;
  const fresh = () => join(folder, `b${++number}`);
  const sqlite = async () => {
    const on = openSqlite(":memory:");
    await migrate(on);
    return on;
  };
  let from: Database;
  let shop: string;
  let owner: Paired;
  let written: string;
  beforeAll(async () => {
    from = await open();
    ({ shop, owner } = await fill(from));
    written = fresh();
    got(await writeBackup(from, written, NOW));
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  test.each([
    ["its own kind", () => open()],
    ["SQLite", sqlite],
  ] as const)("put back into %s it is all there", async (_kind, target) => {
    const to = await target();
    await setupCode(to, NOW);
    const cursor = (await readPage(from, shop, ALL, "")).cursor;
    const manifest = got(await readBackup(to, written));
    const held = manifest.shops.map(({ id, records, blobs }) => [id === shop, records, blobs]);
    expect(held.toSorted().toReversed()).toEqual([
      [true, FILLED, 1],
      [false, 1, 0],
    ]);
    expect(await everything(to)).toEqual(await everything(from));
    expect(JSON.stringify(await everything(to))).not.toContain("Jo Ferrant");
    expect(await addRecords(to, shop, [WHOLE])).toEqual(["known"]);
    expect(await serverIdOf(to)).toBe(await serverIdOf(from));
    expect(await epochOf(to)).not.toBe(await epochOf(from));
    expect(await to.all("SELECT * FROM pairing")).toEqual([]);
    expect(await callerOf(to, owner.token, NOW)).toMatchObject({ shop, role: "owner" });
    expect((await devicesOf(to, shop)).map(({ revoked }) => revoked)).toEqual([false, true]);
    expect((await readPage(to, shop, ALL, cursor)).restart).toBe("epoch");
    // The strike that came early is behind what it strikes, as it was.
    const seen = (await readPage(to, shop, { all: false, bikes: ["heron"] }, "")).lines;
    expect(seen).toEqual((await readPage(from, shop, { all: false, bikes: ["heron"] }, "")).lines);
    expect(seen).toHaveLength(2);
  });

  test("the log in it is a log, and its files are for this user alone", async () => {
    const log = readFileSync(join(written, shop, "log.jsonl"), "utf8")
      .trimEnd()
      .split("\n");
    expect(log).toEqual((await readPage(from, shop, ALL, "")).lines);
    expect(readFileSync(join(written, shop, "devices.jsonl"), "utf8")).not.toContain(owner.token);
  });

  describe("is refused, and nothing is put back,", () => {
    const flip = (path: string) => {
      const bytes = readFileSync(path);
      bytes[bytes.length >> 1]! ^= 1;
      writeFileSync(path, bytes);
    };
    test.each([
      ["when a record was changed", (at: string) => flip(join(at, shop, "log.jsonl"))],
      ["when a picture was changed", (at: string) => flip(join(at, shop, "blobs", blob(700_001).hash))],
      ["when a picture is gone", (at: string) => rmSync(join(at, shop, "blobs", blob(700_001).hash))],
      ["when the log is gone", (at: string) => rmSync(join(at, shop, "log.jsonl"))],
      ["when the people were changed", (at: string) => flip(join(at, shop, "people.jsonl"))],
      ["when it was cut off", (at: string) => rmSync(join(at, "backup.json"))],
      ["when it is no backup", (at: string) => writeFileSync(join(at, "backup.json"), "[]")],
      [
        "when a newer version wrote it",
        (at: string) => {
          const text = readFileSync(join(at, "backup.json"), "utf8");
          writeFileSync(join(at, "backup.json"), text.replace('"version": 1', '"version": 2'));
        },
      ],
    ] as const)("%s", async (what, change) => {
      const at = fresh();
      got(await writeBackup(from, at, NOW));
      change(at);
      const to = await sqlite();
      const read = await readBackup(to, at);
      const reason = what.includes("newer")
        ? "newer-backup"
        : what.includes("it ")
          ? "not-a-backup"
          : "damaged-backup";
      expect(read).toMatchObject({ ok: false, reason });
      expect(await to.all("SELECT id FROM shop")).toEqual([]);
      expect(await to.all("SELECT upload FROM piece")).toEqual([]);
      expect((await readBackup(to, written)).ok).toBe(true);
      await to.close();
    });
  });

  test("goes neither over another backup nor into tables with a shop", async () => {
    expect(await writeBackup(from, written, NOW)).toMatchObject({ ok: false, reason: "not-empty" });
    const before = await everything(from);
    expect(await readBackup(from, written)).toMatchObject({ ok: false, reason: "not-empty" });
    expect(await everything(from)).toEqual(before);
  });

  test("made while devices send, it holds what stood at one moment", async () => {
    const on = await open();
    const mine = (await fill(on)).shop;
    let sending = true;
    let last = 0;
    const send = (async () => {
      for (; sending; last++) {
        await addRecords(
          on,
          mine,
          Array.from({ length: 7 }, (_, i) => arriving(`n${last}-${i}`)),
        );
        await new Promise(setImmediate);
      }
    })();
    const counts: number[] = [];
    for (let i = 0; i < 4; i++) {
      const at = fresh();
      const { shops } = got(await writeBackup(on, at, NOW));
      const to = await sqlite();
      got(await readBackup(to, at));
      const ids = (
        await to.all<{ id: string }>("SELECT id FROM record WHERE shop = ? ORDER BY seq", [mine])
      ).map(({ id }) => id);
      // Whole batches, and none missing before the last one.
      const count = shops.find(({ id }) => id === mine)!.records - FILLED;
      expect(count % 7).toBe(0);
      expect(ids.slice(FILLED)).toEqual(
        Array.from({ length: count }, (_, n) => `n${Math.floor(n / 7)}-${n % 7}`),
      );
      counts.push(count);
      await to.close();
    }
    sending = false;
    await send;
    expect(counts).toEqual([...counts].sort((a, b) => a - b));
  });
}
