import { openingName } from "../../units/opening.ts";
import type { Opening } from "../../units/quantity.ts";
import type { CoreWords } from "../core-words.ts";
import { listed } from "./listed.ts";

const name = (opening: Opening): string =>
  opening === 0 ? "zu" : opening === 1 ? "voll" : openingName(opening);
const at = (opening: Opening): string =>
  opening === 0 ? "bei geschlossenem Gas" : opening === 1 ? "bei Vollgas" : `bei ${openingName(opening)} Gas`;

/** Where on the throttle. */
export const openings: CoreWords["openings"] = {
  name,
  at,
  atEach: (sorted) => {
    const between = sorted.filter((opening) => opening > 0 && opening < 1).map(openingName);
    return listed([
      ...(sorted[0] === 0 ? ["bei geschlossenem Gas"] : []),
      ...(between.length > 0 ? [`bei ${listed(between)} Gas`] : []),
      ...(sorted.includes(1 as Opening) ? ["bei Vollgas"] : []),
    ]);
  },
};
