import type { CoreWords } from "../core-words.ts";
import { lowerFirst } from "../letters.ts";
import { openings } from "./openings.ts";
import { turnsOut } from "./parts.ts";

const FELT = { better: "mejor", same: "igual", worse: "peor" } as const;

/** One piece of evidence in a few trade words. */
export const reasons: CoreWords["reasons"] = {
  notThere: (sign) => `Se buscó y no está: ${lowerFirst(sign)}`,
  felt: (felt, opening) => `Tras el último cambio fue ${FELT[felt]} ${openings.at(opening)}`,
  measured: "La mezcla que mediste",
  tested: (test, bestTurns) =>
    `${test}: ${bestTurns === null ? "medido" : `lo mejor con ${turnsOut(bestTurns)}`}`,
  foundFaulty: (check) => `${check}: mal`,
};
