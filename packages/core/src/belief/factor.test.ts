import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { affine, blend, type Factor, factorValue, tilt } from "./factor.ts";

const density = (x: number, mean: number, variance: number): number =>
  Math.exp((-0.5 * (x - mean) ** 2) / variance) / Math.sqrt(2 * Math.PI * variance);

/** Moments of Gaussian · factor by Simpson's rule over ten standard deviations, apart from the closed forms. */
function bySimpson(factor: Factor, mean: number, variance: number) {
  const sd = Math.sqrt(variance);
  const steps = 20000;
  const from = mean - 10 * sd;
  const h = (20 * sd) / steps;
  let mass = 0;
  let first = 0;
  let second = 0;
  for (let i = 0; i <= steps; i++) {
    const x = from + i * h;
    const weight = ((i === 0 || i === steps ? 1 : i % 2 ? 4 : 2) * h) / 3;
    const value = weight * density(x, mean, variance) * factorValue(factor, x);
    mass += value;
    first += value * x;
    second += value * x * x;
  }
  return { mass, mean: first / mass, variance: second / mass - (first / mass) ** 2 };
}

const chance = fc.double({ min: 0.02, max: 1, noNaN: true });
const plateaus = fc.record({ rich: chance, right: chance, lean: chance });

describe("likelihood factors", () => {
  test("a blend is the plateaus far out and in the middle, and half-way between at its edges", () => {
    const factor = blend({ rich: 0.8, right: 0.3, lean: 0.1 }, 0.05, 0.005);
    expect(factorValue(factor, 0.3)).toBeCloseTo(0.8, 12);
    expect(factorValue(factor, 0)).toBeCloseTo(0.3, 12);
    expect(factorValue(factor, -0.3)).toBeCloseTo(0.1, 12);
    expect(factorValue(factor, 0.05)).toBeCloseTo(0.55, 12);
    expect(factorValue(factor, -0.05)).toBeCloseTo(0.2, 12);
  });

  test("an edge is as wide as it says: 84 % of the step one width beyond it", () => {
    const factor = blend({ rich: 1, right: 0, lean: 0 }, 0.05, 0.01);
    // Standard normal distribution at 1: 0.8413 (any printed table).
    expect(factorValue(factor, 0.06)).toBeCloseTo(0.8413, 4);
    expect(factorValue(factor, 0.04)).toBeCloseTo(0.1587, 4);
  });

  test("a blend stays between its plateaus", () => {
    fc.assert(
      fc.property(plateaus, fc.double({ min: -0.4, max: 0.4, noNaN: true }), (p, s) => {
        const value = factorValue(blend(p, 0.05, 0.02), s);
        expect(value).toBeGreaterThanOrEqual(Math.min(p.rich, p.right, p.lean) - 1e-12);
        expect(value).toBeLessThanOrEqual(Math.max(p.rich, p.right, p.lean) + 1e-12);
      }),
      { seed: 20261125 },
    );
  });

  test("a bump is a normal density: its height and its value one sd out", () => {
    const factor = { constant: 0.1, steps: [], bumps: [{ weight: 2, at: 0.03, sd: 0.02 }] };
    const peak = 2 / (0.02 * Math.sqrt(2 * Math.PI));
    expect(factorValue(factor, 0.03)).toBeCloseTo(0.1 + peak, 10);
    expect(factorValue(factor, 0.05)).toBeCloseTo(0.1 + peak * Math.exp(-0.5), 10);
  });

  test("mass, mean and variance agree with Simpson's rule for steps, bumps and both", () => {
    fc.assert(
      fc.property(
        plateaus,
        fc.double({ min: -0.15, max: 0.15, noNaN: true }),
        fc.double({ min: 0.01, max: 0.12, noNaN: true }),
        fc.double({ min: -0.1, max: 0.1, noNaN: true }),
        fc.constantFrom(0, 0.3),
        (p, mean, sd, at, weight) => {
          const factor = { ...blend(p, 0.05, 0.02), bumps: [{ weight, at, sd: 0.03 }] };
          const ours = tilt(factor, mean, sd * sd);
          const simpson = bySimpson(factor, mean, sd * sd);
          expect(ours.mass).toBeCloseTo(simpson.mass, 9);
          expect(ours.mean).toBeCloseTo(simpson.mean, 9);
          expect(ours.variance / simpson.variance).toBeCloseTo(1, 7);
        },
      ),
      { seed: 20261125, numRuns: 60 },
    );
  });

  test("a flat factor leaves the Gaussian as it was, with the constant as mass", () => {
    expect(tilt({ constant: 0.4, steps: [], bumps: [] }, 0.02, 0.01)).toEqual({
      mass: 0.4,
      mean: 0.02,
      variance: 0.01,
    });
  });

  test("affine scales and lifts every value", () => {
    const factor = {
      ...blend({ rich: 0.8, right: 0.3, lean: 0.1 }, 0.05, 0.02),
      bumps: [{ weight: 1, at: 0, sd: 0.1 }],
    };
    const changed = affine(factor, 3, 0.7);
    for (const s of [-0.2, -0.04, 0, 0.03, 0.2])
      expect(factorValue(changed, s)).toBeCloseTo(3 * factorValue(factor, s) + 0.7, 10);
  });
});
