// The only door of the package: every public name, by folder. No `export *`.

// the case that records are replayed into
export type {
  BikeCase,
  CheckResult,
  Engine,
  LabourPart,
  MixtureMeasurement,
  Ride,
  SignReport,
  TestResult,
  Verdict,
} from "./advice/case.ts";
export type { AirState, AirWarning } from "./air/air-state.ts";
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
export type { MeteringRefusal } from "./metering/comparable.ts";
// metering
export type { Comparison, ComparisonNote, OpeningComparison } from "./metering/compare.ts";
export { compare, totalAt } from "./metering/compare.ts";
export type { Firmness } from "./metering/firmness.ts";
export { shiftBetween, shiftsFrom } from "./metering/shift.ts";
export type { Situation } from "./metering/situation.ts";
export type { Bore } from "./parts/bore.ts";
// parts
export { openArea, openWidth } from "./parts/bore-area.ts";
export type { Drawer, Stock } from "./parts/drawer.ts";
export { EMPTY_DRAWER } from "./parts/drawer.ts";
export type { Jet, JetNumbering } from "./parts/jet.ts";
export type { HowKnown, Known } from "./parts/known.ts";
export { known, UNKNOWN } from "./parts/known.ts";
export type { Groove, Needle, NeedleProfile, Taper } from "./parts/needle.ts";
export type { Body, NozzleKind, Screw, ScrewKind, Setup } from "./parts/setup.ts";
// units
export type { Circuit, Shift } from "./units/circuit.ts";
export { CIRCUITS } from "./units/circuit.ts";
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
export { OPENINGS, openingName, SPOKEN_OPENINGS } from "./units/opening.ts";
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
