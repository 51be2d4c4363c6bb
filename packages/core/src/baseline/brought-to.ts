import type { AirState } from "../air/air-state.ts";
import type { FuelState } from "../fuel/fuel-state.ts";
import type { MeteringRefusal } from "../metering/comparable.ts";
import { compare, totalAt } from "../metering/compare.ts";
import { shiftsFrom } from "../metering/shift.ts";
import type { Situation } from "../metering/situation.ts";
import { exp, log } from "../numerics/elementary.ts";
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
  const shiftTo = shiftsFrom(from);
  if (!shiftTo.ok) return shiftTo;
  /** How much richer a situation is than `from` at opening number `i`; not a number for a part that cannot be. */
  const richer: Richer = (to, i) => {
    const shift = shiftTo.value(to);
    return shift.ok ? totalAt(shift.value, i) : Number.NaN;
  };
  let there: Situation = { setup: from.setup, air, fuel };
  const brought: Record<"main" | "pilot", BroughtJet | null> = { main: null, pilot: null };
  for (const [place, i] of [
    ["pilot", CLOSED],
    ["main", FULL],
  ] as const) {
    const jet = from.setup[place].part;
    if (jet === null) continue;
    const base = there;
    const fitted = (size: number): Situation => ({
      ...base,
      setup: { ...base.setup, [place]: { ...base.setup[place], part: { ...jet, number: exp(size) } } },
    });
    const solved = solve((size) => richer(fitted(size), i), log(jet.number));
    if (solved === null) continue;
    const { size, slope } = solved;
    brought[place] = { number: exp(size), slope, sd: unchanged.value.at[i]!.sd / slope };
    there = fitted(size);
  }
  return accept({ ...brought, grooves: groovesLeft(there, richer) });
}

type Richer = (to: Situation, i: number) => number;

/** Newton's method on a function that is nearly straight and rises; null where it does not come to 0. */
function solve(
  richer: (size: number) => number,
  start: number,
): { readonly size: number; readonly slope: number } | null {
  const STEP = 0.01;
  let size = start;
  for (let round = 0; round < 12; round++) {
    const here = richer(size);
    const slope = (richer(size + STEP) - here) / STEP;
    if (Math.abs(here) < 1e-11) return { size, slope };
    // Never more than by half in one go: past that the straight line means nothing.
    size -= Math.min(0.4, Math.max(-0.4, here / slope));
  }
  return null;
}

/** Grooves that would take away what is left at 1/2 throttle; null where the clip is not known. */
function groovesLeft(there: Situation, richer: Richer): number | null {
  const clip = there.setup.clip.part;
  if (clip === null) return null;
  const last = there.setup.needle.part?.grooves ?? 5;
  const move = clip + 0.5 <= last ? 0.5 : -0.5;
  const left = richer(there, HALF);
  const moved = richer({ ...there, setup: { ...there.setup, clip: known(clip + move) } }, HALF);
  const perGroove = (moved - left) / move;
  return perGroove > 1e-6 ? -left / perGroove : 0;
}
