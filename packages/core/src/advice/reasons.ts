import type { Belief } from "../belief/believe.ts";
import type { FaultId } from "../belief/catalogue.ts";
import { type Influence, influenceOnFault, influenceOnMixture } from "../belief/influence.ts";
import type { Site } from "../belief/site.ts";
import { direction, stretchAt } from "../belief/state.ts";
import { CIRCUITS } from "../units/circuit.ts";
import { OPENINGS, openingName } from "../units/opening.ts";
import type { Opening } from "../units/quantity.ts";
import type { Reason } from "./advice.ts";
import type { BikeCase } from "./case.ts";
import type { Candidate } from "./search.ts";
import { testById } from "./tests-on-engine.ts";
import { turnsOutText } from "./turns-words.ts";

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
export function reasonsForChange(
  story: BikeCase,
  belief: Belief,
  present: Candidate,
  candidate: Candidate,
): readonly Reason[] {
  const { opening, change } = mainEffect(present, candidate);
  const along = direction(stretchAt(opening), present.shift);
  // Evidence that it is rich speaks for going leaner, and the other way round.
  const influences = influenceOnMixture(belief, along).map((each) => ({
    ...each,
    weight: change < 0 ? each.weight : -each.weight,
  }));
  return reasonsFrom(story, belief, influences, 0.002);
}

/** The records that moved the mixture most at an opening, either way: what is known there already. */
export function reasonsAt(
  story: BikeCase,
  belief: Belief,
  present: Candidate,
  opening: Opening,
): readonly Reason[] {
  const along = direction(stretchAt(opening), present.shift);
  const influences = influenceOnMixture(belief, along).map((each) => ({
    ...each,
    weight: Math.abs(each.weight),
  }));
  return reasonsFrom(story, belief, influences, 0.002);
}

/** The records that spoke most for a fault. */
export const reasonsForFault = (story: BikeCase, belief: Belief, fault: FaultId): readonly Reason[] =>
  reasonsFrom(story, belief, influenceOnFault(belief, fault), 0.1);

function reasonsFrom(
  story: BikeCase,
  belief: Belief,
  influences: readonly Influence[],
  least: number,
): readonly Reason[] {
  const reasons: Reason[] = [];
  const sorted = [...influences].sort((a, b) => b.weight - a.weight || a.site - b.site);
  for (const { record, site, weight } of sorted) {
    if (reasons.length >= MOST_REASONS || weight < least) break;
    const text = siteText(story, belief.sites[site]!);
    if (!reasons.some((reason) => reason.text === text)) reasons.push({ record, text });
  }
  return reasons;
}

/** One piece of evidence in a few trade words. */
function siteText(story: BikeCase, { observation }: Site): string {
  switch (observation.kind) {
    case "sign": {
      const { words } = observation.sign;
      return observation.seen ? words : `Looked for and not there: ${lowerFirst(words)}`;
    }
    case "compared":
      return `It felt ${observation.felt} after the last change ${at(observation.opening)}`;
    case "measured": {
      const test = story.tests.find((each) => each.record === observation.record);
      if (test === undefined) return "The mixture you measured";
      return `${testById(test.test)?.words ?? test.test}: ${describeNumbers(test.numbers)}`;
    }
  }
}

const describeNumbers = (numbers: Readonly<Record<string, number>>): string =>
  numbers.bestTurns === undefined ? "measured" : `best at ${turnsOutText(numbers.bestTurns)}`;

export const lowerFirst = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

export const upperFirst = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "at closed throttle", "at 1/4 throttle", "at full throttle". */
export const at = (opening: Opening): string => `at ${openingName(opening)} throttle`;
