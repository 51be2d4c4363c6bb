import { nominalShift, type Stretch } from "../belief/state.ts";
import type { Shift } from "../units/circuit.ts";
import type { TestResult } from "./case.ts";

/**
 * Where the idle turns fastest, the mixture there is right within this, ± ln ratio: best idle and best answer to the
 * throttle need not lie on one place. Estimate.
 */
const BEST_IDLE_IS_RIGHT = 0.02;

/** Sweeps within this of each other, milliseconds, are of one sitting. */
const SITTING = 12 * 3600 * 1000;

/** No screw is believed nearer to its seat or further out than this, turns. */
const LEAST_TURNS = 0.05;
const MOST_TURNS = 6;

/**
 * Spread, as ln of the fuel-air ratio, of the bottom mixture at a best idle whose place was measured by engine speed:
 * how far the mixture moves within the place's own spread, and what best idle says at all.
 * How far best idle is from right is the same in every sweep of a sitting: each of several gets so much more spread that
 * together they tell no more of it than one.
 * @param byHand the spread where nobody gave one
 * @param turnsSd standard deviation of the best place, turns; undefined: found by feel
 * @param shiftAt the situation's shift with the screw there; null where it cannot be worked out
 * @param sweeps sweeps of this screw in the sitting, this one included
 */
export function screwPeakSd(
  byHand: number,
  turns: number,
  turnsSd: number | undefined,
  shiftAt: (turns: number) => Shift | null,
  stretch: Stretch,
  sweeps = 1,
): number {
  const shared = (sweeps - 1) * BEST_IDLE_IS_RIGHT * BEST_IDLE_IS_RIGHT;
  const felt = Math.sqrt(byHand * byHand + shared);
  if (turnsSd === undefined || !(turnsSd > 0)) return felt;
  const inner = Math.max(LEAST_TURNS, turns - turnsSd);
  const outer = Math.min(MOST_TURNS, turns + turnsSd);
  const [near, far] = [shiftAt(inner), shiftAt(outer)];
  if (near === null || far === null || !(outer > inner)) return felt;
  const moved = (nominalShift(stretch, far) - nominalShift(stretch, near)) * (turnsSd / (outer - inner));
  return Math.sqrt(moved * moved + BEST_IDLE_IS_RIGHT * BEST_IDLE_IS_RIGHT + shared);
}

/** How many sweeps of the same screw one sitting holds, the given one included. */
export function sweepsInSitting(result: TestResult, all: readonly TestResult[]): number {
  return all.filter(
    ({ test, numbers, at }) =>
      test === result.test && numbers.bestTurns !== undefined && Math.abs(at - result.at) < SITTING,
  ).length;
}
