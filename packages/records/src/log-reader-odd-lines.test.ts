import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readLog, readLogText } from "./log-reader.ts";
import { LINE_LIMIT } from "./read-line.ts";
import { ids, note, places } from "./test-lines.ts";

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
