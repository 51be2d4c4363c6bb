import { dot, quadraticForm } from "../numerics/matrix.ts";
import type { BeliefPart } from "./believe.ts";

/** What all other evidence says along one site's direction, in one part of a belief. */
export interface Surroundings {
  readonly mean: number;
  readonly variance: number;
  /** Mean and variance with the site itself. */
  readonly meanWith: number;
  readonly varianceWith: number;
}

/** Null when the other evidence alone is no proper Gaussian there. */
export function surroundingsOf(part: BeliefPart, site: number, along: Float64Array): Surroundings | null {
  const stand = part.stands[site]!;
  const varianceWith = quadraticForm(part.gaussian.covariance, along.length, along);
  const meanWith = dot(along, part.gaussian.mean);
  const precision = 1 / varianceWith - stand.precision;
  if (!(precision > 1e-9)) return null;
  const mean = (meanWith / varianceWith - stand.shift) / precision;
  return { mean, variance: 1 / precision, meanWith, varianceWith };
}
