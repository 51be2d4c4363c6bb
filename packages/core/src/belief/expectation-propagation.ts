import { log } from "../numerics/elementary.ts";
import { cholesky, inverseFromCholesky, multiplyInto, solveWithCholesky } from "../numerics/matrix.ts";
import { type Factor, tilt } from "./factor.ts";
import type { Gaussian } from "./prior.ts";

/**
 * Expectation propagation with one-dimensional projections.
 * Source: T. P. Minka, "Expectation propagation for approximate Bayesian inference" (2001), and for the
 * evidence C. E. Rasmussen and C. K. I. Williams, Gaussian Processes for Machine Learning (2006), sections
 * 3.6 and 3.7 [both from memory]. Checked against importance sampling in believe.slow.test.ts.
 */

/** A Gaussian stand-in for one factor along its direction: exp(shift·s − ½·precision·s²). */
export interface Stand {
  precision: number;
  shift: number;
}

export interface Propagated {
  readonly posterior: Gaussian;
  readonly stands: readonly Stand[];
  /** Natural log of the evidence of all factors together. */
  readonly logEvidence: number;
  readonly sweeps: number;
  readonly converged: boolean;
}

const MAX_SWEEPS = 60;
/** A sweep that moves no site's mean by more than this many of its standard deviations is the last. */
const STILL = 1e-5;

/** log of the integral of exp(shift·s − ½·precision·s²), up to a constant that cancels. */
const logMass = (precision: number, shift: number): number =>
  -0.5 * log(precision) + (0.5 * shift * shift) / precision;

interface Work {
  readonly n: number;
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
  readonly along: Float64Array;
}

/** Adds a factor exp(shift·s − ½·precision·s²) along a direction; `reach` is covariance·direction. */
function addStand(work: Work, variance: number, at: number, precision: number, shift: number): void {
  const { n, mean, covariance, along: reach } = work;
  const widen = 1 + precision * variance;
  const pull = (shift - precision * at) / widen;
  const shrink = precision / widen;
  for (let i = 0; i < n; i++) {
    const r = reach[i]!;
    mean[i] = mean[i]! + r * pull;
    const row = i * n;
    const scaled = r * shrink;
    for (let j = 0; j < n; j++) covariance[row + j] = covariance[row + j]! - scaled * reach[j]!;
  }
}

/**
 * Posterior of a Gaussian prior and factors along directions.
 * @param start stand-ins to start from, such as those of a nearby problem; changes the way there, and the
 * result only within the stopping tolerance
 */
export function propagate(
  prior: Gaussian,
  directions: readonly Float64Array[],
  factors: readonly Factor[],
  start: readonly Stand[] | null = null,
): Propagated {
  const n = prior.mean.length;
  const priorLower = cholesky(prior.covariance, n);
  const priorPrecision = inverseFromCholesky(priorLower, n);
  const priorShift = solveWithCholesky(priorLower, n, prior.mean);
  const stands: Stand[] = directions.map((_, i) => ({
    precision: start?.[i]?.precision ?? 0,
    shift: start?.[i]?.shift ?? 0,
  }));
  let { mean, covariance, lower } = rebuild(n, priorPrecision, priorShift, directions, stands);
  const work: Work = { n, mean, covariance, along: new Float64Array(n) };
  let sweeps = 0;
  let converged = directions.length === 0;
  while (!converged && sweeps < MAX_SWEEPS) {
    const damping = sweeps < 8 ? 1 : sweeps < 25 ? 0.6 : 0.3;
    let moved = 0;
    for (let i = 0; i < directions.length; i++)
      moved = Math.max(moved, visit(work, directions[i]!, factors[i]!, stands[i]!, damping));
    sweeps++;
    converged = moved < STILL;
    ({ mean, covariance, lower } = rebuild(n, priorPrecision, priorShift, directions, stands));
    work.mean.set(mean);
    work.covariance.set(covariance);
  }
  const logEvidence =
    gaussianLogMass(n, lower, mean, shiftOf(n, priorShift, directions, stands)) -
    gaussianLogMass(n, cholesky(priorPrecision, n), prior.mean, priorShift) +
    standNormalisers(work, directions, factors, stands);
  return { posterior: { mean, covariance }, stands, logEvidence, sweeps, converged };
}

/** One site: take its stand-in out, put the true factor in, match mean and variance. Gives the move. */
function visit(work: Work, direction: Float64Array, factor: Factor, stand: Stand, damping: number): number {
  const { n, mean, covariance, along: reach } = work;
  multiplyInto(reach, covariance, n, direction);
  let variance = 0;
  let at = 0;
  for (let i = 0; i < n; i++) {
    variance += direction[i]! * reach[i]!;
    at += direction[i]! * mean[i]!;
  }
  if (!(variance > 1e-14)) return 0;
  const cavityPrecision = 1 / variance - stand.precision;
  if (!(cavityPrecision > 1e-9)) return 0;
  const cavityShift = at / variance - stand.shift;
  const tilted = tilt(factor, cavityShift / cavityPrecision, 1 / cavityPrecision);
  if (!(tilted.variance > 0) || !(tilted.mass > 0)) return 0;
  const precision = damping * (1 / tilted.variance - cavityPrecision - stand.precision);
  const shift = damping * (tilted.mean / tilted.variance - cavityShift - stand.shift);
  if (1 + precision * variance < 1e-3) return 0; // would leave no proper Gaussian: wait for the next sweep
  addStand(work, variance, at, precision, shift);
  stand.precision += precision;
  stand.shift += shift;
  const width = Math.sqrt(variance);
  return Math.abs(tilted.mean - at) / width + Math.abs(Math.sqrt(tilted.variance) - width) / width;
}

function shiftOf(
  n: number,
  priorShift: Float64Array,
  directions: readonly Float64Array[],
  stands: readonly Stand[],
): Float64Array {
  const shift = Float64Array.from(priorShift);
  directions.forEach((direction, i) => {
    for (let k = 0; k < n; k++) shift[k] = shift[k]! + stands[i]!.shift * direction[k]!;
  });
  return shift;
}

/** The posterior afresh from prior and stand-ins, so that rounding never builds up. */
function rebuild(
  n: number,
  priorPrecision: Float64Array,
  priorShift: Float64Array,
  directions: readonly Float64Array[],
  stands: readonly Stand[],
): { mean: Float64Array; covariance: Float64Array; lower: Float64Array } {
  const precision = Float64Array.from(priorPrecision);
  directions.forEach((direction, i) => {
    const weight = stands[i]!.precision;
    for (let r = 0; r < n; r++) {
      const scaled = weight * direction[r]!;
      if (scaled === 0) continue;
      for (let c = 0; c < n; c++) precision[r * n + c] = precision[r * n + c]! + scaled * direction[c]!;
    }
  });
  const lower = cholesky(precision, n);
  const mean = solveWithCholesky(lower, n, shiftOf(n, priorShift, directions, stands));
  return { mean, covariance: inverseFromCholesky(lower, n), lower };
}

/** log ∫ exp(shift·x − ½ xᵀ·precision·x) dx up to a constant, from the triangle of the precision. */
function gaussianLogMass(
  n: number,
  lower: Float64Array,
  mean: ArrayLike<number>,
  shift: Float64Array,
): number {
  let sum = 0;
  for (let i = 0; i < n; i++) sum += 0.5 * mean[i]! * shift[i]! - log(lower[i * n + i]!);
  return sum;
}

/** Σ log of the constant that gives each stand-in the same mass as its factor in the cavity. */
function standNormalisers(
  work: Work,
  directions: readonly Float64Array[],
  factors: readonly Factor[],
  stands: readonly Stand[],
): number {
  const { n, mean, covariance, along: reach } = work;
  let sum = 0;
  for (let i = 0; i < directions.length; i++) {
    const direction = directions[i]!;
    multiplyInto(reach, covariance, n, direction);
    let variance = 0;
    let at = 0;
    for (let k = 0; k < n; k++) {
      variance += direction[k]! * reach[k]!;
      at += direction[k]! * mean[k]!;
    }
    const stand = stands[i]!;
    if (!(variance > 1e-14)) continue;
    const precision = 1 / variance;
    const cavityPrecision = precision - stand.precision;
    if (!(cavityPrecision > 1e-9)) continue;
    const cavityShift = at * precision - stand.shift;
    const { mass } = tilt(factors[i]!, cavityShift / cavityPrecision, 1 / cavityPrecision);
    sum += log(mass) - logMass(precision, at * precision) + logMass(cavityPrecision, cavityShift);
  }
  return sum;
}
