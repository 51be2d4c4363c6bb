import type { Setup } from "../parts/setup.ts";
import type { Opening } from "../units/quantity.ts";
import type { Comparison } from "./compare.ts";

/** What is left of the mixture error at one opening after a correction; above 0 is richer than before. */
export interface Remaining {
  readonly opening: Opening;
  readonly logRatio: number;
  readonly sd: number;
}

/** One way of putting the mixture back in other air or on other fuel. */
export interface Correction {
  /** The corrected setup. Numbers from solving need not exist as jets. */
  readonly setup: Setup;
  readonly remaining: readonly Remaining[];
  readonly warnings: readonly string[];
}

export const remainingOf = (comparison: Comparison): readonly Remaining[] =>
  comparison.at.map(({ opening, logRatio, sd }) => ({ opening, logRatio, sd }));
