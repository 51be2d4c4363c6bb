import "fake-indexeddb/auto";
import * as fc from "fast-check";
import { afterAll, beforeAll, expect, test } from "vitest";
import type { Database } from "../../../server/src/database/database.ts";
import { migrate } from "../../../server/src/database/migrate.ts";
import { openSqlite } from "../../../server/src/database/sqlite.ts";
import { readArriving } from "../../../server/src/shop/arriving.ts";
import { beginEpoch } from "../../../server/src/shop/epoch.ts";
import { addRecords, readPage } from "../../../server/src/shop/log.ts";
import { lineOf } from "../../../server/src/test-records.ts";
import { openDatabase } from "../store/database.ts";
import { type NotTaken, type Remote, syncOnce } from "./sync-once.ts";
import { memoryDevice } from "./test-device.ts";

// Three devices and a server in any order of writing, sharing, lost messages and backups put back: they end alike.
// INTERLEAVINGS=10000 tries that many; the suite tries fewer.

const RUNS = Number(process.env.INTERLEAVINGS ?? 300);
const DEVICES = 3;

type Step =
  | { readonly do: "write"; readonly device: number; readonly shared: boolean }
  | { readonly do: "share"; readonly device: number; readonly lose: number; readonly reply: boolean }
  | { readonly do: "restore"; readonly keep: number; readonly epoch: boolean };

const device = fc.nat(DEVICES - 1);
const step: fc.Arbitrary<Step> = fc.oneof(
  { weight: 5, arbitrary: fc.record({ do: fc.constant("write" as const), device, shared: fc.boolean() }) },
  {
    weight: 5,
    // The message with this number is lost on its way there, or its reply on its way back.
    arbitrary: fc.record({ do: fc.constant("share" as const), device, lose: fc.nat(8), reply: fc.boolean() }),
  },
  {
    weight: 1,
    arbitrary: fc.record({ do: fc.constant("restore" as const), keep: fc.nat(20), epoch: fc.boolean() }),
  },
);

let database: Database;
let shops = 0;

beforeAll(async () => {
  database = openSqlite(":memory:");
  await migrate(database);
});
afterAll(() => database.close());

async function newShop(): Promise<string> {
  const id = `shop${++shops}`;
  await database.run("INSERT INTO shop (id, name, last_seq, created_at) VALUES (?, 'x', 0, 0)", [id]);
  return id;
}

/** The server; the message with the number `lose` is lost, or only its reply. */
function remoteOf(shop: string, lose = Number.POSITIVE_INFINITY, reply = false): Remote {
  let messages = 0;
  async function carry<T>(work: () => Promise<T>): Promise<T> {
    const lost = ++messages === lose;
    if (lost && !reply) throw new Error("lost on the way there");
    const answer = await work();
    if (lost) throw new Error("lost on the way back");
    return answer;
  }
  return {
    push: (lines) =>
      carry(async () => {
        const records = lines.map((line) => {
          const read = readArriving(line);
          if (!read.ok) throw new RangeError(read.detail);
          return read.value;
        });
        const arrivals = await addRecords(database, shop, records);
        return arrivals.flatMap((arrival, i) =>
          arrival === "conflict"
            ? [{ line: i + 1, id: records[i]!.id, reason: "known-otherwise", detail: "" }]
            : [],
        );
      }),
    pull: (cursor) => carry(() => readPage(database, shop, { all: true }, cursor, 3)),
  };
}

/** A backup is put back: what came after it is gone; with our command the epoch changes, by hand it does not. */
async function restore(shop: string, keep: number, epoch: boolean): Promise<void> {
  await database.run("DELETE FROM record WHERE shop = ? AND seq > ?", [shop, keep]);
  await database.run("UPDATE shop SET last_seq = min(last_seq, ?) WHERE id = ?", [keep, shop]);
  if (epoch) await database.transaction(beginEpoch);
}

type Device = ReturnType<typeof memoryDevice>;

let browsers = 0;
/** A device on the app's own database. */
async function browserDevice(): Promise<Device> {
  const { records, settings, sync } = await openDatabase(`three-devices-${++browsers}`);
  return {
    sync,
    settings,
    arrived: async () => undefined,
    begunAnew: async () => undefined,
    setAside: async (_records: readonly NotTaken[]) => undefined,
    write: (record) => records.add([record]),
    log: async () => (await records.all()).map(({ line }) => line).sort(),
  };
}

async function live(steps: readonly Step[], devices: readonly Device[]): Promise<void> {
  const shop = await newShop();
  const written: string[] = [];
  for (const [i, one] of steps.entries()) {
    if (one.do === "write") {
      // A shared id is one that people type by hand: two devices may mean different things by it.
      const id = one.shared ? `r${i % 4}` : `w${i}`;
      const [device, text] = [devices[one.device]!, `by ${one.device} at ${i}`];
      // Not kept where the device itself has one under that id.
      const taken = one.shared && (await device.log()).some((line) => line.includes(`"id":"${id}"`));
      await device.write({ id, line: lineOf(id, { text }) });
      if (!taken) written.push(`"${text}"`);
    } else if (one.do === "share") {
      await syncOnce(devices[one.device]!, remoteOf(shop, one.lose, one.reply)).catch((error: Error) => {
        if (!error.message.startsWith("lost")) throw error;
      });
    } else {
      await restore(shop, one.keep, one.epoch);
    }
  }
  // What two meant by one id gets another id in the first, and is everywhere after the third.
  for (let round = 0; round < 3; round++) {
    for (const each of devices) await syncOnce(each, remoteOf(shop));
  }
  const logs = await Promise.all(devices.map((each) => each.log()));
  expect(logs[1]).toEqual(logs[0]);
  expect(logs[2]).toEqual(logs[0]);
  const whole = logs[0]!.join("\n");
  expect(written.filter((text) => !whole.includes(text))).toEqual([]);
  const kept = await database.all<{ line: string }>("SELECT line FROM record WHERE shop = ?", [shop]);
  expect(kept.map(({ line }) => line).sort()).toEqual(logs[0]);
  for (const each of devices) expect(await each.sync.unsentCount()).toBe(0);
}

test(
  `${RUNS} interleavings of three devices end with one log, and nothing written is lost`,
  () =>
    fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 30 }), (steps) =>
        live(steps, [memoryDevice(), memoryDevice(), memoryDevice()]),
      ),
      { seed: 20261125, numRuns: RUNS },
    ),
  Math.max(600_000, RUNS * 600),
);

test(
  "the same on the app's own database",
  () =>
    fc.assert(
      fc.asyncProperty(fc.array(step, { minLength: 1, maxLength: 30 }), async (steps) =>
        live(steps, await Promise.all([browserDevice(), browserDevice(), browserDevice()])),
      ),
      { seed: 20261125, numRuns: 15 },
    ),
  120_000,
);
