import type { Chance } from "../chance.ts";
import type { Rider } from "./rider.ts";
import { type Feel, over, type Stretch } from "./stretches.ts";

/** One stretch as a rider felt it once. */
export interface Felt {
  readonly feel: Feel;
  /** How strongly, in units of what is noticed at all. */
  readonly strength: number;
  readonly sign: string | null;
}

/**
 * What a rider says of a stretch.
 * @param seems what the bike seems to run at each of LIFTS: the mixture's error, misfires and wear thrown in
 * @param careful tries to the same question: three careful ones stray less and confuse less
 */
export function perceive(
  chance: Chance,
  rider: Rider,
  stretch: Stretch,
  strokes: 2 | 4,
  seems: readonly number[],
  careful = 1,
): Felt {
  const steady = Math.sqrt(careful);
  const said = stretch.says(strokes);
  const error = over(stretch, seems) - rider.taste + chance.normal(0, rider.noise / steady);
  const strength = error / (stretch.noticed * rider.dull);
  const vague = chance.uniform();
  const wrongWord = chance.uniform();
  const size = Math.abs(strength);
  let feel: Feel = strength > 1 ? "rich" : strength < -1 ? "lean" : "right";
  // Just short of clear: some complain, some are content, most say nothing.
  if (size > 0.7 && size <= 1) {
    if (vague < 0.25) feel = strength > 0 ? "rich" : "lean";
    else if (vague > 0.55) return { feel: "right", strength, sign: null };
  }
  if (feel === "right") return { feel, strength, sign: chance.of(rider.praises) ? said.right[0]! : null };
  // A bog for a stumble: likelier the less it does, hardly ever when it is gross.
  if (wrongWord < (rider.confuses / steady) * Math.min(1, 2 / Math.max(1, size)))
    feel = feel === "rich" ? "lean" : "rich";
  const phrases = said[feel];
  const loud = Math.min(phrases.length - 1, Math.floor((size - 1) * 1.2 + chance.between(0, 0.7)));
  return { feel, strength, sign: phrases[Math.max(0, loud)]! };
}
