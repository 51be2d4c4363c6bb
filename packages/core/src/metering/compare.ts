import { exp } from "../numerics/elementary.ts";
import { CIRCUITS, type Circuit, type Shift } from "../units/circuit.ts";
import { OPENINGS, openingName } from "../units/opening.ts";
import { accept, type Outcome } from "../units/outcome.ts";
import type { Opening } from "../units/quantity.ts";
import type { Warning } from "../words/warning.ts";
import { hardlyFlows, type Side } from "./branches.ts";
import { type MeteringRefusal, makerOpen, sameNeedle } from "./comparable.ts";
import { type Firmness, firmnessOf, spreadOf } from "./firmness.ts";
import type { Frame } from "./frame.ts";
import { baselineOf, otherSide, shiftOf } from "./shift.ts";
import type { Situation } from "./situation.ts";

/** One situation against another at one opening. */
export interface OpeningComparison {
  readonly opening: Opening;
  /** ln of the second fuel-air ratio over the first, each over its stoichiometric one. Above 0: the second is richer. */
  readonly logRatio: number;
  /** The same as a ratio: 1.05 is 5 % richer. */
  readonly ratio: number;
  /** One standard deviation of logRatio. */
  readonly sd: number;
  /** What each circuit adds; they sum to logRatio exactly. */
  readonly byCircuit: Readonly<Record<Circuit, number>>;
}

export interface Comparison {
  /** In the order of OPENINGS. */
  readonly at: readonly OpeningComparison[];
  readonly shift: Shift;
  readonly firmness: Readonly<Record<Circuit, Firmness>>;
  /** What a person should know about it. */
  readonly notes: readonly Warning[];
}

/**
 * How much richer the second situation runs than the first, at the eleven openings; engine and speed alike.
 * The same situation twice gives exactly 0; swapping the two changes the sign; chains add up.
 * Band: main jet and needle 4 % of the change, pilot jet, screw and slide 40 %, air 20 %, and the spread of parts
 * where two parts are swapped. Steady running only. Refuses what cannot be known, with what to measure.
 * Model: quasi-steady flow through orifices in a row (textbook form, Heywood 1988 sec. 7.2 [from memory]); its
 * figures are in coefficients.ts.
 */
export function compare(from: Situation, to: Situation): Outcome<Comparison, MeteringRefusal> {
  const baseline = baselineOf(from);
  if (!baseline.ok) return baseline;
  const { frame, side } = baseline.value;
  const other = otherSide(baseline.value, to);
  if (!other.ok) return other;
  const shift = shiftOf(frame, side, other.value);
  const spread = spreadOf(frame, side, other.value, shift);
  return accept({
    at: OPENINGS.map((opening, i) => {
      const logRatio = totalAt(shift, i);
      return {
        opening,
        logRatio,
        ratio: exp(logRatio),
        sd: Math.sqrt(CIRCUITS.reduce((sum, circuit) => sum + spread[circuit][i]! * spread[circuit][i]!, 0)),
        byCircuit: Object.fromEntries(CIRCUITS.map((circuit) => [circuit, shift[circuit][i]!])) as Record<
          Circuit,
          number
        >,
      };
    }),
    shift,
    firmness: firmnessOf(frame, side, shift),
    notes: notesOn(frame, side, other.value),
  });
}

/** Sum of a shift over the circuits at opening number `i`, in the order of CIRCUITS. */
export function totalAt(shift: Shift, i: number): number {
  let sum = 0;
  for (const circuit of CIRCUITS) sum += shift[circuit][i]!;
  return sum;
}

function notesOn(frame: Frame, a: Side, b: Side): Warning[] {
  const notes: Warning[] = [];
  const [from, to] = [a.situation.setup, b.situation.setup];
  const unknown = (
    ["main", "pilot", "needle", "clip", "needleJet", "cutaway", "screw", "fuelLift"] as const
  ).filter((part) => from[part].part === null);
  if (unknown.length > 0) notes.push({ code: "stand-in parts", given: { parts: unknown } });
  if (from.needle.part !== null && from.needle.part.profile === null)
    notes.push({ code: "needle not measured" });
  if (frame.body.seatToJet === null && from.needle.part?.profile) notes.push({ code: "seat not measured" });
  if (makerOpen(from.main.part, to.main.part) || makerOpen(from.pilot.part, to.pilot.part))
    notes.push({ code: "maker not known" });
  if (frame.body.nozzle === "bleed") notes.push({ code: "bled nozzle" });
  if (
    airJetsDiffer(from.mainAirJet.part, to.mainAirJet.part) ||
    airJetsDiffer(from.pilotAirJet.part, to.pilotAirJet.part)
  ) {
    notes.push({ code: "air jets" });
  }
  if (!sameNeedle(from.needle.part, to.needle.part) && from.needle.part!.marks === to.needle.part!.marks)
    notes.push({ code: "same marks" });
  const starting = OPENINGS.filter((_, i) => hardlyFlows(frame, a, i) || hardlyFlows(frame, b, i));
  if (starting.length > 0) {
    notes.push({ code: "main system starting", given: { openings: starting.map(openingName) } });
  }
  return notes;
}

const airJetsDiffer = (a: { number: number } | null, b: { number: number } | null): boolean =>
  a?.number !== b?.number;
