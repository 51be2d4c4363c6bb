import { log } from "../numerics/elementary.ts";
import { dot, multiplyInto, quadraticForm } from "../numerics/matrix.ts";
import type { Belief, BeliefPart } from "./believe.ts";
import type { FaultId } from "./catalogue.ts";
import { tilt } from "./factor.ts";
import { factorUnder } from "./site.ts";
import { STATE_SIZE } from "./state.ts";

/** How much one piece of evidence moved a conclusion; positive supports it. */
export interface Influence {
  readonly record: string;
  /** Index among the belief's sites. */
  readonly site: number;
  readonly weight: number;
}

/**
 * What each site did to the mean along a direction: the mean with it less the mean without, in the same
 * unit, taken in the heaviest part of the belief. Largest first.
 */
export function influenceOnMixture(belief: Belief, along: Float64Array): readonly Influence[] {
  const part = heaviestPart(belief);
  const reach = new Float64Array(STATE_SIZE);
  multiplyInto(reach, part.gaussian.covariance, STATE_SIZE, along);
  const influences = belief.sites.map((site, i) => {
    const stand = part.stands[i]!;
    const variance = quadraticForm(part.gaussian.covariance, STATE_SIZE, site.along);
    const left = 1 - stand.precision * variance;
    const pull =
      left > 1e-6 ? (stand.shift - stand.precision * dot(site.along, part.gaussian.mean)) / left : 0;
    return { record: site.observation.record, site: i, weight: dot(reach, site.along) * pull };
  });
  return byWeight(influences);
}

/** What each site adds to the log odds of one fault (or of none) against the best other explanation. */
export function influenceOnFault(belief: Belief, fault: FaultId | null): readonly Influence[] {
  const rival = belief.hypotheses
    .filter((hypothesis) => hypothesis.fault !== fault)
    .reduce((best, each) => (each.probability > best.probability ? each : best));
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
  let mass = 0;
  let total = 0;
  for (const part of belief.parts) {
    if (part.fault !== fault) continue;
    const stand = part.stands[index]!;
    const precision = 1 / quadraticForm(part.gaussian.covariance, STATE_SIZE, site.along);
    const cavity = precision - stand.precision;
    if (!(cavity > 1e-9)) continue;
    const centre = (dot(site.along, part.gaussian.mean) * precision - stand.shift) / cavity;
    mass += part.probability * tilt(factor, centre, 1 / cavity).mass;
    total += part.probability;
  }
  return total > 0 && mass > 0 ? mass / total : 1;
}

const heaviestPart = (belief: Belief): BeliefPart =>
  belief.parts.reduce((best, each) => (each.probability > best.probability ? each : best));

const byWeight = (influences: Influence[]): readonly Influence[] =>
  influences.sort((a, b) => b.weight - a.weight || a.site - b.site);
