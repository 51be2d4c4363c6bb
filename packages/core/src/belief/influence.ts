import { log } from "../numerics/elementary.ts";
import { dot, multiplyInto } from "../numerics/matrix.ts";
import type { Belief } from "./believe.ts";
import type { FaultId } from "./catalogue.ts";
import { tilt } from "./factor.ts";
import { factorUnder } from "./site.ts";
import { STATE_SIZE } from "./state.ts";
import { surroundingsOf } from "./surroundings.ts";

/** How much one piece of evidence moved a conclusion; positive supports it. */
export interface Influence {
  readonly record: string;
  /** Index among the belief's sites. */
  readonly site: number;
  readonly weight: number;
}

/** Parts lighter than this do not change what weighed most. */
const LIGHT = 1e-3;

/**
 * What each site did to the mean along a direction: the mean with it less the mean without, in the same
 * unit, over all parts of the belief. Without it, each part's mean is that of its surroundings, and parts
 * that the site spoke against weigh more. Largest first. Rule B18.
 */
export function influenceOnMixture(belief: Belief, along: Float64Array): readonly Influence[] {
  const parts = belief.parts
    .filter(({ probability }) => probability > LIGHT)
    .map((part) => {
      const reach = new Float64Array(STATE_SIZE);
      multiplyInto(reach, part.gaussian.covariance, STATE_SIZE, along);
      return { part, reach, mean: dot(along, part.gaussian.mean) };
    });
  const whole = weightedMean(parts.map(({ part, mean }) => ({ weight: part.probability, mean })));
  const influences = belief.sites.map((site, i) => {
    const without = parts.flatMap(({ part, reach, mean }) => {
      const around = surroundingsOf(part, i, site.along);
      if (around === null) return [];
      const { mass } = tilt(factorUnder(site, part.fault), around.mean, around.variance);
      const back = (dot(reach, site.along) / around.varianceWith) * (around.mean - around.meanWith);
      return [{ weight: part.probability / mass, mean: mean + back }];
    });
    const weight = without.length === 0 ? 0 : whole - weightedMean(without);
    return { record: site.observation.record, site: i, weight };
  });
  return byWeight(influences);
}

function weightedMean(values: readonly { readonly weight: number; readonly mean: number }[]): number {
  let sum = 0;
  let total = 0;
  for (const { weight, mean } of values) {
    sum += weight * mean;
    total += weight;
  }
  return sum / total;
}

/**
 * What each site adds to the log odds of one fault (or of none) against the best other explanation. Empty
 * when there is no other.
 */
export function influenceOnFault(belief: Belief, fault: FaultId | null): readonly Influence[] {
  const [first, ...others] = belief.hypotheses.filter((hypothesis) => hypothesis.fault !== fault);
  if (first === undefined) return [];
  const rival = others.reduce((best, each) => (each.probability > best.probability ? each : best), first);
  const influences = belief.sites.map((site, i) => ({
    record: site.observation.record,
    site: i,
    weight: log(siteMass(belief, i, fault)) - log(siteMass(belief, i, rival.fault)),
  }));
  return byWeight(influences);
}

/** Chance of one site's observation given all the other evidence, under a fault. */
function siteMass(belief: Belief, index: number, fault: FaultId | null): number {
  const site = belief.sites[index]!;
  const factor = factorUnder(site, fault);
  let without = 0;
  let total = 0;
  for (const part of belief.parts) {
    if (part.fault !== fault) continue;
    const around = surroundingsOf(part, index, site.along);
    if (around === null) continue;
    without += part.probability / tilt(factor, around.mean, around.variance).mass;
    total += part.probability;
  }
  return without > 0 ? total / without : 1;
}

const byWeight = (influences: Influence[]): readonly Influence[] =>
  influences.sort((a, b) => b.weight - a.weight || a.site - b.site);
