import { openingName } from "../../units/opening.ts";
import type { Opening } from "../../units/quantity.ts";
import { listed } from "./listed.ts";

/** Where on the throttle. */
export const openings = {
  /** The name alone: "closed", "1/4", "full". */
  name: openingName,
  /** "at closed throttle", "at 1/4 throttle", "at full throttle". */
  at: (opening: Opening): string => `at ${openingName(opening)} throttle`,
  /** In the order of the grip: "at closed throttle and at 1/8, 1/4 and full throttle". */
  atEach: (sorted: readonly Opening[]): string => {
    const closed = sorted[0] === 0 ? ["at closed throttle"] : [];
    const opened = sorted.filter((opening) => opening > 0).map((opening) => openingName(opening));
    return [...closed, ...(opened.length > 0 ? [`at ${listed(opened)} throttle`] : [])].join(" and ");
  },
};
