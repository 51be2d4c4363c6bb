import { type Belief, believe } from "../belief/believe.ts";
import { shiftsFrom } from "../metering/shift.ts";
import type { Situation } from "../metering/situation.ts";
import { CIRCUITS } from "../units/circuit.ts";
import { OPENINGS } from "../units/opening.ts";
import { english } from "../words/en.ts";
import type { Advice, Step } from "./advice.ts";
import type { BikeCase } from "./case.ts";
import { evidenceFrom } from "./evidence.ts";
import { faultPriorsFor, nextStep } from "./next-step.ts";
import { priorFor } from "./prior-for.ts";
import { anyStory } from "./test-any-story.ts";
import { stepsOf } from "./test-weighing.ts";

// Many stories, each worked out once, and what is true of them reckoned in the open.

export const STORIES = 40;

export interface Judged {
  readonly number: number;
  readonly story: BikeCase;
  readonly advice: Advice;
  readonly steps: readonly Step[];
}

export const judged: readonly Judged[] = Array.from({ length: STORIES }, (_, i) => i + 1).flatMap(
  (number) => {
    const given = anyStory(number);
    const outcome = nextStep(given, english);
    return outcome.ok ? [{ number, story: given, advice: outcome.value, steps: stepsOf(outcome.value) }] : [];
  },
);

const beliefs = new Map<BikeCase, Belief>();
export function beliefOf(given: BikeCase): Belief {
  const worked = beliefs.get(given);
  if (worked !== undefined) return worked;
  const { observations } = evidenceFrom(given);
  const faultPriors = faultPriorsFor(given.engine.strokes);
  const belief = believe({ prior: priorFor(given.reference), faultPriors, observations });
  beliefs.set(given, belief);
  return belief;
}

export const shiftTo = (given: BikeCase, situation: Situation) => {
  const from = shiftsFrom(given.reference);
  const shift = from.ok ? from.value(situation) : from;
  if (!shift.ok) throw new RangeError(shift.detail);
  return shift.value;
};

/** Change of the mixture at each opening from what is fitted now, as metering has it. */
export function changeBy(given: BikeCase, to: Situation): readonly number[] {
  const before = shiftTo(given, given.now);
  const after = shiftTo(given, to);
  return OPENINGS.map((_, u) =>
    CIRCUITS.reduce((sum, circuit) => sum + after[circuit][u]! - before[circuit][u]!, 0),
  );
}

export const changesOf = ({ steps }: Judged) => steps.filter(({ kind }) => kind === "change");
export const name = ({ number }: Judged, step: Step) => `story ${number}: ${step.title}`;
