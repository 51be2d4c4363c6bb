import { describe, expect, test } from "vitest";
import { fromCelsius } from "../units/convert.ts";
import { viscosityRatio } from "./viscosity.ts";

const petrol = { ethanol: 0, alkylate: 0 };
const twenty = fromCelsius(20);

test("neat petrol at 20 °C is the reference", () => {
  const { ratio, low, high } = viscosityRatio(petrol, 0, twenty);
  for (const value of [ratio, low, high]) expect(value).toBeCloseTo(1, 12);
});

test("colder is thicker: 1.64 times at -20 °C, and 1.28 at 0 °C", () => {
  expect(viscosityRatio(petrol, 0, fromCelsius(-20)).ratio).toBeCloseTo(1.64, 10);
  expect(viscosityRatio(petrol, 0, fromCelsius(0)).ratio).toBeCloseTo(1.28, 2);
});

test("pure ethanol reaches the table's values", () => {
  const ethanol = { ethanol: 1, alkylate: 0 };
  expect(viscosityRatio(ethanol, 0, twenty).ratio * 0.58).toBeCloseTo(1.5, 10);
  expect(viscosityRatio(ethanol, 0, fromCelsius(-20)).ratio * 0.58).toBeCloseTo(3.435, 2);
  expect(viscosityRatio({ ethanol: 0, alkylate: 1 }, 0, twenty).ratio * 0.58).toBeCloseTo(0.6, 10);
});

describe("oil thickens, between the two rules", () => {
  test.each([1 / 100, 1 / 50, 1 / 32, 1 / 20])("oil %f", (oil) => {
    const { ratio, low, high } = viscosityRatio(petrol, oil, twenty);
    expect(low).toBeGreaterThan(1);
    expect(ratio).toBeGreaterThan(low);
    expect(high).toBeGreaterThan(ratio);
    expect(viscosityRatio(petrol, oil * 1.1, twenty).ratio).toBeGreaterThan(ratio);
  });

  test("50:1 by the logarithmic rule is about 11 % thicker", () => {
    // ln(129/0.58) = 5.40 at 1.961 % oil: exp(0.1060) = 1.112, worked by hand from a 129 mm²/s oil.
    expect(viscosityRatio(petrol, 1 / 50, twenty).ratio).toBeCloseTo(1.112, 2);
  });
});
