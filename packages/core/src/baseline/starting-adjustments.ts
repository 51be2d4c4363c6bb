import { exp, log } from "../numerics/elementary.ts";
import { toMillimetre } from "../units/convert.ts";
import type { RestsOn } from "../words/rests-on.ts";
import type { SizedBike } from "./bike-check.ts";
import { borrow } from "./borrowed.ts";
import type { StandardSetup } from "./known-good.ts";
import { restsOn } from "./rests-on.ts";
import { type StartingFigure, stepped } from "./starting-figure.ts";
import { CLIP_BY_THEORY, cutawayByTheory, SCREW_BY_THEORY, type Theory } from "./theory.ts";

/** What is left between two bikes that are alike, in grooves, turns, and log of cutaway. Estimate. */
const CLIP_TWIN_SD = 0.4;
const SCREW_TWIN_SD = 0.3;
const CUTAWAY_TWIN_SD = 0.08;
const MIDDLE_OF_FIVE = 3;
/** A groove leaner than the middle is taken only when at least this much of it is called for: rich side first. */
const LEANER_FROM = 0.7;

/** Theory moved towards the shop's bikes, for a part that each of `setups` has a value of. */
function moved(
  target: SizedBike,
  theory: Theory,
  twinSd: number,
  setups: readonly StandardSetup[],
  offsetOf: (setup: StandardSetup) => number | null,
): Theory & { readonly restsOn: RestsOn } {
  const like = setups.filter((setup) => offsetOf(setup) !== null);
  const examples = like.map((setup) => ({ features: setup.features, offset: offsetOf(setup)!, sd: 0 }));
  const borrowed = borrow(target, examples, theory.sd, twinSd);
  return {
    ...theory,
    mean: theory.mean + borrowed.offset,
    sd: borrowed.sd,
    restsOn: restsOn(theory, like, borrowed.weights),
  };
}

/** Groove of 5 from the top; `atPlace` is what the air and fuel of the place ask for on top, in grooves. */
export function clipFigure(
  target: SizedBike,
  setups: readonly StandardSetup[],
  atPlace: number,
): StartingFigure {
  const clip = moved(target, CLIP_BY_THEORY, CLIP_TWIN_SD, setups, ({ grooves }) =>
    grooves === null ? null : grooves - CLIP_BY_THEORY.mean,
  );
  const middle = MIDDLE_OF_FIVE + clip.mean + atPlace;
  return {
    part: "clip",
    numbering: null,
    ...stepped(middle, clip.sd, 1, [1, 5]),
    start: Math.min(5, Math.max(1, Math.floor(middle + LEANER_FROM))),
    restsOn: clip.restsOn,
  };
}

export function screwFigure(target: SizedBike, setups: readonly StandardSetup[]): StartingFigure {
  const screw = moved(target, SCREW_BY_THEORY, SCREW_TWIN_SD, setups, ({ good }) => {
    const { part } = good.situation.setup.screw;
    return part === null || part.kind !== target.screwKind ? null : part.turnsOut - SCREW_BY_THEORY.mean;
  });
  return {
    part: "screw",
    numbering: null,
    ...stepped(screw.mean, screw.sd, 0.25, [0.5, 3]),
    restsOn: screw.restsOn,
  };
}

/** In mm; null on four-strokes that the shop has no example for. */
export function cutawayFigure(target: SizedBike, setups: readonly StandardSetup[]): StartingFigure | null {
  const theory = cutawayByTheory(target);
  if (theory === null) return null;
  const two = setups.filter(({ features }) => features.strokes === 2);
  const cutaway = moved(target, theory, CUTAWAY_TWIN_SD, two, ({ good, features }) => {
    const { part } = good.situation.setup.cutaway;
    return part === null || !(part > 0) ? null : log(toMillimetre(part)) - cutawayByTheory(features)!.mean;
  });
  const spread = (sds: number): number => exp(cutaway.mean + sds * cutaway.sd);
  const { low } = stepped(spread(-1.645), 0, 0.5, [1, 6]);
  const { high } = stepped(spread(1.645), 0, 0.5, [1, 6]);
  return {
    part: "cutaway",
    numbering: null,
    ...stepped(spread(0), 0, 0.5, [1, 6]),
    low,
    high,
    restsOn: cutaway.restsOn,
  };
}
