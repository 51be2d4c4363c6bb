import { dot, quadraticForm } from "../numerics/matrix.ts";
import { normalCumulative } from "../numerics/normal.ts";
import type { Shift } from "../units/circuit.ts";
import type { Opening } from "../units/quantity.ts";
import type { Belief } from "./believe.ts";
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

/** Chance that the mixture error at an opening is below a limit, over all parts of the belief. */
export function chanceBelow(belief: Belief, shift: Shift, opening: Opening, limit: number): number {
  const along = direction(stretchAt(opening), shift);
  let chance = 0;
  for (const { probability, gaussian } of belief.parts) {
    const variance = quadraticForm(gaussian.covariance, STATE_SIZE, along);
    chance += probability * normalCumulative((limit - dot(along, gaussian.mean)) / Math.sqrt(variance));
  }
  return chance;
}
