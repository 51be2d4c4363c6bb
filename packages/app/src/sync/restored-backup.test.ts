import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { expect, test } from "vitest";
import { readBackup } from "../../../server/src/backup/read-backup.ts";
import { writeBackup } from "../../../server/src/backup/write-backup.ts";
import { migrate } from "../../../server/src/database/migrate.ts";
import { openSqlite } from "../../../server/src/database/sqlite.ts";
import { readArriving } from "../../../server/src/shop/arriving.ts";
import { addRecords, readPage } from "../../../server/src/shop/log.ts";
import { lineOf } from "../../../server/src/test-records.ts";
import { type Remote, syncOnce } from "./sync-once.ts";
import { memoryDevice } from "./test-device.ts";

async function emptyServer() {
  const on = openSqlite(":memory:");
  await migrate(on);
  return on;
}

test("devices with newer records than a backup send them again, and every log is the same", async () => {
  const folder = mkdtempSync(join(tmpdir(), "jetwright-restored-"));
  let on = await emptyServer();
  await on.run("INSERT INTO shop (id, name, last_seq, created_at) VALUES ('s', 'Tarn End', 0, 0)");
  const remote: Remote = {
    push: async (lines) => {
      const records = lines.map((line) => {
        const read = readArriving(line);
        if (!read.ok) throw new RangeError(read.detail);
        return read.value;
      });
      await addRecords(on, "s", records);
      return [];
    },
    pull: (cursor) => readPage(on, "s", { all: true }, cursor, 3),
  };
  const [bench, phone] = [memoryDevice(), memoryDevice()];
  const ids = Array.from({ length: 8 }, (_, i) => `before${i}`);
  for (const id of ids) await bench.write({ id, line: lineOf(id) });
  for (const each of [bench, phone]) await syncOnce(each, remote);
  const backup = join(folder, "backup");
  expect((await writeBackup(on, backup, 0)).ok).toBe(true);
  await phone.write({ id: "after", line: lineOf("after") });
  for (const each of [phone, bench]) await syncOnce(each, remote);
  await phone.write({ id: "not-sent", line: lineOf("not-sent") });

  await on.close();
  on = await emptyServer();
  expect((await readBackup(on, backup)).ok).toBe(true);
  // The bench PC had read "after" from the server that is gone, and comes first.
  for (const each of [bench, phone, bench]) await syncOnce(each, remote);
  const log = (await readPage(on, "s", { all: true }, "")).lines.toSorted();
  expect(log).toEqual([...ids, "after", "not-sent"].map((id) => lineOf(id)).toSorted());
  for (const each of [bench, phone]) {
    expect(await each.log()).toEqual(log);
    expect(await each.sync.unsentCount()).toBe(0);
  }
  await on.close();
  rmSync(folder, { recursive: true });
});
