import type { Situation } from "../metering/situation.ts";
import { boreJet, dryAir, mm, NEEDLE, PETROL, SETUP } from "../metering/test-situations.ts";
import { type Drawer, EMPTY_DRAWER } from "../parts/drawer.ts";
import type { CubicMetre } from "../units/quantity.ts";
import type { BikeCase, CheckResult, Ride, SignReport, TestResult } from "./case.ts";

// Stories for tests: a two-stroke of no maker with a full drawer.

export const FOUND: Situation = { setup: SETUP, air: dryAir(1.2, 0.005), fuel: PETROL };

const one = <Part>(part: Part): { part: Part; count: number } => ({ part, count: 1 });

export const DRAWER: Drawer = {
  mains: [165, 170, 172.5, 177.5, 180, 182.5, 185].map((number) => one(boreJet(number))),
  pilots: [38, 40, 45, 48].map((number) => one(boreJet(number))),
  needles: [one({ ...NEEDLE, marks: "N2", profile: { ...NEEDLE.profile!, straightDiameter: mm(2.5) } })],
  needleJets: [one(mm(2.72))],
  slides: [one(mm(3)), one(mm(4))],
};

export function story(given: Partial<BikeCase> = {}): BikeCase {
  return {
    engine: { strokes: 2, displacement: 250e-6 as CubicMetre, acceleratorPump: false },
    now: FOUND,
    reference: FOUND,
    rides: [],
    tests: [],
    checks: [],
    measurements: [],
    drawer: EMPTY_DRAWER,
    minutes: {},
    oneChangeAtATime: false,
    freshStartAt: null,
    ...given,
  };
}

export const saw = (sign: string, opening: SignReport["opening"] = null): SignReport => ({
  sign,
  opening,
  seen: true,
});
export const notThere = (sign: string): SignReport => ({ sign, opening: null, seen: false });

export function ride(reports: readonly SignReport[], given: Partial<Ride> = {}): Ride {
  const at = given.at ?? 1;
  return { record: `ride-${at}`, at, situation: FOUND, warm: true, reports, against: null, ...given };
}

export function tested(test: string, outcome: string, given: Partial<TestResult> = {}): TestResult {
  const at = given.at ?? 1;
  return { record: `test-${at}`, at, situation: FOUND, test, opening: null, outcome, numbers: {}, ...given };
}

export const sound = (check: string, at = 5): CheckResult => ({
  record: `${check}-${at}`,
  at,
  check,
  found: "sound",
  fault: null,
});

/** The answers of somebody who has just looked the bike over, the air, the fuel and the spark apart. */
export const LOOKED_OVER: readonly CheckResult[] = [
  "air-filter",
  "choke-plunger",
  "slide-snap-and-cable",
  "head-and-plug-tight",
].map((check) => sound(check, 0));
