import type { Kelvin, KgPerCubicMetre, Pascal } from "../units/quantity.ts";
import type { Warning } from "../words/warning.ts";
import type { AirState } from "./air-state.ts";
import { celsiusSaid, hectopascalSaid } from "./figures.ts";

/** J/(mol K), the CODATA 2006 value that CIPM-2007 was fitted with. */
const GAS_CONSTANT = 8.314472;
/** kg/mol, water. */
export const MOLAR_MASS_WATER = 18.01528e-3;
/** Mole fraction of carbon dioxide the formula takes when nothing else is known. */
export const USUAL_CARBON_DIOXIDE = 0.0004;

/** Molar mass of dry air, kg/mol, by its carbon dioxide. Source: CIPM-2007, eq. 3. */
export const molarMassDryAir = (carbonDioxide = USUAL_CARBON_DIOXIDE): number =>
  (28.96546 + 12.011 * (carbonDioxide - 0.0004)) * 1e-3;

/**
 * Compressibility factor of moist air: 1 for an ideal gas, about 0.9996 at the ground.
 * Source: CIPM-2007, appendix A1.4.
 */
export function compressibility(temperature: Kelvin, pressure: Pascal, vapourFraction: number): number {
  const t = temperature - 273.15;
  const x = vapourFraction;
  const ratio = pressure / temperature;
  const first =
    1.58123e-6 +
    (-2.9331e-8 + 1.1043e-10 * t) * t +
    (5.707e-6 - 2.051e-8 * t) * x +
    (1.9898e-4 - 2.376e-6 * t) * x * x;
  return 1 - ratio * first + ratio * ratio * (1.83e-11 - 0.765e-8 * x * x);
}

function checkInputs(temperature: Kelvin, pressure: Pascal, vapourFraction: number): void {
  if (!(temperature >= 200 && temperature <= 350)) {
    throw new RangeError(`Air temperature must be 200 to 350 K, got ${temperature}`);
  }
  if (!(pressure >= 10_000 && pressure <= 120_000)) {
    throw new RangeError(`Air pressure must be 10000 to 120000 Pa, got ${pressure}`);
  }
  if (!(vapourFraction >= 0 && vapourFraction < 1)) {
    throw new RangeError(`Vapour fraction must be from 0 to below 1, got ${vapourFraction}`);
  }
}

/**
 * The dry air in a cubic metre of moist air, kg/m³: what carries the oxygen.
 *
 * Source and accuracy: as `moistAirDensity`. Throws RangeError outside 200 to 350 K or 100 to 1200 hPa.
 */
export function dryAirDensity(
  temperature: Kelvin,
  pressure: Pascal,
  vapourFraction: number,
  carbonDioxide = USUAL_CARBON_DIOXIDE,
): KgPerCubicMetre {
  checkInputs(temperature, pressure, vapourFraction);
  const z = compressibility(temperature, pressure, vapourFraction);
  return ((pressure * (1 - vapourFraction) * molarMassDryAir(carbonDioxide)) /
    (z * GAS_CONSTANT * temperature)) as KgPerCubicMetre;
}

/**
 * Density of moist air, kg/m³.
 *
 * Source: CIPM-2007, Picard, Davis, Glaser and Fujii, Metrologia 45 (2008) 149, eq. 1. Its own standard
 * uncertainty is 22e-6 from 600 to 1100 hPa and 15 to 27 °C. Outside that box nothing is published; from -10
 * to 45 °C and 600 to 1050 hPa an ideal gas mixture stays within 0.08 % of it, so neither is likely off by more.
 * Throws RangeError outside 200 to 350 K or 100 to 1200 hPa.
 */
export function moistAirDensity(
  temperature: Kelvin,
  pressure: Pascal,
  vapourFraction: number,
  carbonDioxide = USUAL_CARBON_DIOXIDE,
): KgPerCubicMetre {
  const dry = dryAirDensity(temperature, pressure, vapourFraction, carbonDioxide);
  const vapour =
    (dry * vapourFraction * MOLAR_MASS_WATER) / ((1 - vapourFraction) * molarMassDryAir(carbonDioxide));
  return (dry + vapour) as KgPerCubicMetre;
}

/** True where CIPM-2007 states its uncertainty: 600 to 1100 hPa, 15 to 27 °C. */
export function insideFormulaRange(temperature: Kelvin, pressure: Pascal): boolean {
  const t = temperature - 273.15;
  return pressure >= 60_000 && pressure <= 110_000 && t >= 15 - 1e-9 && t <= 27 + 1e-9;
}

function rangeWarnings(temperature: Kelvin, pressure: Pascal): readonly Warning[] {
  if (insideFormulaRange(temperature, pressure)) return [];
  return [
    {
      code: "outside-formula-range",
      given: { celsius: celsiusSaid(temperature), hPa: hectopascalSaid(pressure) },
    },
  ];
}

/**
 * Air from exactly known temperature, station pressure and vapour fraction.
 * @param relativeSd one standard deviation of the dry-air density, relative; 0 for air given by definition
 */
export function airAt(
  temperature: Kelvin,
  pressure: Pascal,
  vapourFraction: number,
  relativeSd = 0,
  warnings: readonly Warning[] = [],
): AirState {
  return {
    temperature,
    pressure,
    vapourFraction,
    density: moistAirDensity(temperature, pressure, vapourFraction),
    dryDensity: dryAirDensity(temperature, pressure, vapourFraction),
    relativeSd,
    warnings: [...warnings, ...rangeWarnings(temperature, pressure)],
  };
}
