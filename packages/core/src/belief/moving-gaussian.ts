import type { Gaussian } from "./prior.ts";

/** A direction with the places listed where it is not zero: most look at a few openings only. */
export interface Sight {
  readonly along: Float64Array;
  readonly places: readonly number[];
}

export const sightOf = (along: Float64Array): Sight => ({
  along,
  places: [...along.keys()].filter((i) => along[i] !== 0),
});

/** A Gaussian that takes in one stand-in after another. Only the lower triangle of its covariance is kept up. */
export interface MovingGaussian {
  readonly n: number;
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
  /** Covariance · direction last looked along, and the variance and mean there. */
  readonly reach: Float64Array;
  variance: number;
  at: number;
}

export const movingGaussian = ({ mean, covariance }: Gaussian): MovingGaussian => ({
  n: mean.length,
  mean: mean.slice(),
  covariance: covariance.slice(),
  reach: new Float64Array(mean.length),
  variance: 0,
  at: 0,
});

/** Looks along a direction: fills `reach`, `variance` and `at`. */
export function look(moving: MovingGaussian, { along, places }: Sight): void {
  const { n, mean, covariance, reach } = moving;
  reach.fill(0);
  let at = 0;
  for (let p = 0; p < places.length; p++) {
    const k = places[p]!;
    const weight = along[k]!;
    at += weight * mean[k]!;
    const row = k * n;
    for (let i = 0; i <= k; i++) reach[i] = reach[i]! + weight * covariance[row + i]!;
    for (let i = k + 1; i < n; i++) reach[i] = reach[i]! + weight * covariance[i * n + k]!;
  }
  let variance = 0;
  for (let p = 0; p < places.length; p++) variance += along[places[p]!]! * reach[places[p]!]!;
  moving.variance = variance;
  moving.at = at;
}

/** Takes in a factor exp(shift·s − ½·precision·s²) along the direction last looked along. */
export function absorb(moving: MovingGaussian, precision: number, shift: number): void {
  const { n, mean, covariance, reach, variance, at } = moving;
  const widen = 1 + precision * variance;
  const pull = (shift - precision * at) / widen;
  const shrink = precision / widen;
  for (let i = 0; i < n; i++) {
    const r = reach[i]!;
    mean[i] = mean[i]! + r * pull;
    const row = i * n;
    const scaled = r * shrink;
    for (let j = 0; j <= i; j++) covariance[row + j] = covariance[row + j]! - scaled * reach[j]!;
  }
}
