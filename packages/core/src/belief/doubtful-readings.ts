import { log } from "../numerics/elementary.ts";
import type { Propagated } from "./expectation-propagation.ts";
import { type Factor, tilt } from "./factor.ts";
import { look, movingGaussian, type Sight } from "./moving-gaussian.ts";
import type { Site } from "./site.ts";

/** The likelihoods of some sites replaced by one of the two things they may mean, by index. */
export type Reading = ReadonlyMap<number, Factor>;

/** A reading is in doubt when right and wrong are within this, as a log ratio. */
const IN_DOUBT = 3.5;
/** So many readings in doubt are told apart, each right or wrong; more stay one likelihood with two humps. */
const MOST = 2;
/** In a log with more evidence than this a single reading weighs little, and one is enough. */
const LONG_LOG = 100;

/**
 * Ways to read the instruments: a reading that the rest of the evidence neither bears out nor rules out is
 * taken once as right and once as wrong. One empty way when none is in doubt. The likelihoods of all ways
 * together are those of the sites.
 */
export function waysToRead(
  sites: readonly Site[],
  sights: readonly Sight[],
  known: Propagated,
): readonly Reading[] {
  const moving = movingGaussian(known.posterior);
  const doubts: { readonly i: number; readonly doubt: number }[] = [];
  for (let i = 0; i < sites.length; i++) {
    const { sound } = sites[i]!;
    if (sound.bumps.length === 0) continue;
    look(moving, sights[i]!);
    const stand = known.stands[i]!;
    const precision = 1 / moving.variance - stand.precision;
    let doubt = 0;
    if (precision > 0) {
      const centre = (moving.at / moving.variance - stand.shift) / precision;
      const right = tilt(taken(sound, true), centre, 1 / precision).mass;
      doubt = Math.abs(log(right) - log(sound.constant));
    }
    if (doubt < IN_DOUBT) doubts.push({ i, doubt });
  }
  doubts.sort((a, b) => a.doubt - b.doubt || a.i - b.i);
  let ways: Reading[] = [new Map()];
  for (const { i } of doubts.slice(0, sites.length > LONG_LOG ? 1 : MOST)) {
    const both = [true, false].map((right) => taken(sites[i]!.sound, right));
    ways = ways.flatMap((way) => both.map((factor) => new Map([...way, [i, factor]])));
  }
  return ways;
}

const taken = (factor: Factor, right: boolean): Factor =>
  right ? { ...factor, constant: 0 } : { ...factor, bumps: [] };
