import { OPENINGS, type Opening, openingName } from "@jetwright/core";

/** The words a record may use for a throttle opening: "closed", "1/16" ... "7/8", "full". */
export const OPENING_WORDS: readonly string[] = OPENINGS.map(openingName);

const byWord = new Map(OPENINGS.map((opening) => [openingName(opening), opening]));

/**
 * The opening meant by a word or a fraction of full throttle. A fraction goes to the nearest of the eleven
 * openings: no rider holds a grip closer than a sixteenth.
 */
export function openingOf(said: number | string): Opening {
  if (typeof said === "string") {
    const opening = byWord.get(said);
    if (opening === undefined) throw new RangeError(`Not an opening: ${said}`);
    return opening;
  }
  if (!(said >= 0 && said <= 1)) throw new RangeError(`An opening is from 0 to 1, got ${said}`);
  return OPENINGS.reduce((best, opening) =>
    Math.abs(opening - said) < Math.abs(best - said) ? opening : best,
  );
}
