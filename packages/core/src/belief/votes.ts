import { compareNumbers } from "../numerics/compare-numbers.ts";
import { SPOKEN_OPENINGS } from "../units/opening.ts";
import { FAULTS, type FaultId } from "./catalogue.ts";
import { factorValue } from "./factor.ts";
import type { SignSeen } from "./observation.ts";
import { sameMixture } from "./same-mixture.ts";
import { type SignLikelihood, shareLeft, signLikelihood } from "./sign-likelihood.ts";
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
  return oneBike([...chosen.values()], presentAt);
}

/** As many observations as the catalogue's figure counts for. Estimate: no fault is slight everywhere. */
const CATALOGUE = 3;

/**
 * A fault that left one thing well is likely a slight one, and leaves the next well too: what signs of health say
 * against a fault is worked out in the order of time, each in the light of those before. Rule B21. A sign of trouble that
 * was told at the same mixture is likely told again, with the fault or without: then it counts half for it. Rule B24.
 */
function oneBike(chosen: readonly Vote[], presentAt: (at: number) => readonly FaultId[]): readonly Vote[] {
  const inTime = [...chosen].sort((a, b) => Number(speaksBefore(a, b)) - Number(speaksBefore(b, a)));
  const leftWell = new Map<FaultId, number>();
  const told: SignSeen[] = [];
  const likelihoods = new Map<Vote, SignLikelihood>();
  for (const vote of inTime) {
    const { sign, seen, stretch, at } = vote.observation;
    const centre = stretchCentre(stretch);
    if (!sign.healthy) {
      if (!seen) continue;
      const again = told.filter(
        (before) => before.sign.group === sign.group && sameMixture(before, vote.observation),
      ).length;
      told.push(vote.observation);
      if (again > 0)
        likelihoods.set(vote, signLikelihood(sign, seen, centre, presentAt(at), undefined, 1 / (1 + again)));
      continue;
    }
    const spared = new Map<FaultId, number>();
    for (const fault of FAULTS) {
      const usual = shareLeft(sign, fault);
      if (usual === null) continue;
      const well = leftWell.get(fault) ?? 0;
      spared.set(fault, (CATALOGUE * usual + well) / (CATALOGUE + well));
      if (seen) leftWell.set(fault, well + toldAgainst(vote.likelihood, fault));
    }
    likelihoods.set(vote, signLikelihood(sign, seen, centre, presentAt(at), spared));
  }
  return chosen.map((vote) => ({ ...vote, likelihood: likelihoods.get(vote) ?? vote.likelihood }));
}

/** How much a sign of health takes from the odds of a fault where the mixture is right, 0 to 1, caps included. */
function toldAgainst({ sound, faults }: SignLikelihood, fault: FaultId): number {
  const withFault = faults.get(fault);
  return withFault === undefined ? 0 : Math.max(0, 1 - factorValue(withFault, 0) / factorValue(sound, 0));
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
