import { expect, test } from "vitest";
import { LogReader } from "../log-reader.ts";
import { flaw } from "../problem.ts";
import { LINE_LIMIT } from "../read-line.ts";
import { flaws as german } from "./de/flaws.ts";
import { flaws as english } from "./en/flaws.ts";
import { flaws as spanish } from "./es/flaws.ts";
import { type FlawTold, flawText } from "./flaw-told.ts";

const record = (kind: string, body: unknown, more: object = {}): string =>
  JSON.stringify({ id: "a", kind, at: "2026-05-02T10:15:00Z", bike: "bramble", body, ...more });
const fitted = (body: object): string => record("setup-fitted", body);
const deep = (levels: number): string => (levels === 0 ? "1" : `{"a":${deep(levels - 1)}}`);

/** Lines wrong in every way that one line can be, and more. */
const WRONG: readonly string[] = [
  "x".repeat(LINE_LIMIT + 1),
  record("note", { text: "x" }, { extra: JSON.parse(deep(100)) }),
  '{"id":"a","kind":"note","at":"2026-05-02T10:15:00Z","body":{"text":"x","n":1e999}}',
  '{"id":"a","kind":"note","at":"2026-05-02T10:15:00Z","body":{"text":"\\ud83d"}}',
  "[1, 2]",
  "no record",
  '{"id":"a","kind":"no',
  '{"id":"a",,}',
  record("note", { text: "x" }, { id: "not usable", v: "two", by: 7 }),
  record("note", { text: "x" }, { id: undefined, at: undefined }),
  record("note", { text: "x" }, { kind: undefined, at: "2026-02-30T10:15:00Z" }),
  ...["2026-05-02T10:15:00", "2026-05-02T25:15:00Z", "soon"].map((at) => record("note", {}, { at })),
  record("note", { text: "x", txet: "y" }, { beyond: 1 }),
  record("ride-reprted", {}),
  record("nothing-like-it", {}),
  record("note", {}, { v: 900 }),
  record("setup-fitted", {}, { bike: undefined }),
  record("setup-fitted", {}, { bike: "not usable" }),
  record("labour-noted", { minutes: {} }),
  record("note", 3),
  fitted({ main: { number: "172,5" } }),
  fitted({ main: { number: 2000 } }),
  fitted({ screw: { turnsOut: 15 } }),
  fitted({ screw: { how: "told" } }),
  fitted({ clip: "three" }),
  fitted({ needle: { marks: 7 } }),
  fitted({ needle: { marks: "x".repeat(5000) } }),
  fitted({ main: { number: 175, how: "dreamt" } }),
  fitted({ asFound: "True", main: { number: 175 } }),
  fitted({}),
  fitted({ main: { number: 175 }, asFound: true, drawer: {} }),
  record("bike-described", { name: "x", engine: {} }),
  record("photo-taken", {}),
  record("note", { text: "x", photos: ["zz"] }),
  record("sound-heard", { clip: "zz" }),
  record("air-measured", {}),
  record("air-measured", { report: "fine weather" }),
  record("fuel-used", { oil: "lots" }),
  record("mixture-measured", { readings: [{ opening: "1/4" }] }),
  record("ride-reported", { reports: [{ sign: "bog-on-openin" }] }),
  record("test-done", { test: "chop-wram", outcome: "x" }),
  record("test-done", { test: "chop-warm", outcome: "danced" }),
  record("check-done", { check: "presure-test", found: "sound" }),
  record("check-done", { check: "pressure-test", found: "faulty", fault: "air-leek" }),
  record("work-noted", {}),
  record("note", { text: "x" }, { by: 7 }),
  record("customer-described", {}),
  record("check-done", { check: "pressure-test" }),
];

function toldBy(lines: readonly string[]): readonly FlawTold[] {
  return lines.flatMap((line) => {
    const reader = new LogReader();
    reader.line(line);
    const { problems, notes } = reader.end();
    return [...problems, ...notes].map(({ told }) => told);
  });
}

const TWICE = new LogReader({ mostProblems: 1 });
for (const text of ["one", "two", "three"]) TWICE.line(record("note", { text }));
const TOLD: readonly FlawTold[] = [
  ...toldBy(WRONG),
  ...TWICE.end().problems.map(({ told }) => told),
  flaw("id", "id-here-already", { id: "r7" }).told,
  flaw("v", "old-body", { version: 3, kind: "note" }).told,
  flaw("body", "not-to-be-used", { message: "Invalid input" }).told,
];

test("the lines are wrong in every way that has a sentence", () => {
  const met = new Set(TOLD.map(({ code }) => code));
  expect(Object.keys(english).filter((code) => !met.has(code as FlawTold["code"]))).toEqual([]);
});

/** Names of a type, a limit or an own sentence: each language has its own word for them. */
const SAID = new Set(["type", "of", "edge", "reason", "detail"]);
/** Every figure and word of the log that a flaw names. */
function named(given: unknown): readonly string[] {
  if (typeof given === "number" || typeof given === "string") return [String(given)];
  if (typeof given !== "object" || given === null) return [];
  return Object.entries(given).flatMap(([key, value]) =>
    SAID.has(key) || (key === "seen" && typeof value === "string") ? [] : named(value),
  );
}

const ENGLISH = /\b(the|is|not|must|write|missing|leave|record|field|with)\b/i;
/** Words of a log stand in every language as they are written there. */
const asWritten = (text: string): string =>
  text.replaceAll(/"[^"]*"|„[^“]*“|«[^»]*»|: (no record|.*{).*$/g, "");

test.each([
  ["German", german],
  ["Spanish", spanish],
])("%s says every flaw in its own words, with all that the English names", (_, table) => {
  for (const told of TOLD) {
    const here = Object.values(flawText(told, english)).join(". ");
    const there = Object.values(flawText(told, table)).join(". ");
    for (const word of named(told.given)) {
      if (here.includes(word)) expect([told.code, there]).toContainEqual(expect.stringContaining(word));
    }
    expect(asWritten(flawText(told, table).what)).not.toMatch(ENGLISH);
    expect(flawText(told, table).mend).not.toBe(flawText(told, english).mend);
    expect(flawText(told, table).mend).toMatch(/[.?]$|_ : -$/);
  }
});

test.each([
  ["a limit", fitted({ screw: { turnsOut: 15 } }), "muss höchstens 12 sein, da steht aber 15"],
  ["too long a text", record("note", { text: "x".repeat(30_000) }), /^muss höchstens \d+ Zeichen haben/],
  ["a word for a number", fitted({ main: { number: "a" } }), 'muss eine Zahl sein, da steht aber "a"'],
  ["no oil", record("fuel-used", { oil: "lots" }), "die Angabe zum Öl ist nicht zu verstehen"],
])("%s in German", (_, line, what) => {
  const [told] = toldBy([line]);
  expect(flawText(told!, german).what).toEqual(typeof what === "string" ? what : expect.stringMatching(what));
});

test("why the oil or a report cannot be read is said in the language too", () => {
  const [oil, report] = toldBy([
    record("fuel-used", { oil: "lots" }),
    record("air-measured", { report: "fine weather" }),
  ]);
  expect(flawText(oil!, german).mend).toMatch(/^Das ist kein Ölverhältnis/);
  expect(flawText(report!, spanish).mend).toMatch(/METAR/);
});
