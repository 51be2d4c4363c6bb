import { accept, type Outcome, refuse } from "../units/outcome.ts";

/**
 * The standard deviation a person gave for an instrument, null when none was given. Refuses one that is
 * negative, no number, or above `largest`.
 */
export function readSd(
  sd: number | undefined,
  what: string,
  largest: number,
): Outcome<number | null, "sd-not-usable"> {
  if (sd === undefined) return accept(null);
  if (sd >= 0 && sd <= largest) return accept(sd);
  return refuse(
    "sd-not-usable",
    `The doubt given for the ${what} is ${sd}: give a number from 0 to ${largest}, or leave it out.`,
  );
}
