import { exp, log } from "../numerics/elementary.ts";
import { OPENINGS } from "../units/opening.ts";
import { FAULTS, type FaultId } from "./catalogue.ts";
import { checkedFaults } from "./checked-faults.ts";
import type { Checked, Observation } from "./observation.ts";
import type { Stand } from "./precision-form.ts";
import type { Gaussian } from "./prior.ts";
import type { Site } from "./site.ts";
import { sitesFrom } from "./sites.ts";
import { STATE_SIZE } from "./state.ts";
import { logSum, weigh } from "./weighing.ts";

/** One fault, or none, with the mixture on one side or the other: a Gaussian with its weight. */
export interface BeliefPart {
  readonly fault: FaultId | null;
  readonly probability: number;
  readonly gaussian: Gaussian;
  readonly stands: readonly Stand[];
}

export interface Hypothesis {
  readonly fault: FaultId | null;
  readonly probability: number;
}

export interface Belief {
  /** No fault first, then the faults in catalogue order; probabilities sum to 1. */
  readonly hypotheses: readonly Hypothesis[];
  /** The whole belief as a sum of Gaussians; weights sum to 1. */
  readonly parts: readonly BeliefPart[];
  /** Mean and covariance of the state over all of it. */
  readonly overall: Gaussian;
  readonly sites: readonly Site[];
  /** Faults a check has found and nobody has mended yet. */
  readonly openFaults: readonly FaultId[];
  /** False when the iteration stopped before it was still; the result is then rougher. */
  readonly converged: boolean;
}

export interface BeliefInput {
  readonly prior: Gaussian;
  /** Chance of each fault before anything is known; those not named are not considered. */
  readonly faultPriors: Partial<Readonly<Record<FaultId, number>>>;
  readonly observations: readonly Observation[];
}

/** A part below this probability need not be still for the whole to count as converged. */
const LIGHT = 0.01;

/** The mean mixture error over all openings: the direction in which rich and lean readings part. */
const COMMON = Float64Array.from({ length: STATE_SIZE }, (_, i) =>
  i < OPENINGS.length ? 1 / OPENINGS.length : 0,
);

/**
 * Belief about mixture and faults from everything observed: expectation propagation for each fault, on a
 * prior split along the common mixture error so that evidence that speaks for rich *or* lean keeps its two
 * sides. Does not depend on the order of the observations, and gives the same bytes on every machine (rules
 * B1 and B2). Accuracy against importance sampling: docs/rules/belief.md, rule B9.
 */
export function believe({ prior, faultPriors, observations }: BeliefInput): Belief {
  const checked = checkedFaults(observations.filter((o): o is Checked => o.kind === "checked"));
  const sites = sitesFrom(observations, checked.presentAt);
  const considered = FAULTS.filter((fault) => (faultPriors[fault] ?? 0) > 0);
  const soundPrior = 1 - considered.reduce((sum, fault) => sum + faultPriors[fault]!, 0);
  if (!(soundPrior > 0))
    throw new RangeError(`Fault priors must sum to less than 1; a sound engine gets ${soundPrior}`);
  const suspects = considered.map((fault) => ({
    fault,
    logPrior: log(soundPrior) + checked.logOdds(fault, faultPriors[fault]! / soundPrior),
  }));
  const weighed = weigh(prior, sites, [{ fault: null, logPrior: log(soundPrior) }, ...suspects], COMMON);
  const total = logSum(weighed.map(({ logWeight }) => logWeight));
  const parts = weighed.map(({ fault, result, logWeight }) => ({
    fault,
    probability: exp(logWeight - total),
    gaussian: result.posterior,
    stands: result.stands,
  }));
  const hypotheses = [null, ...considered].map((fault) => ({
    fault,
    probability: parts.reduce((sum, part) => (part.fault === fault ? sum + part.probability : sum), 0),
  }));
  return {
    hypotheses,
    parts,
    overall: collapse(parts),
    sites,
    openFaults: checked.open,
    converged: weighed.every(({ result, logWeight }) => result.converged || logWeight < total + log(LIGHT)),
  };
}

/** Mean and covariance of a weighted sum of Gaussians. */
export function collapse(
  parts: readonly { readonly probability: number; readonly gaussian: Gaussian }[],
): Gaussian {
  const n = STATE_SIZE;
  const mean = new Float64Array(n);
  for (const { probability, gaussian } of parts) {
    for (let i = 0; i < n; i++) mean[i] = mean[i]! + probability * gaussian.mean[i]!;
  }
  const covariance = new Float64Array(n * n);
  for (const { probability, gaussian } of parts) {
    for (let i = 0; i < n; i++) {
      const di = gaussian.mean[i]! - mean[i]!;
      for (let j = 0; j < n; j++) {
        const dj = gaussian.mean[j]! - mean[j]!;
        const at = i * n + j;
        covariance[at] = covariance[at]! + probability * (gaussian.covariance[at]! + di * dj);
      }
    }
  }
  return { mean, covariance };
}

export const faultProbability = (belief: Belief, fault: FaultId | null): number =>
  belief.hypotheses.find((hypothesis) => hypothesis.fault === fault)?.probability ?? 0;
