import type { Throttle } from "./throttle.ts";

/** Clean: no leaner and no richer than this wherever a rider speaks of it. */
export const CLEAN = { lean: -0.04, rich: 0.06, at: [0, 1 / 8, 1 / 4, 1 / 2, 3 / 4, 1] } as const;

/** A ride counts as lean below this anywhere from 3/4 up. */
export const LEAN_RIDE = -0.06;

/**
 * Whether a lean top ends an engine. The wanted mixture at full load is the rich one of best torque, lambda 0.80 to
 * 0.88 (Blair 1996; Heywood and Sher 1999); exhaust gas is hottest near lambda 0.95 to 1.0 and falls 40 to 60 K for each
 * tenth of fuel more; ten per cent lean eats the knock margin [all from memory]. So from 13 % lean a two-stroke held
 * wide open sits at its hottest and is lost; from 10 % lean one long ride in ten ends it; a few seconds only end it
 * beyond 20 %. A four-stroke stands a third more. The chances are estimates.
 */
export function endsAnEngine(strokes: 2 | 4, leanest: number, throttle: Throttle, luck: number): boolean {
  const scale = strokes === 2 ? 1 : 1.33;
  if (throttle === "stay below 3/4") return false;
  if (throttle === "seconds only") return leanest < -0.2 * scale;
  if (leanest < -0.13 * scale) return true;
  return leanest < -0.1 * scale && luck < 0.1;
}
