import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Log, LogReader, readLog, readLogText } from "./log-reader.ts";
import { LINE_LIMIT } from "./read-line.ts";

const note = (id: string, more: object = {}): string =>
  JSON.stringify({ id, kind: "note", at: "2026-05-02T10:15:00Z", body: { text: "hello" }, ...more });
const ids = (log: Log): string[] => log.entries.map((entry) => entry.id);
/** "line path" of each problem. */
const places = (log: Log): string[] => log.problems.map(({ line, path }) => `${line} ${path}`);

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

describe("[R7] nothing in a line can hurt the reader", () => {
  test("byte-order mark, CRLF, blank lines and a last line without its break", () => {
    const log = readLogText(`\uFEFF${note("a")}\r\n\r\n   \n${note("b")}\n${note("c")}`);
    expect(ids(log)).toEqual(["a", "b", "c"]);
    expect(log.problems).toEqual([]);
    expect(log.entries.map(({ line }) => line)).toEqual([1, 4, 5]);
  });

  test("half a character, in a value or a name, raw or escaped", () => {
    const log = readLog([
      '{"id":"a","kind":"note","at":"2026-05-02T10:15:00Z","body":{"text":"\\ud83d"}}',
      note("b", { body: { text: "\udc00" } }),
      '{"id":"c","kind":"note","at":"2026-05-02T10:15:00Z","body":{"text":"", "\\uD83D":1}}',
      note("d", { body: { text: "whole 🏍 and \ud83d\udd27" } }),
      '{"id":"e","kind":"note","at":"2026-05-02T10:15:00Z","body":{"text":"\\ud83c\\udfcd"}}',
    ]);
    expect(ids(log)).toEqual(["d", "e"]);
    expect(places(log)).toEqual(["1 body.text", "2 body.text", "3 body"]);
    expect(log.problems[0]!.what).toContain("half of a character");
  });

  test("a line at the limit is read, one over it is told and skipped", () => {
    const wrap = note("a", { body: { text: "" }, pad: "" });
    const fits = note("a", { body: { text: "" }, pad: "x".repeat(LINE_LIMIT - wrap.length) });
    expect(fits.length).toBe(LINE_LIMIT);
    const over = fits.replace('"x', '"xx').replace('"a"', '"b"');
    for (const log of [readLog([fits, over, note("c")]), readLogText([fits, over, note("c")].join("\n"))]) {
      expect(ids(log)).toEqual(["a", "c"]);
      expect(log.problems.map(({ line, what }) => `${line} ${what}`)).toEqual([
        "2 the line is longer than 1000000 characters and was not read",
      ]);
    }
  });

  test("nesting beyond the limit, and far beyond it", () => {
    const nested = (depth: number): string =>
      note("a").replace('"hello"', `"hello","deep":${"[".repeat(depth)}${"]".repeat(depth)}`);
    expect(readLog([nested(30)]).problems).toEqual([]);
    expect(readLog([nested(31)]).problems[0]!.what).toContain("deeper than 32");
    expect(readLog([nested(200_000), note("b")]).problems).toHaveLength(1);
  });

  test("numbers no computer has", () => {
    const log = readLog([note("a").replace('"hello"', '"hello","n":1e999')]);
    expect(places(log)).toEqual(["1 body.n"]);
  });

  test("names that mean something to the language are only names", () => {
    const line =
      '{"id":"a","kind":"note","at":"2026-05-02T10:15:00Z","body":{"text":"x","__proto__":{"y":1},"constructor":2,"hasOwnProperty":3}}';
    const log = readLog([
      line,
      note("__proto__"),
      note("constructor", { kind: "constructor" }),
      note("b", { kind: "__proto__" }),
    ]);
    expect(log.problems).toEqual([]);
    expect(ids(log)).toEqual(["a", "__proto__", "constructor", "b"]);
    expect(log.counts.unknownKinds.constructor).toBe(1);
    expect(Object.keys(log.counts.unknownKinds)).toContain("__proto__");
  });

  test("any JSON at all, and any text at all, gives a log", () => {
    const record = fc.record(
      {
        id: fc.oneof(fc.jsonValue(), fc.constant("a")),
        kind: fc.oneof(
          fc.jsonValue(),
          fc.constantFrom("note", "ride-reported", "setup-fitted", "parts-counted"),
        ),
        v: fc.oneof(fc.jsonValue(), fc.constant(1)),
        at: fc.oneof(fc.jsonValue(), fc.constant("2026-05-02T10:15:00Z")),
        by: fc.jsonValue(),
        bike: fc.oneof(fc.jsonValue(), fc.constant("b")),
        body: fc.oneof(
          fc.jsonValue(),
          fc.dictionary(fc.constantFrom("reports", "main", "parts", "text"), fc.jsonValue()),
        ),
      },
      { requiredKeys: [] },
    );
    fc.assert(
      fc.property(
        fc.array(
          fc.oneof(
            record.map((one) => JSON.stringify(one)),
            fc.string(),
          ),
          { maxLength: 5 },
        ),
        (lines) => {
          const log = readLog(lines);
          expect(log.counts.lines).toBe(lines.length);
          expect(log.entries.length).toBeLessThanOrEqual(lines.length);
        },
      ),
      { seed: 20261125, numRuns: 1000 },
    );
  });

  test("problems and notes are held up to a number, the rest are counted", () => {
    const log = readLog(Array(12).fill("rubbish"), { mostProblems: 10 });
    expect(log.problems).toHaveLength(11);
    expect(log.problems.at(-1)!.what).toBe("and 2 more problems");
    const many = Array.from({ length: 5 }, (_, i) => note(`n${i}`, { extra: 1 }));
    expect(readLog(many, { mostProblems: 3 }).notes.at(-1)!.what).toBe("and 2 more notes");
  });
});

describe("[R8] unknown fields", () => {
  test("are kept, noted, and the likely field is named", () => {
    const log = readLog([
      note("a", { colour: "red", body: { text: "x", txet: "y" } }),
      note("b", { kind: "air-measured", body: { temperatureC: 12, temprature: 3, heightM: 10 } }),
      note("c", {
        kind: "parts-counted",
        body: { parts: [{ part: "slide", cutawayMm: 3, count: 1, bin: 4 }] },
      }),
      note("d", {
        kind: "setup-fitted",
        bike: "b",
        body: { main: { number: 175, numbr: 1 }, clip: "unknown" },
      }),
    ]);
    expect(log.problems).toEqual([]);
    expect(log.notes.map(({ line, path }) => `${line} ${path}`)).toEqual([
      "1 colour",
      "1 body.txet",
      "2 body.temprature",
      "3 body.parts.0.bin",
      "4 body.main.numbr",
    ]);
    expect(log.notes[1]!.mend).toBe('Did you mean "text"?');
    expect(log.entries[0]!.source).toMatchObject({ colour: "red", body: { txet: "y" } });
  });

  test("free names of measured numbers are not noted", () => {
    const log = readLog([note("a", { kind: "sound-heard", bike: "b", body: { figures: { anything: 1 } } })]);
    expect([...log.problems, ...log.notes]).toEqual([]);
  });
});

describe("[R9] what a newer tool wrote", () => {
  test("unknown kinds and newer versions are kept and counted, and are no problem", () => {
    const log = readLog([
      note("a", { kind: "tyre-changed" }),
      note("b", { kind: "tyre-changed", body: 5 }),
      note("c", { kind: "ride-reprted" }),
      note("d", { v: 2, body: null }),
    ]);
    expect(log.problems).toEqual([]);
    expect(log.counts).toMatchObject({
      used: 0,
      newerVersion: 1,
      unknownKinds: { "tyre-changed": 2, "ride-reprted": 1 },
    });
    expect(log.entries.map(({ reading }) => reading)).toEqual([
      "unknown-kind",
      "unknown-kind",
      "unknown-kind",
      "newer-version",
    ]);
    expect(log.notes[2]!.mend).toBe('Did you mean "ride-reported"?');
    expect(log.notes[3]!.what).toContain("up to version 1");
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

describe("[R11] words of the catalogues", () => {
  const ride = (id: string, body: object): string => note(id, { kind: "ride-reported", bike: "b", body });

  test("an unknown sign leaves out its own report only", () => {
    const log = readLog([
      ride("a", {
        reports: [{ sign: "hang-after-closing" }, { sign: "answers-crisply", opening: "1/8" }],
        words: "w",
      }),
    ]);
    expect(places(log)).toEqual(["1 body.reports.0.sign"]);
    expect(log.problems[0]!.mend).toContain('"hangs-after-closing"');
    expect(log.entries[0]).toMatchObject({
      reading: "used",
      body: { reports: [{ sign: "answers-crisply" }], words: "w" },
      source: { body: { reports: [{ sign: "hang-after-closing" }, {}] } },
    });
  });

  test("unknown tests, outcomes, checks and faults leave their record out", () => {
    const done = (id: string, kind: string, body: object): string => note(id, { kind, bike: "b", body });
    const log = readLog([
      done("a", "test-done", { test: "chop", outcome: "hangs" }),
      done("b", "test-done", { test: "chop-warm", outcome: "hang" }),
      done("c", "test-done", { test: "chop-warm", outcome: "hangs" }),
      done("d", "check-done", { check: "presure-test", found: "sound" }),
      done("e", "check-done", { check: "pressure-test", found: "faulty", fault: "air-leek" }),
      done("f", "check-done", { check: "pressure-test", found: "faulty", fault: "air-leak" }),
      done("g", "check-done", { check: "pressure-test", found: "fine" }),
    ]);
    expect(places(log)).toEqual([
      "1 body.test",
      "2 body.outcome",
      "4 body.check",
      "5 body.fault",
      "7 body.found",
    ]);
    expect(log.problems.map(({ mend }) => mend)).toEqual([
      expect.stringContaining('"chop-warm"'),
      expect.stringContaining("hangs"),
      'Did you mean "pressure-test"?',
      expect.stringContaining('"air-leak"'),
      "Write one of these words.",
    ]);
    expect(log.entries.filter(({ reading }) => reading === "used").map(({ id }) => id)).toEqual(["c", "f"]);
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
