import { readLog, replay, writeRecord } from "@jetwright/records";
import { describe, expect, test } from "vitest";
import { copyText } from "../copy/copy-text.ts";
import { readPiece } from "../copy/read-piece.ts";
import { DEMO, shopOf } from "../test-shop.ts";
import { erased as erasedBy } from "./erased.ts";
import { removable } from "./removable.ts";

const SECRET = "Jo Ferrant";
const line = (n: number, kind: string, body: object, bike: string | null, person = "Ada") => ({
  id: `r${n}`,
  kind,
  v: 1,
  at: `2026-05-01T10:${String(n).padStart(2, "0")}:00Z`,
  by: { person },
  ...(bike === null ? {} : { bike }),
  body,
});
const LOG = [
  line(1, "bike-described", { name: `${SECRET}'s`, engine: { strokes: 2 }, customer: "c1" }, "fern"),
  line(2, "customer-described", { customer: "c1", name: SECRET, reach: "0555 0142" }, null),
  line(3, "order-opened", { complaint: `${SECRET} says it bogs` }, "fern"),
  line(4, "note", { text: `call ${SECRET}` }, "fern"),
  line(5, "note", { text: "another's" }, "moss"),
  line(6, "ride-reported", { words: "mine" }, "moss", SECRET.toUpperCase()),
  line(7, "setup-fitted", { main: { number: 170 }, why: SECRET }, "fern"),
];
const erased = (bodies: readonly object[]) =>
  bodies.map((body, i) => ({ id: `e${i}`, kind: "person-erased", v: 1, at: "2026-06-01T10:00:00Z", body }));

describe("whose data can be removed", () => {
  const found = removable(shopOf(LOG), null);

  test("customers with all about their bikes, and whoever wrote records", () => {
    expect(found.map(({ is, name, records }) => [is, name, records])).toEqual([
      ["customer", SECRET, 6],
      ["writer", "Ada", 6],
      ["writer", SECRET.toUpperCase(), 1],
    ]);
    expect(found[0]!.bodies).toEqual([{ customer: "c1", bikes: ["fern"], records: ["r6"] }]);
  });

  test("removed, nothing of it is in the log, its copy or what is kept; the rest is as it was", () => {
    const state = shopOf([...LOG, ...erased(found[0]!.bodies)]);
    const whole = new RegExp(SECRET, "i");
    expect(JSON.stringify(state.entries)).not.toMatch(whole);
    const lines = [...LOG, ...erased(found[0]!.bodies)].map((one) => JSON.stringify(one));
    expect(copyText(state, { lines })).not.toMatch(whole);
    expect(copyText(state, { lines }).trim().split("\n")).toHaveLength(lines.length);
    const rewritten = new Map(erasedBy(state, null).lines.map(({ id, line: text }) => [id, text]));
    expect(rewritten.size).toBe(6);
    const disk = lines.map((text) => rewritten.get(JSON.parse(text).id) ?? text);
    expect(disk.join()).not.toMatch(whole);
    expect(erasedBy(shopOf(disk), null)).toEqual({ lines: [], bikes: ["fern"] });
    const setups = (lines: readonly string[]) => replay(readLog(lines).entries).bikes.get("fern")!.setups;
    expect(setups(disk)).toEqual(setups(lines.slice(0, LOG.length)));
    expect(removable(shopOf(disk), null).map(({ name, records }) => [name, records])).toEqual([["Ada", 1]]);
  });

  test("an old copy read in later comes without the words, and is nothing new", () => {
    const state = shopOf([...LOG.slice(0, 3), ...erased(found[0]!.bodies)]);
    const copy = LOG.map((one) => JSON.stringify(one));
    const { records, problems } = readPiece(state, { lines: copy, firstLine: 1, language: null });
    expect(problems).toEqual([]);
    expect(records.map(({ against }) => against).join(" ")).toBe("here here here new new new new");
    expect(records.map(({ line: text }) => text).join()).not.toMatch(new RegExp(SECRET, "i"));
    // The other way round: here with its words, in the copy without. The copy's erasure is what will empty it.
    const blank = readLog([...copy, ...erased(found[0]!.bodies).map((one) => JSON.stringify(one))]).entries;
    const back = readPiece(shopOf(LOG), {
      lines: blank.map(({ source }) => writeRecord(source)),
      firstLine: 1,
      language: null,
    });
    expect(back.records.map(({ against }) => against).join(" ")).toBe(
      "here here here here here here here new",
    );
  });

  test("many signed records go in pieces", () => {
    const many = Array.from({ length: 5001 }, (_, i) => ({
      ...line(1, "note", { text: "x" }, null),
      id: `m${i}`,
    }));
    const [ada] = removable(shopOf(many), null);
    expect(ada!.bodies.map(({ records }) => (records as string[]).length)).toEqual([5000, 1]);
    expect(removable(shopOf(DEMO), null).map(({ name }) => name)).toContain("Mara");
  });
});
