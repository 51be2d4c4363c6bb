import { exp } from "../numerics/elementary.ts";
import type { Kelvin, Pascal } from "../units/quantity.ts";

/**
 * Saturation vapour pressure over liquid water, Pa, also below freezing (weather reports give dew points
 * over water at every temperature).
 *
 * Source: CIPM-2007, Picard et al., Metrologia 45 (2008) 149, appendix A1.1. Within 0.03 % of the
 * Hyland-Wexler formula from 0 to 60 °C. Throws RangeError outside 200 to 350 K.
 */
export function saturationPressure(temperature: Kelvin): Pascal {
  if (!(temperature >= 200 && temperature <= 350)) {
    throw new RangeError(`Saturation pressure is for 200 to 350 K, got ${temperature} K`);
  }
  const t: number = temperature;
  return exp(1.2378847e-5 * t * t - 1.9121316e-2 * t + 33.93711047 - 6343.1645 / t) as Pascal;
}

/**
 * How much more vapour saturated real air holds than the vapour pressure alone would give (about 1.004).
 * Source: CIPM-2007, appendix A1.2.
 */
export function enhancementFactor(temperature: Kelvin, pressure: Pascal): number {
  const t = temperature - 273.15;
  return 1.00062 + 3.14e-8 * pressure + 5.6e-7 * t * t;
}

/** Mole fraction of vapour in saturated air. */
export function saturatedFraction(temperature: Kelvin, pressure: Pascal): number {
  return (enhancementFactor(temperature, pressure) * saturationPressure(temperature)) / pressure;
}
