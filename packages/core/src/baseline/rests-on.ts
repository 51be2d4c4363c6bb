import { toCubicCentimetre } from "../units/convert.ts";
import type { RestsOn } from "../words/rests-on.ts";
import type { StandardSetup } from "./known-good.ts";
import type { Theory } from "./theory.ts";

/** An example with less than this part of the say is not counted. */
const COUNTED = 0.05;

/** What a figure rests on. `weights` belong to `setups`, one each. */
export function restsOn(
  { basis }: Theory,
  setups: readonly StandardSetup[],
  weights: readonly number[],
): RestsOn {
  const counted = setups.filter((_, i) => Math.abs(weights[i]!) >= COUNTED);
  if (counted.length === 0) return { theory: basis, shop: null };
  const sizes = counted.map(({ features }) => Math.round(toCubicCentimetre(features.displacement)));
  return {
    theory: basis,
    shop: {
      bikes: counted.length,
      lowCc: Math.min(...sizes),
      highCc: Math.max(...sizes),
      most: weights.reduce((sum, weight) => sum + weight, 0) >= 0.5,
    },
  };
}
