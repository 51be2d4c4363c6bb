import { exp, log } from "../numerics/elementary.ts";
import { FAULTS, type FaultId } from "./catalogue.ts";
import { type Reading, waysToRead } from "./doubtful-readings.ts";
import { type Propagated, propagate } from "./expectation-propagation.ts";
import type { Factor } from "./factor.ts";
import { type Sight, sightOf } from "./moving-gaussian.ts";
import { moved, type Prepared, prepare } from "./precision-form.ts";
import type { Gaussian } from "./prior.ts";
import { factorUnder, type Site } from "./site.ts";
import { splitAlong } from "./split.ts";

/** A fault with the log of what speaks for it outside the sites: its prior and the checks. */
export interface Suspect {
  readonly fault: FaultId | null;
  readonly logPrior: number;
}

/** One hypothesis on one slice of the prior, and the log of its weight; weights are not scaled yet. */
export interface Weighed {
  readonly fault: FaultId | null;
  readonly result: Propagated;
  readonly logWeight: number;
}

/** A slice of a fault that holds less than this share of the whole belief, at a guess, is left out. */
const NEGLIGIBLE = 2e-4;
/** A share of the whole belief up to which a rough reckoning of a slice will do. */
const ROUGH_WILL_DO = 0.003;
/** A few sweeps whose result need not have come to rest. */
const ROUGHLY = { maxSweeps: 4, keepMoving: true };
/** Sweeps for the sound engine on a slice; one that does not come to rest and matters gets more later. */
const SOUND_SWEEPS = 8;
/** A way to read the instruments this much lighter than the best is left out. */
const UNLIKELY_WAY = 1e-2;

interface Slice {
  readonly way: Reading;
  readonly prior: Prepared;
  /** log of its share of the prior, and that with the sound engine's evidence. */
  readonly logShare: number;
  readonly logWeight: number;
  readonly sound: Propagated;
}

/**
 * Evidence and posterior for each suspect on each slice of the prior along a direction. A fault is first
 * reckoned from the sound engine's result, visiting only the sites that it alters; what is more than
 * negligible after that is then worked out in full.
 */
export function weigh(
  prior: Gaussian,
  sites: readonly Site[],
  suspects: readonly Suspect[],
  along: Float64Array,
): readonly Weighed[] {
  const sights = sites.map((site) => sightOf(site.along));
  const slices = sliced(prior, sites, sights, along);
  const heaviest = slices.reduce((best, each) => (each.logWeight > best.logWeight ? each : best));
  const altered = new Map(FAULTS.map((fault) => [fault, alteredBy(sites, fault)]));
  const rough = (fault: FaultId | null, { prior, sound, way }: Slice): Propagated => {
    const only = fault === null ? [] : altered.get(fault)!;
    if (only.length === 0) return sound;
    return propagate(prior, sights, factorsOf(sites, fault, way), { ...ROUGHLY, from: sound, only });
  };
  // On the heaviest slice first. Elsewhere a fault gains as much, or, where it explains what made that slice
  // heaviest, it makes all slices alike.
  const first = suspects.map(({ fault, logPrior }) => {
    const result = rough(fault, heaviest);
    return { fault, logPrior, result };
  });
  const guess = ({ logPrior, result }: (typeof first)[number], slice: Slice): number =>
    logPrior + result.logEvidence + Math.max(slice.logWeight - heaviest.sound.logEvidence, slice.logShare);
  const floor =
    logSum(first.flatMap((suspect) => slices.map((slice) => guess(suspect, slice)))) + log(NEGLIGIBLE);
  const weighed = first.flatMap((suspect) =>
    slices
      .filter((slice) => slice === heaviest || guess(suspect, slice) > floor)
      .map((slice) => {
        const result = slice === heaviest ? suspect.result : rough(suspect.fault, slice);
        const logWeight = suspect.logPrior + slice.logShare + result.logEvidence;
        return { fault: suspect.fault, result, logWeight, slice };
      }),
  );
  const total = logSum(weighed.map(({ logWeight }) => logWeight));
  return weighed.map(({ fault, result, logWeight, slice }) => {
    const done = result === slice.sound && result.converged && !result.careful;
    if (done || logWeight < total + log(ROUGH_WILL_DO)) return { fault, result, logWeight };
    const full = propagate(slice.prior, sights, factorsOf(sites, fault, slice.way), { from: result });
    return { fault, result: full, logWeight: logWeight + full.logEvidence - result.logEvidence };
  });
}

/** The prior in slices along a direction, each with the sound engine's result; weights include that evidence. */
function sliced(
  prior: Gaussian,
  sites: readonly Site[],
  sights: readonly Sight[],
  along: Float64Array,
): readonly Slice[] {
  const all = prepare(prior);
  const whole = propagate(all, sights, factorsOf(sites, null, new Map()), ROUGHLY);
  const parts = splitAlong(prior, along);
  const first = prepare(parts[0]!.prior);
  const prepared = parts.map((part, i) => (i === 0 ? first : moved(first, part.prior)));
  return likelyWays(all, sites, sights, whole).flatMap(({ way, from }) =>
    parts.map(({ weight }, i) => {
      const read = factorsOf(sites, null, way);
      const sound = propagate(prepared[i]!, sights, read, { from, maxSweeps: SOUND_SWEEPS });
      const logShare = log(weight);
      return { way, prior: prepared[i]!, sound, logShare, logWeight: logShare + sound.logEvidence };
    }),
  );
}

/** The ways to read the instruments that a sound engine makes likely enough, with a rough result for each. */
function likelyWays(
  all: Prepared,
  sites: readonly Site[],
  sights: readonly Sight[],
  whole: Propagated,
): readonly { readonly way: Reading; readonly from: Propagated }[] {
  const ways = waysToRead(sites, sights, whole);
  if (ways.length === 1) return [{ way: ways[0]!, from: whole }];
  const tried = ways.map((way) => ({
    way,
    from: propagate(all, sights, factorsOf(sites, null, way), { ...ROUGHLY, from: whole }),
  }));
  const best = Math.max(...tried.map(({ from }) => from.logEvidence));
  return tried.filter(({ from }) => from.logEvidence > best + log(UNLIKELY_WAY));
}

const alteredBy = (sites: readonly Site[], fault: FaultId): readonly number[] =>
  [...sites.keys()].filter((i) => sites[i]!.faults.has(fault));

const factorsOf = (sites: readonly Site[], fault: FaultId | null, way: Reading): readonly Factor[] =>
  sites.map((site, i) => way.get(i) ?? factorUnder(site, fault));

/** log Σ exp. */
export function logSum(logs: readonly number[]): number {
  const top = logs.reduce((best, each) => Math.max(best, each), -Infinity);
  return top + log(logs.reduce((sum, each) => sum + exp(each - top), 0));
}
