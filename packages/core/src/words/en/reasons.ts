import type { Opening } from "../../units/quantity.ts";
import { lowerFirst } from "../letters.ts";
import { openings } from "./openings.ts";
import { turnsOut } from "./parts.ts";

/** One piece of evidence in a few trade words. A sign that was noticed speaks for itself. */
export const reasons = {
  /** @param sign the words of the sign */
  notThere: (sign: string): string => `Looked for and not there: ${lowerFirst(sign)}`,
  felt: (felt: "better" | "same" | "worse", opening: Opening): string =>
    `It felt ${felt} after the last change ${openings.at(opening)}`,
  measured: "The mixture you measured",
  /** @param bestTurns where a sweep of the screw found the best idle; null for another measurement */
  tested: (test: string, bestTurns: number | null): string =>
    `${test}: ${bestTurns === null ? "measured" : `best at ${turnsOut(bestTurns)}`}`,
  /** @param check the words of the check */
  foundFaulty: (check: string): string => `${check}: faulty`,
};
