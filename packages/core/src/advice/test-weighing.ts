import { type Belief, type BeliefPart, believe } from "../belief/believe.ts";
import type { Gaussian } from "../belief/prior.ts";
import { STATE_SIZE } from "../belief/state.ts";
import { OPENINGS } from "../units/opening.ts";
import { english } from "../words/en.ts";
import type { Advice, Step } from "./advice.ts";
import type { BikeCase } from "./case.ts";
import { evidenceFrom } from "./evidence.ts";
import { faultPriorsFor, nextStep } from "./next-step.ts";
import { optionsFor } from "./options.ts";
import { priorFor } from "./prior-for.ts";
import { searchSetups } from "./search.ts";
import type { Weighing } from "./weighing.ts";

// Weighings for tests: a story worked out as far as the kinds of step need it, or with a belief made by hand.

export function weighingOf(story: BikeCase, given: Partial<Belief> = {}): Weighing {
  const { observations } = evidenceFrom(story);
  const belief: Belief = {
    ...believe({
      prior: priorFor(story.reference),
      faultPriors: faultPriorsFor(story.engine.strokes),
      observations,
    }),
    ...given,
  };
  const options = optionsFor(story.now, story.drawer);
  const candidates = searchSetups(belief.overall, story.reference, story.now, options, story.minutes);
  const present = candidates.find(({ changes }) => changes.length === 0)!;
  const chances = Object.fromEntries(
    belief.hypotheses.flatMap(({ fault, probability }) => (fault === null ? [] : [[fault, probability]])),
  );
  return { story, words: english, belief, chances, present, candidates };
}

/** A state with the mixture error at each opening as given, and the same spread everywhere; circuits answer exactly. */
export function stateOf(error: (opening: number) => number, sd: number): Gaussian {
  const mean = Float64Array.from({ length: STATE_SIZE }, (_, i) =>
    i < OPENINGS.length ? error(OPENINGS[i]!) : 1,
  );
  const covariance = new Float64Array(STATE_SIZE * STATE_SIZE);
  OPENINGS.forEach((_, i) => {
    covariance[i * STATE_SIZE + i] = sd * sd;
  });
  return { mean, covariance };
}

/** Stand-ins of sites that say nothing, more than a test has. */
const SILENT = Array.from({ length: 50 }, () => ({ precision: 0, shift: 0 }));

/** Parts of a belief from states with their weights. */
export const partsOf = (states: readonly (readonly [number, Gaussian])[]): readonly BeliefPart[] =>
  states.map(([probability, gaussian]) => ({ fault: null, probability, gaussian, stands: SILENT }));

/** The belief replaced by one state. */
export const sureOf = (state: Gaussian): Partial<Belief> => ({
  overall: state,
  parts: partsOf([[1, state]]),
});

export function adviceOf(story: BikeCase): Advice {
  const outcome = nextStep(story, english);
  if (!outcome.ok) throw new RangeError(outcome.detail);
  return outcome.value;
}

export const stepsOf = ({ step, others }: Advice): readonly Step[] => [step, ...others];
