import "fake-indexeddb/auto";
import { readLog, writeRecord } from "@jetwright/records";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Database } from "../../../server/src/database/database.ts";
import { migrate } from "../../../server/src/database/migrate.ts";
import { openSqlite } from "../../../server/src/database/sqlite.ts";
import { readArriving } from "../../../server/src/shop/arriving.ts";
import { addRecords, readPage } from "../../../server/src/shop/log.ts";
import { openDatabase } from "../store/database.ts";
import { type Remote, syncOnce } from "./sync-once.ts";

// A device that was away for weeks comes back with words that somebody asked to have removed meanwhile.

const SECRET = "Jo Ferrant";
const SHOP = "tarn-end";
let server: Database;

beforeAll(async () => {
  server = openSqlite(":memory:");
  await migrate(server);
  await server.run("INSERT INTO shop (id, name, last_seq, created_at) VALUES (?, 'x', 0, 0)", [SHOP]);
});
afterAll(() => server.close());

const remote: Remote = {
  push: async (lines) => {
    const records = lines.map((line) => {
      const read = readArriving(line);
      if (!read.ok) throw new RangeError(read.detail);
      return read.value;
    });
    const arrivals = await addRecords(server, SHOP, records);
    return arrivals.flatMap((arrival, i) =>
      arrival === "conflict" ? [{ line: i + 1, id: records[i]!.id, reason: "conflict", detail: "" }] : [],
    );
  },
  pull: (cursor) => readPage(server, SHOP, { all: true }, cursor, 2),
};

async function device(name: string) {
  const { records, settings, sync } = await openDatabase(`erasing-${name}`);
  const refused: string[] = [];
  const share = () =>
    syncOnce(
      {
        sync,
        settings,
        arrived: async () => undefined,
        begunAnew: async () => undefined,
        setAside: async (not) => void refused.push(...not.map(({ id }) => id)),
      },
      remote,
    );
  const write = (...lines: string[]) => records.add(lines.map((line) => ({ id: JSON.parse(line).id, line })));
  const log = async () => (await records.all()).map(({ line }) => line).sort();
  return { records, sync, refused, share, write, log };
}

const record = (id: string, kind: string, body: Record<string, string>, more: object = {}) =>
  writeRecord({ id, kind, v: 1, at: "2026-05-02T10:15:00Z", by: { person: SECRET }, ...more, body });

test("[R31] the words it brings are taken out before anybody has them, and it loses its own", async () => {
  const [bench, phone] = await Promise.all([device("bench"), device("phone")]);
  const note = record("n1", "note", { text: SECRET }, { bike: "fern" });
  await bench.write(note, record("x1", "note", { text: "another's" }, { by: {}, bike: "moss" }));
  await bench.share();
  await phone.share();
  expect(await phone.log()).toEqual(await bench.log());

  // Away: more words, not yet at the shop.
  await phone.write(
    record("n2", "note", { text: `${SECRET} called` }, { bike: "fern" }),
    record("c1", "customer-described", { customer: "jo", name: SECRET }),
  );
  // Meanwhile, on the owner's bench, what its page does.
  const erasure = { id: "e1", kind: "person-erased", v: 1, at: "2026-07-01T10:00:00Z" };
  await bench.write(writeRecord({ ...erasure, body: { customer: "jo", bikes: ["fern"] } }));
  const { erased } = readLog(await bench.log());
  await bench.records.replace(erased.map(({ id, source }) => ({ id, line: writeRecord(source) })));
  await bench.share();

  await phone.share();
  await bench.share();
  // An old copy, read in by a page that is older than this one.
  await phone.write(note);
  await phone.share();
  const log = await phone.log();
  expect(log).toEqual(await bench.log());
  expect(log).toHaveLength(5);
  expect(log.join()).not.toContain(SECRET);
  const rows = await server.all<{ line: string }>("SELECT line FROM record WHERE shop = ?", [SHOP]);
  expect(rows.map(({ line }) => line).sort()).toEqual(log);
  expect([...phone.refused, ...bench.refused]).toEqual([]);
  expect(await phone.sync.unsentCount()).toBe(0);
});
