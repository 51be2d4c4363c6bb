import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cholesky, solveWithCholesky } from "../numerics/matrix.ts";
import { absorb, look, movingGaussian, sightOf } from "./moving-gaussian.ts";
import { moved, multiplied, prepare } from "./precision-form.ts";
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

describe("Gaussians on the move", () => {
  test("absorbing a stand-in is multiplying by it: one step against the precision form", () => {
    fc.assert(
      fc.property(
        sight,
        fc.double({ min: -20, max: 200, noNaN: true }),
        fc.double({ min: -5, max: 5, noNaN: true }),
        (one, precision, shift) => {
          const moving = movingGaussian(prior);
          look(moving, one);
          fc.pre(1 + precision * moving.variance > 0.2);
          absorb(moving, precision, shift);
          const { gaussian } = multiplied(prepared, [one], [{ precision, shift }]);
          for (let i = 0; i < n; i++) {
            expect(moving.mean[i]).toBeCloseTo(gaussian.mean[i]!, 8);
            for (let j = 0; j <= i; j++)
              expect(moving.covariance[i * n + j]).toBeCloseTo(gaussian.covariance[i * n + j]!, 8);
          }
        },
      ),
      { seed, numRuns: 60 },
    );
  });

  test("looking along a direction gives the mean and variance there", () => {
    fc.assert(
      fc.property(sight, (one) => {
        const moving = movingGaussian(prior);
        // Only the lower triangle is kept up: what is above must not be read.
        for (let i = 0; i < n; i++) for (let j = i + 1; j < n; j++) moving.covariance[i * n + j] = Number.NaN;
        look(moving, one);
        let variance = 0;
        for (let i = 0; i < n; i++)
          for (let j = 0; j < n; j++)
            variance += one.along[i]! * one.along[j]! * prior.covariance[i * n + j]!;
        expect(moving.variance).toBeCloseTo(variance, 12);
        expect(moving.at).toBeCloseTo(
          one.along.reduce((sum, a, i) => sum + a * prior.mean[i]!, 0),
          12,
        );
      }),
      { seed, numRuns: 60 },
    );
  });

  test("a sight lists the places that are not zero", () => {
    expect(sightOf(Float64Array.of(0, 0.5, 0, -1)).places).toEqual([1, 3]);
  });

  test("a Gaussian moved is as if prepared anew, and its mass is ½·m·P·m less half the log determinant of P", () => {
    const other: Gaussian = { mean: prior.mean.map((_, i) => i / 50), covariance: prior.covariance };
    const anew = prepare(other);
    const shifted = moved(prepared, other);
    expect(shifted.logMass).toBeCloseTo(anew.logMass, 8);
    for (let i = 0; i < n; i++)
      expect(shifted.shift[i]! / (anew.shift[i]! || 1)).toBeCloseTo(anew.shift[i] ? 1 : 0, 6);
    const lower = cholesky(prior.covariance, n);
    const solved = solveWithCholesky(lower, n, other.mean);
    let mass = other.mean.reduce((sum, m, i) => sum + 0.5 * m * solved[i]!, 0);
    for (let i = 0; i < n; i++) mass += Math.log(lower[i * n + i]!);
    expect(anew.logMass).toBeCloseTo(mass, 8);
  });
});
