import { toCubicCentimetre } from "../units/convert.ts";
import type { StandardSetup } from "./known-good.ts";
import type { Theory } from "./theory.ts";

/** An example with less than this part of the say is not named. */
const NAMED = 0.05;

const COUNTS = ["no", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten"];

/** What a figure rests on, in words, what weighed most first. `weights` belong to `setups`, one each. */
export function restsOn(
  theory: Theory,
  setups: readonly StandardSetup[],
  weights: readonly number[],
): string[] {
  const named = setups.filter((_, i) => Math.abs(weights[i]!) >= NAMED);
  if (named.length === 0) return [theory.words];
  const shop = Math.min(
    1,
    weights.reduce((sum, weight) => sum + weight, 0),
  );
  const bikes = `${COUNTS[named.length] ?? named.length} ${named.length === 1 ? "bike" : "bikes"} of this shop`;
  const words = `${bikes} ${span(named)}, brought to standard air`;
  return shop >= 0.5
    ? [`mostly ${words}`, `the rest ${theory.words}`]
    : [`mostly ${theory.words}`, `partly ${words}`];
}

function span(setups: readonly StandardSetup[]): string {
  const sizes = setups.map(({ features }) => Math.round(toCubicCentimetre(features.displacement)));
  const [low, high] = [Math.min(...sizes), Math.max(...sizes)];
  return low === high ? `of ${low} cm³` : `set up between ${low} and ${high} cm³`;
}
