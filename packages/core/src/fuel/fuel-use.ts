import { fromCelsius, toCelsius } from "../units/convert.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { Kelvin, KgPerCubicMetre } from "../units/quantity.ts";
import type { Warning } from "../words/warning.ts";
import { type Blend, blendByVolume } from "./blend.ts";
import { densityAt, EXPANSION_RANGE } from "./expansion.ts";
import type { FuelState } from "./fuel-state.ts";
import { NAMED_FUELS } from "./named-fuels.ts";
import { viscosityRatio } from "./viscosity.ts";

/** What is in the tank, as a person can say it. */
export interface FuelUse {
  /** Volume share of ethanol in the fuel without oil, 0 to 0.3: E10 is 0.10. */
  readonly ethanol: number;
  /** Volume share of alkylate petrol in the fuel without oil, 0 to 1. */
  readonly alkylate: number;
  /** Volumes of oil to one volume of fuel: 0 none, 0.02 for 50:1. */
  readonly oilPerFuel: number;
  readonly temperature: Kelvin;
  /** Density of the petrol part at 15 °C where it is known; otherwise 745 kg/m³, the middle of EN 228. */
  readonly petrolDensity?: KgPerCubicMetre;
}

/** Most ethanol the tool will reckon with, by volume. */
export const ETHANOL_LIMIT = 0.3;
/** Most oil the tool believes: 5:1. */
export const OIL_LIMIT = 0.2;

/** Two-stroke oil at 15 °C, kg/m³, and its expansion, 1/K: typical, from memory (range 850-960). */
const OIL_DENSITY = 870;
const OIL_EXPANSION = 7e-4;

export type FuelRefusal = "outside the tool" | "ethanol" | "alkylate" | "oil" | "temperature" | "density";

/** The fuel without its oil, at 15 °C; refuses as `fuelState`. */
export function fuelBlend(use: FuelUse): Outcome<Blend, FuelRefusal> {
  if (use.ethanol > ETHANOL_LIMIT && use.ethanol <= 1) {
    return refuse("outside the tool", outsideTheTool(`Fuel with ${percent(use.ethanol)} ethanol`));
  }
  if (!(use.ethanol >= 0 && use.ethanol <= 1)) {
    return refuse("ethanol", `Ethanol must be 0 to 100 % by volume, got ${percent(use.ethanol)}.`);
  }
  if (!(use.alkylate >= 0 && use.alkylate + use.ethanol <= 1 + 1e-9)) {
    return refuse(
      "alkylate",
      `Alkylate and ethanol must be 0 to 100 % together, got ${percent(use.alkylate)}.`,
    );
  }
  const petrolDensity = use.petrolDensity ?? NAMED_FUELS.petrol.density;
  if (!(petrolDensity >= 600 && petrolDensity <= 900)) {
    return refuse(
      "density",
      `Petrol at 15 °C weighs 600 to 900 kg/m³, got ${petrolDensity}. Give kg/m³ (0.745 kg/l is 745), or leave it out.`,
    );
  }
  const blend = blendByVolume([
    {
      fuel: { ...NAMED_FUELS.petrol, density: petrolDensity },
      share: Math.max(0, 1 - use.ethanol - use.alkylate),
    },
    { fuel: NAMED_FUELS.alkylate, share: Math.min(use.alkylate, 1) },
    { fuel: NAMED_FUELS.ethanol, share: use.ethanol },
  ]);
  if (!blend.ok) throw new RangeError(`Checked shares were refused: ${blend.detail}`);
  return blend;
}

/**
 * The fuel as it runs through the jets. Density within about 2 % where the petrol's own is not known (1 % of
 * fuel flow), air wanted within 0.7 %; between two fills of the same petrol far better. Viscosity is soft.
 * Refuses fuels outside the tool and input nobody can have, with what to do.
 */
export function fuelState(use: FuelUse): Outcome<FuelState, FuelRefusal> {
  const blend = fuelBlend(use);
  if (!blend.ok) return blend;
  if (!(use.oilPerFuel >= 0 && use.oilPerFuel <= OIL_LIMIT)) {
    return refuse(
      "oil",
      `Oil must be none to 5:1 (one part oil to five fuel), got ${percent(use.oilPerFuel)} of the fuel.`,
    );
  }
  const celsius = toCelsius(use.temperature);
  if (!(celsius >= -40 && celsius <= 60)) {
    return refuse(
      "temperature",
      `Fuel must be between -40 and 60 °C, got ${Math.round(celsius)} °C. Check the unit.`,
    );
  }
  const fuel = blend.value.density;
  const oil = use.oilPerFuel * OIL_DENSITY;
  const warmOilDensity = OIL_DENSITY * (1 - OIL_EXPANSION * (use.temperature - fromCelsius(15)));
  const volume = fuel / densityAt(fuel, use.temperature) + oil / warmOilDensity;
  return accept({
    density: ((fuel + oil) / volume) as KgPerCubicMetre,
    stoichiometricRatio: blend.value.stoichiometricRatio,
    fuelShare: fuel / (fuel + oil),
    viscosityRatio: viscosityRatio(use, use.oilPerFuel, use.temperature).ratio,
  });
}

/** What to know about a fuel that can be reckoned with but should be looked at twice; nothing of one `fuelState` refuses. */
export function fuelWarnings(use: FuelUse): readonly Warning[] {
  const blend = fuelBlend(use);
  if (!blend.ok) return [];
  const warnings: Warning[] = [];
  if (blend.value.density < EXPANSION_RANGE.from || blend.value.density > EXPANSION_RANGE.to) {
    warnings.push({ code: "fuel-density", given: { kgPerM3: Math.round(blend.value.density) } });
  }
  if (use.petrolDensity !== undefined && (use.petrolDensity < 720 || use.petrolDensity > 775)) {
    warnings.push({ code: "petrol-density" });
  }
  if (use.oilPerFuel > 0 && use.oilPerFuel < 1 / 101) {
    warnings.push({ code: "little-oil" });
  }
  if (use.oilPerFuel > 1 / 14) {
    warnings.push({ code: "much-oil" });
  }
  return warnings;
}

/** Why alcohol fuels are refused. */
export const outsideTheTool = (fuel: string): string =>
  `${fuel} is outside this tool: it wants so much more fuel that the float valve and the pilot must be changed too, not only jets. Set it up as its own carburetor with someone who runs that fuel.`;

const percent = (share: number): string => `${Math.round(share * 1000) / 10} %`;
