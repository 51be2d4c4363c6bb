import { log } from "../numerics/elementary.ts";
import {
  ANNULUS_DISCHARGE,
  LEAST_SIGNAL,
  MAIN_DISCHARGE,
  MAIN_VISCOSITY_POWER,
  PILOT_VISCOSITY_POWER,
  STANDARD_DENSITY,
} from "./coefficients.ts";
import { type Fitted, fittedIn, outletThrottling, wellSignal } from "./fitted.ts";
import { type Frame, gapArea } from "./frame.ts";
import type { Situation } from "./situation.ts";
import { lipPressure } from "./venturi.ts";

/** One situation made ready: everything that depends on it alone. */
export interface Side {
  readonly situation: Situation;
  readonly fitted: Fitted;
  /** (usual gap over this slide's gap)² at each opening: what the cutaway does to the depression. */
  readonly slide: readonly number[];
}

export function sideOf(situation: Situation, frame: Frame): Side {
  const fitted = fittedIn(situation.setup, frame);
  const slide = frame.usualGap.map((usual, i) => {
    const ratio = usual / gapArea(frame, fitted.cutaway, i);
    return ratio * ratio;
  });
  return { situation, fitted, slide };
}

/** How main jet and annulus each hold back the fuel, 1/m⁴; in a row they add up. Null stands for the other alone. */
export function seriesResistance(mainArea: number | null, annulus: number | null): number {
  const main = mainArea === null ? Infinity : MAIN_DISCHARGE * mainArea;
  const needle = annulus === null ? Infinity : ANNULUS_DISCHARGE * annulus;
  return 1 / (main * main) + 1 / (needle * needle);
}

/** Log of the area that main jet and annulus make in a row, up to a constant. */
export const seriesLog = (mainArea: number, annulus: number): number =>
  -0.5 * log(seriesResistance(mainArea, annulus));

/** Share of a small change in main jet area that arrives at the end of the row; the annulus has the rest. */
export function mainShare(mainArea: number, annulus: number): number {
  const ratio = (MAIN_DISCHARGE * mainArea) / (ANNULUS_DISCHARGE * annulus);
  return 1 / (1 + ratio * ratio);
}

/** What lifts the fuel to the nozzle: depression less the fuel lift, Pa; never below a small part of the first. */
function signal(frame: Frame, slide: Side, air: Side, lift: Side, i: number): number {
  const depression = frame.depression[i]! * (air.situation.air.density / STANDARD_DENSITY) * slide.slide[i]!;
  const head = lipPressure(air.situation.fuel.density, lift.fitted.fuelLift);
  return Math.max(depression - head, LEAST_SIGNAL * depression);
}

/** What drives the main fuel of one situation at opening number `i`, Pa. */
export const drivingDrop = (frame: Frame, side: Side, i: number): number =>
  signal(frame, side, side, side, i);

/** True where the fuel lift leaves so little depression that the nozzle hardly flows. */
export function hardlyFlows(frame: Frame, side: Side, i: number): boolean {
  const depression = frame.depression[i]! * (side.situation.air.density / STANDARD_DENSITY) * side.slide[i]!;
  return drivingDrop(frame, side, i) <= LEAST_SIGNAL * depression;
}

const signalLog = (frame: Frame, slide: Side, air: Side, lift: Side, i: number): number =>
  0.5 * log(signal(frame, slide, air, lift, i));

const pilotLog = (frame: Frame, pilot: Fitted, screw: Fitted): number =>
  frame.body.screwKind === "air"
    ? log(pilot.pilot) + 0.5 * log(wellSignal(screw.turns))
    : log(pilot.pilot) - 0.5 * log(1 + outletThrottling(pilot.pilot, screw.turns));

/** Change of the main branch's log flow at one opening, by what changed. */
export interface MainBranch {
  readonly main: number;
  readonly needle: number;
  readonly slide: number;
  readonly air: number;
  readonly lift: number;
}

/**
 * Parts that act through one another share the change: each gets the mean of what it does when switched first
 * and when switched last. So the parts sum to the whole and change sign when the two sides are swapped.
 */
export function mainBranch(frame: Frame, a: Side, b: Side, i: number): MainBranch {
  const before = seriesLog(a.fitted.mainArea, a.fitted.annulus[i]!);
  const after = seriesLog(b.fitted.mainArea, b.fitted.annulus[i]!);
  const mainOnly = seriesLog(b.fitted.mainArea, a.fitted.annulus[i]!);
  const needleOnly = seriesLog(a.fitted.mainArea, b.fitted.annulus[i]!);
  const start = signalLog(frame, a, a, a, i);
  const end = signalLog(frame, b, b, b, i);
  const slideFirst = signalLog(frame, b, a, a, i);
  const liftLast = signalLog(frame, b, b, a, i);
  const liftFirst = signalLog(frame, a, a, b, i);
  const slideLast = signalLog(frame, a, b, b, i);
  return {
    main: 0.5 * (mainOnly - before + (after - needleOnly)),
    needle: 0.5 * (needleOnly - before + (after - mainOnly)),
    slide: 0.5 * (slideFirst - start + (end - slideLast)),
    air: 0.5 * (liftLast - slideFirst + (slideLast - liftFirst)),
    lift: 0.5 * (end - liftLast + (liftFirst - start)),
  };
}

/** Change of the pilot branch's log flow, by what changed; the same at every opening. */
export interface PilotBranch {
  readonly pilot: number;
  readonly screw: number;
  readonly air: number;
}

export function pilotBranch(frame: Frame, a: Side, b: Side): PilotBranch {
  const before = pilotLog(frame, a.fitted, a.fitted);
  const after = pilotLog(frame, b.fitted, b.fitted);
  const pilotOnly = pilotLog(frame, b.fitted, a.fitted);
  const screwOnly = pilotLog(frame, a.fitted, b.fitted);
  return {
    pilot: 0.5 * (pilotOnly - before + (after - screwOnly)),
    screw: 0.5 * (screwOnly - before + (after - pilotOnly)),
    air: 0.5 * (log(b.situation.air.density) - log(a.situation.air.density)),
  };
}

/** Change in the log of fuel by viscosity, and of everything else that fuel and dry air do at every opening. */
export function fuelAndDryAir(
  a: Situation,
  b: Situation,
): { readonly common: number; readonly viscosity: number } {
  return {
    common:
      0.5 * (log(b.fuel.density) - log(a.fuel.density)) +
      (log(b.fuel.fuelShare) - log(a.fuel.fuelShare)) +
      (log(b.fuel.stoichiometricRatio) - log(a.fuel.stoichiometricRatio)) -
      (log(b.air.dryDensity) - log(a.air.dryDensity)),
    viscosity: log(b.fuel.viscosityRatio) - log(a.fuel.viscosityRatio),
  };
}

/** How the two branches answer to viscosity, put together by the pilot share. */
export const viscosityPower = (pilotShare: number): number =>
  (1 - pilotShare) * MAIN_VISCOSITY_POWER + pilotShare * PILOT_VISCOSITY_POWER;
