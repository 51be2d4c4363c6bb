import { exp } from "../numerics/elementary.ts";
import { known } from "../parts/known.ts";
import { OPENINGS } from "../units/opening.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { Kelvin, Metre } from "../units/quantity.ts";
import type { Warning } from "../words/warning.ts";
import { type AirLookup, usualAir } from "./air-lookup.ts";
import type { MeteringRefusal } from "./comparable.ts";
import { totalAt } from "./compare.ts";
import { mainNumberFor, richSize } from "./main-alone.ts";
import { crossing } from "./search.ts";
import { baselineOf, otherSide, shiftOf } from "./shift.ts";
import type { Situation } from "./situation.ts";

/** A place on the ride. */
export interface TripPoint {
  readonly name: string;
  readonly height: Metre;
  /** The coldest expected there. */
  readonly temperature: Kelvin;
  /** 0 to 1; left out: 0.5. */
  readonly relativeHumidity?: number;
}

/** A place with what the ride's setup does there. */
export interface TripStop {
  readonly point: TripPoint;
  /** Log of the mixture against the setup's own air with the safe main jet in, at the eleven OPENINGS. */
  readonly feel: readonly number[];
  /** Main jet for this place alone, exact and rounded to the rich side; null where no main jet can. */
  readonly exactMain: number | null;
  readonly main: number | null;
  /** Where this place's own main jet is smaller: the height below which it would run lean, and so must come out. */
  readonly refitBelow: Metre | null;
  readonly text: string;
}

export interface Trip {
  /** The place with the densest air: it decides. */
  readonly decides: TripPoint;
  /** Main jet that is lean nowhere on the ride; null where the list has none so big. */
  readonly safeMain: number | null;
  readonly exactSafeMain: number;
  /** In the order given. */
  readonly stops: readonly TripStop[];
  readonly warnings: readonly Warning[];
}

export interface TripOptions {
  /** Main jet numbers that can be had; left out: every whole number. */
  readonly mains?: readonly number[];
  readonly air?: AirLookup;
}

export type TripRefusal =
  | MeteringRefusal
  | "outside the tables"
  | "no places"
  | "main jet not known"
  | "needle limits";

const FULL = OPENINGS.length - 1;
const HALF = 6;
/** K/m that air cools with height on the way back; ISO 2533:1975 [from memory]. */
const LAPSE = 0.0065;

/**
 * One main jet for a whole ride: right where the air is densest (lowest, coldest), so nowhere lean; what every
 * other place will feel like; and, for who re-jets up high, below what height the bigger jet must be back in.
 */
export function planTrip(
  situation: Situation,
  points: readonly TripPoint[],
  options: TripOptions = {},
): Outcome<Trip, TripRefusal> {
  const baseline = baselineOf(situation);
  if (!baseline.ok) return baseline;
  const jet = situation.setup.main.part;
  if (points.length === 0) return refuse("no places", "Name at least one place of the ride with its height.");
  if (jet === null) {
    return refuse("main jet not known", "The main jet fitted is not known: take it out and read its number.");
  }
  const { frame, side } = baseline.value;
  const lookup = options.air ?? usualAir;
  const errorIn = (
    point: Omit<TripPoint, "name">,
    number: number,
  ): Outcome<readonly number[], TripRefusal> => {
    const air = lookup(point.height, point.temperature, point.relativeHumidity ?? 0.5);
    if (!air.ok) return air;
    const setup = { ...situation.setup, main: known({ ...jet, number }) };
    const other = otherSide(baseline.value, { ...situation, setup, air: air.value });
    if (!other.ok) return other;
    const shift = shiftOf(frame, side, other.value);
    return accept(OPENINGS.map((_, i) => totalAt(shift, i)));
  };
  const rounded = (exact: number): number | null => richSize(exact, options.mains);

  const places: { point: TripPoint; exactMain: number | null; richness: number }[] = [];
  for (const point of points) {
    const error = errorIn(point, jet.number);
    if (!error.ok) return error;
    const richness = error.value[FULL]!;
    places.push({ point, richness, exactMain: mainNumberFor(frame, side, jet, FULL, richness) });
  }
  const deciding = places.reduce((a, b) => (b.richness < a.richness ? b : a));
  if (deciding.exactMain === null) {
    return refuse(
      "needle limits",
      `At ${deciding.point.name} no main jet gives enough fuel: the needle holds it back at full throttle. Lift the needle or fit a bigger needle jet.`,
      { place: deciding.point.name },
    );
  }
  const safeMain = rounded(deciding.exactMain);
  const fitted = safeMain ?? deciding.exactMain;
  const lowest = Math.min(...points.map((point) => point.height));

  const stops: TripStop[] = [];
  for (const { point, exactMain } of places) {
    const feel = errorIn(point, fitted);
    if (!feel.ok) return feel;
    const main = exactMain === null ? null : rounded(exactMain);
    const refitBelow =
      main === null || main >= fitted
        ? null
        : crossing(
            (height) => {
              const temperature = (point.temperature + LAPSE * (point.height - height)) as Kelvin;
              const error = errorIn({ ...point, height: height as Metre, temperature }, main);
              return error.ok ? error.value[FULL]! : Number.NaN;
            },
            lowest,
            point.height,
          );
    stops.push({
      point,
      feel: feel.value,
      exactMain,
      main,
      refitBelow: refitBelow as Metre | null,
      text: inWords(point, feel.value, main, fitted, refitBelow),
    });
  }
  return accept({
    decides: deciding.point,
    safeMain,
    exactSafeMain: deciding.exactMain,
    stops,
    warnings:
      safeMain === null
        ? [{ code: "no-main-big-enough", given: { wanted: fitted, place: deciding.point.name } }]
        : [],
  });
}

const richLean = (logRatio: number): string => {
  const percent = Math.round(100 * Math.abs(exp(logRatio) - 1));
  return percent === 0 ? "right" : `${percent} % ${logRatio > 0 ? "rich" : "lean"}`;
};

function inWords(
  point: TripPoint,
  feel: readonly number[],
  main: number | null,
  safe: number,
  refitBelow: number | null,
): string {
  const first = `${point.name}, ${Math.round(point.height)} m: ${richLean(feel[FULL]!)} at full, ${richLean(feel[HALF]!)} at 1/2.`;
  if (main === null || main >= safe) return first;
  const back =
    refitBelow === null
      ? `put the ${say(safe)} back before riding where it is lower or colder`
      : `put the ${say(safe)} back before going below ${Math.ceil(refitBelow / 10) * 10} m, sooner if it turns colder`;
  return `${first} A ${say(main)} main jet would suit it; ${back}.`;
}

const say = (number: number): string => String(Number(number.toFixed(1)));
