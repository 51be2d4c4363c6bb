import type { Factor } from "./factor.ts";

/** Chance that an instrument reading is simply wrong (probe, place, load). Estimate. */
const WRONG_READING = 0.05;

/** A reading off by anything up to this is as likely as any other, ± ln ratio. */
const WRONG_RANGE = 0.3;

/** Likelihood of a measured mixture error along its own direction: a normal bump on a low floor. */
export function measuredLikelihood(error: number, sd: number): Factor {
  if (!(sd > 0)) throw new RangeError(`A measurement needs a standard deviation above 0, got ${sd}`);
  return {
    constant: WRONG_READING / (2 * WRONG_RANGE),
    steps: [],
    bumps: [{ weight: 1 - WRONG_READING, at: error, sd }],
  };
}
