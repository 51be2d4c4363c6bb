import { dot, quadraticForm } from "../numerics/matrix.ts";
import { normalCumulative } from "../numerics/normal.ts";
import type { Shift } from "../units/circuit.ts";
import type { Opening } from "../units/quantity.ts";
import type { Belief } from "./believe.ts";
import type { FaultId } from "./catalogue.ts";
import { direction, STATE_SIZE, stretchAt } from "./state.ts";

/** What is believed of the mixture at one opening under a situation. Errors are ln ratios: +0.05 is 5 % rich. */
export interface MixtureReading {
  readonly opening: Opening;
  readonly mean: number;
  readonly sd: number;
}

/** Mean and spread of the mixture error at an opening under the situation with that shift. */
export function mixtureAt(belief: Belief, shift: Shift, opening: Opening): MixtureReading {
  const along = direction(stretchAt(opening), shift);
  const variance = quadraticForm(belief.overall.covariance, STATE_SIZE, along);
  return { opening, mean: dot(along, belief.overall.mean), sd: Math.sqrt(Math.max(0, variance)) };
}

/** What a fault takes from the mixture besides the jets: ln ratio, with its spread. */
export interface Leaned {
  readonly by: number;
  readonly sd: number;
}

/**
 * Chance that the mixture error at an opening is below a limit, over all parts of the belief.
 * @param leaned what faults take from the mixture there; left out: nothing, the jets alone
 */
export function chanceBelow(
  belief: Belief,
  shift: Shift,
  opening: Opening,
  limit: number,
  leaned: Partial<Readonly<Record<FaultId, Leaned>>> = {},
): number {
  const along = direction(stretchAt(opening), shift);
  let chance = 0;
  for (const { fault, probability, gaussian } of belief.parts) {
    const { by, sd } = (fault === null ? undefined : leaned[fault]) ?? NOTHING;
    const variance = quadraticForm(gaussian.covariance, STATE_SIZE, along) + sd * sd;
    chance += probability * normalCumulative((limit + by - dot(along, gaussian.mean)) / Math.sqrt(variance));
  }
  return chance;
}

const NOTHING: Leaned = { by: 0, sd: 0 };
