import type { Gaussian } from "../../belief/prior.ts";
import { FIRST_CIRCUIT, STATE_SIZE } from "../../belief/state.ts";
import { exp, log } from "../../numerics/elementary.ts";
import { normalCumulative } from "../../numerics/normal.ts";
import { CIRCUITS } from "../../units/circuit.ts";
import { OPENINGS } from "../../units/opening.ts";
import { LEAN_LIMIT, MINUTES, STEEPNESS, TOP } from "../loss.ts";

/** A belief as a sum of Gaussians over the state; weights sum to 1. */
export type Mixture = readonly { readonly probability: number; readonly gaussian: Gaussian }[];

export const CIRCUIT_COUNT = CIRCUITS.length;
export const SHIFT_SIZE = OPENINGS.length * CIRCUIT_COUNT;
/** A quadratic in the six circuits: 1, six linear and twenty-one products. */
export const TERMS = 28;
export const TOP_OPENINGS: readonly number[] = TOP.map((opening) => OPENINGS.indexOf(opening));

/**
 * Everything a belief says about shifts, as coefficients. Under part h of the belief the mixture error at opening u of
 * a setup with shift d is normal with mean m = μ + κ·d and variance v = s² + 2 c·d + d′K d: the effectiveness of each
 * circuit is believed too, so both move with the setup, differently under each fault.
 */
export interface LossTable {
  readonly parts: number;
  /** By opening and part: the quadratic q = log p − a m + a² v / 2, so that the lean half of the loss is Σ exp q. */
  readonly exponents: Float64Array;
  /** Mean mixture error of the reference by opening, and mean effectiveness, over the whole belief. */
  readonly level: Float64Array;
  readonly slope: Float64Array;
  readonly weight: Float64Array;
  /** By opening of the top and part: the quadratics m and v. */
  readonly means: Float64Array;
  readonly variances: Float64Array;
}

export function lossTable(belief: Mixture): LossTable {
  const parts = belief.filter(({ probability }) => probability > 0);
  const h = parts.length;
  const n = OPENINGS.length;
  const exponents = new Float64Array(n * h * TERMS);
  const means = new Float64Array(TOP_OPENINGS.length * h * TERMS);
  const variances = new Float64Array(TOP_OPENINGS.length * h * TERMS);
  const level = new Float64Array(n);
  const slope = new Float64Array(CIRCUIT_COUNT);
  parts.forEach(({ probability, gaussian }, part) => {
    for (let c = 0; c < CIRCUIT_COUNT; c++)
      slope[c] = slope[c]! + probability * gaussian.mean[FIRST_CIRCUIT + c]!;
    for (let u = 0; u < n; u++) {
      level[u] = level[u]! + probability * gaussian.mean[u]!;
      const mean = meanTerms(gaussian, u);
      const variance = varianceTerms(gaussian, u);
      const a = STEEPNESS[u]!;
      const at = (u * h + part) * TERMS;
      for (let t = 0; t < TERMS; t++) exponents[at + t] = 0.5 * a * a * variance[t]! - a * mean[t]!;
      exponents[at] = exponents[at]! + log(probability);
      const top = TOP_OPENINGS.indexOf(u);
      if (top < 0) continue;
      means.set(mean, (top * h + part) * TERMS);
      variances.set(variance, (top * h + part) * TERMS);
    }
  });
  const weight = Float64Array.from(parts, ({ probability }) => probability);
  return { parts: h, exponents, level, slope, weight, means, variances };
}

function meanTerms({ mean }: Gaussian, u: number): Float64Array {
  const terms = new Float64Array(TERMS);
  terms[0] = mean[u]!;
  for (let c = 0; c < CIRCUIT_COUNT; c++) terms[1 + c] = mean[FIRST_CIRCUIT + c]!;
  return terms;
}

function varianceTerms({ covariance }: Gaussian, u: number): Float64Array {
  const terms = new Float64Array(TERMS);
  const at = (i: number, j: number): number => covariance[i * STATE_SIZE + j]!;
  terms[0] = at(u, u);
  let t = 1 + CIRCUIT_COUNT;
  for (let c = 0; c < CIRCUIT_COUNT; c++) {
    terms[1 + c] = 2 * at(u, FIRST_CIRCUIT + c);
    for (let e = c; e < CIRCUIT_COUNT; e++) {
      terms[t++] = (e === c ? 1 : 2) * at(FIRST_CIRCUIT + c, FIRST_CIRCUIT + e);
    }
  }
  return terms;
}

/** One quadratic of a table at a shift of the six circuits. */
export function quadraticAt(
  terms: Float64Array,
  at: number,
  p: number,
  s: number,
  l: number,
  n: number,
  m: number,
  a: number,
): number {
  return (
    terms[at]! +
    p * (terms[at + 1]! + p * terms[at + 7]! + s * terms[at + 8]! + l * terms[at + 9]!) +
    s * (terms[at + 2]! + s * terms[at + 13]! + l * terms[at + 14]! + n * terms[at + 15]!) +
    l * (terms[at + 3]! + l * terms[at + 18]! + n * terms[at + 19]! + m * terms[at + 20]!) +
    n * (terms[at + 4]! + n * terms[at + 22]! + m * terms[at + 23]! + p * terms[at + 10]!) +
    m * (terms[at + 5]! + m * terms[at + 25]! + p * terms[at + 11]! + s * terms[at + 16]!) +
    a *
      (terms[at + 6]! +
        a * terms[at + 27]! +
        p * terms[at + 12]! +
        s * terms[at + 17]! +
        l * terms[at + 21]! +
        n * terms[at + 24]! +
        m * terms[at + 26]!)
  );
}

/**
 * Expected trouble in minutes of a shift (opening by opening, the six circuits in order), over the whole belief:
 * E[exp(−a z) + a z − 1] at each opening. The figure every list is ranked by, always worked out in this order, so
 * that the same setup has the same bits however it was found.
 */
export function expectedLoss(table: LossTable, shift: Float64Array): number {
  const { parts, exponents, level, slope } = table;
  let trouble = 0;
  for (let u = 0; u < level.length; u++) {
    const o = u * CIRCUIT_COUNT;
    const p = shift[o]!;
    const s = shift[o + 1]!;
    const l = shift[o + 2]!;
    const n = shift[o + 3]!;
    const m = shift[o + 4]!;
    const a = shift[o + 5]!;
    let lean = 0;
    for (let h = 0, at = u * parts * TERMS; h < parts; h++, at += TERMS) {
      lean += exp(quadraticAt(exponents, at, p, s, l, n, m, a));
    }
    const mean =
      level[u]! +
      slope[0]! * p +
      slope[1]! * s +
      slope[2]! * l +
      slope[3]! * n +
      slope[4]! * m +
      slope[5]! * a;
    trouble += MINUTES[u]! * (lean + STEEPNESS[u]! * mean - 1);
  }
  return trouble;
}

/** What one part of the belief adds to the chance of being leaner than the limit at an opening of the top. */
export function leanShare(table: LossTable, top: number, part: number, shift: Float64Array): number {
  const at = (top * table.parts + part) * TERMS;
  const o = TOP_OPENINGS[top]! * CIRCUIT_COUNT;
  const p = shift[o]!;
  const s = shift[o + 1]!;
  const l = shift[o + 2]!;
  const n = shift[o + 3]!;
  const m = shift[o + 4]!;
  const a = shift[o + 5]!;
  const mean = quadraticAt(table.means, at, p, s, l, n, m, a);
  const variance = quadraticAt(table.variances, at, p, s, l, n, m, a);
  return table.weight[part]! * normalCumulative((LEAN_LIMIT - mean) / Math.sqrt(variance));
}

/** Chance that the mixture at an opening of the top (0 for 3/4, the last for full) is leaner than the limit. */
export function leanChanceAt(table: LossTable, top: number, shift: Float64Array): number {
  let chance = 0;
  for (let part = 0; part < table.parts; part++) chance += leanShare(table, top, part, shift);
  return chance;
}

/** The largest of these chances from 3/4 to full. */
export function leanChance(table: LossTable, shift: Float64Array): number {
  let most = 0;
  for (let top = 0; top < TOP_OPENINGS.length; top++) most = Math.max(most, leanChanceAt(table, top, shift));
  return most;
}
