import {
  accept,
  exp,
  fromCelsius,
  fromMetre,
  OPENINGS,
  type Outcome,
  planTrip,
  warningText,
} from "@jetwright/core";
import type { EngineState } from "../../state.ts";
import { isOwned, type JetSource, sizesFor } from "./mains-at-hand.ts";
import { type RightAir, ranRight } from "./ran-right.ts";

export interface TripPlace {
  readonly name: string;
  readonly heightM: number;
  /** The coldest expected there. */
  readonly celsius: number;
}

export interface TripPlan {
  /** The air everything is counted from. */
  readonly from: RightAir;
  readonly fittedMain: number;
  /** The main jet that is lean nowhere on the ride; null where no size at hand is big enough. */
  readonly safeMain: number | null;
  readonly safeOwned: boolean;
  /** Where the air is densest. */
  readonly decides: TripPlace;
  readonly stops: readonly {
    readonly name: string;
    readonly heightM: number;
    readonly celsius: number;
    /** Percent richer than right at 1/2 and full with the safe jet in; below zero leaner. */
    readonly half: number;
    readonly full: number;
    /** The jet this place alone would like, where it is smaller than the safe one. */
    readonly main: number | null;
    readonly mainOwned: boolean;
    /** Put the safe one back before riding below this height. */
    readonly backBelowM: number | null;
  }[];
  readonly warnings: readonly string[];
}

const percent = (logRatio: number): number => 100 * (exp(logRatio) - 1);
const HALF = OPENINGS.findIndex((opening) => opening >= 0.5);
const FULL = OPENINGS.length - 1;

/** One main jet for a whole ride, what each place will feel like with it, and the way back. */
export function tripPlan(
  { shop, words }: EngineState,
  {
    bike,
    places,
    source,
  }: { readonly bike: string; readonly places: readonly TripPlace[]; readonly source: JetSource },
): Outcome<TripPlan> {
  const base = ranRight(shop, bike);
  if (!base.ok) return base;
  const { situation, bikeCase, air } = base.value;
  const jet = situation.setup.main.part;
  const trip = planTrip(
    situation,
    places.map(({ name, heightM, celsius }) => ({
      name,
      height: fromMetre(heightM),
      temperature: fromCelsius(celsius),
    })),
    jet === null ? {} : { mains: sizesFor(jet, "main", bikeCase.drawer, source) },
  );
  if (!trip.ok) return trip;
  const { safeMain, decides, stops, warnings } = trip.value;
  const owned = (number: number | null): boolean =>
    number !== null && (number === jet!.number || isOwned(jet!, "main", bikeCase.drawer, number));
  const placeOf = (i: number): TripPlace => places[i]!;
  return accept({
    from: air,
    fittedMain: jet!.number,
    safeMain,
    safeOwned: owned(safeMain),
    decides: placeOf(stops.findIndex(({ point }) => point === decides)),
    stops: stops.map(({ feel, main, refitBelow }, i) => {
      const smaller = main !== null && safeMain !== null && main < safeMain ? main : null;
      return {
        ...placeOf(i),
        half: percent(feel[HALF]!),
        full: percent(feel[FULL]!),
        main: smaller,
        mainOwned: owned(smaller),
        backBelowM: smaller === null ? null : refitBelow,
      };
    }),
    warnings: warnings.map((warning) => warningText(warning, words)),
  });
}
