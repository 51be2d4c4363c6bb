import { log } from "../numerics/elementary.ts";
import { cholesky, inverseFromCholesky, solveWithCholesky } from "../numerics/matrix.ts";
import type { Sight } from "./moving-gaussian.ts";
import type { Gaussian } from "./prior.ts";

/** A Gaussian stand-in for one factor along its direction: exp(shift·s − ½·precision·s²). */
export interface Stand {
  precision: number;
  shift: number;
}

/** A Gaussian with its other form, precision and precision·mean, worked out once. */
export interface Prepared {
  readonly gaussian: Gaussian;
  readonly precision: Float64Array;
  readonly shift: Float64Array;
  /** log ∫ exp(shift·x − ½ xᵀ·precision·x) dx, up to a constant that depends on the size alone. */
  readonly logMass: number;
}

export function prepare(gaussian: Gaussian): Prepared {
  const n = gaussian.mean.length;
  const lower = cholesky(gaussian.covariance, n);
  const shift = solveWithCholesky(lower, n, gaussian.mean);
  const logMass = halfDot(gaussian.mean, shift) + logDiagonal(lower, n);
  return { gaussian, precision: inverseFromCholesky(lower, n), shift, logMass };
}

/** The same Gaussian moved to another mean, without factorising again. */
export function moved(prepared: Prepared, gaussian: Gaussian): Prepared {
  const n = gaussian.mean.length;
  const shift = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    let sum = 0;
    for (let j = 0; j < n; j++) sum += prepared.precision[i * n + j]! * gaussian.mean[j]!;
    shift[i] = sum;
  }
  const logMass =
    prepared.logMass - halfDot(prepared.gaussian.mean, prepared.shift) + halfDot(gaussian.mean, shift);
  return { gaussian, precision: prepared.precision, shift, logMass };
}

/** Prior and stand-ins multiplied out afresh, so that rounding never builds up, with the log of their mass. */
export function multiplied(
  prior: Prepared,
  sights: readonly Sight[],
  stands: readonly Stand[],
): { readonly gaussian: Gaussian; readonly logMass: number } {
  const n = prior.gaussian.mean.length;
  const precision = prior.precision.slice();
  const shift = prior.shift.slice();
  for (let s = 0; s < sights.length; s++) {
    const { along, places } = sights[s]!;
    const stand = stands[s]!;
    for (let p = 0; p < places.length; p++) {
      const k = places[p]!;
      shift[k] = shift[k]! + stand.shift * along[k]!;
      const scaled = stand.precision * along[k]!;
      for (let q = 0; q <= p; q++) {
        const at = k * n + places[q]!;
        precision[at] = precision[at]! + scaled * along[places[q]!]!;
      }
    }
  }
  const lower = cholesky(precision, n);
  const mean = solveWithCholesky(lower, n, shift);
  const logMass = halfDot(mean, shift) - logDiagonal(lower, n);
  return { gaussian: { mean, covariance: inverseFromCholesky(lower, n) }, logMass };
}

function halfDot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += 0.5 * a[i]! * b[i]!;
  return sum;
}

function logDiagonal(lower: Float64Array, n: number): number {
  let sum = 0;
  for (let i = 0; i < n; i++) sum += log(lower[i * n + i]!);
  return sum;
}
