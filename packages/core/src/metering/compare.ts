import { exp } from "../numerics/elementary.ts";
import { CIRCUITS, type Circuit, type Shift } from "../units/circuit.ts";
import { OPENINGS, openingName } from "../units/opening.ts";
import { accept, type Outcome } from "../units/outcome.ts";
import type { Opening } from "../units/quantity.ts";
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

/** Something a person should know about a comparison. */
export interface ComparisonNote {
  readonly code: string;
  readonly text: string;
}

export interface Comparison {
  /** In the order of OPENINGS. */
  readonly at: readonly OpeningComparison[];
  readonly shift: Shift;
  readonly firmness: Readonly<Record<Circuit, Firmness>>;
  readonly notes: readonly ComparisonNote[];
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

function notesOn(frame: Frame, a: Side, b: Side): ComparisonNote[] {
  const notes: ComparisonNote[] = [];
  const note = (code: string, text: string) => notes.push({ code, text });
  const [from, to] = [a.situation.setup, b.situation.setup];
  const unknown = (
    [
      ["main jet", from.main],
      ["pilot jet", from.pilot],
      ["needle", from.needle],
      ["clip groove", from.clip],
      ["needle jet", from.needleJet],
      ["cutaway", from.cutaway],
      ["screw setting", from.screw],
      ["float level", from.fuelLift],
    ] as const
  ).filter(([, part]) => part.part === null);
  if (unknown.length > 0) {
    note(
      "stand-in parts",
      `Not known: ${unknown.map(([name]) => name).join(", ")}. A usual one stands in on both sides, so the band is wider.`,
    );
  }
  if (from.needle.part !== null && from.needle.part.profile === null) {
    note(
      "needle not measured",
      "Nobody has measured this needle: what a clip move does is a guess from usual needles. Measure its diameters to firm it up.",
    );
  }
  if (frame.body.seatToJet === null && from.needle.part?.profile) {
    note(
      "seat not measured",
      "The distance from the clip's seat to the needle jet is not known: where the taper takes over is a guess.",
    );
  }
  if (makerOpen(from.main.part, to.main.part) || makerOpen(from.pilot.part, to.pilot.part)) {
    note(
      "maker not known",
      "One of the jets has no maker written down; two makers' equal numbers can differ by 5 %, so the band is wider.",
    );
  }
  if (frame.body.nozzle === "bleed") {
    note(
      "bled nozzle",
      "Air bled into the well takes an unknown part of the signal, so main jet and needle figures have a wider band.",
    );
  }
  if (
    airJetsDiffer(from.mainAirJet.part, to.mainAirJet.part) ||
    airJetsDiffer(from.pilotAirJet.part, to.pilotAirJet.part)
  ) {
    note("air jets", "The air jets differ. A bigger one is leaner; how much is not computed.");
  }
  if (!sameNeedle(from.needle.part, to.needle.part) && from.needle.part!.marks === to.needle.part!.marks) {
    note(
      "same marks",
      "Both needles carry the same marks and yet differ in size: one may be worn, or measured badly.",
    );
  }
  const starting = OPENINGS.filter((_, i) => hardlyFlows(frame, a, i) || hardlyFlows(frame, b, i));
  if (starting.length > 0) {
    note(
      "main system starting",
      `At ${starting.map(openingName).join(", ")} the depression hardly lifts the fuel to the nozzle: figures there are rough.`,
    );
  }
  return notes;
}

const airJetsDiffer = (a: { number: number } | null, b: { number: number } | null): boolean =>
  a?.number !== b?.number;
