import type { Belief } from "../belief/believe.ts";
import { chanceBelow } from "../belief/reading.ts";
import type { Shift } from "../units/circuit.ts";
import type { CoreWords } from "../words/core-words.ts";
import { LEAN_CHANCE, LEAN_CHANCE_FOR_SECONDS, LEAN_LIMIT, STARVED_CHANCE, TOP } from "./loss.ts";
import { type HowLong, STARVES } from "./starved-top.ts";

/** How 3/4 to full throttle may be used with a setup, from the chance that it is leaner than the limit there. Rule A3. */
export type TopThrottle = "free" | "seconds only" | "stay below 3/4";

/** Every step of one piece of advice asks it of the same setup: worked out once. */
const worked = new WeakMap<Belief, WeakMap<Shift, Record<HowLong, number>>>();

/**
 * The largest chance, from 3/4 to full, of being leaner than the limit: over every world believed in, each with what
 * its fault takes from the fuel there. Rule A2.
 */
export function leanChanceAtTop(belief: Belief, shift: Shift, howLong: HowLong): number {
  const known = worked.get(belief) ?? new WeakMap<Shift, Record<HowLong, number>>();
  worked.set(belief, known);
  const before = known.get(shift);
  if (before !== undefined) return before[howLong];
  const over = (long: HowLong): number =>
    Math.max(...TOP.map((opening) => chanceBelow(belief, shift, opening, LEAN_LIMIT, STARVES[long])));
  const chances = { seconds: over("seconds"), held: over("held") };
  known.set(shift, chances);
  return chances[howLong];
}

export function topThrottle(belief: Belief, shift: Shift): TopThrottle {
  const seconds = leanChanceAtTop(belief, shift, "seconds");
  if (seconds > LEAN_CHANCE_FOR_SECONDS) return "stay below 3/4";
  const held = leanChanceAtTop(belief, shift, "held");
  return seconds <= LEAN_CHANCE && held - seconds <= STARVED_CHANCE ? "free" : "seconds only";
}

/** The sentence that goes with it; none when the top is free. */
export const topThrottleText = (top: TopThrottle, { steps }: CoreWords): readonly string[] =>
  top === "free" ? [] : [steps.topThrottle[top]];
