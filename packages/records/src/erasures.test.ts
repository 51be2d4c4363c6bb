import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { blankRecord } from "./blank-record.ts";
import type { JsonObject } from "./json.ts";
import { bodySchema, type JsonSchema } from "./json-schemas.ts";
import { KINDS } from "./kinds/all.ts";
import { readLog, readLogText } from "./log-reader.ts";
import { mergeEntries } from "./merge.ts";
import { bikeCase } from "./replay/bike-case.ts";
import { replay } from "./replay/replay.ts";
import { anyLog } from "./test-any-log.ts";
import { writeLog, writeRecord } from "./write-record.ts";

/** Free text that is no person's: marks and makers of parts, words of the catalogues, what the tool must reckon with. */
const TECHNICAL = new Set([
  "carburetor.maker",
  "use",
  "main.maker",
  "pilot.maker",
  "mainAirJet.maker",
  "pilotAirJet.maker",
  "needle.marks",
  "marks",
  "drawer.took.marks",
  "drawer.took.maker",
  "drawer.kept.marks",
  "drawer.kept.maker",
  "parts.marks",
  "parts.maker",
  "parts.name",
  "report",
  "oil",
  "fuel-used name",
  "reports.sign",
  "test",
  "outcome",
  "check",
  "fault",
  "instrument",
  "what",
  "step.kind",
  "events.kind",
]);

/** Every field that any text may stand in, by its path. */
function freeTexts(schema: JsonSchema, path: string): string[] {
  const branches = (schema.anyOf ?? schema.oneOf ?? []) as readonly JsonSchema[];
  const fields = Object.entries((schema.properties ?? {}) as Record<string, JsonSchema>);
  return [
    ...branches.flatMap((one) => freeTexts(one, path)),
    ...fields.flatMap(([name, field]) => freeTexts(field, path === "" ? name : `${path}.${name}`)),
    ...(schema.items === undefined ? [] : freeTexts(schema.items as JsonSchema, path)),
    ...(schema.type === "string" && !("enum" in schema || "const" in schema || "pattern" in schema)
      ? [path]
      : []),
  ];
}

const SECRET = "Jo Ferrant 0555 0142";

/** A record with the secret wherever a person's words may stand, and where no field is known. */
function told(record: JsonObject): JsonObject {
  const kind = KINDS.find((one) => one.kind === record.kind)!;
  const put = (object: JsonObject, [name, ...rest]: readonly string[]): JsonObject => {
    if (rest.length > 0) {
      const inner = (object[name!] ?? {}) as JsonObject;
      return { ...object, [name!]: put(inner, rest) };
    }
    return name === "clip" ? object : { ...object, [name!]: SECRET };
  };
  const body = kind.personal.reduce((now, path) => put(now, path.split(".")), record.body as JsonObject);
  return { ...record, by: { person: SECRET }, shown: SECRET, body: { ...body, remark: { deep: [SECRET] } } };
}

const erasure = (body: object, id = "e1", at = "2026-07-01T10:00:00Z"): JsonObject => ({
  id,
  kind: "person-erased",
  v: 1,
  at,
  body: body as JsonObject,
});
const line = (record: object): string => JSON.stringify(record);
const note = {
  id: "n1",
  kind: "note",
  v: 1,
  at: "2026-05-02T10:00:00Z",
  bike: "fern",
  body: { text: SECRET },
};

describe("[R31] what an erasure takes", () => {
  test("every text of every kind is either a person's or technical", () => {
    for (const kind of KINDS) {
      const personal = new Set(kind.personal);
      for (const path of freeTexts(bodySchema(kind), "")) {
        const technical = TECHNICAL.has(path) || TECHNICAL.has(`${kind.kind} ${path}`);
        expect(personal.has(path) !== technical, `${kind.kind} ${path}: say whose words they are`).toBe(true);
      }
    }
  });

  test("a record keeps id, kind, time, bike and what is technical", () => {
    const ride = {
      ...note,
      kind: "ride-reported",
      by: { person: SECRET },
      body: { reports: [{ sign: "idles-evenly", note: SECRET }], words: SECRET },
    };
    expect(blankRecord(ride)).toEqual({
      id: "n1",
      kind: "ride-reported",
      v: 1,
      at: note.at,
      bike: "fern",
      erased: true,
      body: { reports: [{ sign: "idles-evenly" }] },
    });
    expect(blankRecord(note).body).toEqual({ text: "" });
    const place = {
      ...note,
      kind: "bike-described",
      body: { name: SECRET, place: { name: SECRET, heightM: 9 } },
    };
    expect(blankRecord(place).body).toEqual({ place: { heightM: 9 } });
  });

  test("of what cannot be read nothing is kept", () => {
    for (const odd of [
      { ...note, kind: "of-tomorrow" },
      { ...note, v: 7 },
      { ...note, body: { text: 3, more: SECRET } },
      { ...note, body: SECRET },
      { ...note, bike: SECRET },
    ]) {
      expect(JSON.stringify(blankRecord(odd))).not.toContain("Jo");
    }
  });

  test("a record that says it is erased has no words, whoever wrote it, and a second time changes nothing", () => {
    const log = readLog([line({ ...note, erased: true })]);
    expect(log.problems).toEqual([]);
    expect(log.entries[0]).toMatchObject({ reading: "used", body: { text: "" }, source: { erased: true } });
    const once = blankRecord(note);
    expect(blankRecord(once)).toEqual(once);
  });
});

describe("[R31] which records", () => {
  const secrets = (...records: object[]) =>
    readLog(records.map(line))
      .entries.filter(({ source }) => JSON.stringify(source).includes("Jo"))
      .map(({ id }) => id);
  const late = { ...note, id: "n2", at: "2026-07-01T10:00:00.001Z" };
  const other = { ...note, id: "n3", bike: "moss" };
  const customer = (id: string, of: string) => ({
    id,
    kind: "customer-described",
    at: "2026-09-01T10:00:00Z",
    body: { customer: of, name: SECRET },
  });

  test("those named; those about the bikes up to its time; those about the customer at any time", () => {
    const all = [note, late, other, customer("c1", "jo"), customer("c2", "al")];
    expect(secrets(...all)).toHaveLength(5);
    expect(secrets(...all, erasure({ records: ["n3"] }))).toEqual(["n1", "n2", "c1", "c2"]);
    expect(secrets(...all, erasure({ bikes: ["fern"] }, "e1", "2026-07-01T10:00:00Z"))).toEqual([
      "n2",
      "n3",
      "c1",
      "c2",
    ]);
    expect(secrets(...all, erasure({ customer: "jo" }))).toEqual(["n1", "n2", "n3", "c2"]);
    const order = { ...other, id: "o1", kind: "order-opened", body: { customer: "jo", complaint: SECRET } };
    expect(secrets(order, erasure({ customer: "jo" }))).toEqual([]);
  });

  test("an erasure cannot be struck", () => {
    const strike = { id: "s1", kind: "record-struck", at: "2026-08-01T10:00:00Z", body: { record: "e1" } };
    expect(secrets(note, erasure({ records: ["n1"] }), strike)).toEqual([]);
  });

  test("the text comes back with no copy: erased and whole are one record, in any order, and no problem", () => {
    const blank = blankRecord(note);
    for (const records of [
      [note, blank],
      [blank, note],
      [note, erasure({ records: ["n1"] }), note, blank],
    ]) {
      const log = readLog(records.map(line));
      expect(log.problems).toEqual([]);
      expect(log.entries.find(({ id }) => id === "n1")!.source).toEqual(blank);
    }
    const [a, b] = [readLog([line(note)]).entries, readLog([line(blank)]).entries];
    expect(mergeEntries(a, b)).toEqual(mergeEntries(b, a));
    expect(mergeEntries(a, b)[0]!.source).toEqual(blank);
  });

  test("another record that calls itself erased does not push one out", () => {
    const forged = { ...blankRecord(note), at: "2026-05-03T10:00:00Z" };
    const log = readLog([line(forged), line(note)]);
    expect(log.entries.map(({ source }) => source)).toEqual([note]);
    expect(log.problems).toHaveLength(1);
  });

  test("what was read with its words is named, for whoever keeps it", () => {
    const log = readLog([line(note), line(other), line(erasure({ records: ["n1", "gone"] }))]);
    expect(log.erased.map(({ source }) => source)).toEqual([blankRecord(note)]);
    expect(readLog([line(blankRecord(note)), line(erasure({ records: ["n1"] }))]).erased).toEqual([]);
  });
});

describe("[R31] any log", () => {
  const erasureOf = (records: readonly JsonObject[]): JsonObject =>
    erasure({ records: [...new Set(records.map(({ id }) => String(id)))] }, "e-all");

  const toldOf = (records: readonly object[]): JsonObject[] =>
    (records as JsonObject[]).filter(({ kind }) => kind !== "person-erased").map(told);

  test("erased words are nowhere in the log or its copy, and the technical state is the same", () => {
    let cases = 0;
    fc.assert(
      fc.property(anyLog, (records) => {
        const whole = toldOf(records);
        const before = replay(readLogText(writeLog(whole)).entries);
        const log = readLogText(writeLog([...whole, erasureOf(whole)]));
        expect(writeLog(log.entries.map(({ source }) => source))).not.toContain("Jo Ferrant");
        const after = replay(log.entries);
        expect(after.drawer).toEqual(before.drawer);
        expect(after.minutes).toEqual(before.minutes);
        expect([...after.bikes.keys()]).toEqual([...before.bikes.keys()]);
        for (const bike of after.bikes.keys()) {
          const [one, other] = [bikeCase(before, bike), bikeCase(after, bike)];
          expect(other).toEqual(one);
          cases += Number(one.ok);
        }
      }),
      { seed: 20261125, numRuns: 200 },
    );
    expect(cases).toBeGreaterThan(200);
  }, 60_000);

  test("whichever device erases first, and whatever comes late, all end alike", () => {
    const split = fc.tuple(anyLog, fc.array(fc.nat({ max: 2 }), { minLength: 30, maxLength: 30 }));
    fc.assert(
      fc.property(split, ([records, places]) => {
        const whole = toldOf(records);
        const other = erasure({ customer: "c2", bikes: ["b"] }, "e-b", "2026-05-02T10:15:00Z");
        const all = [...whole, erasureOf(whole.slice(0, 12)), other];
        // Three devices have some of it each; the one with the erasure has emptied what it had.
        const parts = [0, 1, 2].map(
          (place) =>
            readLogText(writeLog(all.filter((_, i) => (places[i] ?? 0) === place || i === 0))).entries,
        );
        const sources = (...logs: (typeof parts)[number][]): string[] =>
          mergeEntries(...logs).map(({ source }) => writeRecord(source));
        const [a, b, c] = parts as [(typeof parts)[0], (typeof parts)[0], (typeof parts)[0]];
        expect(sources(a, b, c)).toEqual(sources(c, b, a));
        expect(sources(mergeEntries(a, b), c)).toEqual(sources(a, mergeEntries(b, c)));
      }),
      { seed: 20261125, numRuns: 150 },
    );
  }, 60_000);
});
