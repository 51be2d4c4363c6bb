import { expect, test } from "vitest";
import { fromCelsius } from "../units/convert.ts";
import type { KgPerCubicMetre } from "../units/quantity.ts";
import { densityAt, expansionCoefficient } from "./expansion.ts";

const kg = (x: number) => x as KgPerCubicMetre;

test("density at 15 °C is itself, and falls about 0.12 % a kelvin", () => {
  expect(densityAt(kg(745), fromCelsius(15))).toBe(745);
  const step = densityAt(kg(745), fromCelsius(16)) / 745 - 1;
  expect(step).toBeCloseTo(-expansionCoefficient(kg(745)), 5);
});

test("lighter petrol expands more", () => {
  expect(expansionCoefficient(kg(690))).toBeGreaterThan(expansionCoefficient(kg(760)));
});

test("a density no liquid fuel has is a bug", () => {
  for (const density of [0, 400, 1200, -745, Number.NaN]) {
    expect(() => densityAt(kg(density), fromCelsius(20))).toThrow(RangeError);
  }
});
