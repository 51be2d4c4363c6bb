import { exp, log } from "../numerics/elementary.ts";
import type { CubicMetre, Metre } from "../units/quantity.ts";
import { type Use, useRank } from "./use.ts";

/** What makes two bikes alike for their jets. */
export interface Features {
  readonly strokes: 2 | 4;
  readonly displacement: CubicMetre;
  readonly bore: Metre;
  readonly use: Use | null;
}

/** Ratio of displacements, as a log, over which likeness fades: 250 and 355 cm³ are one apart. Estimate. */
const DISPLACEMENT_REACH = 0.35;
/** The same for bores: 36 and 42 mm. Estimate. */
const BORE_REACH = 0.15;
/** Likeness of neighbouring uses, and of a two-stroke to a four-stroke. Estimate. */
const NEXT_USE = 0.8;
const OTHER_STROKES = 0.1;

/**
 * How much of what one bike differs from theory the other shares, 0 to 1. A product of kernels that are each
 * positive definite (Rasmussen & Williams 2006, ch. 4 [memory]), so any set of bikes makes a valid matrix.
 */
export function likeness(a: Features, b: Features): number {
  const volume = log(a.displacement / b.displacement) / DISPLACEMENT_REACH;
  const bore = log(a.bore / b.bore) / BORE_REACH;
  const steps = Math.abs(useRank(a.use) - useRank(b.use));
  return (
    exp(-0.5 * (volume * volume + bore * bore)) *
    (steps === 0 ? 1 : steps === 1 ? NEXT_USE : NEXT_USE * NEXT_USE) *
    (a.strokes === b.strokes ? 1 : OTHER_STROKES)
  );
}
