import type { Belief } from "../belief/believe.ts";
import { chanceBelow } from "../belief/reading.ts";
import type { Shift } from "../units/circuit.ts";
import type { CoreWords } from "../words/core-words.ts";
import { LEAN_CHANCE, LEAN_CHANCE_FOR_SECONDS, LEAN_LIMIT, TOP } from "./loss.ts";

/** How 3/4 to full throttle may be used with a setup, from the chance that it is leaner than the limit there. Rule A3. */
export type TopThrottle = "free" | "seconds only" | "stay below 3/4";

/** Every step of one piece of advice asks it of the same setup: worked out once. */
const worked = new WeakMap<Belief, WeakMap<Shift, number>>();

/** The largest chance, from 3/4 to full, of being leaner than the limit. */
export function leanChanceAtTop(belief: Belief, shift: Shift): number {
  const known = worked.get(belief) ?? new WeakMap<Shift, number>();
  worked.set(belief, known);
  const before = known.get(shift);
  if (before !== undefined) return before;
  const chance = Math.max(...TOP.map((opening) => chanceBelow(belief, shift, opening, LEAN_LIMIT)));
  known.set(shift, chance);
  return chance;
}

export function topThrottle(belief: Belief, shift: Shift): TopThrottle {
  const chance = leanChanceAtTop(belief, shift);
  if (chance <= LEAN_CHANCE) return "free";
  return chance <= LEAN_CHANCE_FOR_SECONDS ? "seconds only" : "stay below 3/4";
}

/** The sentence that goes with it; none when the top is free. */
export const topThrottleText = (top: TopThrottle, { steps }: CoreWords): readonly string[] =>
  top === "free" ? [] : [steps.topThrottle[top]];
