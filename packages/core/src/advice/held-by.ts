import { normalCumulative } from "../numerics/normal.ts";
import { CIRCUITS } from "../units/circuit.ts";
import { OPENINGS } from "../units/opening.ts";
import type { Opening } from "../units/quantity.ts";
import type { HeldBy } from "./advice.ts";
import { LEAN_CHANCE, LEAN_CHANCE_FOR_SECONDS, TOP } from "./loss.ts";
import { mayBeRichForOtherReasons } from "./rich-for-other-reasons.ts";
import type { Candidate } from "./search.ts";
import { warnedOfKnock } from "./stop-step.ts";
import { leanChanceAtTop } from "./top-throttle.ts";
import type { Weighing } from "./weighing.ts";

/** A change that leans an opening by less than this, ln ratio, leaves it as it was. */
const SAME = -0.002;
/** The same from 3/4 up, where every pilot jet acts a little: a quarter of a main jet step. The throttle is held back all the same. */
const SAME_AT_TOP = -0.01;

/**
 * A test of what holds a change back; it answers null for one that may be made. A change that does not lean the top may
 * be made before the top is proved: the throttle is held back instead. Rules A2, A6 and A20.
 * @param richForOtherReasons false: as if nothing but the jets could make the top feel rich
 */
export function holding(
  weighing: Weighing,
  richForOtherReasons = mayBeRichForOtherReasons(weighing.story, weighing.chances),
): (candidate: Candidate) => HeldBy | null {
  const { present } = weighing;
  const warned = warnedOfKnock(weighing.story);
  return (candidate) => {
    if (warned && leansMost(present, candidate, OPENINGS) < SAME) return "pinging";
    if (!leansTop(present, candidate)) return null;
    if (richForOtherReasons) return "other reasons";
    return topIsSafe(weighing, candidate) ? null : "top";
  };
}

/** True when the candidate is leaner than the setup as it is somewhere from 3/4 up, by more than counts as the same. */
export const leansTop = (present: Candidate, candidate: Candidate): boolean =>
  leansMost(present, candidate, TOP) < SAME_AT_TOP;

/** The leanest the candidate makes one of these openings against the setup as it is, ln ratio; above 0: all are richer. */
export const leansMost = (present: Candidate, candidate: Candidate, openings: readonly Opening[]): number =>
  Math.min(...openings.map((opening) => changeAt(present, candidate, opening)));

/** How much richer the candidate makes an opening than the setup as it is, ln ratio. */
export function changeAt(present: Candidate, candidate: Candidate, opening: Opening): number {
  const i = OPENINGS.indexOf(opening);
  let change = 0;
  for (const circuit of CIRCUITS) change += candidate.shift[circuit][i]! - present.shift[circuit][i]!;
  return change;
}

/** No more than a 2 % chance of being leaner than the limit from 3/4 up, over the whole belief. Rule A2. */
function topIsSafe({ belief }: Weighing, candidate: Candidate): boolean {
  // The single Gaussian rules most out cheaply; the whole belief decides.
  if (normalCumulative(-candidate.topSpread) > LEAN_CHANCE_FOR_SECONDS) return false;
  return leanChanceAtTop(belief, candidate.shift, "seconds") <= LEAN_CHANCE;
}
