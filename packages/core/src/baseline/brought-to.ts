import type { AirState } from "../air/air-state.ts";
import type { FuelState } from "../fuel/fuel-state.ts";
import type { MeteringRefusal } from "../metering/comparable.ts";
import { type Comparison, compare } from "../metering/compare.ts";
import type { Situation } from "../metering/situation.ts";
import { exp, log } from "../numerics/elementary.ts";
import type { Jet } from "../parts/jet.ts";
import { known } from "../parts/known.ts";
import { OPENINGS } from "../units/opening.ts";
import { accept, type Outcome } from "../units/outcome.ts";
import type { Opening } from "../units/quantity.ts";

const CLOSED = 0;
const HALF = OPENINGS.indexOf(0.5 as Opening);
const FULL = OPENINGS.length - 1;

/** A setup carried to other air and fuel: what would hold the same mixture there. */
export interface BroughtTo {
  /** Null where the setup has none on record, or no size of it can do it. */
  readonly main: BroughtJet | null;
  readonly pilot: BroughtJet | null;
  /** Grooves still wanted after both jets, above 0 lower on the needle (richer); null where the clip is not known. */
  readonly grooves: number | null;
}

export interface BroughtJet {
  /** It need not exist as a jet. */
  readonly number: number;
  /** One standard deviation of its log, from the air's and the fuel's part. */
  readonly sd: number;
  /** How much richer the mixture gets (log) for one more in the log of the number: full throttle, or closed. */
  readonly slope: number;
}

/**
 * Carries a setup to other air and fuel by main jet at full throttle, pilot jet closed, and clip at 1/2: what a
 * technician does. The needle and slide stay. Refuses what `compare` refuses.
 */
export function broughtTo(
  from: Situation,
  air: AirState,
  fuel: FuelState,
): Outcome<BroughtTo, MeteringRefusal> {
  const unchanged = compare(from, { setup: from.setup, air, fuel });
  if (!unchanged.ok) return unchanged;
  let there: Situation = { setup: from.setup, air, fuel };
  const brought: Record<"main" | "pilot", BroughtJet | null> = { main: null, pilot: null };
  for (const [place, i] of [
    ["pilot", CLOSED],
    ["main", FULL],
  ] as const) {
    const jet = from.setup[place].part;
    if (jet === null) continue;
    const solved = solve(from, there, place, jet, i);
    if (solved === null) continue;
    const { number, slope } = solved;
    brought[place] = { number, slope, sd: unchanged.value.at[i]!.sd / slope };
    there = withNumber(there, place, jet, number);
  }
  const grooves = groovesLeft(from, there);
  return grooves.ok ? accept({ ...brought, grooves: grooves.value }) : grooves;
}

const withNumber = (base: Situation, place: "main" | "pilot", jet: Jet, number: number): Situation => ({
  ...base,
  setup: { ...base.setup, [place]: { ...base.setup[place], part: { ...jet, number } } },
});

/** Newton's method in the log of the jet's number, on a function that is nearly straight in it; null: no such jet. */
function solve(
  from: Situation,
  base: Situation,
  place: "main" | "pilot",
  jet: Jet,
  i: number,
): { readonly number: number; readonly slope: number } | null {
  const STEP = 0.01;
  const richer = (size: number): number => {
    const comparison = compare(from, withNumber(base, place, jet, exp(size)));
    return comparison.ok ? comparison.value.at[i]!.logRatio : Number.NaN;
  };
  let size = log(jet.number);
  for (let round = 0; round < 12; round++) {
    const here = richer(size);
    const slope = (richer(size + STEP) - here) / STEP;
    if (Math.abs(here) < 1e-11) return { number: exp(size), slope };
    // Never more than by half in one go: past that the straight line means nothing.
    size -= Math.min(0.4, Math.max(-0.4, here / slope));
  }
  return null;
}

/** Grooves that would take away what is left at 1/2 throttle. */
function groovesLeft(from: Situation, there: Situation): Outcome<number | null, MeteringRefusal> {
  const clip = there.setup.clip.part;
  if (clip === null) return accept(null);
  const left = compare(from, there);
  if (!left.ok) return left;
  const last = there.setup.needle.part?.grooves ?? 5;
  const move = clip + 0.5 <= last ? 0.5 : -0.5;
  const moved = compare(from, {
    ...there,
    setup: { ...there.setup, clip: known(clip + move) },
  });
  if (!moved.ok) return moved;
  const at = (comparison: Comparison): number => comparison.at[HALF]!.logRatio;
  const perGroove = (at(moved.value) - at(left.value)) / move;
  return accept(perGroove > 1e-6 ? -at(left.value) / perGroove : 0);
}
