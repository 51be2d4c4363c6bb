// The only door of the package: every public name, by folder. No `export *`.

// fuel
export type { Blend, BlendPart } from "./fuel/blend.ts";
export { blendByMass, blendByVolume } from "./fuel/blend.ts";
export type { Composition } from "./fuel/composition.ts";
export { oxygenShareOf, stoichiometricRatioOf } from "./fuel/composition.ts";
export { densityAt, EXPANSION_RANGE, expansionCoefficient } from "./fuel/expansion.ts";
export type { FuelEffect } from "./fuel/fuel-effect.ts";
export { fuelEffect, shiftText } from "./fuel/fuel-effect.ts";
export { readFuelName } from "./fuel/fuel-name.ts";
export type { FuelState } from "./fuel/fuel-state.ts";
export type { FuelRefusal, FuelUse } from "./fuel/fuel-use.ts";
export { fuelBlend, fuelState, fuelWarnings } from "./fuel/fuel-use.ts";
export type { FuelName, NamedFuel } from "./fuel/named-fuels.ts";
export { NAMED_FUELS } from "./fuel/named-fuels.ts";
export type { OilMeasure } from "./fuel/oil-measure.ts";
export { oilPerFuel, oilShareOfMix, oilText, oilToMeasure, oilTraps } from "./fuel/oil-measure.ts";
export { readOil } from "./fuel/read-oil.ts";
export type { FuelShares, ViscosityRatio } from "./fuel/viscosity.ts";
export { viscosityRatio } from "./fuel/viscosity.ts";
// parts
export { openArea, openWidth } from "./parts/bore-area.ts";
// units
export {
  fromCelsius,
  fromCubicCentimetre,
  fromDegree,
  fromFahrenheit,
  fromFoot,
  fromHectopascal,
  fromImperialGallon,
  fromInchOfMercury,
  fromKelvin,
  fromKgPerCubicMetre,
  fromLitre,
  fromMetre,
  fromMillimetre,
  fromMillimetreOfMercury,
  fromPascal,
  fromRadian,
  fromUsGallon,
  toCelsius,
  toCubicCentimetre,
  toDegree,
  toFahrenheit,
  toFoot,
  toHectopascal,
  toInchOfMercury,
  toMillimetre,
} from "./units/convert.ts";
export type { Outcome, Refusal } from "./units/outcome.ts";
export { accept, refuse } from "./units/outcome.ts";
export type {
  CubicMetre,
  Kelvin,
  KgPerCubicMetre,
  Metre,
  Opening,
  Pascal,
  Radian,
  SquareMetre,
} from "./units/quantity.ts";
