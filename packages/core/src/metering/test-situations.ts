import type { AirState } from "../air/air-state.ts";
import type { FuelState } from "../fuel/fuel-state.ts";
import type { Jet } from "../parts/jet.ts";
import { known } from "../parts/known.ts";
import type { Needle } from "../parts/needle.ts";
import type { Body, Setup } from "../parts/setup.ts";
import { fromDegree } from "../units/convert.ts";
import type { Kelvin, KgPerCubicMetre, Metre, Pascal } from "../units/quantity.ts";
import type { Situation } from "./situation.ts";

// Situations for tests, built by hand: a 36 mm two-stroke body of no maker.

export const mm = (x: number): Metre => (x / 1000) as Metre;

export const boreJet = (number: number): Jet => ({ number, numbering: "bore", maker: "Ours" });
export const flowJet = (number: number): Jet => ({ number, numbering: "flow", maker: "Ours" });

/** Dry air as an ideal gas. */
export function dryAir(density: number, relativeSd = 0): AirState {
  return {
    temperature: 288.15 as Kelvin,
    pressure: (density * 287.05287 * 288.15) as Pascal,
    vapourFraction: 0,
    density: density as KgPerCubicMetre,
    dryDensity: density as KgPerCubicMetre,
    relativeSd,
    warnings: [],
  };
}

export const PETROL: FuelState = {
  density: 740 as KgPerCubicMetre,
  stoichiometricRatio: 14.6,
  fuelShare: 1,
  viscosityRatio: 1,
};

/** Distance from the clip's seat to the needle jet on this body. */
export const SEAT = 30;
/** Distance below the top groove that reaches the needle jet closed, middle groove of five. */
const REACH = SEAT + 2 * 0.9;

export const NEEDLE: Needle = {
  marks: "N1",
  grooves: 5,
  groovePitch: mm(0.9),
  profile: {
    straightDiameter: mm(2.52),
    tapers: [
      { start: mm(REACH + 8), includedAngle: fromDegree(1.5) },
      { start: mm(REACH + 23), includedAngle: fromDegree(3) },
    ],
    diameterSd: mm(0.005),
  },
};

export const BODY: Body = {
  bore: { shape: "round", diameter: mm(36) },
  screwKind: "air",
  nozzle: "primary",
  seatToJet: mm(SEAT),
  idleLift: null,
  bowlVent: "free air",
};

export const SETUP: Setup = {
  body: BODY,
  pilot: known(boreJet(42)),
  main: known(boreJet(175)),
  needle: known(NEEDLE),
  clip: known(3),
  needleJet: known(mm(2.7)),
  cutaway: known(mm(3.5)),
  screw: known({ kind: "air", turnsOut: 1.5 }),
  fuelLift: known(mm(12)),
  mainAirJet: { part: null, how: "unknown" },
  pilotAirJet: { part: null, how: "unknown" },
};

export const FUEL_SCREW: Setup = {
  ...SETUP,
  body: { ...BODY, screwKind: "fuel", nozzle: "bleed" },
  screw: known({ kind: "fuel", turnsOut: 1.5 }),
};

export const HERE: Situation = { setup: SETUP, air: dryAir(1.225), fuel: PETROL };

/** HERE with other parts. */
export const fitted = (parts: Partial<Setup>, base: Situation = HERE): Situation => ({
  ...base,
  setup: { ...base.setup, ...parts },
});

export const inAir = (air: AirState, base: Situation = HERE): Situation => ({ ...base, air });

export const withScrew = (turnsOut: number, base: Situation = HERE): Situation =>
  fitted({ screw: known({ kind: base.setup.body.screwKind, turnsOut }) }, base);
