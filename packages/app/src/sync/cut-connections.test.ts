import { expect, test } from "vitest";
import { cuttingProxy } from "../../../server/src/test-proxy.ts";
import { lineOf } from "../../../server/src/test-records.ts";
import { testShop } from "../../../server/src/test-shop.ts";
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

test("behind a proxy that cuts connections in the middle, three devices end with one log", async () => {
  const { server, base, token, bugs } = await testShop();
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
  expect(bugs).toEqual([]);
}, 60_000);

test("devices whose clocks are years off share all the same, and are neither refused nor hidden", async () => {
  const { server, base, token, bugs } = await testShop();
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
  expect(bugs).toEqual([]);
});
