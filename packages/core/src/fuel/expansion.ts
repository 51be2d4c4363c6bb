import { exp } from "../numerics/elementary.ts";
import { fromCelsius } from "../units/convert.ts";
import type { Kelvin, KgPerCubicMetre } from "../units/quantity.ts";

/** Densities at 15 °C the petrol constants of table 54B are made for, kg/m³. */
export const EXPANSION_RANGE = { from: 653, to: 770 } as const;

const BASE_TEMPERATURE = fromCelsius(15);

/**
 * Thermal expansion coefficient of petrol at 15 °C, 1/K, from its density at 15 °C.
 * Source: ASTM D1250 / API MPMS 11.1 (1980), table 54B, K0 = 346.4228 and K1 = 0.4388 (read in several
 * unrelated public programs, not in the standard). Valid 653-770 kg/m³; beyond that it is only the same line drawn on.
 */
export function expansionCoefficient(density: KgPerCubicMetre): number {
  if (!(density > 400 && density < 1200)) {
    throw new RangeError(`Density at 15 °C must lie within 400 to 1200 kg/m³, got ${density}`);
  }
  return 346.4228 / (density * density) + 0.4388 / density;
}

/**
 * Density of petrol at another temperature, from its density at 15 °C: ρ exp(-α ΔT (1 + 0.8 α ΔT)).
 * Valid as `expansionCoefficient`, -40 to 60 °C; the standard claims 0.1 %. Blends with up to 30 % ethanol
 * expand up to 3 % less than it says, 0.1 % of density at 40 °C.
 */
export function densityAt(density: KgPerCubicMetre, temperature: Kelvin): KgPerCubicMetre {
  const stretch = expansionCoefficient(density) * (temperature - BASE_TEMPERATURE);
  return (density * exp(-stretch * (1 + 0.8 * stretch))) as KgPerCubicMetre;
}
