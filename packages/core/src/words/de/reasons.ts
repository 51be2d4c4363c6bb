import type { CoreWords } from "../core-words.ts";
import { openings } from "./openings.ts";
import { turnsOut } from "./parts.ts";

const FELT = { better: "besser", same: "gleich", worse: "schlechter" } as const;

/** One piece of evidence in a few trade words. */
export const reasons: CoreWords["reasons"] = {
  notThere: (sign) => `Darauf geachtet, nicht da: ${sign}`,
  felt: (felt, opening) => `Nach der letzten Änderung ${FELT[felt]} ${openings.at(opening)}`,
  measured: "Das Gemisch, das du gemessen hast",
  tested: (test, bestTurns) =>
    `${test}: ${bestTurns === null ? "gemessen" : `am besten bei ${turnsOut(bestTurns)}`}`,
  foundFaulty: (check) => `${check}: nicht in Ordnung`,
};
