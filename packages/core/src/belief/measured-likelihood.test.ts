import { describe, expect, test } from "vitest";
import { factorValue } from "./factor.ts";
import { measuredLikelihood } from "./measured-likelihood.ts";

describe("likelihood of a measurement", () => {
  test("[B11] its mass over the range of a wrong reading is one, one part in twenty of it flat", () => {
    const factor = measuredLikelihood(0.02, 0.02);
    const steps = 6000;
    let mass = 0;
    for (let i = 0; i < steps; i++)
      mass += (factorValue(factor, -0.3 + (0.6 * (i + 0.5)) / steps) * 0.6) / steps;
    expect(mass).toBeCloseTo(1, 6);
    expect(factorValue(factor, 0.3)).toBeCloseTo(0.05 / 0.6, 6);
  });

  test("[B11] it peaks at the reading and falls by the square root of e one sd away", () => {
    const factor = measuredLikelihood(-0.04, 0.03);
    const floor = factor.constant;
    const above = (s: number): number => factorValue(factor, s) - floor;
    expect(above(-0.01) / above(-0.04)).toBeCloseTo(Math.exp(-0.5), 10);
    expect(above(-0.07)).toBeCloseTo(above(-0.01), 10);
  });

  test("a spread that is not above 0 is our own mistake, and says so", () => {
    for (const sd of [0, -0.01, Number.NaN])
      expect(() => measuredLikelihood(0, sd)).toThrow(/standard deviation above 0/);
  });
});
