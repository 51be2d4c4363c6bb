import { makeRecordId } from "@jetwright/records";
import { describe, expect, test } from "vitest";
import everyKind from "../../../../../records/fixtures/version-1/every-kind.jsonl?raw";
import { DEMO, linesOf, shopOf } from "../test-shop.ts";
import { copyDue } from "./copy-due.ts";
import { copyState } from "./copy-state.ts";
import { copyText } from "./copy-text.ts";
import { readPiece } from "./read-piece.ts";

const EVERY_KIND = linesOf(everyKind);

const note = (id: string, text = "x", v = 1) => ({
  id,
  kind: "note",
  v,
  at: "2026-01-01T00:00:00Z",
  body: { text },
});
const line = (record: object) => JSON.stringify(record);

describe("a copy", () => {
  test("holds every line as it was written, in the order things happened", () => {
    const shuffled = [...DEMO].reverse();
    const text = copyText(shopOf([]), { lines: shuffled });
    expect(text.endsWith("\n")).toBe(true);
    const lines = text.trimEnd().split("\n");
    expect([...lines].sort()).toEqual([...DEMO].sort());
    const times = lines.map((one) => Date.parse(JSON.parse(one).at));
    expect(times).toEqual([...times].sort((a, b) => a - b));
  });

  test("leaves out nothing that cannot be read: half a line, no id, a faulty record", () => {
    const broken = [
      '{"id":"half","kind":"no',
      '{"kind":"note"}',
      '{"id":"q","kind":"note","at":"never","body":{}}',
    ];
    const lines = copyText(shopOf([]), { lines: [...broken, line(note("a"))] })
      .trimEnd()
      .split("\n");
    expect(lines[0]).toBe(line(note("a")));
    expect(lines.slice(1).sort()).toEqual([...broken].sort());
  });
});

describe("lines of a file", () => {
  test("are new, here already, or another record under an id that is taken", () => {
    const state = shopOf([note("a"), note("b")]);
    const { records } = readPiece(state, {
      lines: [line(note("a")), line(note("b", "other")), line(note("c"))],
      firstLine: 1,
      language: null,
    });
    expect(records.map(({ id, against }) => [id, against])).toEqual([
      ["a", "here"],
      ["b", "other"],
      ["c", "new"],
    ]);
    expect(records[0]!.words).toBeNull();
  });

  test("keep what a newer version or another tool wrote, word for word", () => {
    const newer =
      '{"id":"n","kind":"note","v":8,"at":"2026-01-01T00:00:00Z","hue":3,"body":{"deep":[1,{"a":2}]}}';
    const { records, problems } = readPiece(shopOf([]), { lines: [newer], firstLine: 1, language: "en" });
    expect(records[0]).toMatchObject({ reading: "newer-version", against: "new" });
    expect(JSON.parse(records[0]!.line)).toEqual(JSON.parse(newer));
    expect(records[0]!.words).toMatch(/newer version/);
    expect(problems).toEqual([]);
  });

  test("that are no record are named by their place in the whole file, with how to mend them", () => {
    const { problems, unreadable, records } = readPiece(shopOf([]), {
      lines: ["hello", "", line(note("a")), '{"id":"x"}', '{"id":"y"'],
      firstLine: 401,
      language: null,
    });
    expect(unreadable).toEqual([401, 404, 405]);
    expect(records).toHaveLength(1);
    expect(new Set(problems.map((one) => one.line))).toEqual(new Set([401, 404, 405]));
    for (const { mend } of problems) expect(mend.length).toBeGreaterThan(10);
  });

  test("read into an empty shop give the shop they came from", () => {
    const { records } = readPiece(shopOf([]), { lines: EVERY_KIND, firstLine: 1, language: null });
    const again = shopOf(records.map((one) => one.line));
    expect(again.shop).toEqual({ ...shopOf(EVERY_KIND).shop });
    expect(again.log.counts.used).toBe(EVERY_KIND.length);
  });
});

describe("how old the copy is", () => {
  const DAY = 86_400_000;
  const now = Date.UTC(2026, 5, 1);
  const id = (at: number, n = 0) => makeRecordId(at, new Uint8Array(10).fill(n % 256));

  test("counts what was written here since, by when it was written and not when it happened", () => {
    const state = shopOf([
      ...DEMO,
      note(id(now - 5 * DAY)),
      note(id(now - 3 * DAY)),
      note(id(now - 1 * DAY)),
    ]);
    expect(copyState(state, { lastCopyAt: null })).toMatchObject({
      records: DEMO.length + 3,
      since: 3,
      firstAt: now - 5 * DAY,
    });
    expect(copyState(state, { lastCopyAt: now - 4 * DAY })).toMatchObject({
      since: 2,
      firstAt: now - 3 * DAY,
    });
    expect(copyState(state, { lastCopyAt: now })).toMatchObject({ since: 0, firstAt: null });
  });

  test("says what is kept and not used", () => {
    const state = shopOf([
      note("a", "x", 9),
      { ...note("b"), kind: "dream" },
      '{"id":"c","kind":"note","at":"2026-01-01T00:00:00Z","body":{}}',
    ]);
    const { newerVersion, unknownKinds, faulty } = copyState(state, { lastCopyAt: null });
    expect(newerVersion).toBe(1);
    expect(unknownKinds).toEqual(["dream"]);
    expect(faulty.map(({ record }) => record)).toContain("c");
  });

  test.each([
    [0, null, false],
    [50, 0, false],
    [51, 0, true],
    [1, 14, false],
    [1, 15, true],
  ])("with %i records, the first %s days old, due is %s", (since, days, due) => {
    expect(copyDue({ since, firstAt: days === null ? null : now - days * DAY }, now)).toBe(due);
  });
});
