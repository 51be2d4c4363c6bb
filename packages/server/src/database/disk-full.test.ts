import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { addRecords, readPage } from "../shop/log.ts";
import { arriving } from "../test-records.ts";
import { DatabaseTrouble } from "./database.ts";
import { migrate } from "./migrate.ts";
import { openSqlite } from "./sqlite.ts";

// A full disk is played by SQLite's own limit of pages: it fails with the same code, at the same place.

test("a full disk refuses what it cannot keep, loses nothing it kept, and goes on when there is room", async () => {
  const folder = mkdtempSync(join(tmpdir(), "jetwright-full-"));
  const database = openSqlite(join(folder, "log.sqlite"));
  await migrate(database);
  await database.run("INSERT INTO shop (id, name, last_seq, created_at) VALUES ('s', 'x', 0, 0)");
  const limit = (pages: number) =>
    database.transaction((sql) => sql.all(`PRAGMA max_page_count = ${pages}`)).then(() => undefined);
  await limit(60);
  const kept: string[] = [];
  let trouble: unknown = null;
  for (let i = 0; trouble === null && i < 1000; i++) {
    const batch = Array.from({ length: 5 }, (_, n) => arriving(`r${i}-${n}`, { text: "x".repeat(400) }));
    try {
      await addRecords(database, "s", batch);
      kept.push(...batch.map(({ line }) => line));
    } catch (error) {
      trouble = error;
    }
  }
  expect(trouble).toBeInstanceOf(DatabaseTrouble);
  expect((trouble as DatabaseTrouble).trouble).toBe("full");
  expect(kept.length).toBeGreaterThan(20);
  const read = async () => (await readPage(database, "s", { all: true }, "")).lines;
  expect(await read()).toEqual(kept);
  await limit(1000);
  const later = arriving("later");
  expect(await addRecords(database, "s", [later])).toEqual(["added"]);
  expect(await read()).toEqual([...kept, later.line]);
  await database.close();
  rmSync(folder, { recursive: true, force: true });
});
