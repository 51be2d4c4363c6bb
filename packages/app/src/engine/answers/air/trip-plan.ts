import { accept, fromCelsius, fromMetre, type Outcome, planTrip } from "@jetwright/core";
import { bikeCase } from "@jetwright/records";
import type { EngineState } from "../../state.ts";

export interface TripPlace {
  readonly name: string;
  readonly heightM: number;
  readonly celsius: number;
}

export interface TripPlan {
  readonly fittedMain: number;
  /** The main jet that is lean nowhere on the ride; null where no size sold is big enough. */
  readonly safeMain: number | null;
  readonly decides: string;
  readonly stops: readonly {
    readonly name: string;
    readonly heightM: number;
    /** Percent richer than right at 1/2 and full with the safe jet in; below zero leaner. */
    readonly half: number;
    readonly full: number;
    /** The jet this place alone would like. */
    readonly main: number | null;
    /** Put the safe one back before riding below this height. */
    readonly backBelowM: number | null;
  }[];
  readonly warnings: readonly string[];
}

const percent = (logRatio: number): number => 100 * Math.expm1(logRatio);

/** One main jet for a whole ride, what each place will feel like with it, and the way back. */
export function tripPlan(
  { shop }: EngineState,
  { bike, places }: { readonly bike: string; readonly places: readonly TripPlace[] },
): Outcome<TripPlan> {
  const made = bikeCase(shop, bike);
  if (!made.ok) return made;
  const trip = planTrip(
    made.value.now,
    places.map(({ name, heightM, celsius }) => ({
      name,
      height: fromMetre(heightM),
      temperature: fromCelsius(celsius),
    })),
  );
  if (!trip.ok) return trip;
  return accept({
    fittedMain: made.value.now.setup.main.part!.number,
    safeMain: trip.value.safeMain,
    decides: trip.value.decides.name,
    stops: trip.value.stops.map(({ point, feel, main, refitBelow }) => ({
      name: point.name,
      heightM: point.height,
      half: percent(feel[6]!),
      full: percent(feel[10]!),
      main,
      backBelowM: refitBelow,
    })),
    warnings: trip.value.warnings,
  });
}
