import {
  type AirState,
  airAt,
  fromCelsius,
  type Jet,
  type KgPerCubicMetre,
  known,
  type Metre,
  type Pascal,
  type Setup,
  type Situation,
  standardPressure,
  UNKNOWN,
} from "@jetwright/core";

// What the metering checks are run on: a slide body, with parts of no maker, and airs.

const kg = (x: number) => x as KgPerCubicMetre;
const mm = (x: number) => (x / 1000) as Metre;

export const boreJet = (number: number): Jet => ({ number, numbering: "bore", maker: "" });
export const flowJet = (number: number): Jet => ({ number, numbering: "flow", maker: "" });

/** A two-stroke body with a needle nobody has measured; 36 mm, 165, 45, 2.70 is a published setting. */
export function body(diameter: number, main: Jet): Setup {
  return {
    body: {
      bore: { shape: "round", diameter: mm(diameter) },
      screwKind: "air",
      nozzle: "primary",
      seatToJet: null,
      idleLift: null,
      bowlVent: "free air",
    },
    pilot: known(boreJet(45)),
    main: known(main),
    needle: known({ marks: "any", grooves: 5, groovePitch: mm(0.9), profile: null }),
    clip: known(3),
    needleJet: known(mm(2.7)),
    cutaway: known(mm(3.5)),
    screw: known({ kind: "air", turnsOut: 1.5 }),
    fuelLift: UNKNOWN,
    mainAirJet: UNKNOWN,
    pilotAirJet: UNKNOWN,
  };
}

export const PETROL = { density: kg(740), stoichiometricRatio: 14.6, fuelShare: 1, viscosityRatio: 1 };
export const usual = (air: AirState, setup: Setup = body(36, boreJet(165))): Situation => ({
  setup,
  air,
  fuel: PETROL,
});

export function dryAir(density: number): AirState {
  return { ...airAt(fromCelsius(15), 101_325 as Pascal, 0), density: kg(density), dryDensity: kg(density) };
}
export const dryAt = (height: number, celsius: number): AirState =>
  airAt(fromCelsius(celsius), standardPressure(height as Metre), 0);
/** Isothermal pressure law at 15 °C, which the published table was evidently made with. */
export const isothermalAt = (height: number, celsius: number): AirState =>
  airAt(fromCelsius(celsius), (101_325 * Math.exp(-height / 8434)) as Pascal, 0);
