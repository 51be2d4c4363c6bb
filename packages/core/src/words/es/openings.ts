import { openingName } from "../../units/opening.ts";
import type { Opening } from "../../units/quantity.ts";
import type { CoreWords } from "../core-words.ts";
import { listed } from "./listed.ts";

const name = (opening: Opening): string =>
  opening === 0 ? "cerrado" : opening === 1 ? "a fondo" : openingName(opening);
const at = (opening: Opening): string =>
  opening === 0 ? "con el gas cerrado" : opening === 1 ? "a todo gas" : `a ${openingName(opening)} de gas`;

/** Where on the throttle. */
export const openings: CoreWords["openings"] = {
  name,
  at,
  atEach: (sorted) => {
    const between = sorted.filter((opening) => opening > 0 && opening < 1).map(openingName);
    return listed([
      ...(sorted[0] === 0 ? ["con el gas cerrado"] : []),
      ...(between.length > 0 ? [`a ${listed(between)} de gas`] : []),
      ...(sorted.includes(1 as Opening) ? ["a todo gas"] : []),
    ]);
  },
};
