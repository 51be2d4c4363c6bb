import { expect, test } from "vitest";
import { openSqlite } from "../../../server/src/database/sqlite.ts";
import { startServer } from "../../../server/src/run/server.ts";
import { cuttingProxy } from "../../../server/src/test-proxy.ts";
import { lineOf } from "../../../server/src/test-records.ts";
import { syncOnce } from "./sync-once.ts";
import { memoryDevice } from "./test-device.ts";
import { remoteAt } from "./test-remote.ts";

/** Numbers from 0 to 1, always the same ones. */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

const PLENTY = { burst: 1e9, perSecond: 1e9 };

async function shopServer() {
  const server = await startServer({
    database: openSqlite(":memory:"),
    port: 0,
    host: "localhost",
    appFolder: null,
    log: (fields) => fields.what === "bug" && expect.fail(String(fields.why)),
    allowances: { code: PLENTY, codes: PLENTY, request: PLENTY, stranger: PLENTY },
  });
  const base = `http://localhost:${server.port}`;
  const setup = { code: server.code, shop: "Tarn End", person: "Mara", device: "bench", give: "token" };
  const answer = await fetch(`${base}/api/v1/setup`, { method: "POST", body: JSON.stringify(setup) });
  return { server, base, token: ((await answer.json()) as { token: string }).token };
}

test("behind a proxy that cuts connections in the middle, three devices end with one log", async () => {
  const { server, base, token } = await shopServer();
  const random = numbers(20261125);
  const proxy = await cuttingProxy(server.port, () => {
    // Up: in the head or body of what is sent. Down: after the server did it, before or in its answer.
    const at = Math.floor(random() ** 2 * 60_000);
    return random() < 0.5 ? { up: at, down: 1e9 } : { up: 1e9, down: at };
  });
  const direct = remoteAt(base, token);
  const cutting = remoteAt(`http://localhost:${proxy.port}`, token);
  const devices = [memoryDevice(), memoryDevice(), memoryDevice()];
  const written: string[] = [];
  let failures = 0;
  for (let round = 0; round < 12; round++) {
    for (const [d, device] of devices.entries()) {
      for (let i = 0; i < 25; i++) {
        const id = `d${d}-${round}-${i}`;
        const line = lineOf(id, { text: `${id} ${"x".repeat(200)}` });
        written.push(line);
        await device.write({ id, line });
      }
      await syncOnce(device, cutting).catch(() => {
        failures++;
      });
    }
  }
  for (const device of [...devices, ...devices]) await syncOnce(device, direct);
  const log = written.toSorted();
  for (const device of devices) {
    expect(await device.log()).toEqual(log);
    expect(await device.sync.unsentCount()).toBe(0);
  }
  const page = await direct.pull("");
  expect(page.more).toBe(false);
  expect(page.lines.toSorted()).toEqual(log);
  expect(proxy.cuts()).toBeGreaterThan(5);
  expect(failures).toBeGreaterThan(5);
  await proxy.stop();
  await server.stop();
}, 60_000);

test("devices whose clocks are years off share all the same, and are neither refused nor hidden", async () => {
  const { server, base, token } = await shopServer();
  const remote = remoteAt(base, token);
  const clocks = ["1970-01-01T00:00:00Z", "2026-05-02T10:15:00+02:00", "2068-12-31T23:59:59-11:30"];
  const devices = clocks.map(() => memoryDevice());
  const written: string[] = [];
  for (let round = 0; round < 3; round++) {
    for (const [d, device] of devices.entries()) {
      const id = `d${d}-${round}`;
      const line = lineOf(id).replace(/"at":"[^"]*"/, `"at":"${clocks[d]}"`);
      expect(line).toContain(clocks[d]);
      written.push(line);
      await device.write({ id, line });
      await syncOnce(device, remote);
    }
  }
  for (const device of devices) await syncOnce(device, remote);
  for (const device of devices) {
    expect(await device.log()).toEqual(written.toSorted());
    expect(await device.sync.unsentCount()).toBe(0);
  }
  await server.stop();
});
