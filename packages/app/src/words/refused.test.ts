import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import {
  airFrom,
  readCutaway,
  readGroove,
  readJetNumber,
  readOil,
  readTurns,
  readWeatherReport,
  refusalText,
} from "@jetwright/core";
import { expect, test } from "vitest";
import { refused as german } from "./de/refused.ts";
import { refused as spanish } from "./es/refused.ts";

const ENGLISH = /\b(the|and|with|of|is|jet|needle|screw|check|read|type)\b/i;

test("both languages know the same reasons, none of them in English", () => {
  expect(Object.keys(spanish)).toEqual(Object.keys(german));
  for (const text of [...Object.values(german), ...Object.values(spanish)]) {
    expect(text).not.toMatch(ENGLISH);
    expect(text).toMatch(/^\S.*[.:%)]$/s);
  }
});

const air = (celsius: number, pressure: number, m: number, unit?: "hPa") =>
  airFrom({
    temperature: { value: celsius },
    pressure: { kind: "station", value: pressure, ...(unit && { unit }) },
    humidity: { kind: "unknown" },
    height: { value: m },
  });

test.each([
  ["a jet that is no number", readJetNumber("abc")],
  ["a jet of no size", readJetNumber("9999")],
  ["no groove", readGroove("up", { grooves: 5 })],
  ["a groove too far", readGroove("7", { grooves: 5 })],
  ["another needle", readGroove("3 of 4", { grooves: 5 })],
  ["a cutaway", readCutaway("x")],
  ["too many turns", readTurns("9")],
  ["no turns", readTurns("x")],
  ["oil", readOil("lots")],
  ["a report that is none", readWeatherReport("hello")],
  ["no report", readWeatherReport(" ")],
  ["heat", air(199, 1000, 0, "hPa")],
  ["heat of either unit", air(55, 1000, 0, "hPa")],
  ["a height of either unit", air(20, 700, 4000, "hPa")],
  ["a height nobody rides", air(20, 700, 9000, "hPa")],
  ["a pressure nobody rides", air(20, 3, 100)],
] as const)("%s is refused for a reason both languages know", (_, outcome) => {
  expect(outcome.ok).toBe(false);
  if (outcome.ok) return;
  expect(german[outcome.reason]).toBeDefined();
  expect(spanish[outcome.reason]).toBeDefined();
});

test.each([
  ["a height of either unit", air(20, 700, 4000, "hPa"), ["1219"]],
  ["heat of either unit", air(55, 1000, 0, "hPa"), ["12,8"]],
  ["pressure of another height", air(20, 620, 100, "hPa"), ["620", "3960", "100"]],
  ["a groove too far", readGroove("7", { grooves: 5 }), ["5"]],
  ["another needle", readGroove("3 of 4", { grooves: 5 }), ["4", "5"]],
  ["a jet of no size", readJetNumber("9999"), ["5", "900"]],
  ["too many turns", readTurns("9.25"), ["9,25"]],
] as const)("%s is refused with its figures in every language", (_, outcome, figures) => {
  if (outcome.ok) throw new Error("taken");
  for (const figure of figures) {
    expect(outcome.detail).toContain(figure.replace(",", "."));
    for (const refusals of [german, spanish]) expect(refusalText(outcome, { refusals })).toContain(figure);
  }
});

test("no stretch with figures is left open, or names what no sentence gives", () => {
  for (const text of [...Object.values(german), ...Object.values(spanish)]) {
    expect(text.replaceAll(/\[[^[\]{}]*(\{\w+\}[^[\]{}]*)+\]/g, "")).not.toMatch(/[[\]{}]/);
  }
  for (const [reason, text] of Object.entries(german)) {
    const names = (said: string) => [...said.matchAll(/\{(\w+)\}/g)].map(([, name]) => name).sort();
    expect([reason, names(spanish[reason]!)]).toEqual([reason, names(text)]);
  }
});

const PACKAGES = join(import.meta.dirname, "../../..");

/** The packages' own sources, without their tests. */
const sourcesOf = (folder: string): readonly string[] =>
  readdirSync(join(PACKAGES, folder), { recursive: true, encoding: "utf8" })
    .filter((name) => /\.tsx?$/.test(name) && !/\.(test|contract)\.tsx?$/.test(name))
    .map((name) => readFileSync(join(PACKAGES, folder, name), "utf8"));

/** Every reason written down where something is refused: `refuse("reason", ...)`, and the server's `refused(403, "reason", ...)`. */
const reasonsIn = (source: string): readonly string[] =>
  [...source.matchAll(/\brefused?(?:<[^>]*>)?\(\s*(?:[\w.[\]]+,\s*)?"([^"]+)"/g)].map(
    ([, reason]) => reason!,
  );

/** Reasons whose sentence comes in words of the screen, or of the reason inside, and is shown as it comes. */
const IN_WORDS = [
  ["came", "went", "grooves", "marks", "number", "pitch", "height", "strokes", "minutes", "nothing"],
  ["unreadable", "not comparable", "too-few-marks", "unclear-peak", "no-pulses", "uneven-pulses"],
].flat();

/** Reasons nobody meets in the app: it never asks what they answer. */
const NEVER_MET = [
  // A fuel by name, its parts and an intake's restriction are asked by the command line alone.
  ["not a fuel", "shares", "impossible restriction"],
  // A time is taken from the device's own clock or its date field.
  ["no-such-date", "no-such-time", "no-zone", "not-a-time"],
  // The drawer's counts and steps are kept within what is there; jets of two kinds are refused as "jets not comparable".
  ["count", "none left", "none rich enough", "not owned", "other maker", "other numbering"],
  // Between the app and its server: never shown.
  [
    "bad-offset",
    "wrong-offset",
    "other-content",
    "shop-full",
    "type-not-kept",
    "no-such-picture",
    "not-named",
  ],
  ["not-json", "not-text", "too-deep", "no-such-address", "too-many-streams"],
].flat();

const WRITTEN = new Set(
  ["core/src", "records/src", "app/src", "server/src/http", "server/src/shop"]
    .flatMap(sourcesOf)
    .flatMap(reasonsIn),
);

test("whatever is refused has its sentence in both languages, or is known never to be met in the app", () => {
  expect(WRITTEN.size).toBeGreaterThan(100);
  const said = (reason: string) => reason in german && reason in spanish;
  const known = new Set([...IN_WORDS, ...NEVER_MET]);
  expect([...WRITTEN].filter((reason) => !said(reason) && !known.has(reason))).toEqual([]);
});

test("no reason is kept on the list of those without a sentence once it has one or is gone", () => {
  for (const reason of [...IN_WORDS, ...NEVER_MET]) {
    expect([reason, reason in german, WRITTEN.has(reason)]).toEqual([reason, false, true]);
  }
});
