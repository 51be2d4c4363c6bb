import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { propagate } from "./expectation-propagation.ts";
import { blend, type Factor, tilt } from "./factor.ts";
import { look, movingGaussian, sightOf } from "./moving-gaussian.ts";
import { multiplied, prepare } from "./precision-form.ts";
import { type Gaussian, priorGaussian } from "./prior.ts";

const seed = 20261125;
const prior = priorGaussian();
const n = prior.mean.length;
const prepared = prepare(prior);
const small = fc.double({ min: -0.5, max: 0.5, noNaN: true });
const sight = fc
  .array(small, { minLength: n, maxLength: n })
  .map((values) => sightOf(Float64Array.from(values, (value) => (Math.abs(value) < 0.2 ? 0 : value))))
  .filter(({ places }) => places.length > 0);
const plain = (error: number, sd: number): Factor => ({
  constant: 0,
  steps: [],
  bumps: [{ weight: 1, at: error, sd }],
});
const reading = fc.record({
  sight,
  error: fc.double({ min: -0.2, max: 0.2, noNaN: true }),
  sd: fc.double({ min: 0.01, max: 0.1, noNaN: true }),
});

/** Kalman update with one measurement: the closed form, in its textbook shape. */
function kalman({ mean, covariance }: Gaussian, h: Float64Array, error: number, sd: number) {
  const ph = mean.map((_, i) => h.reduce((sum, value, j) => sum + covariance[i * n + j]! * value, 0));
  const innovation = sd * sd + h.reduce((sum, value, i) => sum + value * ph[i]!, 0);
  const miss = error - h.reduce((sum, value, i) => sum + value * mean[i]!, 0);
  const gaussian: Gaussian = {
    mean: mean.map((value, i) => value + (ph[i]! * miss) / innovation),
    covariance: covariance.map((value, k) => value - (ph[Math.floor(k / n)]! * ph[k % n]!) / innovation),
  };
  return { gaussian, logEvidence: -0.5 * (Math.log(2 * Math.PI * innovation) + miss ** 2 / innovation) };
}

const expectSame = (a: Gaussian, b: Gaussian, digits: number): void => {
  for (let i = 0; i < n; i++) expect(a.mean[i]).toBeCloseTo(b.mean[i]!, digits);
  for (let k = 0; k < n * n; k++) expect(a.covariance[k]).toBeCloseTo(b.covariance[k]!, digits);
};

describe("expectation propagation", () => {
  test("without evidence the prior stays, with evidence 1", () => {
    const none = propagate(prepared, [], []);
    expectSame(none.posterior, prior, 10);
    expect(none.logEvidence).toBeCloseTo(0, 10);
    expect(none.converged).toBe(true);
    expect(none.sweeps).toBe(0);
  });

  test("[B9] is exact for plain Gaussian measurements: mean, covariance and evidence of the Kalman update", () => {
    fc.assert(
      fc.property(fc.array(reading, { minLength: 1, maxLength: 5 }), (readings) => {
        let exact: Gaussian = prior;
        let logEvidence = 0;
        for (const { sight, error, sd } of readings) {
          const next = kalman(exact, sight.along, error, sd);
          exact = next.gaussian;
          logEvidence += next.logEvidence;
        }
        const ours = propagate(
          prepared,
          readings.map(({ sight }) => sight),
          readings.map(({ error, sd }) => plain(error, sd)),
        );
        expectSame(ours.posterior, exact, 8);
        expect(ours.logEvidence).toBeCloseTo(logEvidence, 6);
        expect(ours.converged).toBe(true);
        expect(ours.careful).toBe(false);
      }),
      { seed, numRuns: 40 },
    );
  });

  test("[B9] is exact for one sign: mass, mean and variance along it, and the rest moves with it", () => {
    const along = sightOf(
      Float64Array.from({ length: n }, (_, i) => (i === 4 ? 0.75 : i === 5 ? 0.25 : i === 14 ? 0.1 : 0)),
    );
    const factor = blend({ rich: 0.7, right: 0.1, lean: 0.3 }, 0.05, 0.02);
    const { posterior, logEvidence } = propagate(prepared, [along], [factor]);
    const before = movingGaussian(prior);
    look(before, along);
    const exact = tilt(factor, before.at, before.variance);
    const after = movingGaussian(posterior);
    look(after, along);
    expect(logEvidence).toBeCloseTo(Math.log(exact.mass), 9);
    expect(after.at).toBeCloseTo(exact.mean, 9);
    expect(after.variance).toBeCloseTo(exact.variance, 9);
    // Any other place moves by its covariance with the sight over the sight's variance.
    const expected = prior.mean[10]! + (before.reach[10]! / before.variance) * (exact.mean - before.at);
    expect(posterior.mean[10]).toBeCloseTo(expected, 9);
  });

  const signs = fc.array(
    fc.record({
      sight: fc
        .integer({ min: 0, max: 10 })
        .map((i) => sightOf(Float64Array.from({ length: n }, (_, k) => (k === i ? 1 : 0)))),
      factor: fc
        .record({
          rich: fc.double({ min: 0.1, max: 1, noNaN: true }),
          right: fc.double({ min: 0.1, max: 1, noNaN: true }),
          lean: fc.double({ min: 0.1, max: 1, noNaN: true }),
        })
        .map((plateaus) => blend(plateaus, 0.05, 0.0225)),
    }),
    { minLength: 1, maxLength: 12 },
  );

  test("comes to rest, and where it starts changes the end by less than a hundredth of a spread", () => {
    fc.assert(
      fc.property(signs, (told) => {
        const sights = told.map(({ sight }) => sight);
        const factors = told.map(({ factor }) => factor);
        const cold = propagate(prepared, sights, factors);
        const elsewhere = propagate(
          prepared,
          sights,
          factors.map(() => plain(0.05, 0.2)),
        );
        const warm = propagate(prepared, sights, factors, { from: elsewhere });
        expect(cold.converged && warm.converged && cold.proper && warm.proper).toBe(true);
        if (cold.careful || warm.careful) return;
        for (let i = 0; i < n; i++) {
          const sd = Math.sqrt(cold.posterior.covariance[i * n + i]!);
          expect(Math.abs(cold.posterior.mean[i]! - warm.posterior.mean[i]!) / sd).toBeLessThan(0.01);
        }
        expect(warm.logEvidence).toBeCloseTo(cold.logEvidence, 2);
      }),
      { seed, numRuns: 100 },
    );
  });

  test("evidence does not depend on how the prior was reached: stands and constants give it back", () => {
    fc.assert(
      fc.property(signs, (told) => {
        const sights = told.map(({ sight }) => sight);
        const factors = told.map(({ factor }) => factor);
        const { stands, constants, logEvidence, posterior } = propagate(prepared, sights, factors);
        const { gaussian, logMass } = multiplied(prepared, sights, stands);
        expectSame(gaussian, posterior, 12);
        const sum = constants.reduce((total, constant) => total + constant, logMass - prepared.logMass);
        expect(logEvidence).toBeCloseTo(sum, 12);
      }),
      { seed, numRuns: 20 },
    );
  });

  test("visiting a few sites leaves the stand-ins of the others", () => {
    const sights = [3, 6, 9].map((i) =>
      sightOf(Float64Array.from({ length: n }, (_, k) => (k === i ? 1 : 0))),
    );
    const before = [0.8, 0.4, 0.6].map((rich) => blend({ rich, right: 0.2, lean: 0.1 }, 0.05, 0.02));
    const from = propagate(prepared, sights, before);
    const after = [before[0]!, blend({ rich: 0.1, right: 0.2, lean: 0.9 }, 0.05, 0.02), before[2]!];
    const partly = propagate(prepared, sights, after, { from, only: [1] });
    expect(partly.stands[0]).toEqual(from.stands[0]);
    expect(partly.stands[2]).toEqual(from.stands[2]);
    expect(partly.stands[1]).not.toEqual(from.stands[1]);
    const wholly = propagate(prepared, sights, after, { from });
    expect(Math.abs(partly.logEvidence - wholly.logEvidence)).toBeLessThan(0.15);
    expect(partly.posterior.mean[6]).toBeCloseTo(wholly.posterior.mean[6]!, 1);
    expect(partly.posterior.mean[6]).toBeLessThan(from.posterior.mean[6]! - 0.02);
    expect(from.stands[1]).not.toBe(partly.stands[1]);
  });

  test("[B14] hundreds of contradictory two-sided signs come to rest within the prior's reach", () => {
    const two = blend({ rich: 0.9, right: 0.1, lean: 0.9 }, 0.05, 0.02);
    const one = blend({ rich: 0.9, right: 0.1, lean: 0.1 }, 0.05, 0.02);
    const sights = Array.from({ length: 200 }, (_, i) =>
      sightOf(Float64Array.from({ length: n }, (_, k) => (k === i % 11 ? 1 : 0))),
    );
    const { posterior, converged, proper, stands, careful, logEvidence } = propagate(
      prepared,
      sights,
      sights.map((_, i) => (i % 3 === 0 ? one : two)),
    );
    expect(converged && proper).toBe(true);
    expect(Number.isFinite(logEvidence)).toBe(true);
    for (let i = 0; i < 11; i++) expect(Math.abs(posterior.mean[i]!)).toBeLessThan(0.5);
    if (careful) for (const { precision } of stands) expect(precision).toBeGreaterThanOrEqual(0);
  });

  test("too few sweeps are said, unless a moving result is wanted", () => {
    const sights = [3, 4, 5, 6].map((i) =>
      sightOf(Float64Array.from({ length: n }, (_, k) => (k === i ? 1 : 0))),
    );
    const factors = sights.map((_, i) =>
      blend({ rich: 0.9, right: 0.2, lean: i % 2 ? 0.1 : 0.8 }, 0.05, 0.02),
    );
    const moving = propagate(prepared, sights, factors, { maxSweeps: 1, keepMoving: true });
    expect([moving.converged, moving.careful, moving.sweeps]).toEqual([false, false, 1]);
    const careful = propagate(prepared, sights, factors, { maxSweeps: 1 });
    expect(careful.careful).toBe(true);
    expect(careful.converged).toBe(true);
  });
});
