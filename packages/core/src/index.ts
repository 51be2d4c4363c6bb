// The only door of the package: every public name, by folder. No `export *`.

// advice
export type {
  Advice,
  PartChange,
  Reason,
  Step,
  Sureness,
  Suspect,
  WaitingChange,
} from "./advice/advice.ts";
// the case that records are replayed into
export type {
  BikeCase,
  CheckResult,
  Engine,
  LabourPart,
  MixtureMeasurement,
  Ride,
  SignReport,
  SoundResult,
  TestResult,
  Verdict,
} from "./advice/case.ts";
export type { Caution, Check, Test } from "./advice/catalogue.ts";
export { CAUTIONS, cautionById } from "./advice/cautions.ts";
export { CHECKS, checkById } from "./advice/checks.ts";
export type { BestSetup, BestWanted, BikeBelief } from "./advice/drawer-search/best-for-bike.ts";
export { bestSetupOf, bikeBelief, drawerOfBike, presentIn } from "./advice/drawer-search/best-for-bike.ts";
export type { Found } from "./advice/drawer-search/best-list.ts";
export { mergeLists } from "./advice/drawer-search/best-list.ts";
export type { DrawerSpace } from "./advice/drawer-search/drawer-space.ts";
export type { PartsFrom } from "./advice/drawer-search/places-from.ts";
export type { SearchProgress } from "./advice/drawer-search/search-drawer.ts";
export { searchDrawer } from "./advice/drawer-search/search-drawer.ts";
export { lookOverMinutes } from "./advice/look-over.ts";
export { mixtureOver } from "./advice/mixture-over.ts";
export { nextStep } from "./advice/next-step.ts";
export { TESTS, testById } from "./advice/tests-on-engine.ts";
export type { TopThrottle } from "./advice/top-throttle.ts";
// air
export type { AirDoubt, AirEstimate, MeasuredAir } from "./air/air-estimate.ts";
export { estimateAir } from "./air/air-estimate.ts";
export type { AirInput, AirRefusal } from "./air/air-from.ts";
export { airFrom } from "./air/air-from.ts";
export type { ReportAirRefusal, ReportPlace } from "./air/air-from-report.ts";
export { airFromReport } from "./air/air-from-report.ts";
export type { AirState } from "./air/air-state.ts";
export type { Humidity } from "./air/humidity.ts";
export { relativeHumidity, UNKNOWN_HUMIDITY, vapourFraction } from "./air/humidity.ts";
export {
  airAt,
  compressibility,
  dryAirDensity,
  insideFormulaRange,
  moistAirDensity,
} from "./air/moist-air.ts";
export {
  altimeterSetting,
  heightBetween,
  pressureAfterRise,
  stationPressure,
} from "./air/pressure-reduction.ts";
export type { ReportTime } from "./air/report-groups.ts";
export { enhancementFactor, saturationPressure } from "./air/saturation.ts";
export {
  densityAltitude,
  geometricHeight,
  geopotentialHeight,
  pressureAltitude,
  standardAir,
  standardDensity,
  standardPressure,
  standardTemperature,
} from "./air/standard-atmosphere.ts";
export type { TypedHeight } from "./air/typed-height.ts";
export type { TypedHumidity } from "./air/typed-humidity.ts";
export type { PressureUnit, TypedPressure } from "./air/typed-pressure.ts";
export type { TemperatureUnit, TypedTemperature } from "./air/typed-temperature.ts";
export type { ReportRefusal, WeatherReport } from "./air/weather-report.ts";
export { readWeatherReport } from "./air/weather-report.ts";
// baseline
export type { BikeToStart } from "./baseline/bike.ts";
export type { BikeRefusal } from "./baseline/bike-check.ts";
export type { KnownGood } from "./baseline/known-good.ts";
export { STANDARD_AIR, standardFuel } from "./baseline/known-good.ts";
export { sizesSold } from "./baseline/sizes-sold.ts";
export type { StartingFigure } from "./baseline/starting-figure.ts";
export type { StartingPlace, StartingPoint, StartingRefusal } from "./baseline/starting-point.ts";
export { startingPoint } from "./baseline/starting-point.ts";
export { startingPointText } from "./baseline/starting-point-text.ts";
export type { Use } from "./baseline/use.ts";
export { readUse, USES } from "./baseline/use.ts";
export { boreFor, usualBore } from "./baseline/usual-bore.ts";
// belief
export type { Fault, FaultId, Reliability, Sign } from "./belief/catalogue.ts";
export { FAULTS } from "./belief/catalogue.ts";
export { FAULT_CATALOGUE, faultById } from "./belief/faults.ts";
export type { MixtureReading } from "./belief/reading.ts";
export type { SignSection } from "./belief/signs/all.ts";
export { SIGN_SECTIONS, SIGNS, signById } from "./belief/signs/all.ts";
export type { KnownSign } from "./belief/signs/row.ts";
export type { TwoSided } from "./belief/two-sided.ts";
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
// metering
export type { AirLookup } from "./metering/air-lookup.ts";
export { usualAir } from "./metering/air-lookup.ts";
export type { AltitudeChart, ChartCell, ChartOptions } from "./metering/altitude-chart.ts";
export { altitudeChart } from "./metering/altitude-chart.ts";
export type { MeteringRefusal } from "./metering/comparable.ts";
export type { Comparison, OpeningComparison } from "./metering/compare.ts";
export { compare, totalAt } from "./metering/compare.ts";
export type { CorrectionRefusal, Corrections, ScaledOpenings } from "./metering/correct-for.ts";
export { areaFactor, correctFor } from "./metering/correct-for.ts";
export type { Correction, Remaining } from "./metering/correction.ts";
export type { Firmness } from "./metering/firmness.ts";
export type { IntakeRestriction } from "./metering/intake-restriction.ts";
export { intakeRestriction } from "./metering/intake-restriction.ts";
export type { JetToBuy, Purchase, Wanted } from "./metering/jets-to-buy.ts";
export { jetsToBuy } from "./metering/jets-to-buy.ts";
export type { RidingRange } from "./metering/jets-wanted.ts";
export { jetsWanted } from "./metering/jets-wanted.ts";
export { richSize } from "./metering/main-alone.ts";
export type { Shares } from "./metering/shares.ts";
export { shares } from "./metering/shares.ts";
export { shiftBetween, shiftsFrom } from "./metering/shift.ts";
export type { Situation } from "./metering/situation.ts";
export type { Sizes } from "./metering/sizes.ts";
export { sizesOf } from "./metering/sizes.ts";
export type { Trip, TripOptions, TripPoint, TripRefusal, TripStop } from "./metering/trip.ts";
export { planTrip } from "./metering/trip.ts";
export {
  airFuelRatio,
  compressibilityFactor,
  freeVentRichness,
  lipPressure,
  orificeArea,
  orificeDrop,
  orificeFlow,
  startSpeed,
  throatAt,
} from "./metering/venturi.ts";
export { exp, log } from "./numerics/elementary.ts";
// parts
export type { Bore } from "./parts/bore.ts";
export { boreHeight } from "./parts/bore.ts";
export { openArea, openWidth } from "./parts/bore-area.ts";
export { checkBore } from "./parts/bore-check.ts";
export { checkGroove, clipLift, clipText, GROOVE_RULE, readGroove } from "./parts/clip.ts";
export { CUTAWAY_RULE, cutawayText, readCutaway } from "./parts/cutaway.ts";
export type { Drawer, Stock } from "./parts/drawer.ts";
export { EMPTY_DRAWER } from "./parts/drawer.ts";
export type { DrawerSide } from "./parts/drawer-stock.ts";
export { addPart, countPart, howMany, nextOwned, sizesOwned, usePart } from "./parts/drawer-stock.ts";
export type { Jet, JetNumbering } from "./parts/jet.ts";
export { JET_NUMBERINGS, jetArea } from "./parts/jet.ts";
export type { JetRatio, JetTolerance } from "./parts/jet-compare.ts";
export { jetAreaRatio, jetText, jetTolerance, sameMaker } from "./parts/jet-compare.ts";
export type { JetPlace } from "./parts/jet-steps.ts";
export {
  areaStep,
  numberForArea,
  richSideSize,
  stepsForArea,
  stepsText,
  typicalSteps,
} from "./parts/jet-steps.ts";
export type { HowKnown, Known } from "./parts/known.ts";
export { HOW_KNOWN, known, UNKNOWN } from "./parts/known.ts";
export type { Groove, Needle, NeedleProfile, Taper } from "./parts/needle.ts";
export { needleDiameter } from "./parts/needle.ts";
export type { MeasuredNeedle, NeedleReading, NeedleRefusal } from "./parts/needle-from-measurements.ts";
export { needleFromMeasurements } from "./parts/needle-from-measurements.ts";
export { readJetNumber } from "./parts/read-jet-number.ts";
export { outIs, readTurns, screwText } from "./parts/screw.ts";
export type { Body, NozzleKind, Screw, ScrewKind, Setup } from "./parts/setup.ts";
export type { SetupPart } from "./parts/setup-text.ts";
export { needleJetText, needleText, partText, SETUP_ORDER } from "./parts/setup-text.ts";
// sound
export type { SoundDoubt } from "./sound/doubts.ts";
export type { EngineSound } from "./sound/engine-sound.ts";
export type { Heard, ListenRefusal, SoundPicture } from "./sound/listen.ts";
export { listen } from "./sound/listen.ts";
export type { SweepMark, SweepPeak, SweepReading, SweepRefusal } from "./sound/screw-sweep.ts";
export { readSweep, SWEEP_DROP, sweepOutcome } from "./sound/screw-sweep.ts";
export type { Chop, Hunting, Idle, Skipping, Snap, SoundEvent, Stall } from "./sound/sound-event.ts";
export type { SoundProof, SparkRefusal, SparkSpeed } from "./sound/spark-pulses.ts";
export { soundProof, sparkSpeed } from "./sound/spark-pulses.ts";
export type { HeardFrame, SpeedFollower } from "./sound/speed-follower.ts";
export { speedFollower } from "./sound/speed-follower.ts";
export type { SpeedTrack } from "./sound/speed-track.ts";
export type { StillMeter, StillSpeed } from "./sound/still-speed.ts";
export { stillMeter } from "./sound/still-speed.ts";
export type { SpeedOutline, TakeDifference, TakeFigure, TakeFigureName } from "./sound/take-figures.ts";
export {
  keptFigures,
  speedOutline,
  TAKE_FIGURES,
  takeDifferences,
  takeFigures,
} from "./sound/take-figures.ts";
export type { Clip, WaveRefusal } from "./sound/wave-file.ts";
export { readWave } from "./sound/wave-file.ts";
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
// words; a language itself is behind its own door, such as "@jetwright/core/words/en"
export type {
  CautionId,
  CheckId,
  CoreWords,
  SignId,
  SignSectionId,
  SignTexts,
  TestId,
} from "./words/core-words.ts";
export type { StartingWords } from "./words/en/starting.ts";
export type { CheckWords, FaultWords, SignWords, TestWords } from "./words/entry.ts";
export { faultsTold } from "./words/faults-told.ts";
export type { Figure } from "./words/figures.ts";
export { turnsText, withComma, withPoint } from "./words/figures.ts";
export type { JetSpoken, PartMove, PartStand } from "./words/part-stand.ts";
export { refusalText } from "./words/refusal.ts";
export type { RestsOn, TheoryBasis } from "./words/rests-on.ts";
export { signWords } from "./words/sign-words.ts";
export type { Warning } from "./words/warning.ts";
export { warningText } from "./words/warning.ts";
