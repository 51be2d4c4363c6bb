import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { backupContract } from "../backup/backup.contract.ts";
import type { Database } from "../database/database.ts";
import { migrate } from "../database/migrate.ts";
import { migrationContract } from "../database/migrations.contract.ts";
import { openPostgres } from "../database/postgres.ts";
import { openSqlite } from "../database/sqlite.ts";
import { followingContract } from "../run/follow-others.contract.ts";
import { startTestPostgres, type TestPostgres } from "../test-postgres.ts";
import { arriving, lineOf } from "../test-records.ts";
import { blobContract } from "./blobs.contract.ts";
import { callerOf, devicesOf, revoke } from "./devices.ts";
import { beginEpoch } from "./epoch.ts";
import { erasingContract } from "./erasing.contract.ts";
import { addRecords, readPage } from "./log.ts";
import { invite, openShop, pair, setupCode } from "./pairing.ts";
import { PushQueue } from "./push-queue.ts";
import type { Scope } from "./scope.ts";

// What both databases must do alike: one suite, run on each.

const ALL: Scope = { all: true };
const NOW = 1_780_000_000_000;
const folder = mkdtempSync(join(tmpdir(), "jetwright-contract-"));
const postgres: TestPostgres | null = await startTestPostgres();
const open: Database[] = [];
let files = 0;

const KINDS = [
  { name: "sqlite", fresh: () => openSqlite(join(folder, `${++files}.db`)) },
  ...(postgres === null
    ? []
    : [{ name: "postgres", fresh: () => openPostgres(postgres.freshUrl(), { connections: 20 }) }]),
];

function empty(fresh: () => Database): Database {
  const opened = fresh();
  open.push(opened);
  return opened;
}

async function database(fresh: () => Database): Promise<Database> {
  const opened = empty(fresh);
  await migrate(opened);
  return opened;
}

async function shopIn(on: Database, name = "Tarn End"): Promise<string> {
  const code = await setupCode(on, NOW);
  const paired = await openShop(on, { code, shop: name, person: "Mara", device: "bench" }, NOW);
  if (!paired.ok) throw new RangeError(paired.detail);
  return paired.value.shop;
}

/** Everything after a cursor, page by page. */
async function readAll(on: Database, shop: string, scope = ALL, cursor = "", most?: number) {
  const lines: string[] = [];
  let at = cursor;
  for (let more = true; more; ) {
    const page = await readPage(on, shop, scope, at, most);
    lines.push(...page.lines);
    at = page.cursor;
    more = page.more;
  }
  return { lines, cursor: at };
}

afterAll(async () => {
  for (const one of open) await one.close();
  await postgres?.remove();
  rmSync(folder, { recursive: true, force: true });
});

describe.each(KINDS)("the log on $name", ({ fresh }) => {
  let on: Database;
  let shop: string;
  beforeAll(async () => {
    on = await database(fresh);
    shop = await shopIn(on);
  });

  test("migrating again changes nothing, and newer tables are refused", async () => {
    expect(await migrate(on)).toEqual([]);
    await expect(migrate(on, [])).rejects.toThrow(RangeError);
  });

  test("a record is added once, known again, and another under its id is a conflict", async () => {
    expect(await addRecords(on, shop, [arriving("a"), arriving("a"), arriving("b")])).toEqual([
      "added",
      "known",
      "added",
    ]);
    expect(
      await addRecords(on, shop, [arriving("a"), arriving("a", { text: "other" }), arriving("c")]),
    ).toEqual(["known", "conflict", "added"]);
    const { lines } = await readAll(on, shop);
    expect(lines).toEqual([lineOf("a"), lineOf("b"), lineOf("c")]);
  });

  test("pages of any size give the same log, and a cursor goes on where it ended", async () => {
    const mine = await shopIn(on);
    const ids = Array.from({ length: 25 }, (_, i) => `p${i}`);
    await addRecords(
      on,
      mine,
      ids.map((id) => arriving(id)),
    );
    const whole = await readAll(on, mine);
    for (const most of [1, 7, 24, 25, 26]) {
      expect((await readAll(on, mine, ALL, "", most)).lines).toEqual(whole.lines);
    }
    await addRecords(on, mine, [arriving("later")]);
    expect((await readAll(on, mine, ALL, whole.cursor)).lines).toEqual([lineOf("later")]);
  });

  test("shops do not see one another's records, not even under the same id", async () => {
    const [one, two] = [await shopIn(on, "One"), await shopIn(on, "Two")];
    await addRecords(on, one, [arriving("same", { text: "of one" })]);
    expect(await addRecords(on, two, [arriving("same", { text: "of two" })])).toEqual(["added"]);
    expect((await readAll(on, one)).lines).toEqual([lineOf("same", { text: "of one" })]);
    expect((await readAll(on, two)).lines).toEqual([lineOf("same", { text: "of two" })]);
  });

  test("a failure in the middle keeps nothing, and the numbers go on without a gap", async () => {
    const mine = await shopIn(on);
    await expect(
      on.transaction(async (sql) => {
        await sql.run("UPDATE shop SET last_seq = 99 WHERE id = ?", [mine]);
        throw new Error("lost");
      }),
    ).rejects.toThrow("lost");
    await addRecords(on, mine, [arriving("x")]);
    const rows = await on.all<{ seq: number }>("SELECT seq FROM record WHERE shop = ?", [mine]);
    expect(rows).toEqual([{ seq: 1 }]);
  });

  test("a record of an odd kind, or one that strikes what cannot be, is kept like any other", async () => {
    const mine = await shopIn(on);
    const odd = [
      arriving("k", { kind: "no\0te", text: "\0" }),
      ...["\0", "a b", "x".repeat(65)].map((record, i) =>
        arriving(`s${i}`, { kind: "record-struck", body: { record } }),
      ),
    ];
    expect(await addRecords(on, mine, odd)).toEqual(odd.map(() => "added"));
    expect(await addRecords(on, mine, odd)).toEqual(odd.map(() => "known"));
    expect(await readAll(on, mine)).toMatchObject({ lines: odd.map(({ line }) => line) });
  });

  test("a new epoch sends every device back to the beginning", async () => {
    const mine = await shopIn(on);
    await addRecords(on, mine, [arriving("x")]);
    const { cursor } = await readAll(on, mine);
    await on.transaction(beginEpoch);
    const page = await readPage(on, mine, ALL, cursor);
    expect(page).toMatchObject({ restart: "epoch", lines: [lineOf("x")] });
  });

  test("data put back under a cursor is noticed even without a new epoch", async () => {
    const mine = await shopIn(on);
    await addRecords(on, mine, [arriving("x"), arriving("y")]);
    const { cursor } = await readAll(on, mine);
    await on.run("DELETE FROM record WHERE shop = ? AND seq = 2", [mine]);
    await on.run("UPDATE shop SET last_seq = 1 WHERE id = ?", [mine]);
    expect(await readPage(on, mine, ALL, cursor)).toMatchObject({ restart: "epoch", lines: [lineOf("x")] });
    // The same record now stands at that number again, but not by the same arrival, and one more behind it.
    await addRecords(on, mine, [arriving("y"), arriving("w")]);
    const page = await readPage(on, mine, ALL, cursor);
    expect(page.restart).toBe("epoch");
    expect(page.lines).toEqual([lineOf("x"), lineOf("y"), lineOf("w")]);
  });

  test.each(["", "~", "x~y~1~z", "abc~00000000~999999999999999~a", "'; DROP TABLE record; --"])(
    "the odd cursor %j gives the log from its beginning",
    async (cursor) => {
      const page = await readPage(on, shop, ALL, cursor);
      expect(page.restart).toBe(cursor === "" ? null : "epoch");
      expect(page.lines.length).toBeGreaterThan(0);
    },
  );

  test("a rider sees own bikes and shared air, and begins anew when bikes change", async () => {
    const mine = await shopIn(on);
    await addRecords(on, mine, [
      arriving("n1", { bike: "bramble" }),
      arriving("n2", { bike: "heron" }),
      arriving("air", { kind: "air-measured" }),
      arriving("drawer", { kind: "parts-counted" }),
      arriving("loose"),
    ]);
    const rider: Scope = { all: false, bikes: ["bramble"] };
    const { lines, cursor } = await readAll(on, mine, rider);
    expect(lines).toEqual([lineOf("n1", { bike: "bramble" }), lineOf("air", { kind: "air-measured" })]);
    const more: Scope = { all: false, bikes: ["bramble", "heron"] };
    const page = await readPage(on, mine, more, cursor);
    expect(page.restart).toBe("scope");
    expect(page.lines).toContain(lineOf("n2", { bike: "heron" }));
    expect((await readPage(on, mine, { all: false, bikes: [] }, "")).lines).toEqual([
      lineOf("air", { kind: "air-measured" }),
    ]);
  });

  test("a strike reaches the rider, also when it came before what it strikes", async () => {
    const mine = await shopIn(on);
    const rider: Scope = { all: false, bikes: ["bramble"] };
    const strike = (id: string, record: string) => ({
      id,
      said: { kind: "record-struck", body: { record } },
    });
    const [early, late] = [strike("s1", "n1"), strike("s2", "n2")];
    await addRecords(on, mine, [arriving(early.id, early.said)]);
    await addRecords(on, mine, [arriving("n2", { bike: "bramble" }), arriving(late.id, late.said)]);
    const first = await readAll(on, mine, rider);
    expect(first.lines).toEqual([lineOf("n2", { bike: "bramble" }), lineOf(late.id, late.said)]);
    const whole = await readAll(on, mine);
    await addRecords(on, mine, [arriving("n1", { bike: "bramble" })]);
    const then = await readAll(on, mine, rider, first.cursor);
    expect(then.lines).toEqual([lineOf("n1", { bike: "bramble" }), lineOf(early.id, early.said)]);
    // Who sees everything is told again of the strike, and misses nothing.
    expect((await readAll(on, mine, ALL, whole.cursor)).lines).toEqual(then.lines);
  });

  test("many writers and a reader that polls: nothing is skipped, nothing comes twice", async () => {
    const mine = await shopIn(on);
    const [writers, rounds, each] = [16, 25, 10];
    let writing = true;
    const seen: string[] = [];
    const reading = (async () => {
      let cursor = "";
      for (let last = false; !last; ) {
        last = !writing;
        const page = await readPage(on, mine, ALL, cursor);
        expect(page.restart).toBeNull();
        seen.push(...page.lines);
        cursor = page.cursor;
        if (page.more) last = false;
      }
    })();
    await Promise.all(
      Array.from({ length: writers }, async (_, w) => {
        for (let round = 0; round < rounds; round++) {
          const records = Array.from({ length: each }, (_, i) => arriving(`w${w}-${round}-${i}`));
          // Past the queue, so that every writer has a transaction of its own.
          await addRecords(on, mine, records);
        }
      }),
    );
    writing = false;
    await reading;
    expect(seen.length).toBe(writers * rounds * each);
    expect(new Set(seen).size).toBe(seen.length);
  }, 60_000);

  test("the queue tells each sender of its own records", async () => {
    const mine = await shopIn(on);
    const queue = new PushQueue(on);
    await queue.add(mine, [arriving("k")]);
    const answers = await Promise.all([
      queue.add(mine, [arriving("k"), arriving("l")]),
      queue.add(mine, [arriving("k", { text: "other" })]),
      queue.add(mine, []),
      queue.add(mine, [arriving("l"), arriving("m")]),
    ]);
    expect(answers).toEqual([["known", "added"], ["conflict"], [], ["known", "added"]]);
    await expect(queue.add("no-such-shop", [arriving("z")])).rejects.toThrow();
    expect(await queue.add(mine, [arriving("n")])).toEqual(["added"]);
  });
});

describe.each(KINDS)("pictures and clips on $name", ({ fresh }) => {
  let opened: Promise<Database> | null = null;
  blobContract(async () => {
    opened ??= database(fresh);
    const on = await opened;
    return { on, shop: await shopIn(on) };
  });
});

describe.each(KINDS)("erasing on $name", ({ fresh }) => {
  let opened: Promise<Database> | undefined;
  erasingContract(async () => {
    opened ??= database(fresh);
    const on = await opened;
    return { on, shop: await shopIn(on) };
  });
});

describe.each(KINDS)("news of other processes on $name", ({ fresh }) => {
  let opened: Promise<Database> | undefined;
  followingContract(async () => {
    opened ??= database(fresh);
    const on = await opened;
    return { on, shop: await shopIn(on) };
  });
});

describe.each(KINDS)("a backup of $name", ({ fresh }) => backupContract(() => database(fresh)));

describe.each(KINDS)("tables of earlier versions on $name", ({ name, fresh }) =>
  migrationContract(name, () => empty(fresh)),
);

describe.each(KINDS)("people and devices on $name", ({ fresh }) => {
  let on: Database;
  beforeAll(async () => {
    on = await database(fresh);
  });

  test("the first code opens one shop, once, and a newer one ends it", async () => {
    const old = await setupCode(on, NOW);
    const code = await setupCode(on, NOW);
    const wanted = { shop: "Tarn End", person: "Mara", device: "bench" };
    expect(await openShop(on, { code: old, ...wanted }, NOW)).toMatchObject({
      ok: false,
      reason: "bad-code",
    });
    const [one, two] = await Promise.all([
      openShop(on, { code: code.toUpperCase().replaceAll("-", " "), ...wanted }, NOW),
      openShop(on, { code, ...wanted }, NOW),
    ]);
    expect([one.ok, two.ok].filter(Boolean)).toHaveLength(1);
  });

  test("a code pairs one device, within its time, and tells who it is", async () => {
    const shop = await shopIn(on);
    const rider = { name: "Jo", role: "rider", bikes: ["bramble"] } as const;
    const asked = await invite(on, shop, rider, NOW);
    if (!asked.ok) throw new RangeError(asked.detail);
    const { code, expiresAt, person } = asked.value;
    expect(await pair(on, { code, device: "late" }, expiresAt)).toMatchObject({ ok: false });
    const again = await invite(on, shop, { person }, NOW);
    if (!again.ok) throw new RangeError(again.detail);
    const paired = await pair(on, { code: again.value.code, device: "phone" }, expiresAt - 1);
    if (!paired.ok) throw new RangeError(paired.detail);
    expect(await pair(on, { code: again.value.code, device: "thief" }, NOW)).toMatchObject({ ok: false });
    const caller = await callerOf(on, paired.value.token, NOW);
    expect(caller).toMatchObject({
      shop,
      personName: "Jo",
      role: "rider",
      scope: { all: false, bikes: ["bramble"] },
    });
  });

  test("a pairing code opens no shop, and a first code pairs nothing", async () => {
    const shop = await shopIn(on);
    const asked = await invite(on, shop, { name: "Kit", role: "technician", bikes: [] }, NOW);
    if (!asked.ok) throw new RangeError(asked.detail);
    const code = asked.value.code;
    expect((await openShop(on, { code, shop: "x", person: "x", device: "x" }, NOW)).ok).toBe(false);
    expect((await pair(on, { code: await setupCode(on, NOW), device: "x" }, NOW)).ok).toBe(false);
  });

  test("a revoked device is out at once; only its own shop can do it", async () => {
    const [shop, other] = [await shopIn(on), await shopIn(on)];
    const asked = await invite(on, shop, { name: "Kit", role: "technician", bikes: [] }, NOW);
    if (!asked.ok) throw new RangeError(asked.detail);
    const paired = await pair(on, { code: asked.value.code, device: "phone" }, NOW);
    if (!paired.ok) throw new RangeError(paired.detail);
    const { token, device } = paired.value;
    expect(await revoke(on, other, device, NOW)).toBe(false);
    expect(await callerOf(on, token, NOW)).not.toBeNull();
    expect(await revoke(on, shop, device, NOW)).toBe(true);
    expect(await callerOf(on, token, NOW)).toBeNull();
    expect((await devicesOf(on, shop)).find(({ id }) => id === device)).toMatchObject({ revoked: true });
  });

  test("no token and no code is stored as it was told", async () => {
    const shop = await shopIn(on);
    const asked = await invite(on, shop, { name: "Kit", role: "technician", bikes: [] }, NOW);
    if (!asked.ok) throw new RangeError(asked.detail);
    const paired = await pair(on, { code: asked.value.code, device: "phone" }, NOW);
    if (!paired.ok) throw new RangeError(paired.detail);
    const waiting = await invite(on, shop, { person: paired.value.person }, NOW);
    if (!waiting.ok) throw new RangeError(waiting.detail);
    const everything = JSON.stringify([
      await on.all("SELECT * FROM device"),
      await on.all("SELECT * FROM pairing"),
    ]);
    expect(everything).not.toContain(paired.value.token);
    expect(everything).not.toContain(waiting.value.code.replaceAll("-", ""));
    // 32 bytes in base64 without padding.
    expect(paired.value.token).toMatch(/^[A-Za-z0-9_-]{43}$/);
  });
});
