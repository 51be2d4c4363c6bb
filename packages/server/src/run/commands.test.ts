import { existsSync, mkdirSync, mkdtempSync, rmSync, statSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, expect, test } from "vitest";
import { migrate } from "../database/migrate.ts";
import { openSqlite } from "../database/sqlite.ts";
import { epochOf, serverIdOf } from "../shop/epoch.ts";
import { addRecords, readPage } from "../shop/log.ts";
import { arriving } from "../test-records.ts";
import { runServerCommand } from "./commands.ts";
import { LOG_FILE } from "./open-database.ts";

const folder = mkdtempSync(join(tmpdir(), "jetwright-commands-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));
const at = (name: string) => join(folder, name);

async function run(...argv: string[]) {
  let [out, error] = ["", ""];
  const code = await runServerCommand(argv, {
    env: {},
    out: (text) => {
      out += text;
    },
    error: (text) => {
      error += text;
    },
  });
  return { code, out, error };
}

/** A data folder with a shop "s" that goes on being written to until it is told to stop. */
async function busyShop(name: string) {
  const data = at(name);
  mkdirSync(data);
  const on = openSqlite(join(data, LOG_FILE));
  await migrate(on);
  await on.run("INSERT INTO shop (id, name, last_seq, created_at) VALUES ('s', 'Tarn End', 0, 0)");
  // A server that has started has both already.
  await Promise.all([epochOf(on), serverIdOf(on)]);
  await addRecords(on, "s", [arriving("first")]);
  let writing = true;
  const work = (async () => {
    for (let n = 0; writing; n++) {
      await addRecords(on, "s", [arriving(`n${n}-a`), arriving(`n${n}-b`)]);
      await new Promise(setImmediate);
    }
  })();
  const stop = async () => {
    writing = false;
    await work;
    await on.close();
  };
  return { data, stop };
}

async function read(data: string) {
  const on = openSqlite(join(data, LOG_FILE));
  const { lines } = await readPage(on, "s", { all: true }, "", 1e6);
  const epoch = await epochOf(on);
  await on.close();
  return { ids: lines.map((line) => (JSON.parse(line) as { id: string }).id), epoch };
}

test.each(["new/copy.sqlite", "new-folder"])(
  "a backup into %s is made while the server works, and is put back with a new life begun",
  async (to) => {
    const { data, stop } = await busyShop(`of-${to.replace("/", "-")}`);
    expect(await run("backup", at(to), "--data", data)).toMatchObject({ code: 0, error: "" });
    await stop();
    expect(statSync(at(to)).isFile()).toBe(to.endsWith(".sqlite"));
    const back = at(`back-${to.replace("/", "-")}`);
    expect(await run("restore", at(to), "--data", back)).toMatchObject({ code: 0, error: "" });
    const [before, after] = [await read(data), await read(back)];
    expect(after.ids.length % 2).toBe(1);
    expect(before.ids.slice(0, after.ids.length)).toEqual(after.ids);
    expect(after.epoch).not.toBe(before.epoch);
    const again = await run("restore", at(to), "--data", back);
    expect(again).toMatchObject({ code: 2 });
    expect(again.error).toMatch(/already/);
    expect((await read(back)).ids).toEqual(after.ids);
    expect((await run("backup", at(to), "--data", data)).code).toBe(2);
  },
);

test("what cannot be done is said, and leaves nothing behind", async () => {
  const { data, stop } = await busyShop("good");
  await stop();
  expect(await run("backup", at("x"), "--data", at("no-such-folder"))).toMatchObject({ code: 2 });
  expect(existsSync(at("no-such-folder"))).toBe(false);
  expect(await run("backup", "--data", data)).toMatchObject({ code: 2 });
  expect(await run("backup", at("x"), at("y"), "--data", data)).toMatchObject({ code: 2 });
  expect(await run("backup", at("x"), "--dta", data)).toMatchObject({ code: 2 });
  expect(await run("restore", at("no-such-backup"), "--data", at("new"))).toMatchObject({ code: 2 });
  writeFileSync(at("text.sqlite"), "this is no database, whatever its name says".repeat(100));
  expect((await run("restore", at("text.sqlite"), "--data", at("new"))).error).toMatch(/no database/);
  const other = openSqlite(at("other.sqlite"));
  await other.run("CREATE TABLE x (y TEXT)");
  await other.close();
  expect((await run("restore", at("other.sqlite"), "--data", at("new"))).error).toMatch(
    /not one of this server/,
  );
  expect(existsSync(join(at("new"), LOG_FILE))).toBe(false);
});

test.each(["serve", "backup", "restore"])("%s --help teaches", async (name) => {
  const { code, out } = await run(name, "--help");
  expect(code).toBe(0);
  expect(out).toContain(`jetwright ${name}`);
});

test("a write-ahead log that another database left behind is not taken for the restored one's", async () => {
  const { data, stop } = await busyShop("left-behind");
  await run("backup", at("left.sqlite"), "--data", data);
  await stop();
  mkdirSync(at("moved"));
  writeFileSync(join(at("moved"), `${LOG_FILE}-wal`), "of the one moved away");
  const restored = await run("restore", at("left.sqlite"), "--data", at("moved"));
  expect(restored).toMatchObject({
    code: 2,
    error: expect.stringContaining(`${LOG_FILE}-wal is there already`),
  });
  expect(existsSync(join(at("moved"), LOG_FILE))).toBe(false);
});
