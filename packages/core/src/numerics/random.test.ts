import { describe, expect, test } from "vitest";
import { seededRandom } from "./random.ts";

const take = (count: number, draw: () => number): number[] => Array.from({ length: count }, draw);

describe("seeded numbers", () => {
  test("the same number gives the same stream, another gives another", () => {
    expect(take(50, seededRandom(7).uniform)).toEqual(take(50, seededRandom(7).uniform));
    expect(take(50, seededRandom(8).uniform)).not.toEqual(take(50, seededRandom(7).uniform));
    expect(take(9, seededRandom(7).normal)).toEqual(take(9, seededRandom(7).normal));
  });

  test("the lowest 32 bits count", () => {
    expect(take(5, seededRandom(7 + 2 ** 32).uniform)).toEqual(take(5, seededRandom(7).uniform));
  });

  test("uniform numbers are spread evenly from 0 to below 1, and do not follow one another", () => {
    const values = take(100_000, seededRandom(1).uniform);
    const counts = new Array<number>(100).fill(0);
    for (const value of values) counts[Math.floor(value * 100)]! += 1;
    expect(counts).toHaveLength(100);
    // Chi-squared with 99 degrees of freedom: within 99 ± 5·√198.
    const chiSquared = counts.reduce((sum, count) => sum + (count - 1000) ** 2 / 1000, 0);
    expect(Math.abs(chiSquared - 99)).toBeLessThan(5 * Math.sqrt(198));
    const follow =
      values.slice(1).reduce((sum, value, i) => sum + (value - 0.5) * (values[i]! - 0.5), 0) * 12;
    expect(Math.abs(follow / values.length)).toBeLessThan(5 / Math.sqrt(values.length));
  });

  test("normal numbers have the moments 0, 1, 0 and 3, and two thirds lie within one", () => {
    const values = take(200_000, seededRandom(2).normal);
    const moment = (power: number): number => values.reduce((sum, x) => sum + x ** power, 0) / values.length;
    // Five standard errors: the moments' own variances are 1, 2, 15 and 96.
    expect(Math.abs(moment(1))).toBeLessThan(5 / Math.sqrt(values.length));
    expect(Math.abs(moment(2) - 1)).toBeLessThan((5 * Math.sqrt(2)) / Math.sqrt(values.length));
    expect(Math.abs(moment(3))).toBeLessThan((5 * Math.sqrt(15)) / Math.sqrt(values.length));
    expect(Math.abs(moment(4) - 3)).toBeLessThan((5 * Math.sqrt(96)) / Math.sqrt(values.length));
    // Normal distribution: 68.27 % within one standard deviation (any printed table).
    expect(values.filter((x) => Math.abs(x) < 1).length / values.length).toBeCloseTo(0.6827, 2);
    const follow = values.slice(1).reduce((sum, x, i) => sum + x * values[i]!, 0) / values.length;
    expect(Math.abs(follow)).toBeLessThan(5 / Math.sqrt(values.length));
  });
});
