import { compareNumbers } from "../numerics/compare-numbers.ts";
import { SPOKEN_OPENINGS } from "../units/opening.ts";
import type { FaultId } from "./catalogue.ts";
import type { SignSeen } from "./observation.ts";
import { type SignLikelihood, signLikelihood } from "./sign-likelihood.ts";
import { direction, stretchCentre } from "./state.ts";

/** A sign that speaks for its whole group in one situation at one opening. */
export interface Vote {
  readonly observation: SignSeen;
  readonly likelihood: SignLikelihood;
}

/** The spoken opening a stretch belongs to, as an index. */
function spokenIndex(centre: number): number {
  let best = 0;
  SPOKEN_OPENINGS.forEach((opening, i) => {
    if (Math.abs(opening - centre) < Math.abs(SPOKEN_OPENINGS[best]! - centre)) best = i;
  });
  return best;
}

/**
 * One vote for each group of signs, situation and opening: the latest ride speaks, and of its signs the one
 * that tells most. Rules B3 and B7.
 * @param presentAt faults known to have been there at a time
 */
export function votes(
  signs: readonly SignSeen[],
  presentAt: (at: number) => readonly FaultId[],
): readonly Vote[] {
  const chosen = new Map<string, Vote>();
  for (const observation of signs) {
    const centre = stretchCentre(observation.stretch);
    const likelihood = signLikelihood(observation.sign, observation.seen, centre, presentAt(observation.at));
    const vote = { observation, likelihood };
    const key = `${observation.sign.group}|${observation.situation}|${spokenIndex(centre)}`;
    const rival = chosen.get(key);
    if (rival === undefined || speaksBefore(vote, rival)) chosen.set(key, vote);
  }
  return [...chosen.values()];
}

function speaksBefore(a: Vote, b: Vote): boolean {
  if (a.observation.at !== b.observation.at) return a.observation.at > b.observation.at;
  if (a.observation.record !== b.observation.record) return a.observation.record > b.observation.record;
  const stronger = rounded(a.likelihood.strength) - rounded(b.likelihood.strength);
  if (stronger !== 0) return stronger > 0;
  if (a.observation.sign.id !== b.observation.sign.id) return a.observation.sign.id < b.observation.sign.id;
  if (a.observation.seen !== b.observation.seen) return a.observation.seen;
  return compareNumbers(sightOfSign(a.observation), sightOfSign(b.observation)) > 0;
}

/** Strengths that differ by rounding alone, such as two at the cap, are the same. */
const rounded = (strength: number): number => Math.round(strength * 1e9);

const sightOfSign = ({ stretch, shift }: SignSeen): Float64Array => direction(stretch, shift);
