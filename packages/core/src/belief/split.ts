import { multiplyInto } from "../numerics/matrix.ts";
import type { Gaussian } from "./prior.ts";

/**
 * Nodes and weights that turn an average over a standard normal into a sum: Gauss–Hermite, five points.
 * Source: Abramowitz and Stegun (1964), table 25.10 [memory], scaled by √2 and √π; the test recovers the
 * first nine moments of the normal from them.
 */
export const NODES = [-2.856970013872806, -1.355626179974266, 0, 1.355626179974266, 2.856970013872806];
export const WEIGHTS = [
  0.011257411327720693, 0.2220759220056126, 0.5333333333333333, 0.2220759220056126, 0.011257411327720693,
];

/** Share of the variance along the direction that each narrow part keeps: wide enough to leave no gaps. */
const KEPT = 0.3;

export interface Part {
  readonly weight: number;
  readonly prior: Gaussian;
}

/**
 * A Gaussian as a sum of five narrower ones side by side along a direction; all else stays as it was. Mean
 * and covariance of the sum are the Gaussian's own.
 */
export function splitAlong(whole: Gaussian, along: Float64Array): readonly Part[] {
  const n = whole.mean.length;
  const reach = new Float64Array(n);
  multiplyInto(reach, whole.covariance, n, along);
  let variance = 0;
  for (let i = 0; i < n; i++) variance += along[i]! * reach[i]!;
  const covariance = new Float64Array(n * n);
  for (let i = 0; i < n; i++) {
    for (let j = 0; j < n; j++) {
      const taken = ((1 - KEPT) * reach[i]! * reach[j]!) / variance;
      covariance[i * n + j] = whole.covariance[i * n + j]! - taken;
    }
  }
  const scale = Math.sqrt((1 - KEPT) / variance);
  return NODES.map((node, k) => ({
    weight: WEIGHTS[k]!,
    prior: { mean: whole.mean.map((value, i) => value + reach[i]! * scale * node), covariance },
  }));
}
