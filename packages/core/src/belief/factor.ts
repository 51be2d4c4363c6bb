import { exp } from "../numerics/elementary.ts";
import { cumulativeFrom, normalCumulative, normalDensity, ROOT_TWO_PI } from "../numerics/normal.ts";

/**
 * A likelihood along one direction of the state, as a constant plus smooth steps plus bumps:
 * t(s) = constant + Σ height·Φ((s − at)/width) + Σ weight·N(s; at, sd). All its moments under a Gaussian are
 * closed forms, so nothing is integrated numerically.
 */
export interface Factor {
  readonly constant: number;
  readonly steps: readonly Step[];
  readonly bumps: readonly Bump[];
}

export interface Step {
  readonly height: number;
  readonly at: number;
  readonly width: number;
}

export interface Bump {
  readonly weight: number;
  readonly at: number;
  readonly sd: number;
}

/** The likelihood at one point. */
export function factorValue(factor: Factor, s: number): number {
  let value = factor.constant;
  for (const step of factor.steps) value += step.height * normalCumulative((s - step.at) / step.width);
  for (const bump of factor.bumps) value += (bump.weight / bump.sd) * normalDensity((s - bump.at) / bump.sd);
  return value;
}

export interface Tilted {
  /** ∫ N(s; mean, variance) t(s) ds. */
  mass: number;
  mean: number;
  variance: number;
}

/** Mass, mean and variance of the Gaussian times the factor. */
export const tilt = (factor: Factor, mean: number, variance: number): Readonly<Tilted> =>
  tiltInto({ mass: 0, mean: 0, variance: 0 }, factor, mean, variance);

/** The same, written into an object that is used again and again. */
export function tiltInto(into: Tilted, factor: Factor, mean: number, variance: number): Tilted {
  let mass = factor.constant;
  let first = 0;
  let second = factor.constant * variance;
  for (const { height, at, width } of factor.steps) {
    const wide = Math.sqrt(width * width + variance);
    const b = (mean - at) / wide;
    const tail = exp(-0.5 * b * b);
    const under = cumulativeFrom(b, tail);
    const density = tail / ROOT_TWO_PI;
    mass += height * under;
    first += (height * variance * density) / wide;
    second += height * (variance * under - (variance * variance * b * density) / (wide * wide));
  }
  for (const { weight, at, sd } of factor.bumps) {
    const total = variance + sd * sd;
    const apart = at - mean;
    const m = (weight * exp((-0.5 * apart * apart) / total)) / Math.sqrt(2 * Math.PI * total);
    const gain = variance / total;
    mass += m;
    first += m * gain * apart;
    second += m * (variance * (1 - gain) + gain * gain * apart * apart);
  }
  const shift = first / mass;
  into.mass = mass;
  into.mean = mean + shift;
  into.variance = second / mass - shift * shift;
  return into;
}

/** scale·factor + offset. */
export function affine(factor: Factor, scale: number, offset: number): Factor {
  return {
    constant: factor.constant * scale + offset,
    steps: factor.steps.map((step) => ({ ...step, height: step.height * scale })),
    bumps: factor.bumps.map((bump) => ({ ...bump, weight: bump.weight * scale })),
  };
}

/** The chances of one thing when the mixture is clearly rich, right and clearly lean. */
export interface Plateaus {
  readonly rich: number;
  readonly right: number;
  readonly lean: number;
}

/**
 * Smooth blend of three plateaus: `right` near 0, `rich` above +edge, `lean` below −edge, each edge a normal
 * step of the given width.
 */
export function blend({ rich, right, lean }: Plateaus, edge: number, width: number): Factor {
  return {
    constant: lean,
    steps: [
      { height: right - lean, at: -edge, width },
      { height: rich - right, at: edge, width },
    ],
    bumps: [],
  };
}
