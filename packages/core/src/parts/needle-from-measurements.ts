import { arctangent } from "../numerics/elementary.ts";
import { fromMillimetre, toMillimetre } from "../units/convert.ts";
import { accept, type Outcome, type Refusal, refuse } from "../units/outcome.ts";
import type { Metre, Radian } from "../units/quantity.ts";
import type { Warning } from "../words/warning.ts";
import { brokenLineAt } from "./broken-line.ts";
import { type BrokenLineDoubt, brokenLineDoubt } from "./broken-line-doubt.ts";
import type { NeedleProfile } from "./needle.ts";
import { type ChosenLine, chooseLine, type Reading } from "./needle-fit.ts";

/** One diameter read off a needle. */
export interface NeedleReading {
  readonly belowTopGroove: Metre;
  readonly diameter: Metre;
  /** 1 sd of this reading, where it differs from the micrometer's. */
  readonly sd?: Metre;
}

/** A needle's shape out of readings, with how well each figure is known (1 sd). */
export interface MeasuredNeedle {
  readonly profile: NeedleProfile;
  readonly straightDiameterSd: Metre;
  /** In the order of the profile's tapers. */
  readonly tapers: readonly { readonly startSd: Metre; readonly includedAngleSd: Radian }[];
  /** Readings that were left out, with what the others say the diameter is there. */
  readonly leftOut: readonly { readonly reading: NeedleReading; readonly expected: Metre }[];
  /** Stretch that was measured; outside it the shape is only carried on. */
  readonly measured: { readonly from: Metre; readonly to: Metre };
  /** What to know or to measure next. Empty: nothing. */
  readonly remarks: readonly Warning[];
}

export type NeedleRefusal =
  | "reading"
  | "too few"
  | "too many"
  | "gets thicker"
  | "no straight part"
  | "does not fit";

const FEWEST = 5;
const MOST = 60;
/** Chi square a spare reading above which no shape of a needle is believed, and above which it is said. */
const HOPELESS = 9;
const ROUGH = 2.5;
/** How much better a line without straight part must fit before it is believed. */
const CLEARLY_BETTER = 16;
/** Standard deviations before a widening is believed. */
const SURE = 4;

/**
 * The shape of a needle from diameters at distances below its top groove: a straight part, then none to three tapers,
 * found exactly by least squares, the number of tapers by price (see `chooseLine`). Readings may come in any order. One or
 * two that are more than four sd off are left out and named. Needs at least 2 readings on the straight part and 3 on each
 * taper. The sds hold for tapers whose bend is plain; a common error of the micrometer's zero is not in them.
 * @param micrometerSd 1 sd of a diameter reading; 0.003 mm is usual
 * @param distanceSd 1 sd of a distance, counts on the tapers; 0.1 mm is usual with a calliper
 */
export function needleFromMeasurements(
  readings: readonly NeedleReading[],
  micrometerSd: Metre,
  distanceSd: Metre = 1e-4 as Metre,
): Outcome<MeasuredNeedle, NeedleRefusal> {
  if (!(micrometerSd > 0 && micrometerSd < 1e-3 && distanceSd >= 0 && distanceSd < 1e-2)) {
    throw new RangeError(
      `Doubt must be above 0 and below 1 mm of diameter, at least 0 and below 10 mm of distance; got ${micrometerSd} and ${distanceSd} m`,
    );
  }
  const sorted = [...readings].sort((a, b) => a.belowTopGroove - b.belowTopGroove || a.diameter - b.diameter);
  const wrong = refusedReadings(sorted);
  if (wrong) return wrong;
  const points = sorted.map(
    (reading): Reading => ({
      x: toMillimetre(reading.belowTopGroove),
      y: toMillimetre(reading.diameter),
      sd: toMillimetre(reading.sd ?? micrometerSd),
    }),
  );
  const chosen = chooseLine(points, toMillimetre(distanceSd), true);
  const doubt = chosen && brokenLineDoubt(chosen.points, chosen.line);
  const misshapen = refusedShape(points, toMillimetre(distanceSd), chosen, doubt);
  if (misshapen) return misshapen;
  if (!chosen || !doubt) {
    return refuse(
      "too few",
      "The readings lie too close together to tell a straight part from a taper. Measure every 2 mm from the grooves to the tip.",
    );
  }
  return accept(measuredNeedle(sorted, chosen, doubt));
}

function refusedReadings(sorted: readonly NeedleReading[]): Refusal<NeedleRefusal> | null {
  for (const { belowTopGroove, diameter, sd } of sorted) {
    const possible =
      belowTopGroove >= 0 &&
      belowTopGroove <= 0.15 &&
      diameter >= 3e-4 &&
      diameter <= 0.006 &&
      (sd === undefined || (sd > 0 && sd < 1e-3));
    if (possible) continue;
    return refuse(
      "reading",
      `${mm(diameter, 3)} mm at ${mm(belowTopGroove, 1)} mm below the top groove cannot be on a needle (0.3 to 6 mm, 0 to 150 mm down). Check the two numbers and their unit.`,
      { diameter: mm(diameter, 3), down: mm(belowTopGroove, 1) },
    );
  }
  if (sorted.length > MOST) {
    return refuse(
      "too many",
      `${sorted.length} readings are more than the ${MOST} this takes. Leave out those closest together.`,
      { count: sorted.length, most: MOST },
    );
  }
  if (sorted.length < FEWEST) {
    return refuse(
      "too few",
      `${sorted.length} readings are too few; ${FEWEST} are the least: two on the straight part near the grooves and three on each taper. Measure every 2 mm from the grooves to the tip.`,
      { count: sorted.length, least: FEWEST },
    );
  }
  return null;
}

/** What no needle looks like. */
function refusedShape(
  points: readonly Reading[],
  distanceSd: number,
  chosen: ChosenLine | null,
  doubt: BrokenLineDoubt | null,
): Refusal<NeedleRefusal> | null {
  const rough = !chosen || !doubt || doubt.scatter > ROUGH || chosen.leftOut.length > 0;
  const free = rough ? chooseLine(points, distanceSd, false) : null;
  const betterFree =
    free !== null && free.score < (chosen?.score ?? Infinity) - CLEARLY_BETTER * scatterOf(free);
  const widening = (betterFree ? free : chosen) && wideningOf((betterFree ? free : chosen)!);
  if (widening) {
    return refuse(
      "gets thicker",
      `The needle gets thicker from ${widening.from.toFixed(1)} to ${widening.to.toFixed(1)} mm below the top groove, which no needle does. Check that distances are counted from the grooves and not from the tip, and measure there again.`,
      { from: widening.from.toFixed(1), to: widening.to.toFixed(1) },
    );
  }
  if (betterFree && free.line.slopes[0]! < 0) {
    return refuse(
      "no straight part",
      "The readings get thinner from the first one down, so the straight part was not measured. Measure three more nearer the grooves.",
    );
  }
  if (doubt && doubt.scatter > HOPELESS) {
    return refuse(
      "does not fit",
      "The readings do not lie on a straight part with up to three tapers. Measure again, turning the needle a quarter each time: it may be bent, worn or dirty.",
    );
  }
  return null;
}

/** Chi square a spare reading of a line with a free first slope, at least 1. */
const scatterOf = ({ line, points }: Pick<ChosenLine, "line" | "points">): number =>
  Math.max(1, line.misfit / Math.max(1, points.length - 2 - 2 * line.breaks.length));

/** The first stretch that widens beyond doubt, the readings' own scatter counted in. */
function wideningOf({ line, points }: ChosenLine): { from: number; to: number } | null {
  const [first, last] = [points[0]!.x, points[points.length - 1]!.x];
  const edges = [first, ...line.breaks, last];
  const sure = SURE * Math.sqrt(scatterOf({ line, points }));
  for (const [k, slope] of line.slopes.entries()) {
    const [from, to] = [Math.max(edges[k]!, first), Math.min(edges[k + 1]!, last)];
    const inside = points.filter((point) => point.x >= from - 1e-9 && point.x <= to + 1e-9);
    const weight = inside.reduce((sum, point) => sum + point.weight, 0);
    const mean = inside.reduce((sum, point) => sum + point.weight * point.x, 0) / weight;
    const spread = inside.reduce((sum, point) => sum + point.weight * (point.x - mean) * (point.x - mean), 0);
    if (slope > 0 && slope * Math.sqrt(spread) > sure) return { from, to };
  }
  return null;
}

function measuredNeedle(
  sorted: readonly NeedleReading[],
  { line, leftOut, points }: ChosenLine,
  doubt: BrokenLineDoubt,
): MeasuredNeedle {
  const angle = (slope: number): Radian => (2 * arctangent(Math.max(0, -slope) / 2)) as Radian;
  const left = leftOut.map((i) => ({
    reading: sorted[i]!,
    expected: fromMillimetre(brokenLineAt(line, toMillimetre(sorted[i]!.belowTopGroove))),
  }));
  const [from, to] = [points[0]!.x, points[points.length - 1]!.x];
  return {
    profile: {
      straightDiameter: fromMillimetre(line.intercept),
      tapers: line.breaks.map((start, k) => ({
        start: fromMillimetre(start),
        includedAngle: angle(line.slopes[k + 1]!),
      })),
      diameterSd: fromMillimetre(doubt.line),
    },
    straightDiameterSd: fromMillimetre(doubt.level),
    tapers: line.breaks.map((_, k) => ({
      startSd: fromMillimetre(doubt.breaks[k]!),
      includedAngleSd: (doubt.slopes[k]! / (1 + (line.slopes[k + 1]! * line.slopes[k + 1]!) / 4)) as Radian,
    })),
    leftOut: left,
    measured: { from: fromMillimetre(from), to: fromMillimetre(to) },
    remarks: [...remarksOn(left, line.breaks, doubt, from, to), ...thinlyRead(points, line.breaks)],
  };
}

function remarksOn(
  left: MeasuredNeedle["leftOut"],
  breaks: readonly number[],
  doubt: BrokenLineDoubt,
  from: number,
  to: number,
): Warning[] {
  const remarks = left.map(({ reading, expected }): Warning => {
    const atEnd = toMillimetre(reading.belowTopGroove) >= to || toMillimetre(reading.belowTopGroove) <= from;
    return {
      code: "needle-reading-left-out",
      given: {
        mm: toMillimetre(reading.diameter),
        atMm: toMillimetre(reading.belowTopGroove),
        expectedMm: toMillimetre(expected),
        atEnd,
      },
    };
  });
  if (doubt.scatter > ROUGH) remarks.push({ code: "needle-scatter" });
  if (breaks.length === 0) remarks.push({ code: "needle-no-taper", given: { toMm: to } });
  for (const [k, start] of breaks.entries()) {
    if (doubt.breaks[k]! > 1) {
      remarks.push({
        code: "needle-taper-start",
        given: { taper: k + 1, startMm: start, withinMm: doubt.breaks[k]! },
      });
    }
  }
  return remarks;
}

/** Three readings are the least a taper is believed on; one with two would have been drawn into its neighbours. */
function thinlyRead(points: ChosenLine["points"], breaks: readonly number[]): Warning[] {
  return breaks.flatMap((start, k): Warning[] => {
    const end = breaks[k + 1] ?? Infinity;
    if (points.filter((point) => point.x >= start && point.x <= end).length > 3) return [];
    return [{ code: "needle-taper-thin", given: { taper: k + 1, startMm: start } }];
  });
}

const mm = (x: Metre, digits: number): string => toMillimetre(x).toFixed(digits);
