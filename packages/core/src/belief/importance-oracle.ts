import { exp, log } from "../numerics/elementary.ts";
import { cholesky } from "../numerics/matrix.ts";
import { normalCumulative, normalDensity } from "../numerics/normal.ts";
import { seededRandom } from "../numerics/random.ts";
import type { FaultId } from "./catalogue.ts";
import type { Factor } from "./factor.ts";
import type { Gaussian } from "./prior.ts";
import { factorUnder, type Site } from "./site.ts";

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
  const wide = cholesky(
    proposal.covariance.map((value) => value * 1.3),
    n,
  );
  const logDeterminant = (lower: Float64Array): number => {
    let sum = 0;
    for (let i = 0; i < n; i++) sum += log(lower[i * n + i]!);
    return sum;
  };
  const priorLog = logDeterminant(priorLower);
  const wideLog = logDeterminant(wide);
  const half = (lower: Float64Array, mean: Float64Array, x: Float64Array): number => {
    const d = new Float64Array(n);
    let sum = 0;
    for (let i = 0; i < n; i++) {
      let value = x[i]! - mean[i]!;
      for (let k = 0; k < i; k++) value -= lower[i * n + k]! * d[k]!;
      d[i] = value / lower[i * n + i]!;
      sum += d[i]! * d[i]!;
    }
    return sum / 2;
  };
  const shapes = sites.map((site) => ({
    along: site.along,
    shape: shapeOf(site.sound),
    linear: hypotheses.map(({ fault }) => linearIn(factorUnder(site, fault), site.sound)),
  }));
  const k = hypotheses.length;
  const evidence = new Float64Array(k);
  const first = new Float64Array(n);
  const second = new Float64Array(n);
  let total = 0;
  let squares = 0;
  const x = new Float64Array(n);
  const z = new Float64Array(n);
  const likelihood = new Float64Array(k);
  for (let draw = 0; draw < draws; draw++) {
    const fromPrior = random.uniform() < 0.2;
    const lower = fromPrior ? priorLower : wide;
    const mean = fromPrior ? prior.mean : proposal.mean;
    for (let i = 0; i < n; i++) z[i] = random.normal();
    for (let i = 0; i < n; i++) {
      let value = mean[i]!;
      for (let j = 0; j <= i; j++) value += lower[i * n + j]! * z[j]!;
      x[i] = value;
    }
    const logPrior = -half(priorLower, prior.mean, x) - priorLog;
    const logWide = -half(wide, proposal.mean, x) - wideLog;
    const importance = 1 / (0.2 + 0.8 * exp(logWide - logPrior));
    likelihood.fill(importance);
    for (const { along, shape, linear } of shapes) {
      let s = 0;
      for (let i = 0; i < n; i++) s += along[i]! * x[i]!;
      const basis = shape(s);
      for (let h = 0; h < k; h++) {
        const coefficients = linear[h]!;
        let value = coefficients[0]!;
        for (let b = 0; b < basis.length; b++) value += coefficients[b + 1]! * basis[b]!;
        likelihood[h] = likelihood[h]! * value;
      }
    }
    let weight = 0;
    for (let h = 0; h < k; h++) {
      const w = likelihood[h]! * hypotheses[h]!.weight;
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

/** The steps and bumps of a factor without their heights. */
const shapeOf =
  (factor: Factor) =>
  (s: number): number[] => [
    ...factor.steps.map(({ at, width }) => normalCumulative((s - at) / width)),
    ...factor.bumps.map(({ at, sd }) => normalDensity((s - at) / sd) / sd),
  ];

/** The factor as numbers before the same steps and bumps. */
function linearIn(factor: Factor, shape: Factor): number[] {
  const same =
    factor.steps.every((step, i) => step.at === shape.steps[i]!.at && step.width === shape.steps[i]!.width) &&
    factor.bumps.length === shape.bumps.length;
  if (!same) throw new RangeError("A fault may change the heights of a factor, not its places");
  return [factor.constant, ...factor.steps.map((s) => s.height), ...factor.bumps.map((b) => b.weight)];
}
