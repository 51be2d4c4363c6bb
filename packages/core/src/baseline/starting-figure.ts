import type { JetNumbering } from "../parts/jet.ts";
import type { RestsOn } from "../words/rests-on.ts";

/** One part of a starting setup. */
export interface StartingFigure {
  readonly part: "main" | "pilot" | "clip" | "screw" | "cutaway";
  /** For jets; null for the other parts. */
  readonly numbering: JetNumbering | null;
  /** What to fit first: a size sold; clip as groove of 5 from the top; screw in turns out; cutaway in mm. */
  readonly start: number;
  /** Nine of ten such bikes end up between these two. */
  readonly low: number;
  readonly high: number;
  /** The best guess before it is rounded and, for the main jet, moved to the rich side. */
  readonly middle: number;
  readonly restsOn: RestsOn;
}

/** Standard deviations either side that hold nine of ten. */
export const NINE_OF_TEN = 1.645;

const clamp = (x: number, low: number, high: number): number => Math.min(high, Math.max(low, x));

/** Rounds a value and its spread to steps, inside limits. */
export function stepped(
  middle: number,
  sd: number,
  step: number,
  [least, most]: readonly [number, number],
): Pick<StartingFigure, "start" | "low" | "high" | "middle"> {
  const at = (x: number): number => clamp(Math.round(x / step) * step, least, most);
  return {
    start: at(middle),
    low: at(middle - NINE_OF_TEN * sd),
    high: at(middle + NINE_OF_TEN * sd),
    middle,
  };
}
