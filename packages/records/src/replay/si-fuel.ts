import {
  type FuelState,
  type FuelUse,
  fromCelsius,
  fromKgPerCubicMetre,
  fuelState,
  fuelWarnings,
} from "@jetwright/core";
import type { UsedEntryOf } from "../entry.ts";
import { oilSaid } from "../kinds/fuel-used.ts";
import type { CaseWarnings } from "./case-warning.ts";

type Fuel = UsedEntryOf<"fuel-used">;

/** Pump petrol where nothing is told: E5 is the commonest in a race can. Estimate; only differences matter. */
const USUAL_ETHANOL = 0.05;
/** Oil where a two-stroke's is not told, parts of fuel to one: common practice, no source. */
const USUAL_RATIO = 40;
const USUAL_CELSIUS = 20;

function stateOf(use: FuelUse): FuelState {
  const state = fuelState(use);
  if (!state.ok) throw new RangeError(`Usual fuel was refused: ${state.detail}`);
  return state.value;
}

/** The fuel in force, in SI; pump petrol, with oil in a two-stroke, where none is noted or it is not usable. */
export function siFuel(entry: Fuel | null, strokes: 2 | 4, warnings: CaseWarnings): FuelState {
  const usualOil = strokes === 2 ? 1 / USUAL_RATIO : 0;
  const usual: FuelUse = {
    ethanol: USUAL_ETHANOL,
    alkylate: 0,
    oilPerFuel: usualOil,
    temperature: fromCelsius(USUAL_CELSIUS),
  };
  const ratio = strokes === 2 ? USUAL_RATIO : null;
  if (entry === null) {
    warnings.add({ code: "fuel-assumed", given: { ratio } });
    return stateOf(usual);
  }
  const { body } = entry;
  const oil = body.oil === undefined ? null : oilSaid(body.oil);
  if (oil !== null && (!oil.ok || typeof oil.value !== "number")) {
    throw new RangeError(`Oil of ${entry.id} passed the reader and cannot be read`);
  }
  if (oil === null && strokes === 2) {
    warnings.add({ code: "oil-assumed", given: { ratio: USUAL_RATIO } }, entry.id);
  }
  // A petrol of which only the alkylate share is told has no ethanol in it: that is what alkylate is sold for.
  const unstated = body.alkylatePercent === undefined || body.alkylatePercent === 0 ? USUAL_ETHANOL : 0;
  const use: FuelUse = {
    ethanol: body.ethanolPercent === undefined ? unstated : body.ethanolPercent / 100,
    alkylate: (body.alkylatePercent ?? 0) / 100,
    oilPerFuel: oil === null ? usualOil : (oil.value as number),
    temperature: fromCelsius(body.temperatureC ?? USUAL_CELSIUS),
    ...(body.petrolDensityKgPerM3 !== undefined && {
      petrolDensity: fromKgPerCubicMetre(body.petrolDensityKgPerM3),
    }),
  };
  const state = fuelState(use);
  if (!state.ok) {
    warnings.add({ code: "fuel-unusable", given: { why: state, ratio } }, entry.id);
    return stateOf(usual);
  }
  for (const warning of fuelWarnings(use)) warnings.add(warning, entry.id);
  return state.value;
}
