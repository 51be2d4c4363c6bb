import { exp, log } from "../numerics/elementary.ts";
import { accept, type Outcome } from "../units/outcome.ts";
import { type FuelRefusal, type FuelUse, fuelBlend, fuelState } from "./fuel-use.ts";

/** What changing the fuel does to the mixture with the same parts in the same air. */
export interface FuelEffect {
  /** Natural log of the ratio of fuel-air ratios, each against its own ideal. Above 0 is richer. Oil counted as inert. */
  readonly shift: number;
  /** The same with the oil burning as if it were fuel. The truth lies between the two. */
  readonly shiftIfOilBurns: number;
  /** Further shift by thicker or thinner fuel, through the main and the pilot jet. Soft: the sign is firm, the size within a factor of two. */
  readonly viscosityShift: { readonly main: number; readonly pilot: number };
  /** What every fuel opening's area must be multiplied by to undo `shift`. */
  readonly areaFactor: number;
  /** In plain words, one sentence for each thing that changed. */
  readonly words: readonly string[];
}

/**
 * Exponents of fuel flow on viscosity: working points of main and pilot jets put on the discharge coefficient of
 * short tubes of Lichtarowicz, Duggins and Markland, J. Mech. Eng. Sci. 7 (1965), from memory.
 */
const MAIN_VISCOSITY_EXPONENT = -0.03;
const PILOT_VISCOSITY_EXPONENT = -0.1;

/**
 * Effect of going from one fuel to another: fuel flow as √density, air wanted as the stoichiometric ratio, oil
 * taking the place of fuel. Mass flow from the orifice equation; the lift from the bowl is left out (below 0.2 %
 * but for very low speed). Between fills of known ethanol within 0.5 %. Refuses as `fuelState`.
 */
export function fuelEffect(from: FuelUse, to: FuelUse): Outcome<FuelEffect, FuelRefusal> {
  const [a, b] = [fuelState(from), fuelState(to)];
  if (!a.ok) return a;
  if (!b.ok) return b;
  const byFlow = log(b.value.density / a.value.density) / 2;
  const byAirWanted = log(b.value.stoichiometricRatio / a.value.stoichiometricRatio);
  const byOil = log(b.value.fuelShare / a.value.fuelShare);
  const thicker = log(b.value.viscosityRatio / a.value.viscosityRatio);
  const shift = byFlow + byAirWanted + byOil;
  return accept({
    shift,
    shiftIfOilBurns: byFlow + byAirWanted,
    viscosityShift: { main: MAIN_VISCOSITY_EXPONENT * thicker, pilot: PILOT_VISCOSITY_EXPONENT * thicker },
    areaFactor:
      (Math.sqrt(a.value.density / b.value.density) * a.value.stoichiometricRatio * a.value.fuelShare) /
      (b.value.stoichiometricRatio * b.value.fuelShare),
    words: [
      ...oilWords(from, to, byOil),
      ...fuelWords(from, to),
      ...densityWords(from, to),
      ...warmthWords(from, to),
    ],
  });
}

/** A shift as people say it: "3.7 % leaner", "no change". */
export function shiftText(shift: number): string {
  const percent = Math.round(Math.abs(exp(shift) - 1) * 1000) / 10;
  return percent === 0 ? "no change" : `${percent} % ${shift > 0 ? "richer" : "leaner"}`;
}

function oilWords(from: FuelUse, to: FuelUse, byOil: number): string[] {
  if (from.oilPerFuel === to.oilPerFuel) return [];
  const more = to.oilPerFuel > from.oilPerFuel;
  return [
    `${more ? "More oil means less petrol" : "Less oil means more petrol"} through the same jets: ${shiftText(byOil)} at most, next to nothing if the oil burns along. Oil ratio alone seldom calls for another jet.`,
  ];
}

function fuelWords(from: FuelUse, to: FuelUse): string[] {
  const words: string[] = [];
  if (from.ethanol !== to.ethanol) {
    const more = to.ethanol > from.ethanol;
    const change = alone(from, {
      ...from,
      ethanol: to.ethanol,
      alkylate: Math.min(from.alkylate, 1 - to.ethanol),
    });
    words.push(
      `${more ? "More" : "Less"} ethanol brings ${more ? "more" : "less"} of its own oxygen, so the same flow is ${change}.`,
    );
  }
  if (from.alkylate !== to.alkylate) {
    const change = alone(from, {
      ...from,
      alkylate: to.alkylate,
      ethanol: Math.min(from.ethanol, 1 - to.alkylate),
    });
    words.push(
      `Alkylate is lighter but wants more air: the two nearly cancel, ${change}, less than one tank of petrol differs from another.`,
    );
  }
  return words;
}

function densityWords(from: FuelUse, to: FuelUse): string[] {
  if (from.petrolDensity === to.petrolDensity) return [];
  const change = alone(from, densityOnly(from, to));
  return [`Petrol of another density: ${change}.`];
}

function densityOnly(from: FuelUse, to: FuelUse): FuelUse {
  const { petrolDensity: _, ...rest } = from;
  return to.petrolDensity === undefined ? rest : { ...rest, petrolDensity: to.petrolDensity };
}

function alone(from: FuelUse, to: FuelUse): string {
  const [a, b] = [fuelBlend(from), fuelBlend(to)];
  if (!a.ok || !b.ok) return "changed";
  const flow = log(b.value.density / a.value.density) / 2;
  return shiftText(flow + log(b.value.stoichiometricRatio / a.value.stoichiometricRatio));
}

function warmthWords(from: FuelUse, to: FuelUse): string[] {
  const warmer = to.temperature - from.temperature;
  if (Math.abs(warmer) < 5) return [];
  const a = fuelState(from);
  const b = fuelState({ ...from, temperature: to.temperature });
  if (!a.ok || !b.ok) return [];
  const change = shiftText(log(b.value.density / a.value.density) / 2);
  return [`${warmer > 0 ? "Warmer fuel is lighter" : "Colder fuel is heavier"}: ${change}.`];
}
