import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { LogReader, readLog, readLogText } from "./log-reader.ts";
import { ids, note, places } from "./test-lines.ts";

describe("[R1] a record", () => {
  test("v, by and bike may be left out; the version is then 1", () => {
    const log = readLog([note("a")]);
    expect(log.problems).toEqual([]);
    expect(log.entries[0]).toMatchObject({
      id: "a",
      kind: "note",
      v: 1,
      bike: null,
      reading: "used",
      line: 1,
    });
    expect(log.entries[0]!.at).toBe(Date.UTC(2026, 4, 2, 10, 15));
  });

  test("each missing or wrong part of the envelope is named", () => {
    const log = readLog([
      "{}",
      note("", { v: 0 }),
      note("a b"),
      note("c", { kind: 7 }),
      note("d", { at: "today" }),
      note("e", { at: 5 }),
      note("f", { body: "x" }),
      note("g", { bike: "b b" }),
      note("h", { v: 1.5 }),
      note("x".repeat(65)),
    ]);
    expect(places(log)).toEqual([
      "1 id",
      "1 kind",
      "1 at",
      "2 id",
      "2 v",
      "3 id",
      "4 kind",
      "5 at",
      "6 at",
      "7 body",
      "8 bike",
      "9 v",
      "10 id",
    ]);
    expect(log.problems[0]).toMatchObject({ what: "is missing", record: null });
    expect(log.problems.find(({ line }) => line === 5)).toMatchObject({ record: "d" });
  });

  test("a kind that is about a bike needs one; a kind about the shop ignores one", () => {
    const log = readLog([
      note("a", { kind: "bike-put-away", body: {} }),
      note("b", {
        kind: "parts-counted",
        bike: "x",
        body: { parts: [{ part: "slide", cutawayMm: 3, count: 1 }] },
      }),
    ]);
    expect(places(log)).toEqual(["1 bike"]);
    expect(log.notes.map(({ path }) => path)).toEqual(["bike"]);
    expect(log.entries[1]).toMatchObject({ reading: "used", bike: null });
  });

  test("by that is not a name is noted and the record counts", () => {
    const log = readLog([
      note("a", { by: "Jo" }),
      note("b", { by: { person: 5 } }),
      note("c", { by: { person: "Jo" } }),
    ]);
    expect(log.problems).toEqual([]);
    expect(log.notes.map(({ line, path }) => `${line} ${path}`)).toEqual(["1 by", "2 by"]);
    expect(log.counts.used).toBe(3);
  });
});

describe("[R6] a bad line hides no other", () => {
  const good = fc.array(fc.integer({ min: 0, max: 99 }), { maxLength: 8 });
  const bad = fc.oneof(
    fc.string({ maxLength: 40 }),
    fc.json(),
    fc.constantFrom(
      "{",
      "}",
      "[]",
      "null",
      '{"id":"z"',
      '{"id":"z"}',
      "\u0000",
      '"x',
      '{"id":"b","kind":"note"}',
    ),
  );

  test("good records are read the same with any rubbish between them", () => {
    fc.assert(
      fc.property(
        good,
        fc.array(bad, { maxLength: 8 }),
        fc.infiniteStream(fc.boolean()),
        (numbers, rubbish, pick) => {
          const goodLines = numbers.map((n) => note(`good-${n}`));
          const lines: string[] = [];
          const left = [goodLines.slice(), rubbish.slice()];
          while (left[0]!.length + left[1]!.length > 0) {
            const from = left[0]!.length === 0 ? 1 : left[1]!.length === 0 ? 0 : pick.next().value ? 1 : 0;
            lines.push(left[from]!.shift()!);
          }
          const clean = readLog(goodLines);
          const dirty = readLog(lines);
          expect(ids(dirty).filter((id) => id.startsWith("good-"))).toEqual(ids(clean));
          for (const problem of dirty.problems) {
            expect(lines[problem.line! - 1]!.includes("good-")).toBe(false);
            expect(problem.what).not.toBe("");
            expect(problem.mend).not.toBe("");
          }
        },
      ),
      { seed: 20261125, numRuns: 200 },
    );
  });

  test("the reason fits what is wrong with the line", () => {
    const log = readLog(["hello", '{"id":"a","kind":"no', '{"id":"a",,}', "[1]", "7"]);
    expect(log.problems.map(({ what }) => what.slice(0, 24))).toEqual([
      "is not a record: hello",
      "is only half written: ..",
      "is not well-formed JSON:",
      "is not a record",
      "is not a record",
    ]);
  });
});

describe("[R12] however the text is cut", () => {
  test("pieces of any size give the same log", () => {
    const text = `${note("a")}\r\nrubbish\n\n${note("b", { extra: "ü🏍" })}\n${note("c").slice(0, -4)}`;
    const whole = readLogText(text);
    expect(whole.problems).toHaveLength(2);
    fc.assert(
      fc.property(fc.array(fc.nat({ max: text.length }), { maxLength: 12 }), (cuts) => {
        const reader = new LogReader();
        const at = [0, ...cuts.sort((x, y) => x - y), text.length];
        for (let i = 1; i < at.length; i++) reader.text(text.slice(at[i - 1], at[i]));
        expect(reader.end()).toEqual(whole);
      }),
      { seed: 20261125 },
    );
    expect(readLog(text.split("\n"))).toEqual(whole);
  });

  test("a record already parsed is read without a line", () => {
    const reader = new LogReader();
    reader.record(JSON.parse(note("a")));
    reader.record({ id: "b" });
    const log = reader.end();
    expect(log.entries[0]).toMatchObject({ id: "a", line: null });
    expect(log.problems.every(({ line, record }) => line === null && record === "b")).toBe(true);
    expect(log.counts.lines).toBe(0);
  });
});

describe("[R10] ids", () => {
  const early = note("a", { at: "2026-05-02T09:00:00Z", body: { text: "early" } });
  const late = note("a", { at: "2026-05-02T11:00:00Z", body: { text: "late" } });

  test("the same record again counts once, however its keys are ordered", () => {
    const turned = '{"body":{"text":"hello"},"at":"2026-05-02T10:15:00Z","kind":"note","id":"a"}';
    const log = readLog([note("a"), note("a"), turned]);
    expect(ids(log)).toEqual(["a"]);
    expect(log.counts.repeated).toBe(2);
    expect(log.problems).toEqual([]);
  });

  test("of two that differ the earlier is kept, whichever arrived first", () => {
    const first = readLog([early, late]);
    const second = readLog([late, early]);
    expect(first.entries.map(({ source }) => source)).toEqual(second.entries.map(({ source }) => source));
    expect(first.entries[0]).toMatchObject({ body: { text: "early" } });
    expect(first.problems).toMatchObject([{ line: 2, record: "a", path: "id" }]);
    expect(second.problems).toMatchObject([{ line: 1, record: "a", path: "id" }]);
    expect(second.problems[0]!.what).toContain("line 2 is kept");
  });

  test("at the same time the same one wins too", () => {
    const [x, y] = [note("a", { body: { text: "x" } }), note("a", { body: { text: "y" } })];
    expect(readLog([x, y]).entries[0]!.source).toEqual(readLog([y, x]).entries[0]!.source);
  });

  test("also when records are not held", () => {
    const log = readLog([early, late, early, note("b")], { hold: ({ id }) => id === "b" });
    expect(ids(log)).toEqual(["b"]);
    expect(log.counts).toMatchObject({ used: 2, repeated: 1 });
    expect(log.problems).toHaveLength(1);
  });
});
