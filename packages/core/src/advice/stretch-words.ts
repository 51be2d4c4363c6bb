import type { Opening } from "../units/quantity.ts";
import type { CoreWords } from "../words/core-words.ts";

/** The three stretches of throttle a technician speaks of when he says where something shows. */
export type Band = "bottom" | "middle" | "top";

export const bandOf = (opening: Opening): Band =>
  opening <= 0.1875 ? "bottom" : opening < 0.75 ? "middle" : "top";

/** What is noticed on a stretch when it is right, too rich and too lean. */
export const bandWords = (
  words: CoreWords,
  band: Band,
  strokes: 2 | 4,
): CoreWords["stretches"]["two"][Band] => words.stretches[strokes === 2 ? "two" : "four"][band];
