import { power } from "../numerics/elementary.ts";
import type { Kelvin, KgPerCubicMetre, Metre, Pascal } from "../units/quantity.ts";
import type { AirState } from "./air-state.ts";
import { airAt } from "./moist-air.ts";

// ISO 2533:1975, the same below 11 km as ICAO Doc 7488 and the US Standard Atmosphere 1976 [constants from memory].

/** K, at sea level. */
export const STANDARD_TEMPERATURE = 288.15;
/** Pa, at sea level. */
export const STANDARD_PRESSURE = 101_325;
/** kg/m³, at sea level: an ideal gas by definition, 0.04 % below what CIPM-2007 gives for the same air. */
const STANDARD_DENSITY = 1.225;
/** K/m. */
export const STANDARD_LAPSE = 0.0065;
/** m/s². */
export const GRAVITY = 9.80665;
/** J/(kg K), dry air. */
export const DRY_AIR_GAS_CONSTANT = 287.05287;
/** Metres, the radius the standard turns geometric into geopotential height with. */
const EARTH_RADIUS = 6_356_766;
/** Pressure goes as temperature to the power 1/this: 0.190263. */
export const PRESSURE_EXPONENT = (STANDARD_LAPSE * DRY_AIR_GAS_CONSTANT) / GRAVITY;
/** Density goes as temperature to the power 1/this: 0.234969. */
const DENSITY_EXPONENT = PRESSURE_EXPONENT / (1 - PRESSURE_EXPONENT);

/** Geopotential height of a geometric (surveyed) one; 2.5 m less at 4000 m. */
export const geopotentialHeight = (geometric: Metre): Metre =>
  ((EARTH_RADIUS * geometric) / (EARTH_RADIUS + geometric)) as Metre;

/** Geometric (surveyed) height of a geopotential one. */
export const geometricHeight = (geopotential: Metre): Metre =>
  ((EARTH_RADIUS * geopotential) / (EARTH_RADIUS - geopotential)) as Metre;

/**
 * Standard temperature at a geopotential height. Throws RangeError outside -5 to 11 km, where the standard's
 * lowest layer ends.
 */
export function standardTemperature(height: Metre): Kelvin {
  if (!(height >= -5000 && height <= 11_000)) {
    throw new RangeError(`The standard atmosphere here runs from -5000 to 11000 m, got ${height} m`);
  }
  return (STANDARD_TEMPERATURE - STANDARD_LAPSE * height) as Kelvin;
}

/** Standard pressure at a geopotential height, -5 to 11 km. */
export const standardPressure = (height: Metre): Pascal =>
  (STANDARD_PRESSURE *
    power(standardTemperature(height) / STANDARD_TEMPERATURE, 1 / PRESSURE_EXPONENT)) as Pascal;

/** Standard density at a geopotential height, -5 to 11 km. */
export const standardDensity = (height: Metre): KgPerCubicMetre =>
  (STANDARD_DENSITY *
    power(standardTemperature(height) / STANDARD_TEMPERATURE, 1 / DENSITY_EXPONENT)) as KgPerCubicMetre;

/** The height at which the standard atmosphere has this pressure; below sea level it is negative. */
export function pressureAltitude(pressure: Pascal): Metre {
  if (!(pressure > 0)) throw new RangeError(`Pressure must be above 0 Pa, got ${pressure}`);
  return ((STANDARD_TEMPERATURE / STANDARD_LAPSE) *
    (1 - power(pressure / STANDARD_PRESSURE, PRESSURE_EXPONENT))) as Metre;
}

/** The height at which the standard atmosphere has this density: how high the air feels. */
export function densityAltitude(density: KgPerCubicMetre): Metre {
  if (!(density > 0)) throw new RangeError(`Density must be above 0 kg/m³, got ${density}`);
  return ((STANDARD_TEMPERATURE / STANDARD_LAPSE) *
    (1 - power(density / STANDARD_DENSITY, DENSITY_EXPONENT))) as Metre;
}

/**
 * Dry air at standard temperature and pressure for a geopotential height, with its density by CIPM-2007: the
 * yardstick that setups from different days are brought to.
 */
export const standardAir = (height: Metre): AirState =>
  airAt(standardTemperature(height), standardPressure(height), 0);
