import { type Belief, collapse } from "../belief/believe.ts";
import type { FaultId, Sign } from "../belief/catalogue.ts";
import { tilt } from "../belief/factor.ts";
import type { Gaussian } from "../belief/prior.ts";
import { type SignLikelihood, signLikelihood } from "../belief/sign-likelihood.ts";
import { NODES, WEIGHTS } from "../belief/split.ts";
import { direction, FIRST_CIRCUIT, STATE_SIZE, type Stretch, stretchCentre } from "../belief/state.ts";
import { dot, multiplyInto } from "../numerics/matrix.ts";
import type { Shift } from "../units/circuit.ts";
import type { Check } from "./catalogue.ts";
import { type FaultChances, faultCost } from "./fault-cost.ts";
import { expectedTrouble } from "./search.ts";

/** What a test could show: a sign of the catalogue, or nothing that counts. */
export interface PossibleOutcome {
  readonly id: string;
  readonly sign: Sign | null;
  readonly stretch: Stretch;
  /** The test measures the mixture there, with this spread. */
  readonly measured?: { readonly sd: number; readonly node: number; readonly weight: number };
}

/** What a measurement may show, as five outcomes of fixed chance: the mixture that far from what is expected. */
export const measuredOutcomes = (id: string, stretch: Stretch, sd: number): readonly PossibleOutcome[] =>
  NODES.map((node, i) => ({ id, sign: null, stretch, measured: { sd, node, weight: WEIGHTS[i]! } }));

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

/** Faults lighter than this do not change what a test is worth. */
const LIGHT = 3e-3;
/** An outcome that says nothing has at least this chance. */
const SILENT = 0.05;

/**
 * Expected value of a test before it is made: what the best way on costs now, less what it costs on average
 * once the outcome is known. Never below 0.
 * @param faults the belief with each fault as one Gaussian, from `byFault`
 * @param setups setups to choose between, the present one among them
 */
export function valueOfTest(
  faults: readonly WeightedGaussian[],
  now: Shift,
  outcomes: readonly PossibleOutcome[],
  setups: readonly WeighedSetup[],
  checks: readonly Check[],
): TestValue {
  const after = outcomes.map(() => new Moments());
  const everything = new Moments();
  const ready = readied(now, outcomes);
  for (const part of faults) {
    const updates = updatesUnder(part, ready);
    updates.forEach((update, o) => {
      after[o]!.add(part, update);
      everything.add(part, update);
    });
  }
  const cost = (moments: Moments): number =>
    costOfBestWay(moments.gaussian(), moments.chances(), setups, checks);
  const total = everything.mass;
  const foreseen = outcomes.flatMap(({ id }, o): ForeseenOutcome[] => {
    const moments = after[o]!;
    return moments.mass > 1e-9 * total
      ? [{ id, probability: moments.mass / total, costAfter: cost(moments) }]
      : [];
  });
  const average = foreseen.reduce((sum, each) => sum + each.probability * each.costAfter, 0);
  return { gain: Math.max(0, cost(everything) - average), outcomes: foreseen };
}

/** A setup to choose, as its flat shift, and the minutes it takes. */
export interface WeighedSetup {
  readonly flat: Float64Array;
  readonly minutes: number;
}

export interface WeightedGaussian {
  readonly fault: FaultId | null;
  readonly probability: number;
  readonly gaussian: Gaussian;
}

/** The belief with one Gaussian for each fault that still matters. */
export function byFault(belief: Belief): readonly WeightedGaussian[] {
  return belief.hypotheses
    .filter(({ probability }) => probability > LIGHT)
    .map(({ fault, probability }) => {
      const parts = belief.parts.filter((part) => part.fault === fault);
      const scaled = parts.map((part) => ({ ...part, probability: part.probability / probability }));
      return { fault, probability, gaussian: collapse(scaled) };
    });
}

/** What one outcome does to a Gaussian: it moves and narrows along `reach`. */
interface Update {
  readonly probability: number;
  readonly reach: Float64Array;
  readonly pull: number;
  readonly shrink: number;
}

/** An outcome made ready once for all faults; the same direction is the same array. Null: it says nothing. */
type ReadyOutcome =
  | { readonly likelihood: SignLikelihood; readonly along: Float64Array }
  | { readonly measured: NonNullable<PossibleOutcome["measured"]>; readonly along: Float64Array }
  | null;

function readied(now: Shift, outcomes: readonly PossibleOutcome[]): readonly ReadyOutcome[] {
  const directions = new Map<string, Float64Array>();
  return outcomes.map(({ sign, stretch, measured }) => {
    if (sign === null && measured === undefined) return null;
    const key = stretch.join();
    const along = directions.get(key) ?? direction(stretch, now);
    directions.set(key, along);
    if (sign === null) return { measured: measured!, along };
    return { likelihood: signLikelihood(sign, true, stretchCentre(stretch)), along };
  });
}

/** Chance of each outcome under one part of the belief, and what it does to it; the chances sum to 1. */
function updatesUnder(
  { fault, gaussian }: WeightedGaussian,
  outcomes: readonly ReadyOutcome[],
): readonly Update[] {
  const reaches = new Map<Float64Array, Float64Array>();
  const updated = outcomes.map((outcome): Update => {
    if (outcome === null) return { probability: 0, reach: NO_REACH, pull: 0, shrink: 0 };
    const { along } = outcome;
    let reach = reaches.get(along);
    if (reach === undefined) {
      reach = new Float64Array(STATE_SIZE);
      multiplyInto(reach, gaussian.covariance, STATE_SIZE, along);
      reaches.set(along, reach);
    }
    const variance = dot(along, reach);
    const mean = dot(along, gaussian.mean);
    if ("measured" in outcome) {
      const { sd, node, weight } = outcome.measured;
      const seen = variance + sd * sd;
      return { probability: weight, reach, pull: node / Math.sqrt(seen), shrink: 1 / seen };
    }
    const { likelihood } = outcome;
    const factor = (fault === null ? undefined : likelihood.faults.get(fault)) ?? likelihood.sound;
    const tilted = tilt(factor, mean, variance);
    return {
      probability: tilted.mass,
      reach,
      pull: (tilted.mean - mean) / variance,
      shrink: (variance - tilted.variance) / (variance * variance),
    };
  });
  const told = updated.reduce((sum, each) => sum + each.probability, 0);
  const silent = outcomes.filter((outcome) => outcome === null).length;
  const rest = silent > 0 ? Math.max(SILENT, 1 - told) / silent : 0;
  const total = told + rest * silent;
  return updated.map((each, i) => ({
    ...each,
    probability: (outcomes[i] === null ? rest : each.probability) / total,
  }));
}

const NO_REACH = new Float64Array(STATE_SIZE);

/**
 * Mass, first and second moments of a weighted sum of updated Gaussians, and the weight of each fault in it. Of the
 * second moments only what expected trouble asks for: each opening with itself, and everything with the answers.
 */
class Moments {
  mass = 0;
  private readonly first = new Float64Array(STATE_SIZE);
  private readonly second = new Float64Array(STATE_SIZE * STATE_SIZE);
  private readonly faults = new Map<FaultId, number>();

  add({ fault, probability, gaussian }: WeightedGaussian, update: Update): void {
    const weight = probability * update.probability;
    this.mass += weight;
    if (fault !== null) this.faults.set(fault, (this.faults.get(fault) ?? 0) + weight);
    const { reach, pull, shrink } = update;
    const { mean, covariance } = gaussian;
    for (let i = 0; i < STATE_SIZE; i++) {
      const mi = mean[i]! + pull * reach[i]!;
      this.first[i] = this.first[i]! + weight * mi;
      const row = i * STATE_SIZE;
      this.second[row + i] =
        this.second[row + i]! + weight * (covariance[row + i]! - shrink * reach[i]! * reach[i]! + mi * mi);
      for (let j = FIRST_CIRCUIT; j < STATE_SIZE; j++) {
        if (j === i) continue;
        const mj = mean[j]! + pull * reach[j]!;
        const spread = covariance[row + j]! - shrink * reach[i]! * reach[j]!;
        this.second[row + j] = this.second[row + j]! + weight * (spread + mi * mj);
      }
    }
  }

  gaussian(): Gaussian {
    const mean = this.first.map((value) => value / this.mass);
    const covariance = new Float64Array(STATE_SIZE * STATE_SIZE);
    for (let i = 0; i < STATE_SIZE; i++) {
      const row = i * STATE_SIZE;
      covariance[row + i] = this.second[row + i]! / this.mass - mean[i]! * mean[i]!;
      for (let j = FIRST_CIRCUIT; j < STATE_SIZE; j++) {
        covariance[row + j] = this.second[row + j]! / this.mass - mean[i]! * mean[j]!;
      }
    }
    return { mean, covariance };
  }

  chances(): FaultChances {
    return Object.fromEntries([...this.faults].map(([fault, weight]) => [fault, weight / this.mass]));
  }
}

function costOfBestWay(
  belief: Gaussian,
  chances: FaultChances,
  setups: readonly WeighedSetup[],
  checks: readonly Check[],
): number {
  let best = Infinity;
  for (const { flat, minutes } of setups) best = Math.min(best, expectedTrouble(belief, flat) + minutes);
  return best + faultCost(checks, chances);
}
