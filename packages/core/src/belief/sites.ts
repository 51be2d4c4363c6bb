import { compareNumbers } from "../numerics/compare-numbers.ts";
import type { FaultId } from "./catalogue.ts";
import { measuredLikelihood } from "./measured-likelihood.ts";
import type { Compared, Observation, SignSeen } from "./observation.ts";
import { responseLikelihood, SMALLEST_FELT } from "./response-likelihood.ts";
import type { Site } from "./site.ts";
import { direction, nominalShift, stretchAt } from "./state.ts";
import { votes } from "./votes.ts";

/** Evidence from observations, in an order that does not depend on theirs. Rule B2. */
export function sitesFrom(
  observations: readonly Observation[],
  presentAt: (at: number) => readonly FaultId[],
): readonly Site[] {
  const sites: Site[] = [];
  const signs: SignSeen[] = [];
  const compared = new Map<string, Compared>();
  for (const observation of observations) {
    if (observation.kind === "sign") signs.push(observation);
    if (observation.kind === "compared") {
      const key = `${observation.situation}|${observation.opening}`;
      const rival = compared.get(key);
      if (rival === undefined || later(observation, rival)) compared.set(key, observation);
    }
    if (observation.kind === "measured") {
      const { stretch, shift, error, sd } = observation;
      sites.push({
        observation,
        key: `measured|${error}|${sd}`,
        along: direction(stretch, shift),
        sound: measuredLikelihood(error, sd),
        faults: new Map(),
      });
    }
  }
  for (const { observation, likelihood } of votes(signs, presentAt)) {
    const { sign, stretch, shift, seen } = observation;
    sites.push({
      observation,
      key: `sign|${sign.id}|${seen}`,
      along: direction(stretch, shift),
      sound: likelihood.sound,
      faults: likelihood.faults,
    });
  }
  for (const observation of compared.values()) {
    const site = comparedSite(observation);
    if (site !== null) sites.push(site);
  }
  return sites.sort(inOrder);
}

/** Whether a verdict speaks instead of another: the later one; of one record's, any but always the same. */
function later(a: Compared, b: Compared): boolean {
  if (a.at !== b.at) return a.at > b.at;
  if (a.record !== b.record) return a.record > b.record;
  if (a.felt !== b.felt) return a.felt > b.felt;
  return compareNumbers(sightOfChange(a), sightOfChange(b)) > 0;
}

const sightOfChange = ({ opening, before, after }: Compared): readonly number[] => [
  ...direction(stretchAt(opening), before),
  ...direction(stretchAt(opening), after),
];

function inOrder(a: Site, b: Site): number {
  const [first, second] = [a.observation, b.observation];
  if (first.at !== second.at) return first.at - second.at;
  if (first.record !== second.record) return first.record < second.record ? -1 : 1;
  if (a.key !== b.key) return a.key < b.key ? -1 : 1;
  return compareNumbers(a.along, b.along);
}

/** Looks along the mixture error half-way between the two situations. Rule B6. */
function comparedSite(observation: Compared): Site | null {
  const { opening, felt, before, after } = observation;
  const stretch = stretchAt(opening);
  const change = nominalShift(stretch, after) - nominalShift(stretch, before);
  if (Math.abs(change) < SMALLEST_FELT) return null;
  const first = direction(stretch, before);
  const second = direction(stretch, after);
  const { sound, faults } = responseLikelihood(felt, change, opening);
  return {
    observation,
    key: `compared|${felt}|${opening}|${change}`,
    along: first.map((value, i) => (value + second[i]!) / 2),
    sound,
    faults,
  };
}
