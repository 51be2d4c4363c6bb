import { describe, expect, test } from "vitest";
import type { CubicMetre, Metre } from "../units/quantity.ts";
import { borrow } from "./borrowed.ts";
import { type Features, likeness } from "./likeness.ts";

const of = (
  change: { volume?: number; bore?: number } & Partial<Pick<Features, "strokes" | "use">> = {},
) => ({
  strokes: 2 as const,
  use: "enduro" as const,
  ...change,
  displacement: ((change.volume ?? 250) / 1e6) as CubicMetre,
  bore: ((change.bore ?? 36) / 1000) as Metre,
});
const like = (change: Parameters<typeof of>[0]) => likeness(of(), of(change));

describe("likeness", () => {
  test("1 to itself, the same both ways", () => {
    expect(like({})).toBe(1);
    expect(likeness(of({ volume: 125, use: "race" }), of({ bore: 30 }))).toBe(
      likeness(of({ bore: 30 }), of({ volume: 125, use: "race" })),
    );
  });
  test("fades by the square of the log of displacement and of bore", () => {
    const oneReach = Math.exp(-0.5);
    expect(like({ volume: 250 * Math.exp(0.35) })).toBeCloseTo(oneReach, 12);
    expect(like({ volume: 250 / Math.exp(0.35) })).toBeCloseTo(oneReach, 12);
    expect(like({ bore: 36 * Math.exp(0.15) })).toBeCloseTo(oneReach, 12);
    expect(like({ volume: 250 * Math.exp(0.7), bore: 36 * Math.exp(-0.15) })).toBeCloseTo(Math.exp(-2.5), 12);
  });
  test("the next use shares four fifths, the one after less, other strokes a tenth", () => {
    expect(like({ use: "race" })).toBe(0.8);
    expect(like({ use: "trail" })).toBe(0.8);
    expect(like({ use: null })).toBe(1);
    expect(likeness(of({ use: "trail" }), of({ use: "race" }))).toBeCloseTo(0.64, 12);
    expect(like({ strokes: 4 })).toBe(0.1);
  });
});

describe("what other bikes say", () => {
  const THEORY = 0.07;
  const TWIN = 0.025;
  const shared = THEORY * THEORY - TWIN * TWIN;

  test("nobody: theory and its spread", () => {
    expect(borrow(of(), [], THEORY, TWIN)).toEqual({ offset: 0, sd: THEORY, weights: [] });
  });

  // Closed form for n equal examples: precision of theory 1/shared against n/(twin² + sd²).
  test.each([1, 2, 5, 20])("%i twins: the precision-weighted mean", (n) => {
    const sd = 0.01;
    const twins = Array.from({ length: n }, () => ({ features: of(), offset: 0.1, sd }));
    const result = borrow(of(), twins, THEORY, TWIN);
    const precision = n / (TWIN * TWIN + sd * sd);
    const weight = precision / (precision + 1 / shared);
    expect(result.offset).toBeCloseTo(0.1 * weight, 12);
    expect(result.weights.reduce((a, b) => a + b)).toBeCloseTo(weight, 12);
    expect(result.sd).toBeCloseTo(Math.sqrt(1 / (precision + 1 / shared) + TWIN * TWIN), 12);
  });

  test("one example partly alike pulls by its likeness", () => {
    const half = of({ volume: 250 * Math.exp(0.35) });
    const result = borrow(of(), [{ features: half, offset: 0.1, sd: 0 }], THEORY, TWIN);
    const weight = (Math.exp(-0.5) * shared) / (shared + TWIN * TWIN);
    expect(result.offset).toBeCloseTo(0.1 * weight, 12);
    expect(result.sd).toBeCloseTo(Math.sqrt(shared - weight * Math.exp(-0.5) * shared + TWIN * TWIN), 12);
  });

  test("ten clones of a far bike do not outweigh one twin", () => {
    const far = Array.from({ length: 10 }, () => ({
      features: of({ volume: 125, use: "race", bore: 38 }),
      offset: -0.1,
      sd: 0,
    }));
    const { offset, weights } = borrow(of(), [...far, { features: of(), offset: 0.1, sd: 0 }], THEORY, TWIN);
    expect(weights[10]!).toBeGreaterThan(0.8);
    expect(offset).toBeGreaterThan(0.07);
  });

  test("a bug of ours throws", () => {
    expect(() => borrow(of(), [], 0.02, 0.025)).toThrow("must be above");
    expect(() => borrow(of(), [], 0.02, 0)).toThrow("must be above");
  });
});
