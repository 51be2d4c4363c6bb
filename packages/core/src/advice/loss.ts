import { exp } from "../numerics/elementary.ts";
import { OPENINGS } from "../units/opening.ts";

/**
 * What a wrong mixture costs, in minutes of trouble. LINEX loss (H. R. Varian 1975; A. Zellner 1986, JASA 81
 * [memory]): at an error z it is exp(−a·z) + a·z − 1, so lean costs exponentially and rich about in line.
 * Steepness a at each opening is ours (estimate): steeper from half throttle up, where lean destroys engines.
 */
export const STEEPNESS: readonly number[] = OPENINGS.map((opening) =>
  opening <= 0.5 ? 10 : Math.min(20, 10 + 40 * (opening - 0.5)),
);

/** How much each opening matters; sums to 1. */
const WEIGHT: readonly number[] = [0.1, 0.08, 0.1, 0.08, 0.1, 0.1, 0.1, 0.08, 0.08, 0.08, 0.1];

/** Minutes of trouble that each per cent too rich everywhere adds, once it is clearly rich. Estimate. */
const MINUTES_PER_PERCENT_RICH = 300;

/** Minutes for one unit of loss at each opening: clearly rich costs the same slope everywhere. */
export const MINUTES: readonly number[] = OPENINGS.map(
  (_, i) => (WEIGHT[i]! * 100 * MINUTES_PER_PERCENT_RICH) / STEEPNESS[i]!,
);

/** The loss at an error that is known. */
export const linex = (steepness: number, error: number): number =>
  exp(-steepness * error) + steepness * error - 1;

/** Expected loss at an error known to a normal spread: doubt itself pushes to the rich side. */
export const expectedLinex = (steepness: number, mean: number, variance: number): number =>
  exp(-steepness * mean + 0.5 * steepness * steepness * variance) + steepness * mean - 1;

/** The advised limit: at 3/4 to full no leaner than this… Rule A2. */
export const LEAN_LIMIT = -0.06;
/** …with more than this chance. */
export const LEAN_CHANCE = 0.02;
/** What may starve the top when the throttle is held for long may add this much to that chance. Rule A3. */
export const STARVED_CHANCE = 0.01;
/** Up to this chance a few seconds at full throttle are allowed, to find out; beyond it, none. Rule A3. */
export const LEAN_CHANCE_FOR_SECONDS = 0.1;
/** From here up the limit holds. */
export const TOP = OPENINGS.filter((opening) => opening >= 0.75);
