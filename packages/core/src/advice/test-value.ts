import { type Belief, type BeliefPart, collapse } from "../belief/believe.ts";
import type { FaultId, Sign } from "../belief/catalogue.ts";
import { tilt } from "../belief/factor.ts";
import type { Gaussian } from "../belief/prior.ts";
import { signLikelihood } from "../belief/sign-likelihood.ts";
import { direction, STATE_SIZE, type Stretch, stretchCentre } from "../belief/state.ts";
import { dot, multiplyInto } from "../numerics/matrix.ts";
import type { Shift } from "../units/circuit.ts";
import type { Check } from "./catalogue.ts";
import { type FaultChances, faultCost } from "./fault-cost.ts";
import { type Candidate, expectedTrouble } from "./search.ts";

/** What a test could show: a sign of the catalogue, or nothing that counts. */
export interface PossibleOutcome {
  readonly id: string;
  readonly sign: Sign | null;
  readonly stretch: Stretch;
}

export interface ForeseenOutcome {
  readonly id: string;
  readonly probability: number;
  /** Minutes that are still to be spent after it, by the best way then known. */
  readonly costAfter: number;
}

export interface TestValue {
  /** Minutes saved on average by knowing the outcome. */
  readonly gain: number;
  readonly outcomes: readonly ForeseenOutcome[];
}

/** Parts lighter than this do not change what a test is worth. */
const LIGHT = 2e-3;
/** An outcome that says nothing has at least this chance. */
const SILENT = 0.05;

/**
 * Expected value of a test before it is made: what the best way on costs now, less what it costs on average
 * once the outcome is known.
 * @param candidates setups to choose between, the present one among them
 */
export function valueOfTest(
  belief: Belief,
  now: Shift,
  outcomes: readonly PossibleOutcome[],
  candidates: readonly Candidate[],
  checks: readonly Check[],
): TestValue {
  const parts = belief.parts.filter((part) => part.probability > LIGHT);
  const seen = parts.map((part) => outcomesUnder(part, now, outcomes));
  const foreseen: ForeseenOutcome[] = [];
  let after = 0;
  let total = 0;
  let before: BeliefPart[] = [];
  outcomes.forEach((outcome, o) => {
    const updated = parts.map((part, i) => ({
      ...part,
      probability: part.probability * seen[i]![o]!.probability,
      gaussian: seen[i]![o]!.gaussian,
    }));
    const probability = updated.reduce((sum, part) => sum + part.probability, 0);
    if (!(probability > 1e-9)) return;
    const scaled = updated.map((part) => ({ ...part, probability: part.probability / probability }));
    const costAfter = costOfBestWay(scaled, candidates, checks);
    after += probability * costAfter;
    total += probability;
    foreseen.push({ id: outcome.id, probability, costAfter });
    before = before.concat(updated);
  });
  // The parts put together again over all outcomes, so that rounding and left-out parts cancel.
  const costNow = costOfBestWay(
    before.map((part) => ({ ...part, probability: part.probability / total })),
    candidates,
    checks,
  );
  return {
    gain: Math.max(0, costNow - after / total),
    outcomes: foreseen.map((each) => ({ ...each, probability: each.probability / total })),
  };
}

function costOfBestWay(
  parts: readonly Pick<BeliefPart, "fault" | "probability" | "gaussian">[],
  candidates: readonly Candidate[],
  checks: readonly Check[],
): number {
  const overall = collapse(parts);
  let best = Infinity;
  for (const candidate of candidates) {
    best = Math.min(best, expectedTrouble(overall, candidate.shift) + candidate.minutes);
  }
  return best + faultCost(checks, chancesIn(parts));
}

function chancesIn(
  parts: readonly { readonly fault: FaultId | null; readonly probability: number }[],
): FaultChances {
  const chances: Partial<Record<FaultId, number>> = {};
  for (const { fault, probability } of parts)
    if (fault !== null) chances[fault] = (chances[fault] ?? 0) + probability;
  return chances;
}

interface Updated {
  readonly probability: number;
  readonly gaussian: Gaussian;
}

/** Chance of each outcome under one part of the belief, and the part after it; the chances sum to 1. */
function outcomesUnder(
  part: BeliefPart,
  now: Shift,
  outcomes: readonly PossibleOutcome[],
): readonly Updated[] {
  const updated = outcomes.map(({ sign, stretch }) => {
    if (sign === null) return { probability: 0, gaussian: part.gaussian };
    const likelihood = signLikelihood(sign, true, stretchCentre(stretch));
    const factor = (part.fault === null ? undefined : likelihood.faults.get(part.fault)) ?? likelihood.sound;
    const along = direction(stretch, now);
    const reach = new Float64Array(STATE_SIZE);
    multiplyInto(reach, part.gaussian.covariance, STATE_SIZE, along);
    const variance = dot(along, reach);
    const mean = dot(along, part.gaussian.mean);
    const tilted = tilt(factor, mean, variance);
    const pull = (tilted.mean - mean) / variance;
    const shrink = (variance - tilted.variance) / (variance * variance);
    const covariance = new Float64Array(STATE_SIZE * STATE_SIZE);
    for (let i = 0; i < STATE_SIZE; i++) {
      for (let j = 0; j < STATE_SIZE; j++) {
        const k = i * STATE_SIZE + j;
        covariance[k] = part.gaussian.covariance[k]! - shrink * reach[i]! * reach[j]!;
      }
    }
    return {
      probability: tilted.mass,
      gaussian: { mean: part.gaussian.mean.map((value, i) => value + pull * reach[i]!), covariance },
    };
  });
  const told = updated.reduce((sum, each) => sum + each.probability, 0);
  const silent = outcomes.filter(({ sign }) => sign === null).length;
  const rest = silent > 0 ? Math.max(SILENT, 1 - told) / silent : 0;
  const total = told + rest * silent;
  return updated.map((each, i) => ({
    ...each,
    probability: (outcomes[i]!.sign === null ? rest : each.probability) / total,
  }));
}
