import { spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { addRecords, readPage } from "../shop/log.ts";
import { arriving } from "../test-records.ts";
import { type Database, DatabaseTrouble } from "./database.ts";
import { migrate } from "./migrate.ts";
import { openSqlite } from "./sqlite.ts";

const folder = mkdtempSync(join(tmpdir(), "jetwright-full-"));
const disk = join(folder, "disk");

/** A disk in memory of 4 MB, where this machine lets us have one. */
function mountSmallDisk(): boolean {
  mkdirSync(disk);
  const mounted = spawnSync("mount", ["-t", "tmpfs", "-o", "size=4m", "tmpfs", disk]);
  if (mounted.status === 0) return true;
  console.warn(
    "No small disk can be mounted here, so a full one is played by SQLite's limit of pages alone.",
  );
  return false;
}

const mounted = mountSmallDisk();
afterAll(() => {
  if (mounted) spawnSync("umount", [disk]);
  rmSync(folder, { recursive: true, force: true });
});

async function shopOn(path: string): Promise<Database> {
  const database = openSqlite(path);
  await migrate(database);
  await database.run("INSERT INTO shop (id, name, last_seq, created_at) VALUES ('s', 'x', 0, 0)");
  return database;
}

/** Adds batches until one is refused; gives what was kept, and why no more was. */
async function fill(database: Database): Promise<{ readonly kept: string[]; readonly trouble: unknown }> {
  const kept: string[] = [];
  for (let i = 0; i < 5000; i++) {
    const batch = Array.from({ length: 5 }, (_, n) => arriving(`r${i}-${n}`, { text: "x".repeat(400) }));
    try {
      await addRecords(database, "s", batch);
    } catch (trouble) {
      return { kept, trouble };
    }
    kept.push(...batch.map(({ line }) => line));
  }
  return { kept, trouble: null };
}

const read = async (database: Database): Promise<readonly string[]> =>
  (await readPage(database, "s", { all: true }, "", 1e6)).lines;

async function goesOn(database: Database, makeRoom: () => Promise<void>): Promise<void> {
  const { kept, trouble } = await fill(database);
  expect(trouble).toBeInstanceOf(DatabaseTrouble);
  expect((trouble as DatabaseTrouble).trouble).toBe("full");
  expect(kept.length).toBeGreaterThan(20);
  expect(await read(database)).toEqual(kept);
  await makeRoom();
  const later = arriving("later");
  expect(await addRecords(database, "s", [later])).toEqual(["added"]);
  expect(await read(database)).toEqual([...kept, later.line]);
}

test("a disk that is full by SQLite's own limit refuses what it cannot keep, and goes on when there is room", async () => {
  const database = await shopOn(join(folder, "log.sqlite"));
  const limit = async (pages: number) => {
    await database.transaction((sql) => sql.all(`PRAGMA max_page_count = ${pages}`));
  };
  await limit(60);
  await goesOn(database, () => limit(1000));
  await database.close();
});

test.skipIf(!mounted)(
  "so does a disk that is really full, and what it kept is there when it is opened again",
  async () => {
    const filler = join(disk, "filler");
    writeFileSync(filler, new Uint8Array(2_500_000));
    const path = join(disk, "log.sqlite");
    const database = await shopOn(path);
    await goesOn(database, async () => rmSync(filler));
    const before = await read(database);
    // Full once more, and the process ends there: another connection finds what was kept.
    const { kept, trouble } = await fill(database);
    expect((trouble as DatabaseTrouble).trouble).toBe("full");
    const again = openSqlite(path);
    expect(await read(again)).toEqual([...before, ...kept.filter((line) => !before.includes(line))]);
    await again.close();
    await database.close();
  },
);
