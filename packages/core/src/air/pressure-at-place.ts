import { fromHectopascal } from "../units/convert.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { Kelvin, Metre, Pascal } from "../units/quantity.ts";
import type { Warning } from "../words/warning.ts";
import type { AirDoubt } from "./air-estimate.ts";
import { metresSaid, percentSaid } from "./figures.ts";
import { placeStationPressure } from "./pressure-against-height.ts";
import { reductionError, stationPressure } from "./pressure-reduction.ts";
import {
  DRY_AIR_GAS_CONSTANT,
  GRAVITY,
  standardPressure,
  standardTemperature,
} from "./standard-atmosphere.ts";
import { type PressureRefusal, readPressure, type TypedPressure } from "./typed-pressure.ts";

export type PlaceRefusal = PressureRefusal | "height-missing" | "pressure-height-mismatch";

// Standard deviations where none is given. Estimates of ours, from what such instruments do.
/** Pa, the barometer in a phone, or a sea-level pressure read off a screen. */
const BAROMETER_SD = 100;
/** m, a height from a map or a phone. */
export const HEIGHT_SD = 10;
/** Pa, how far the weather moves sea-level pressure about its mean in middle latitudes. */
export const WEATHER_SD = 1000;
/** The reduction error above which a person is told that the kind of sea-level pressure matters. */
const REDUCTION_WORTH_SAYING = 0.005;

/** Station pressure with what makes it unsure. */
export interface PressureAtPlace {
  readonly pressure: Pascal;
  readonly doubts: readonly AirDoubt[];
  readonly warnings: readonly Warning[];
}

/** What a doubt about a height, metres, does to the pressure there. */
export const heightDoubt = (cause: string, sd: number, temperature: Kelvin): AirDoubt => ({
  cause,
  relativeSd: (GRAVITY * sd) / (DRY_AIR_GAS_CONSTANT * temperature),
});

/**
 * Station pressure at the place ridden at, from a barometer there, a sea-level pressure with the height, or the
 * height alone.
 * @param heightSd one standard deviation of the height, metres
 */
export function pressureAtPlace(
  typed: TypedPressure | { readonly kind: "none" },
  height: Metre | null,
  heightSd: number,
  temperature: Kelvin,
): Outcome<PressureAtPlace, PlaceRefusal> {
  if (typed.kind === "none") {
    if (height === null) {
      return refuse("height-missing", "Give a pressure, or the height above sea level to reckon it from.");
    }
    return accept(pressureFromHeight(height, heightSd, temperature));
  }
  if (typed.kind === "sea-level" && height === null) {
    return refuse(
      "height-missing",
      "A sea-level pressure says nothing without the height above sea level: give the height too.",
    );
  }
  const read = readPressure(typed, height);
  if (!read.ok) return read;
  const barometerSd = read.value.sd ?? BAROMETER_SD;
  if (typed.kind === "sea-level" && height !== null) {
    return accept(
      reduced(read.value.pressure, barometerSd, height, heightSd, temperature, read.value.warnings),
    );
  }
  const placed = placeStationPressure(read.value.pressure, height);
  if (!placed.ok) return placed;
  const warnings = [...read.value.warnings, ...placed.value.warnings];
  if (placed.value.takenAsSeaLevel && height !== null) {
    return accept(reduced(read.value.pressure, barometerSd, height, heightSd, temperature, warnings));
  }
  const pressure = placed.value.pressure;
  return accept({ pressure, doubts: [{ cause: "barometer", relativeSd: barometerSd / pressure }], warnings });
}

/**
 * Half the difference between the standard reduction and one with the day's temperature: it is not known
 * which of the two a person's sea-level pressure had, nor how warm the column below is.
 */
function reductionDoubt(height: Metre, temperature: Kelvin): AirDoubt {
  const error = reductionError(height, temperature, standardTemperature(height));
  return { cause: "reduction to sea level", relativeSd: Math.abs(error) / 2 };
}

function reduced(
  setting: Pascal,
  barometerSd: number,
  height: Metre,
  heightSd: number,
  temperature: Kelvin,
  before: readonly Warning[],
): PressureAtPlace {
  const warnings = [...before];
  if (setting < fromHectopascal(950) || setting > fromHectopascal(1050)) {
    warnings.push({ code: "unusual-sea-level-pressure" });
  }
  const reduction = reductionDoubt(height, temperature);
  if (reduction.relativeSd * 2 > REDUCTION_WORTH_SAYING) {
    warnings.push({
      code: "reduction-uncertain",
      given: { m: metresSaid(height), percent: percentSaid(reduction.relativeSd * 2) },
    });
  }
  return {
    pressure: stationPressure(setting, height),
    doubts: [
      { cause: "sea-level pressure", relativeSd: barometerSd / setting },
      heightDoubt("height", heightSd, temperature),
      reduction,
    ],
    warnings,
  };
}

/** Standard pressure for a height, with the doubt of the weather. */
export function pressureFromHeight(height: Metre, heightSd: number, temperature: Kelvin): PressureAtPlace {
  const pressure = standardPressure(height);
  return {
    pressure,
    doubts: [
      { cause: "weather", relativeSd: WEATHER_SD / 101_325 },
      heightDoubt("height", heightSd, temperature),
      reductionDoubt(height, temperature),
    ],
    warnings: [{ code: "pressure-from-height", given: { m: metresSaid(height) } }],
  };
}
