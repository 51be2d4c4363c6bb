import { writeRecord } from "@jetwright/records";
import { expect, test } from "vitest";
import { lineOf } from "../../../server/src/test-records.ts";
import { testShop } from "../../../server/src/test-shop.ts";
import { MOVED, movedRecord, type NotTaken, syncOnce } from "./sync-once.ts";
import { memoryDevice } from "./test-device.ts";
import { remoteAt } from "./test-remote.ts";

/** A device at a server, and what it tells its person of records not taken as they are. */
function told() {
  const device = memoryDevice();
  const said: NotTaken[] = [];
  return { ...device, said, setAside: async (records: readonly NotTaken[]) => void said.push(...records) };
}

test("two people mean different things by one id: both are everywhere, and the later one is told", async () => {
  const { server, base, token, bugs } = await testShop();
  const remote = remoteAt(base, token);
  const [bench, phone] = [told(), told()];
  await bench.write({ id: "r1", line: lineOf("r1", { text: "on the bench" }) });
  await phone.write({ id: "r1", line: lineOf("r1", { text: "on the phone" }) });
  await syncOnce(bench, remote);
  for (let round = 0; round < 2; round++) for (const one of [phone, bench]) await syncOnce(one, remote);
  const [{ detail: to }] = phone.said as [NotTaken];
  expect(phone.said).toEqual([{ id: "r1", reason: MOVED, detail: to }]);
  expect(to).toMatch(/^r1-[0-9a-z]+$/);
  expect(bench.said).toEqual([]);
  const both = [lineOf("r1", { text: "on the bench" }), lineOf(to, { text: "on the phone" })].sort();
  expect([await bench.log(), await phone.log()]).toEqual([both, both]);
  const kept = await fetch(`${base}/api/v1/export`, { headers: { authorization: `Bearer ${token}` } });
  expect((await kept.text()).trim().split("\n").sort()).toEqual(both);
  expect(await phone.sync.unsentCount()).toBe(0);
  await server.stop();
  expect(bugs).toEqual([]);
});

test("refused in the moment between its reading and its writing, it is told again when it moves", async () => {
  const { server, base, token } = await testShop();
  const remote = remoteAt(base, token);
  const phone = told();
  await phone.write({ id: "r1", line: lineOf("r1", { text: "on the phone" }) });
  const late = {
    ...remote,
    push: async (lines: readonly string[]) => {
      await remote.push([lineOf("r1", { text: "on the bench" })]);
      return remote.push(lines);
    },
  };
  await syncOnce(phone, late);
  expect(phone.said.map(({ id, reason }) => [id, reason])).toEqual([
    ["r1", "known-otherwise"],
    ["r1", MOVED],
  ]);
  expect((await phone.log()).join()).toContain("on the phone");
  await server.stop();
});

test("a long id stays one that may be, and nothing moves that is damaged or was erased", () => {
  const id = "x".repeat(64);
  expect(movedRecord(lineOf(id), lineOf(id, { text: "other" }))!.id).toMatch(/^x{48}-[0-9a-z]{1,11}$/);
  const erased = writeRecord({ ...JSON.parse(lineOf("r1")), erased: true });
  expect(movedRecord(lineOf("r1"), erased)).toBeNull();
  expect(movedRecord(erased, lineOf("r1"))).toBeNull();
  expect(movedRecord("{", lineOf("r1"))).toBeNull();
});
