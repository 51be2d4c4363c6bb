import { describe, expect, test } from "vitest";
import { normalDensity } from "../numerics/normal.ts";
import { OPENINGS } from "../units/opening.ts";
import { expectedLinex, linex, MINUTES, STEEPNESS, TOP } from "./loss.ts";

describe("loss of a wrong mixture", () => {
  test("the expected loss is the average of the loss over the spread", () => {
    for (const [a, mean, sd] of [
      [10, 0.02, 0.05],
      [20, -0.04, 0.03],
      [14, 0.1, 0.08],
    ] as const) {
      const steps = 4000;
      let sum = 0;
      for (let i = 0; i <= steps; i++) {
        const z = mean + sd * (-8 + (16 * i) / steps);
        sum += linex(a, z) * normalDensity((z - mean) / sd) * (16 / steps);
      }
      expect(expectedLinex(a, mean, sd * sd)).toBeCloseTo(sum, 6);
    }
  });

  test("right costs nothing, and lean more than as much rich", () => {
    for (const a of STEEPNESS) {
      expect(linex(a, 0)).toBe(0);
      for (const error of [0.02, 0.05, 0.1]) {
        expect(linex(a, error)).toBeGreaterThan(0);
        expect(linex(a, -error)).toBeGreaterThan(linex(a, error));
      }
    }
  });

  test("doubt alone makes the best setting rich, and the more doubt the richer", () => {
    const best = (sd: number): number => {
      let at = -0.2;
      for (let m = -0.2; m <= 0.3; m += 0.001) {
        if (expectedLinex(20, m, sd * sd) < expectedLinex(20, at, sd * sd)) at = m;
      }
      return at;
    };
    // The minimum of the closed form is at a·variance/2 (Zellner 1986).
    expect(best(0.04)).toBeCloseTo((20 * 0.04 ** 2) / 2, 3);
    expect(best(0.08)).toBeCloseTo((20 * 0.08 ** 2) / 2, 3);
  });

  test("lean is steeper from half throttle up, and rich has one slope everywhere", () => {
    expect(STEEPNESS[OPENINGS.indexOf(OPENINGS[8]!)]).toBeGreaterThan(STEEPNESS[6]!);
    for (let i = 1; i < OPENINGS.length; i++) expect(STEEPNESS[i]).toBeGreaterThanOrEqual(STEEPNESS[i - 1]!);
    expect(STEEPNESS[0]).toBe(10);
    expect(STEEPNESS[10]).toBe(20);
    let slopes = 0;
    OPENINGS.forEach((_, i) => {
      slopes += MINUTES[i]! * STEEPNESS[i]!;
    });
    expect(slopes / 100).toBeCloseTo(300, 9); // minutes for each per cent rich everywhere
  });

  test("the top is from three quarters up", () => {
    expect(TOP).toEqual([0.75, 0.875, 1]);
  });
});
