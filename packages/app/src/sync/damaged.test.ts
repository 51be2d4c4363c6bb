import "fake-indexeddb/auto";
import { expect, test } from "vitest";
import { openDatabase } from "../store/database.ts";
import type { StoredRecord } from "../store/tables.ts";
import { DAMAGED, type NotTaken, type Remote, syncOnce } from "./sync-once.ts";

const whole = (id: string): StoredRecord => ({ id, line: `{"id":"${id}","kind":"note","v":1}` });

/** A server that takes everything, and gives back what it has. */
function server(has: readonly string[] = []): Remote & { readonly lines: string[] } {
  const lines = [...has];
  return {
    lines,
    push: async (sent) => {
      lines.push(...sent.map((line) => JSON.stringify(JSON.parse(line))));
      return [];
    },
    pull: async (cursor) => ({
      restart: null,
      cursor: String(lines.length),
      more: false,
      lines: lines.slice(Number(cursor)),
    }),
  };
}

async function share(records: readonly StoredRecord[], remote: Remote) {
  const { records: shelf, sync, settings } = await openDatabase(`damaged-${records[0]!.id}`);
  await shelf.add(records);
  const aside: NotTaken[] = [];
  const setAside = async (some: readonly NotTaken[]) => void aside.push(...some);
  await syncOnce({ sync, settings, arrived: async () => {}, begunAnew: async () => {}, setAside }, remote);
  return { aside, waiting: await sync.unsentCount(), here: await shelf.all() };
}

test("a damaged line is set aside and kept, and holds nothing else up", async () => {
  const damaged = { id: "a2", line: '{"id":"a2","kin' };
  const remote = server();
  const { aside, waiting, here } = await share([whole("a1"), damaged, whole("a3")], remote);
  expect(remote.lines.map((line) => JSON.parse(line).id)).toEqual(["a1", "a3"]);
  expect(aside).toEqual([{ id: "a2", reason: DAMAGED, detail: "" }]);
  expect(waiting).toBe(0);
  expect(here).toContainEqual(damaged);
});

test("with nothing but damaged lines the server is sent nothing", async () => {
  const remote = server();
  const { aside, waiting } = await share([{ id: "b1", line: "" }], remote);
  expect(remote.lines).toEqual([]);
  expect(aside.map(({ id }) => id)).toEqual(["b1"]);
  expect(waiting).toBe(0);
});

test("a damaged line is made whole again by the shop's", async () => {
  const { here, aside } = await share([{ id: "c1", line: "{" }], server([whole("c1").line]));
  expect(here).toEqual([whole("c1")]);
  expect(aside).toEqual([]);
});
