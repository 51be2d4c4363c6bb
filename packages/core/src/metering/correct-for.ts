import type { AirState } from "../air/air-state.ts";
import type { FuelState } from "../fuel/fuel-state.ts";
import { log, power } from "../numerics/elementary.ts";
import type { Drawer } from "../parts/drawer.ts";
import { numberForArea } from "../parts/jet-steps.ts";
import { known } from "../parts/known.ts";
import type { Setup } from "../parts/setup.ts";
import { OPENINGS } from "../units/opening.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { MeteringRefusal } from "./comparable.ts";
import { type Comparison, compare } from "./compare.ts";
import { type Correction, type Remaining, remainingOf } from "./correction.ts";
import { chooseFromDrawer } from "./drawer-choice.ts";
import { mainAreaFactor } from "./main-alone.ts";
import { baselineOf } from "./shift.ts";
import type { Situation } from "./situation.ts";

/** Every fuel opening scaled alike: what theory asks for, seldom what is done. */
export interface ScaledOpenings {
  /** Factor on the area of every fuel opening, needle gap included. */
  readonly areaFactor: number;
  /** Main and pilot jet numbers, each in its own numbering; null where not known. */
  readonly main: number | null;
  readonly pilot: number | null;
  readonly remaining: readonly Remaining[];
  readonly warnings: readonly string[];
}

export type CorrectionRefusal = MeteringRefusal | "main jet not known" | "needle limits";

export interface Corrections {
  /** The setup unchanged in the new air and fuel. */
  readonly unchanged: Comparison;
  /** Main jet number by the fourth root of density (bore numbers; the square root for flow numbers): common rule. */
  readonly rootRule: number | null;
  readonly everyOpening: ScaledOpenings;
  readonly mainAlone: Outcome<Correction, CorrectionRefusal>;
  /** Closest from what is owned, never leaner from 3/4 up if that can be had. Null without a drawer. */
  readonly fromDrawer: Correction | null;
}

const FULL = OPENINGS.length - 1;

/**
 * Puts a setup that ran right in one air and fuel right for another, three ways, each with what is left at every
 * opening. Refuses what `compare` refuses.
 */
export function correctFor(
  from: Situation,
  air: AirState,
  fuel: FuelState,
  drawer: Drawer | null = null,
): Outcome<Corrections, MeteringRefusal> {
  const there: Situation = { setup: from.setup, air, fuel };
  const unchanged = compare(from, there);
  if (!unchanged.ok) return unchanged;
  const main = from.setup.main.part;
  return accept({
    unchanged: unchanged.value,
    rootRule:
      main === null
        ? null
        : main.number * power(air.density / from.air.density, main.numbering === "flow" ? 0.5 : 0.25),
    everyOpening: everyOpening(from, there, unchanged.value),
    mainAlone: mainAlone(from, there, unchanged.value),
    fromDrawer: drawer === null ? null : chooseFromDrawer(from, there, drawer),
  });
}

/**
 * Factor on every fuel area that holds the mixture by the plain orifice law: dry air over the root of moist air,
 * times what the fuel asks for. Fuel lift and viscosity left out.
 */
export function areaFactor(from: Situation, to: Situation): number {
  const air = (to.air.dryDensity / from.air.dryDensity) * Math.sqrt(from.air.density / to.air.density);
  const fuel =
    (from.fuel.stoichiometricRatio / to.fuel.stoichiometricRatio) *
    Math.sqrt(from.fuel.density / to.fuel.density) *
    (from.fuel.fuelShare / to.fuel.fuelShare);
  return air * fuel;
}

function everyOpening(from: Situation, there: Situation, unchanged: Comparison): ScaledOpenings {
  const factor = areaFactor(from, there);
  const { main, pilot } = from.setup;
  return {
    areaFactor: factor,
    main: main.part && numberForArea(main.part, factor),
    pilot: pilot.part && numberForArea(pilot.part, factor),
    remaining: unchanged.at.map(({ opening, logRatio, sd }) => ({
      opening,
      logRatio: logRatio + log(factor),
      sd,
    })),
    warnings: farWarnings(factor),
  };
}

const farWarnings = (factor: number): string[] =>
  Math.abs(factor - 1) > 0.15
    ? [
        "This is more than 15 % of fuel area: beyond where the law is trusted. Start a size richer and work down by reading the engine.",
      ]
    : [];

function mainAlone(
  from: Situation,
  there: Situation,
  unchanged: Comparison,
): Outcome<Correction, CorrectionRefusal> {
  const jet = from.setup.main.part;
  if (jet === null) {
    return refuse("main jet not known", "The main jet fitted is not known: take it out and read its number.");
  }
  const baseline = baselineOf(from);
  if (!baseline.ok) return baseline;
  const { frame, side } = baseline.value;
  const factor = mainAreaFactor(frame, side, FULL, unchanged.at[FULL]!.logRatio);
  if (factor === null) {
    return refuse(
      "needle limits",
      "No main jet gives that much fuel: at full throttle the needle already holds it back. Lift the needle or fit a bigger needle jet.",
    );
  }
  const setup: Setup = { ...from.setup, main: known({ ...jet, number: numberForArea(jet, factor) }) };
  const after = compare(from, { ...there, setup });
  return after.ok
    ? accept({ setup, remaining: remainingOf(after.value), warnings: farWarnings(factor) })
    : after;
}
