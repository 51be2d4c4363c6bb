import {
  type AirState,
  accept,
  compare,
  densityAltitude,
  type Outcome,
  relativeHumidity,
  SPOKEN_OPENINGS,
  STANDARD_AIR,
  toCelsius,
  toHectopascal,
} from "@jetwright/core";
import { airOf, type BodyOf, bikeCase } from "@jetwright/records";
import type { EngineState } from "../../state.ts";

export type AirBody = BodyOf<"air-measured">;

export interface AirPreview {
  readonly celsius: number;
  readonly hectopascal: number;
  readonly humidityPercent: number;
  /** Dry air in it against standard air at sea level: 100 is as dense. */
  readonly percentOfStandard: number;
  /** One standard deviation of that, per cent. */
  readonly doubtPercent: number;
  /** The height in standard air that is as thin, metres. */
  readonly likeHeightM: number;
  readonly warnings: readonly { readonly code: string; readonly text: string }[];
  /** What it does to the fitted setup against the air last noted, at the spoken openings, per cent richer; null when that cannot be said. */
  readonly effect: readonly number[] | null;
}

/** Warnings a rider can do nothing about: they move the density by hundredths of a per cent. */
const QUIET: readonly string[] = ["outside-formula-range"];

/** What air a record would tell of, before it is kept, and what it does to the fitted setup. */
export function airPreview(
  { shop }: EngineState,
  { bike, body, at }: { readonly bike: string; readonly body: AirBody; readonly at: number },
): Outcome<AirPreview> {
  const place = shop.bikes.get(bike)?.description?.place?.heightM;
  const air = airOf(body, at, place);
  if (!air.ok) return air;
  const made = bikeCase(shop, bike);
  const effect = made.ok ? compare(made.value.now, { ...made.value.now, air: air.value }) : null;
  return accept({
    ...figuresOf(air.value),
    effect: effect?.ok
      ? effect.value.at
          .filter(({ opening }) => SPOKEN_OPENINGS.includes(opening))
          .map(({ ratio }) => 100 * (ratio - 1))
      : null,
  });
}

const figuresOf = (air: AirState): Omit<AirPreview, "effect"> => ({
  celsius: toCelsius(air.temperature),
  hectopascal: toHectopascal(air.pressure),
  humidityPercent: 100 * relativeHumidity(air),
  percentOfStandard: (100 * air.dryDensity) / STANDARD_AIR.dryDensity,
  doubtPercent: 100 * air.relativeSd,
  likeHeightM: densityAltitude(air.density),
  warnings: air.warnings.filter(({ code }) => !QUIET.includes(code)),
});
