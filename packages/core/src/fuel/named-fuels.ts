import type { KgPerCubicMetre } from "../units/quantity.ts";
import type { Composition } from "./composition.ts";

export interface NamedFuel {
  readonly words: string;
  readonly composition: Composition;
  /** At 15 °C. */
  readonly density: KgPerCubicMetre;
  /** Kinematic viscosity at 20 °C in mm²/s, and how many times that it is at -20 °C; null: not found. */
  readonly viscosity: { readonly at20: number; readonly coldFactor: number } | null;
  readonly source: string;
}

const FUEL_TABLE =
  "US Department of Energy, Alternative Fuels Data Center, table of fuel properties, read in a stored copy";
const kg = (x: number): KgPerCubicMetre => x as KgPerCubicMetre;

/**
 * Fuels by name. Petrol is a mean: one tank's density lies within 720 to 775 kg/m³ (EN 228, read in a stored
 * extract) and its hydrogen-carbon ratio within 1.80 to 1.95, which moves the air it wants by 0.7 %.
 */
export const NAMED_FUELS = {
  petrol: {
    words: "petrol without ethanol",
    composition: { carbon: 1, hydrogen: 1.87, oxygen: 0 },
    density: kg(745),
    viscosity: { at20: 0.58, coldFactor: 1.64 },
    source: `CH1.87: Heywood, Internal Combustion Engine Fundamentals (1988), table D.4, from memory; density: middle of EN 228; viscosity 0.5-0.6 and 0.8-1.0 mm²/s: ${FUEL_TABLE}`,
  },
  alkylate: {
    words: "alkylate petrol",
    composition: { carbon: 1, hydrogen: 2.2, oxygen: 0 },
    density: kg(695),
    viscosity: { at20: 0.6, coldFactor: 1.64 },
    source:
      "density 680-720: SS 155461 as cited in an encyclopedia article, read in a stored copy; CH2.2 and viscosity: estimates",
  },
  isooctane: {
    words: "isooctane",
    composition: { carbon: 8, hydrogen: 18, oxygen: 0 },
    density: kg(696),
    viscosity: null,
    source: "density from memory",
  },
  heptane: {
    words: "n-heptane",
    composition: { carbon: 7, hydrogen: 16, oxygen: 0 },
    density: kg(688),
    viscosity: null,
    source: "density from memory (684 at 20 °C)",
  },
  toluene: {
    words: "toluene",
    composition: { carbon: 7, hydrogen: 8, oxygen: 0 },
    density: kg(872),
    viscosity: null,
    source: "density from memory",
  },
  ethanol: {
    words: "ethanol",
    composition: { carbon: 2, hydrogen: 6, oxygen: 1 },
    density: kg(794),
    viscosity: { at20: 1.5, coldFactor: 2.29 },
    source: `density 794-796, viscosity 1.50 and 3.435 mm²/s: ${FUEL_TABLE}`,
  },
  methanol: {
    words: "methanol",
    composition: { carbon: 1, hydrogen: 4, oxygen: 1 },
    density: kg(796),
    viscosity: { at20: 0.74, coldFactor: 1.82 },
    source: `density, viscosity 0.74 and 1.345 mm²/s: ${FUEL_TABLE}`,
  },
  mtbe: {
    words: "MTBE",
    composition: { carbon: 5, hydrogen: 12, oxygen: 1 },
    density: kg(744),
    viscosity: { at20: 0.47, coldFactor: 1.64 },
    source: `density, viscosity 0.47 and 0.77 mm²/s: ${FUEL_TABLE}`,
  },
  etbe: {
    words: "ETBE",
    composition: { carbon: 6, hydrogen: 14, oxygen: 1 },
    density: kg(745),
    viscosity: null,
    source: "density from memory",
  },
} as const satisfies Record<string, NamedFuel>;

export type FuelName = keyof typeof NAMED_FUELS;
