import { mixtureAt } from "../belief/reading.ts";
import { normalCumulative } from "../numerics/normal.ts";
import { CIRCUITS, type Circuit, type Shift } from "../units/circuit.ts";
import { OPENINGS } from "../units/opening.ts";
import type { Opening } from "../units/quantity.ts";
import type { LabourPart } from "./case.ts";
import { noticedNow, sweptWithoutCure } from "./complaint.ts";
import { changeAt, leansTop } from "./held-by.ts";
import { TOP } from "./loss.ts";
import { mainEffect } from "./reasons.ts";
import type { Candidate } from "./search.ts";
import { bandOf } from "./stretch-words.ts";
import type { Weighing } from "./weighing.ts";

/** Where trouble was noticed, a change must be likelier than this to go the right way. */
const WITH_TROUBLE = 0.6;
/** Where nothing was noticed, likelier than this: other air, or what a neighbouring stretch says. */
const WITHOUT_NOTICE = 0.75;

/** What keeps the top where it is makes it no richer than one step of main jet does, ln ratio. */
const ONE_STEP = 0.035;

/** Parts that are changed alone and last: they move the bottom and the middle together. Common practice, no source. */
const LAST_RESORT: readonly LabourPart[] = ["slide", "needleJet"];

/**
 * Every part of a change is called for where that part acts most: trouble was noticed there and it is likely to
 * go the right way, or nothing was noticed and it is very likely. A stretch where all was well on these parts in
 * this air is left alone. Doubt is a reason only to richen the main jet, as a step of its own. Rule A7.
 */
export function isCalledFor(weighing: Weighing, candidate: Candidate): boolean {
  const { trouble, health } = noticedNow(weighing);
  if (candidate.changes.join() === "screw" && sweptWithoutCure(weighing.story)) return false;
  if (candidate.changes.length > 1 && candidate.changes.some((part) => LAST_RESORT.includes(part)))
    return false;
  return candidate.changes.every((part) => {
    const { opening, change } = strongest(weighing, candidate, CIRCUIT_OF[part]);
    const band = bandOf(opening);
    if (part === "main" && change > 0 && candidate.changes.length === 1 && !health.has("top")) return true;
    if (part === "main" && !trouble.has("top") && isCounterweight(weighing, candidate)) return true;
    if (health.has(band) && !trouble.has(band)) return false;
    if (trouble.has(band) && takesMuchTrouble(weighing, candidate)) return true;
    const needed = trouble.has(band) ? WITH_TROUBLE : WITHOUT_NOTICE;
    return chanceOnWrongSide(weighing, candidate.shift, opening, change) >= needed;
  });
}

/** A change that takes away this share of all the trouble expected is not made on doubt. Estimate. */
const MUCH = 1 / 3;

const takesMuchTrouble = ({ present }: Weighing, { trouble }: Candidate): boolean =>
  present.trouble - trouble >= MUCH * present.trouble;

/**
 * True when the bigger main jet of a set keeps 3/4 to full throttle where it is, which the other parts would lean. Rule A22.
 */
function isCounterweight({ present }: Weighing, candidate: Candidate): boolean {
  if (candidate.changes.length < 2) return false;
  const without = { ...candidate, shift: { ...candidate.shift, main: present.shift.main } };
  const richest = Math.max(...TOP.map((opening) => changeAt(present, candidate, opening)));
  return leansTop(present, without) && !leansTop(present, candidate) && richest <= ONE_STEP;
}

/** A bigger main jet that only doubt asks for, while another stretch has trouble. Rule A9. */
export function onDoubtAlone(weighing: Weighing, candidate: Candidate): boolean {
  if (candidate.changes.join() !== "main") return false;
  const { trouble } = noticedNow(weighing);
  return trouble.size > 0 && !trouble.has("top") && chanceItHelps(weighing, candidate) < WITH_TROUBLE;
}

/** Chance that the change moves the opening it acts on most towards right. */
export function chanceItHelps(weighing: Weighing, candidate: Candidate): number {
  const { opening, change } = mainEffect(weighing.present, candidate);
  return chanceOnWrongSide(weighing, candidate.shift, opening, change);
}

/** Chance that half-way to that shift the opening is still rich, for a change that leans it, or still lean. */
function chanceOnWrongSide(
  { belief, present }: Weighing,
  shift: Shift,
  opening: Opening,
  change: number,
): number {
  const { mean, sd } = mixtureAt(belief, halfWay(present.shift, shift), opening);
  return normalCumulative(change < 0 ? mean / sd : -mean / sd);
}

function halfWay(from: Shift, to: Shift): Shift {
  const half = (circuit: Circuit): number[] => from[circuit].map((value, i) => (value + to[circuit][i]!) / 2);
  return Object.fromEntries(CIRCUITS.map((circuit) => [circuit, half(circuit)])) as Record<Circuit, number[]>;
}

const CIRCUIT_OF: Readonly<Record<LabourPart, Circuit>> = {
  main: "main",
  pilot: "pilot",
  needle: "needle",
  clip: "needle",
  slide: "slide",
  screw: "screw",
  needleJet: "needle",
};

/** Where one circuit changes most between the present setup and the candidate, and by how much. */
function strongest(
  { present }: Weighing,
  candidate: Candidate,
  circuit: Circuit,
): { readonly opening: Opening; readonly change: number } {
  let opening: Opening = OPENINGS[0]!;
  let change = 0;
  OPENINGS.forEach((each, i) => {
    const difference = candidate.shift[circuit][i]! - present.shift[circuit][i]!;
    if (Math.abs(difference) > Math.abs(change)) {
      opening = each;
      change = difference;
    }
  });
  return { opening, change };
}
