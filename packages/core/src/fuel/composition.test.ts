import { expect, test } from "vitest";
import { molarMass, oxygenShareOf, stoichiometricRatioOf } from "./composition.ts";

test("burning carbon, hydrogen and methanol takes what chemistry says", () => {
  // Mass of oxygen for a unit mass, from whole atomic weights: C 32/12, H2 16/2, CH3OH 48/32; air holds 0.2314 of it by mass.
  expect(stoichiometricRatioOf({ carbon: 1, hydrogen: 0, oxygen: 0 })).toBeCloseTo(32 / 12 / 0.2314, 1);
  expect(stoichiometricRatioOf({ carbon: 0, hydrogen: 2, oxygen: 0 })).toBeCloseTo(8 / 0.2314, 0);
  expect(stoichiometricRatioOf({ carbon: 1, hydrogen: 4, oxygen: 1 })).toBeCloseTo(1.5 / 0.2314, 1);
});

test("size of the molecule does not matter, only its make-up", () => {
  const one = { carbon: 1, hydrogen: 2.25, oxygen: 0.1 };
  const eight = { carbon: 8, hydrogen: 18, oxygen: 0.8 };
  expect(stoichiometricRatioOf(one)).toBeCloseTo(stoichiometricRatioOf(eight), 12);
  expect(oxygenShareOf(one)).toBeCloseTo(oxygenShareOf(eight), 12);
});

test("oxygen share of ethanol is 16 of 46", () => {
  expect(oxygenShareOf({ carbon: 2, hydrogen: 6, oxygen: 1 })).toBeCloseTo(16 / 46.07, 3);
  expect(oxygenShareOf({ carbon: 8, hydrogen: 18, oxygen: 0 })).toBe(0);
});

test("no atoms, or fewer than none, is a bug", () => {
  expect(() => molarMass({ carbon: 0, hydrogen: 0, oxygen: 0 })).toThrow(RangeError);
  expect(() => molarMass({ carbon: 1, hydrogen: -1, oxygen: 0 })).toThrow(RangeError);
  expect(() => molarMass({ carbon: Number.NaN, hydrogen: 1, oxygen: 0 })).toThrow(RangeError);
  expect(() => molarMass({ carbon: Infinity, hydrogen: 1, oxygen: 0 })).toThrow(RangeError);
});
