import type { FaultId } from "../belief/catalogue.ts";
import { type Influence, influenceOnFault, influenceOnMixture } from "../belief/influence.ts";
import type { Site } from "../belief/site.ts";
import { direction, stretchAt } from "../belief/state.ts";
import { CIRCUITS } from "../units/circuit.ts";
import { OPENINGS } from "../units/opening.ts";
import type { Opening } from "../units/quantity.ts";
import { signWords } from "../words/sign-words.ts";
import type { Reason } from "./advice.ts";
import type { Candidate } from "./search.ts";
import { testById } from "./tests-on-engine.ts";
import type { Weighing } from "./weighing.ts";

const MOST_REASONS = 3;

/** The opening a candidate changes most against the present setup, with that change as a ln ratio. */
export function mainEffect(present: Candidate, candidate: Candidate): { opening: Opening; change: number } {
  let opening: Opening = OPENINGS[0]!;
  let change = 0;
  OPENINGS.forEach((each, i) => {
    let difference = 0;
    for (const circuit of CIRCUITS) difference += candidate.shift[circuit][i]! - present.shift[circuit][i]!;
    if (Math.abs(difference) > Math.abs(change) + 1e-12) {
      opening = each;
      change = difference;
    }
  });
  return { opening, change };
}

/** The records that spoke most for moving the mixture that way at that opening. */
export function reasonsForChange(weighing: Weighing, candidate: Candidate): readonly Reason[] {
  const { belief, present } = weighing;
  const { opening, change } = mainEffect(present, candidate);
  const along = direction(stretchAt(opening), present.shift);
  // Evidence that it is rich speaks for going leaner, and the other way round.
  const influences = influenceOnMixture(belief, along).map((each) => ({
    ...each,
    weight: change < 0 ? each.weight : -each.weight,
  }));
  return reasonsFrom(weighing, influences, 0.002);
}

/** The records that moved the mixture most at an opening, either way: what is known there already. */
export function reasonsAt(weighing: Weighing, opening: Opening): readonly Reason[] {
  const { belief, present } = weighing;
  const along = direction(stretchAt(opening), present.shift);
  const influences = influenceOnMixture(belief, along).map((each) => ({
    ...each,
    weight: Math.abs(each.weight),
  }));
  return reasonsFrom(weighing, influences, 0.002);
}

/** The records that spoke most for a fault. */
export const reasonsForFault = (weighing: Weighing, fault: FaultId): readonly Reason[] =>
  reasonsFrom(weighing, influenceOnFault(weighing.belief, fault), 0.1);

function reasonsFrom(weighing: Weighing, influences: readonly Influence[], least: number): readonly Reason[] {
  const reasons: Reason[] = [];
  const sorted = [...influences].sort((a, b) => b.weight - a.weight || a.site - b.site);
  for (const { record, site, weight } of sorted) {
    if (reasons.length >= MOST_REASONS || weight < least) break;
    const text = siteText(weighing, weighing.belief.sites[site]!);
    if (!reasons.some((reason) => reason.text === text)) reasons.push({ record, text });
  }
  return reasons;
}

/** One piece of evidence in a few trade words. */
function siteText({ story, words }: Weighing, { observation }: Site): string {
  switch (observation.kind) {
    case "sign": {
      const sign = signWords(words, observation.sign.id).words;
      return observation.seen ? sign : words.reasons.notThere(sign);
    }
    case "compared":
      return words.reasons.felt(observation.felt, observation.opening);
    case "measured": {
      const done = story.tests.find((each) => each.record === observation.record);
      if (done === undefined) return words.reasons.measured;
      const test = testById(done.test);
      const name = test === undefined ? done.test : words.tests[test.id].words;
      return words.reasons.tested(name, done.numbers.bestTurns ?? null);
    }
  }
}
