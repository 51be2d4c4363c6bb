import { impossible } from "../units/impossible.ts";
import type { Kelvin, Pascal } from "../units/quantity.ts";
import { MOLAR_MASS_WATER, molarMassDryAir } from "./moist-air.ts";
import { saturatedFraction } from "./saturation.ts";

/** Humidity as an instrument or a report gives it, each with one standard deviation in its own unit. */
export type Humidity =
  /** Over liquid water, 0 to 1. */
  | { readonly kind: "relative"; readonly fraction: number; readonly sd: number }
  /** Over liquid water, as in weather reports. */
  | { readonly kind: "dew-point"; readonly temperature: Kelvin; readonly sd: number }
  /** A wetted thermometer in a good draught. */
  | { readonly kind: "wet-bulb"; readonly temperature: Kelvin; readonly sd: number };

/** Nothing known: the middle of 0 to 100 %, with the spread of an even distribution over all of it. */
export const UNKNOWN_HUMIDITY: Humidity = { kind: "relative", fraction: 0.5, sd: 1 / Math.sqrt(12) };

/** Molar mass of water over that of dry air. */
const MASS_RATIO = MOLAR_MASS_WATER / molarMassDryAir();

/**
 * Mole fraction of vapour at a wet-bulb reading; below 0 when the reading is impossibly low.
 *
 * Source: ASHRAE Fundamentals (2017), ch. 1, eq. 33, the balance for a bulb wet with liquid water. The same
 * is used below freezing, where a wick may be iced over: then it errs by up to 0.03 % of the pressure.
 */
export function wetBulbFraction(temperature: Kelvin, wetBulb: Kelvin, pressure: Pascal): number {
  const t = temperature - 273.15;
  const w = wetBulb - 273.15;
  const saturated = saturatedFraction(wetBulb, pressure);
  const saturatedRatio = (MASS_RATIO * saturated) / (1 - saturated);
  const ratio = ((2501 - 2.326 * w) * saturatedRatio - 1.006 * (t - w)) / (2501 + 1.86 * t - 4.186 * w);
  return ratio / (MASS_RATIO + ratio);
}

/** The wet-bulb reading perfectly dry air would give: no true reading is lower. */
export function driestWetBulb(temperature: Kelvin, pressure: Pascal): Kelvin {
  let low = Math.max(200, temperature - 60);
  let high: number = temperature;
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (wetBulbFraction(temperature, middle as Kelvin, pressure) < 0) low = middle;
    else high = middle;
  }
  return high as Kelvin;
}

/** Mole fraction of vapour, never below 0, for a humidity already checked against the temperature. */
export function vapourFraction(humidity: Humidity, temperature: Kelvin, pressure: Pascal): number {
  switch (humidity.kind) {
    case "relative":
      return humidity.fraction * saturatedFraction(temperature, pressure);
    case "dew-point":
      return saturatedFraction(humidity.temperature, pressure);
    case "wet-bulb":
      return Math.max(0, wetBulbFraction(temperature, humidity.temperature, pressure));
    default:
      return impossible(humidity);
  }
}

/** Relative humidity of air over liquid water, 0 to 1 (above 1 only for air stated to hold too much). */
export const relativeHumidity = (air: {
  readonly temperature: Kelvin;
  readonly pressure: Pascal;
  readonly vapourFraction: number;
}): number => air.vapourFraction / saturatedFraction(air.temperature, air.pressure);
