import type { Circuit, Shift } from "../units/circuit.ts";
import { accept, type Outcome } from "../units/outcome.ts";
import { fuelAndDryAir, mainBranch, pilotBranch, type Side, sideOf, viscosityPower } from "./branches.ts";
import { type MeteringRefusal, whyIncomparable, whyUnusable } from "./comparable.ts";
import { type Frame, frameOf } from "./frame.ts";
import type { Situation } from "./situation.ts";

/** A situation made ready to compare many others with. */
export interface Baseline {
  readonly frame: Frame;
  readonly side: Side;
}

/** Checks a situation and works out once what every comparison with it needs. */
export function baselineOf(from: Situation): Outcome<Baseline, MeteringRefusal> {
  const no = whyUnusable(from);
  if (no !== null) return no;
  const frame = frameOf(from.setup.body);
  return accept({ frame, side: sideOf(from, frame) });
}

/** Checks the second situation against a baseline and makes it ready. */
export function otherSide(baseline: Baseline, to: Situation): Outcome<Side, MeteringRefusal> {
  const no = whyUnusable(to) ?? whyIncomparable(baseline.side.situation.setup, to.setup);
  return no ?? accept(sideOf(to, baseline.frame));
}

/**
 * The shift from one ready situation to another: log of the ratio of fuel-air ratios, each over its
 * stoichiometric one, by circuit and opening.
 *
 * A small change of the pilot circuit reaches the mixture by the pilot share w, of the main circuit by 1 - w:
 * Δ ln r = (1-w) Δ ln M + w Δ ln P + fuel and dry air. M is main jet and annulus in a row under the depression
 * less the fuel lift; P is the pilot jet under its screw. Adding logs keeps any chain of changes, and every
 * change and its reverse, consistent to the last digits; adding the two flows by shares of one end does not.
 * The fuel lift counts as "main", other fuel as "air".
 */
export function shiftOf(frame: Frame, a: Side, b: Side): Shift {
  const pilots = pilotBranch(frame, a, b);
  const { common, viscosity } = fuelAndDryAir(a.situation, b.situation);
  const shift: Record<Circuit, number[]> = { pilot: [], screw: [], slide: [], needle: [], main: [], air: [] };
  for (let i = 0; i < frame.lift.length; i++) {
    const w = frame.pilotShare[i]!;
    const mains = mainBranch(frame, a, b, i);
    shift.pilot.push(w * pilots.pilot);
    shift.screw.push(w * pilots.screw);
    shift.slide.push((1 - w) * mains.slide);
    shift.needle.push((1 - w) * mains.needle);
    shift.main.push((1 - w) * (mains.main + mains.lift));
    shift.air.push((1 - w) * mains.air + w * pilots.air + (common - viscosityPower(w) * viscosity));
  }
  return shift;
}

/**
 * The shift from one situation to another, nominal figures only, at the eleven OPENINGS. Refuses what
 * `compare` refuses. For many comparisons with one situation take `shiftsFrom`.
 */
export function shiftBetween(from: Situation, to: Situation): Outcome<Shift, MeteringRefusal> {
  const shifts = shiftsFrom(from);
  return shifts.ok ? shifts.value(to) : shifts;
}

/**
 * A function that gives the shift from `from` to any other situation; works out the first side once.
 *
 * Three groups of changes add up exactly, each worked out with the rest left as in `from`: pilot jet and screw; main
 * jet, needle, clip and needle jet; cutaway, float level, air and fuel. So a search over parts need not work out
 * every combination.
 */
export function shiftsFrom(
  from: Situation,
): Outcome<(to: Situation) => Outcome<Shift, MeteringRefusal>, MeteringRefusal> {
  const baseline = baselineOf(from);
  if (!baseline.ok) return baseline;
  const { frame, side } = baseline.value;
  return accept((to) => {
    const other = otherSide(baseline.value, to);
    return other.ok ? accept(shiftOf(frame, side, other.value)) : other;
  });
}
