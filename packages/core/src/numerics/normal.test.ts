import { standardNormalTable } from "simple-statistics";
import { describe, expect, test } from "vitest";
import { normalCumulative, normalDensity } from "./normal.ts";

describe("normal distribution", () => {
  test("agrees with a statistics package's table to its four digits", () => {
    standardNormalTable.forEach((value, i) => {
      expect(normalCumulative(i / 100)).toBeCloseTo(value, 3);
    });
  });

  test("agrees with Simpson's rule on the density", () => {
    for (const x of [0.3, 1, 1.96, 3, 5, 7]) {
      const steps = 2000;
      let sum = normalDensity(0) + normalDensity(x);
      for (let i = 1; i < steps; i++) sum += (i % 2 ? 4 : 2) * normalDensity((x * i) / steps);
      expect(normalCumulative(x)).toBeCloseTo(0.5 + (sum * x) / steps / 3, 12);
    }
  });

  test("far tails and symmetry", () => {
    // Abramowitz and Stegun, table 26.2 [memory]: Q(8) = 6.220961e-16.
    expect(normalCumulative(-8) / 6.220961e-16).toBeCloseTo(1, 6);
    expect(normalCumulative(-40)).toBe(0);
    expect(normalCumulative(40)).toBe(1);
    for (const x of [0.1, 2, 6]) expect(normalCumulative(x) + normalCumulative(-x)).toBeCloseTo(1, 15);
  });
});
