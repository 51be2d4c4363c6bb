import { exp, power } from "../numerics/elementary.ts";
import { boreHeight } from "../parts/bore.ts";
import { openArea } from "../parts/bore-area.ts";
import type { Body } from "../parts/setup.ts";
import { OPENINGS } from "../units/opening.ts";
import type { Metre } from "../units/quantity.ts";
import {
  CUTAWAY_FADE,
  DEPRESSION,
  IDLE_LIFT_SHARE,
  LIP_SHARE,
  PILOT_FADE,
  PILOT_FADE_POWER,
  PILOT_SHARE_LEFT,
} from "./coefficients.ts";
import { typicalCutaway } from "./typical.ts";

/** What one body fixes at each of the eleven openings, whatever jets and needle are in it. */
export interface Frame {
  readonly body: Body;
  readonly height: number;
  /** Diameter of the round bore with the same full area, m. */
  readonly bore: number;
  /** Slide lift, m; closed means the idle lift. */
  readonly lift: readonly number[];
  /** Share of the fuel that comes through the pilot circuit. */
  readonly pilotShare: readonly number[];
  /** Depression at the nozzle in standard air with the usual cutaway, Pa. */
  readonly depression: readonly number[];
  /** How much of the cutaway adds to the gap the nozzle feels. */
  readonly cutawayReach: readonly number[];
  /** The gap's area with the usual cutaway, m². */
  readonly usualGap: readonly number[];
}

/** Share of the pilot circuit in the fuel at a fraction of full lift: a prescribed curve, good to ±40 %. */
export const pilotShareAt = (lifted: number): number =>
  PILOT_SHARE_LEFT + (1 - PILOT_SHARE_LEFT) * exp(-power(lifted / PILOT_FADE, PILOT_FADE_POWER));

function depressionAt(lifted: number): number {
  let [x0, y0] = DEPRESSION[0]!;
  for (const [x1, y1] of DEPRESSION) {
    if (lifted <= x1) return x1 === x0 ? y1 : y0 + ((y1 - y0) * (lifted - x0)) / (x1 - x0);
    [x0, y0] = [x1, y1];
  }
  return y0;
}

/** Area of the gap at the nozzle with a cutaway of `cutaway` m, at opening number `i`. */
export function gapArea(
  frame: Pick<Frame, "body" | "lift" | "cutawayReach">,
  cutaway: number,
  i: number,
): number {
  return openArea(frame.body.bore, (frame.lift[i]! + frame.cutawayReach[i]! * cutaway) as Metre);
}

/** Precomputes a body; give it a body whose sizes have been checked. */
export function frameOf(body: Body): Frame {
  const height = boreHeight(body.bore);
  const bore = Math.sqrt((4 / Math.PI) * openArea(body.bore, height));
  const idle = body.idleLift ?? IDLE_LIFT_SHARE * height;
  const lift = OPENINGS.map((opening) => Math.max(opening * height, idle));
  const lifted = lift.map((x) => x / height);
  const cutawayReach = lifted.map((x) => LIP_SHARE * exp(-((x / CUTAWAY_FADE) * (x / CUTAWAY_FADE))));
  const usual = typicalCutaway(bore);
  const gaps = { body, lift, cutawayReach };
  return {
    ...gaps,
    height,
    bore,
    pilotShare: lifted.map(pilotShareAt),
    depression: lifted.map(depressionAt),
    usualGap: lift.map((_, i) => gapArea(gaps, usual, i)),
  };
}
