import { exp, log } from "../numerics/elementary.ts";
import { cholesky } from "../numerics/matrix.ts";
import { normalCumulative, normalDensity } from "../numerics/normal.ts";
import { seededRandom } from "../numerics/random.ts";
import type { FaultId } from "./catalogue.ts";
import type { Factor } from "./factor.ts";
import type { Gaussian } from "./prior.ts";
import type { Site } from "./site.ts";

/**
 * Brute-force oracle for tests: self-normalised importance sampling of the exact posterior, fault by fault.
 * Shares the likelihoods with the subject but none of its inference.
 */
export interface Sampled {
  readonly probability: readonly number[];
  readonly mean: Float64Array;
  readonly sd: Float64Array;
  /** Kish's effective sample size over all hypotheses. */
  readonly effective: number;
}

/** Share of draws from the prior, so that no part of it is ever out of reach. */
const FROM_PRIOR = 0.2;
/** How much wider than the proposal the rest is drawn. */
const WIDER = 1.3;

/**
 * @param proposal about where the posterior is; how good it is changes the effective sample size alone
 * @param hypotheses faults with their weight before the sites; null is a sound engine
 */
export function sampleExactly(
  prior: Gaussian,
  proposal: Gaussian,
  sites: readonly Site[],
  hypotheses: readonly { readonly fault: FaultId | null; readonly weight: number }[],
  draws: number,
  seed: number,
): Sampled {
  const n = prior.mean.length;
  const random = seededRandom(seed);
  const priorLower = cholesky(prior.covariance, n);
  const wideCovariance = proposal.covariance.map((value) => value * WIDER);
  const wideLower = cholesky(wideCovariance, n);
  const priorLog = logDiagonal(priorLower, n);
  const wideLog = logDiagonal(wideLower, n);
  const likelihoodOf = sitesLikelihood(sites, hypotheses);
  const k = hypotheses.length;
  const evidence = new Float64Array(k);
  const first = new Float64Array(n);
  const second = new Float64Array(n);
  const x = new Float64Array(n);
  const work = new Float64Array(n);
  const likelihood = new Float64Array(k);
  let total = 0;
  let squares = 0;
  for (let draw = 0; draw < draws; draw++) {
    const fromPrior = random.uniform() < FROM_PRIOR;
    const lower = fromPrior ? priorLower : wideLower;
    const centre = fromPrior ? prior.mean : proposal.mean;
    for (let i = 0; i < n; i++) work[i] = random.normal();
    for (let i = 0; i < n; i++) {
      let value = centre[i]!;
      for (let j = 0; j <= i; j++) value += lower[i * n + j]! * work[j]!;
      x[i] = value;
    }
    const logPrior = -halfSquare(priorLower, prior.mean, x, work) - priorLog;
    const logWide = -halfSquare(wideLower, proposal.mean, x, work) - wideLog;
    likelihoodOf(x, likelihood);
    const importance = 1 / (FROM_PRIOR + (1 - FROM_PRIOR) * exp(logWide - logPrior));
    let weight = 0;
    for (let h = 0; h < k; h++) {
      const w = importance * likelihood[h]! * hypotheses[h]!.weight;
      evidence[h] = evidence[h]! + w;
      weight += w;
    }
    total += weight;
    squares += weight * weight;
    for (let i = 0; i < n; i++) {
      first[i] = first[i]! + weight * x[i]!;
      second[i] = second[i]! + weight * x[i]! * x[i]!;
    }
  }
  const mean = first.map((value) => value / total);
  return {
    probability: [...evidence].map((value) => value / total),
    mean,
    sd: second.map((value, i) => Math.sqrt(value / total - mean[i]! * mean[i]!)),
    effective: (total * total) / squares,
  };
}

/** Fills in the product of all likelihoods at a state, for each hypothesis. */
function sitesLikelihood(
  sites: readonly Site[],
  hypotheses: readonly { readonly fault: FaultId | null }[],
): (x: Float64Array, into: Float64Array) => void {
  const compiled = sites.map(({ along, sound, faults }) => {
    const altered = hypotheses.flatMap(({ fault }, h) => {
      const factor = fault === null ? undefined : faults.get(fault);
      return factor === undefined ? [] : [{ h, factor }];
    });
    const places = [...along.keys()].filter((i) => along[i] !== 0);
    return {
      places: Int32Array.from(places),
      weights: Float64Array.from(places, (i) => along[i]!),
      centres: Float64Array.from([...sound.steps, ...sound.bumps], ({ at }) => at),
      widths: Float64Array.from([...sound.steps.map((s) => s.width), ...sound.bumps.map((b) => b.sd)]),
      steps: sound.steps.length,
      sound: heights(sound, sound),
      altered: Int32Array.from(altered, ({ h }) => h),
      others: altered.map(({ factor }) => heights(factor, sound)),
    };
  });
  const basis = new Float64Array(8);
  return (x, into) => {
    let common = 1;
    into.fill(1);
    for (let i = 0; i < compiled.length; i++) {
      const { places, weights, centres, widths, steps, sound, altered, others } = compiled[i]!;
      let s = 0;
      for (let p = 0; p < places.length; p++) s += weights[p]! * x[places[p]!]!;
      let value = sound[0]!;
      for (let b = 0; b < centres.length; b++) {
        const z = (s - centres[b]!) / widths[b]!;
        const height = b < steps ? normalCumulative(z) : normalDensity(z) / widths[b]!;
        basis[b] = height;
        value += sound[b + 1]! * height;
      }
      common *= value;
      for (let o = 0; o < altered.length; o++) {
        const other = others[o]!;
        let otherValue = other[0]!;
        for (let b = 0; b < centres.length; b++) otherValue += other[b + 1]! * basis[b]!;
        into[altered[o]!] = (into[altered[o]!]! * otherValue) / value;
      }
    }
    for (let h = 0; h < into.length; h++) into[h] = into[h]! * common;
  };
}

/** Constant and heights of a factor whose steps and bumps lie where those of another do. */
function heights({ constant, steps, bumps }: Factor, like: Factor): Float64Array {
  const same =
    steps.length === like.steps.length &&
    bumps.length === like.bumps.length &&
    steps.every(({ at, width }, i) => at === like.steps[i]!.at && width === like.steps[i]!.width);
  if (!same) throw new RangeError("A fault may change the heights of a factor, not its steps and bumps");
  return Float64Array.from([constant, ...steps.map((s) => s.height), ...bumps.map((b) => b.weight)]);
}

/** Half the squared distance of x from a mean, in units of the spread whose triangle is given. */
function halfSquare(lower: Float64Array, mean: Float64Array, x: Float64Array, work: Float64Array): number {
  const n = mean.length;
  let sum = 0;
  for (let i = 0; i < n; i++) {
    let value = x[i]! - mean[i]!;
    for (let j = 0; j < i; j++) value -= lower[i * n + j]! * work[j]!;
    work[i] = value / lower[i * n + i]!;
    sum += work[i]! * work[i]!;
  }
  return sum / 2;
}

function logDiagonal(lower: Float64Array, n: number): number {
  let sum = 0;
  for (let i = 0; i < n; i++) sum += log(lower[i * n + i]!);
  return sum;
}
