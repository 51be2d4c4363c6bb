import {
  airFrom,
  readCutaway,
  readGroove,
  readJetNumber,
  readOil,
  readTurns,
  readWeatherReport,
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
