import { nominalShift, type Stretch } from "../belief/state.ts";
import type { Shift } from "../units/circuit.ts";

/**
 * Where the idle turns fastest, the mixture there is right within this, ± ln ratio: best idle and best answer to the
 * throttle need not lie on one place. Estimate.
 */
const BEST_IDLE_IS_RIGHT = 0.02;

/** No screw is believed nearer to its seat or further out than this, turns. */
const LEAST_TURNS = 0.05;
const MOST_TURNS = 6;

/**
 * Spread, as ln of the fuel-air ratio, of the bottom mixture at a best idle whose place was measured by engine speed:
 * how far the mixture moves within the place's own spread, and what best idle says at all.
 * @param byHand the spread where nobody gave one
 * @param turnsSd standard deviation of the best place, turns; undefined: found by feel
 * @param shiftAt the situation's shift with the screw there; null where it cannot be worked out
 */
export function screwPeakSd(
  byHand: number,
  turns: number,
  turnsSd: number | undefined,
  shiftAt: (turns: number) => Shift | null,
  stretch: Stretch,
): number {
  if (turnsSd === undefined || !(turnsSd > 0)) return byHand;
  const inner = Math.max(LEAST_TURNS, turns - turnsSd);
  const outer = Math.min(MOST_TURNS, turns + turnsSd);
  const [near, far] = [shiftAt(inner), shiftAt(outer)];
  if (near === null || far === null || !(outer > inner)) return byHand;
  const moved = (nominalShift(stretch, far) - nominalShift(stretch, near)) * (turnsSd / (outer - inner));
  return Math.sqrt(moved * moved + BEST_IDLE_IS_RIGHT * BEST_IDLE_IS_RIGHT);
}
