import { describe, expect, test } from "vitest";
import { cholesky } from "../numerics/matrix.ts";
import { CIRCUITS } from "../units/circuit.ts";
import { OPENINGS } from "../units/opening.ts";
import { DEFAULT_PRIOR, priorGaussian } from "./prior.ts";
import { splitAlong } from "./split.ts";
import { FIRST_CIRCUIT, STATE_SIZE } from "./state.ts";

const n = STATE_SIZE;
const along = Float64Array.from({ length: n }, (_, i) => (i < 11 ? 1 / 11 : 0));
const at = (matrix: Float64Array, i: number, j: number): number => matrix[i * n + j]!;

describe("the prior", () => {
  test("is about right everywhere, by 10 % at the bottom and 7 % at the top", () => {
    const prior = priorGaussian();
    expect([...prior.mean.slice(0, 11)]).toEqual(OPENINGS.map(() => 0));
    expect(Math.sqrt(at(prior.covariance, 0, 0))).toBeCloseTo(Math.hypot(0.04, 0.085, 0.025), 12);
    expect(Math.sqrt(at(prior.covariance, 0, 0))).toBeCloseTo(0.1, 2);
    expect(Math.sqrt(at(prior.covariance, 10, 10))).toBeCloseTo(0.07, 2);
  });

  test("every circuit answers as the model says, within its own spread and apart from the rest", () => {
    const prior = priorGaussian();
    CIRCUITS.forEach((circuit, c) => {
      const i = FIRST_CIRCUIT + c;
      expect(prior.mean[i]).toBe(1);
      for (let j = 0; j < n; j++)
        expect(at(prior.covariance, i, j)).toBe(i === j ? DEFAULT_PRIOR.answerSd[circuit] ** 2 : 0);
    });
  });

  test("neighbours move together, in the square root of opening, over a common offset", () => {
    const prior = priorGaussian();
    // 1/16 and 1/4: square roots 0.25 apart; 0.080 and 0.065 are what each adds of its own.
    const own = 0.08 * 0.065 * Math.exp(-0.5 * (0.25 / 0.3) ** 2);
    expect(at(prior.covariance, 1, 4)).toBeCloseTo(0.04 ** 2 + own, 12);
    expect(at(prior.covariance, 4, 1)).toBe(at(prior.covariance, 1, 4));
    expect(at(prior.covariance, 1, 2)).toBeGreaterThan(at(prior.covariance, 1, 4));
  });

  test("[B22] each opening has something of its own: 2.5 % up to a quarter, 1.5 % at three eighths, 0.5 % from a half up", () => {
    const apart = (sd: number) => priorGaussian({ ...DEFAULT_PRIOR, apartSd: OPENINGS.map(() => sd) });
    const [usual, shared] = [priorGaussian(), apart(1e-3)];
    OPENINGS.forEach((opening, i) => {
      const own = opening <= 0.25 ? 0.025 : opening === 0.375 ? 0.015 : 0.005;
      const more = at(usual.covariance, i, i) - at(shared.covariance, i, i);
      expect(more, `${opening}`).toBeCloseTo(own ** 2 - 1e-6, 12);
      for (let j = 0; j < i; j++) expect(at(usual.covariance, i, j)).toBe(at(shared.covariance, i, j));
    });
  });

  test("takes means and spreads from its figures, and is a proper Gaussian", () => {
    const prior = priorGaussian();
    const means = OPENINGS.map((_, i) => i / 100);
    const other = priorGaussian({ ...DEFAULT_PRIOR, means, commonSd: 0.1 });
    expect([...other.mean.slice(0, 11)]).toEqual(means);
    expect(at(other.covariance, 0, 10) - at(prior.covariance, 0, 10)).toBeCloseTo(0.1 ** 2 - 0.04 ** 2, 12);
    expect(() => cholesky(prior.covariance, n)).not.toThrow();
  });
});

describe("a Gaussian in slices", () => {
  test("the slices together have its mean and covariance", () => {
    const prior = priorGaussian();
    const parts = splitAlong(prior, along);
    expect(parts.reduce((sum, { weight }) => sum + weight, 0)).toBeCloseTo(1, 14);
    for (let i = 0; i < n; i++) {
      expect(parts.reduce((sum, part) => sum + part.weight * part.prior.mean[i]!, 0)).toBeCloseTo(
        prior.mean[i]!,
        12,
      );
      for (let j = 0; j < n; j++) {
        const second = parts.reduce((sum, { weight, prior: { mean, covariance } }) => {
          const apart = (mean[i]! - prior.mean[i]!) * (mean[j]! - prior.mean[j]!);
          return sum + weight * (at(covariance, i, j) + apart);
        }, 0);
        expect(second).toBeCloseTo(at(prior.covariance, i, j), 12);
      }
    }
  });

  test("nodes and weights have the first nine moments of the standard normal: 1, 0, 1, 0, 3, 0, 15, 0, 105", () => {
    const prior = priorGaussian();
    const parts = splitAlong(prior, along);
    const variance = along.reduce(
      (sum, a, i) => sum + along.reduce((s, b, j) => s + a * b * at(prior.covariance, i, j), 0),
      0,
    );
    const nodes = parts.map(({ weight, prior: { mean } }) => {
      const moved = along.reduce((sum, a, i) => sum + a * (mean[i]! - prior.mean[i]!), 0);
      return { weight, node: moved / Math.sqrt(0.7 * variance) };
    });
    [1, 0, 1, 0, 3, 0, 15, 0, 105].forEach((moment, power) => {
      const ours = nodes.reduce((sum, { weight, node }) => sum + weight * node ** power, 0);
      expect(ours).toBeCloseTo(moment, 9);
    });
  });

  test("each slice keeps three tenths of the variance along the direction, and all of it across", () => {
    const prior = priorGaussian();
    const parts = splitAlong(prior, along);
    const across = Float64Array.from({ length: n }, (_, i) => (i === FIRST_CIRCUIT ? 1 : 0));
    const spread = (matrix: Float64Array, v: Float64Array): number =>
      v.reduce((sum, a, i) => sum + v.reduce((s, b, j) => s + a * b * at(matrix, i, j), 0), 0);
    for (const { prior: part } of parts) {
      expect(spread(part.covariance, along) / spread(prior.covariance, along)).toBeCloseTo(0.3, 12);
      expect(spread(part.covariance, across)).toBeCloseTo(spread(prior.covariance, across), 12);
    }
  });
});
