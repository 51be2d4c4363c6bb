import { fromMillimetre, toMillimetre } from "../units/convert.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { Metre } from "../units/quantity.ts";

/** What a cutaway does, one sentence. */
export const CUTAWAY_RULE =
  "The cutaway is the relief on the filter side of the slide: a higher one is leaner, most of all from 1/8 to 1/4.";

/**
 * Reads a slide number as the height of its cutaway: "3.5" is 3.5 mm; "35" and "70" are tenths of a mm. Refuses a
 * height outside 0.5 to 9 mm. Both ways of stamping are in use: 1970s workshop manuals of two makers, read in
 * stored copies.
 */
export function readCutaway(typed: string): Outcome<Metre, "cutaway"> {
  const text = typed.trim().toLowerCase();
  const found = /^(?:#|no\.? ?)?([0-9]{1,2}(?:[.,][0-9]{1,2})?) ?(mm)?$/.exec(text);
  const value = found ? Number(found[1]!.replace(",", ".")) : Number.NaN;
  const height = value >= 10 && !found?.[2] ? value / 10 : value;
  if (height >= 0.5 && height <= 9) return accept(fromMillimetre(height));
  return refuse(
    "cutaway",
    `"${typed.trim()}" is no cutaway. Type the height of the relief in mm (usually 1.5 to 4), or the number on the slide.`,
  );
}

/** The slide in words: "slide with 3.5 mm cutaway". */
export const cutawayText = (cutaway: Metre): string =>
  `slide with ${Math.round(toMillimetre(cutaway) * 100) / 100} mm cutaway`;
