import { power } from "../numerics/elementary.ts";
import type { Kelvin, KgPerCubicMetre, Metre, Pascal, SquareMetre } from "../units/quantity.ts";
import { GRAVITY } from "./coefficients.ts";

// The textbook carburetor: one venturi, one jet. Heywood, Internal Combustion Engine Fundamentals (1988), sec. 7.2
// [from memory]; held to worked examples in reference/metering.ts. Good for ratios; a slide carburetor's absolute
// mixture does not follow from it.

/** Ratio of specific heats of air. */
const GAMMA = 1.4;
/** J/(kg K), dry air. ISO 2533:1975 [from memory]. */
const GAS_CONSTANT = 287.05287;
/** J/(kg K), at constant pressure: γ R / (γ - 1). */
const SPECIFIC_HEAT = (GAMMA * GAS_CONSTANT) / (GAMMA - 1);

/** Mass flow through an orifice under a small pressure drop, kg/s: C A √(2 ρ Δp). No flow against the drop. */
export const orificeFlow = (
  area: SquareMetre,
  coefficient: number,
  density: KgPerCubicMetre,
  drop: Pascal,
): number => coefficient * area * Math.sqrt(2 * density * Math.max(0, drop));

/** Area that passes a mass flow (kg/s) under a pressure drop above 0, m². */
export const orificeArea = (
  flow: number,
  coefficient: number,
  density: KgPerCubicMetre,
  drop: Pascal,
): SquareMetre => (flow / (coefficient * Math.sqrt(2 * density * drop))) as SquareMetre;

/** Pressure drop that drives a mass flow (kg/s) through an orifice, Pa. */
export function orificeDrop(
  flow: number,
  area: SquareMetre,
  coefficient: number,
  density: KgPerCubicMetre,
): Pascal {
  const speed = flow / (coefficient * area);
  return ((speed * speed) / (2 * density)) as Pascal;
}

/** Pressure it takes to lift fuel from its level to the nozzle's lip, Pa: about 7.3 Pa a millimetre. */
export const lipPressure = (fuelDensity: number, lip: number): Pascal =>
  (fuelDensity * GRAVITY * lip) as Pascal;

/** Air speed in the throat at which fuel begins to flow, m/s. */
export const startSpeed = (airDensity: KgPerCubicMetre, fuelDensity: KgPerCubicMetre, lip: Metre): number =>
  Math.sqrt((2 * lipPressure(fuelDensity, lip)) / airDensity);

/**
 * Throat of a venturi with air speeding up without loss from rest to `speed` m/s: pressure, temperature, density.
 * Throws RangeError where the air has not that much heat in it.
 */
export function throatAt(
  pressure: Pascal,
  temperature: Kelvin,
  speed: number,
): { readonly pressure: Pascal; readonly temperature: Kelvin; readonly density: KgPerCubicMetre } {
  const left = 1 - (speed * speed) / (2 * SPECIFIC_HEAT * temperature);
  if (!(left > 0)) throw new RangeError(`Air at ${temperature} K cannot reach ${speed} m/s`);
  const throat = pressure * power(left, GAMMA / (GAMMA - 1));
  const cold = temperature * left;
  return {
    pressure: throat as Pascal,
    temperature: cold as Kelvin,
    density: (throat / (GAS_CONSTANT * cold)) as KgPerCubicMetre,
  };
}

/**
 * True mass flow of air through a venturi over that of an incompressible gas under the same drop, by throat over
 * entry pressure (above 0 to below 1); 0.984 for 3 kPa at sea level.
 */
export function compressibilityFactor(pressureRatio: number): number {
  if (!(pressureRatio > 0 && pressureRatio < 1)) {
    throw new RangeError(`The pressure ratio must lie between 0 and 1, got ${pressureRatio}`);
  }
  const flow = power(pressureRatio, 2 / GAMMA) - power(pressureRatio, (GAMMA + 1) / GAMMA);
  return Math.sqrt((GAMMA / (GAMMA - 1)) * (flow / (1 - pressureRatio)));
}

/** Air over fuel by mass of one venturi and one jet, incompressible. */
export const airFuelRatio = (
  air: { readonly area: SquareMetre; readonly coefficient: number; readonly density: KgPerCubicMetre },
  jet: { readonly area: SquareMetre; readonly coefficient: number; readonly density: KgPerCubicMetre },
  drop: Pascal,
  lip: Metre,
): number =>
  orificeFlow(air.area, air.coefficient, air.density, drop) /
  orificeFlow(jet.area, jet.coefficient, jet.density, (drop - lipPressure(jet.density, lip)) as Pascal);

/**
 * How much more fuel a jet gives when a filter or silencer holds back `restriction` Pa ahead of the carburetor and
 * the float bowl still stands under the free air: √((Δp + restriction)/Δp), Δp being what drove the fuel before.
 */
export const freeVentRichness = (drivingDrop: number, restriction: number): number =>
  Math.sqrt((drivingDrop + restriction) / drivingDrop);
