import { OPENINGS } from "../../units/opening.ts";
import type { Opening } from "../../units/quantity.ts";

/** The openings a sign speaks of, with weights that sum to 1. */
export type Stretch = readonly (readonly [Opening, number])[];

/**
 * A stretch from openings and weights in sixteenths, so that the weights sum to exactly 1.
 * Throws RangeError when an opening is not one of OPENINGS or the sixteenths do not sum to 16.
 */
export function stretch(...parts: readonly (readonly [number, number])[]): Stretch {
  const sum = parts.reduce((total, [, sixteenths]) => total + sixteenths, 0);
  if (sum !== 16) throw new RangeError(`Weights sum to ${sum} sixteenths, must be 16`);
  return parts.map(([at, sixteenths]) => {
    const opening = OPENINGS.find((one) => one === at);
    if (opening === undefined) throw new RangeError(`${at} is not one of the openings held`);
    return [opening, sixteenths / 16] as const;
  });
}

// Which part governs where: pilot up to 1/4, slide 1/8 to 1/2, needle 1/4 to 3/4, main from 3/4
// (general carburetor texts, read in stored copies). The weights inside each stretch are estimates.
export const idle = stretch([0, 10], [1 / 16, 6]);
export const closing = stretch([0, 8], [1 / 16, 6], [1 / 8, 2]);
export const pilot = stretch([0, 5], [1 / 16, 5], [1 / 8, 3], [3 / 16, 2], [1 / 4, 1]);
export const snap = stretch([1 / 16, 3], [1 / 8, 6], [3 / 16, 4], [1 / 4, 3]);
export const bigHandful = stretch([1 / 16, 2], [1 / 8, 4], [3 / 16, 3], [1 / 4, 3], [3 / 8, 2], [1 / 2, 2]);
export const light = stretch([1 / 8, 6], [3 / 16, 6], [1 / 4, 4]);
export const part = stretch([1 / 8, 3], [3 / 16, 4], [1 / 4, 4], [3 / 8, 3], [1 / 2, 2]);
export const middle = stretch([1 / 4, 3], [3 / 8, 4], [1 / 2, 4], [5 / 8, 3], [3 / 4, 2]);
export const needleRange = stretch(
  [1 / 8, 2],
  [3 / 16, 3],
  [1 / 4, 3],
  [3 / 8, 3],
  [1 / 2, 3],
  [5 / 8, 1],
  [3 / 4, 1],
);
export const upper = stretch([1 / 2, 2], [5 / 8, 2], [3 / 4, 4], [7 / 8, 4], [1, 4]);
export const full = stretch([3 / 4, 2], [7 / 8, 5], [1, 9]);
export const flatOut = stretch([7 / 8, 4], [1, 12]);
export const everydayRiding = stretch(
  [0, 2],
  [1 / 16, 2],
  [1 / 8, 3],
  [3 / 16, 2],
  [1 / 4, 3],
  [3 / 8, 2],
  [1 / 2, 1],
  [3 / 4, 1],
);
export const everywhere = stretch(
  [0, 2],
  [1 / 16, 1],
  [1 / 8, 1],
  [3 / 16, 1],
  [1 / 4, 2],
  [3 / 8, 2],
  [1 / 2, 2],
  [5 / 8, 1],
  [3 / 4, 2],
  [7 / 8, 1],
  [1, 1],
);
