import { exp, power } from "../numerics/elementary.ts";
import type { Kelvin, Metre, Pascal } from "../units/quantity.ts";
import {
  DRY_AIR_GAS_CONSTANT,
  GRAVITY,
  PRESSURE_EXPONENT,
  STANDARD_LAPSE,
  STANDARD_PRESSURE,
  STANDARD_TEMPERATURE,
} from "./standard-atmosphere.ts";

// An altimeter setting (QNH) is the station pressure carried to sea level through the standard atmosphere,
// whatever the day's temperature: p^n = Q^n - p0^n L H / T0. ICAO Doc 8896 [memory].

/** p0^n L / T0, by which p^n falls for each metre. */
const fallPerMetre = (power(STANDARD_PRESSURE, PRESSURE_EXPONENT) * STANDARD_LAPSE) / STANDARD_TEMPERATURE;

/**
 * Station pressure at a height from the altimeter setting. Exact at the station that issued it; elsewhere it
 * errs by about 0.8 % for 1000 m of height difference at 20 K from standard temperature.
 * Throws RangeError for a height outside -1000 to 9000 m or a setting outside 800 to 1150 hPa.
 */
export function stationPressure(altimeterSetting: Pascal, height: Metre): Pascal {
  if (!(height >= -1000 && height <= 9000)) {
    throw new RangeError(`Station height must be -1000 to 9000 m, got ${height} m`);
  }
  if (!(altimeterSetting >= 80_000 && altimeterSetting <= 115_000)) {
    throw new RangeError(`Altimeter setting must be 80000 to 115000 Pa, got ${altimeterSetting}`);
  }
  return power(
    power(altimeterSetting, PRESSURE_EXPONENT) - fallPerMetre * height,
    1 / PRESSURE_EXPONENT,
  ) as Pascal;
}

/**
 * The altimeter setting that a station pressure at a height amounts to: the inverse of `stationPressure`. It
 * may lie far outside anything the weather does when pressure and height do not belong together.
 */
export function altimeterSetting(station: Pascal, height: Metre): Pascal {
  if (!(station > 0)) throw new RangeError(`Station pressure must be above 0 Pa, got ${station}`);
  if (!(height >= -1000 && height <= 9000)) {
    throw new RangeError(`Station height must be -1000 to 9000 m, got ${height} m`);
  }
  return power(power(station, PRESSURE_EXPONENT) + fallPerMetre * height, 1 / PRESSURE_EXPONENT) as Pascal;
}

/** Height of a station that reads `station` while giving the altimeter setting `setting`. About 8 m for each hPa. */
export function heightBetween(setting: Pascal, station: Pascal): Metre {
  return ((power(setting, PRESSURE_EXPONENT) - power(station, PRESSURE_EXPONENT)) / fallPerMetre) as Metre;
}

/**
 * Carries a pressure up (or down) through air of a known mean temperature: the hypsometric equation.
 * @param rise metres upward, negative for down
 * @param virtualTemperature mean of the layer, K, the vapour's lightness counted as warmth
 */
export const pressureAfterRise = (pressure: Pascal, rise: number, virtualTemperature: Kelvin): Pascal =>
  (pressure * exp((-GRAVITY * rise) / (DRY_AIR_GAS_CONSTANT * virtualTemperature))) as Pascal;

/**
 * Relative pressure error of the standard reduction over a height difference when the air has `temperature`
 * where the standard has `standard`: g h / R (1/standard - 1/temperature). Above zero: the true pressure up
 * there is higher than reckoned.
 */
export const reductionError = (rise: number, temperature: Kelvin, standard: Kelvin): number =>
  ((GRAVITY * rise) / DRY_AIR_GAS_CONSTANT) * (1 / standard - 1 / temperature);
