import { log } from "../numerics/elementary.ts";
import { type Factor, type Tilted, tiltInto } from "./factor.ts";
import { absorb, look, type MovingGaussian, movingGaussian, type Sight } from "./moving-gaussian.ts";
import { multiplied, type Prepared, type Stand } from "./precision-form.ts";
import type { Gaussian } from "./prior.ts";

/**
 * Expectation propagation with one-dimensional projections.
 * Source: T. P. Minka, "Expectation propagation for approximate Bayesian inference" (2001), and for the
 * evidence C. E. Rasmussen and C. K. I. Williams, Gaussian Processes for Machine Learning (2006), sections
 * 3.6 and 3.7 [both from memory]. Checked against importance sampling in believe.slow.test.ts.
 */
export interface Propagated {
  readonly prior: Prepared;
  readonly posterior: Gaussian;
  readonly stands: readonly Stand[];
  /** log of the constant that gives each stand-in the same mass as its factor in its surroundings. */
  readonly constants: Float64Array;
  /** Natural log of the evidence of all factors together. */
  readonly logEvidence: number;
  readonly sweeps: number;
  readonly converged: boolean;
  /** True when stand-ins were held to adding precision: a rougher result. */
  readonly careful: boolean;
  /** False when stand-ins took away more than the prior holds: then the rest means nothing. */
  readonly proper: boolean;
}

export interface Start {
  /** What is known already: a nearby problem of the same sites. Changes the way there, not the end. */
  readonly from?: Propagated;
  /** Indices of the sites to visit; the others keep what they have in `from`. All when left out. */
  readonly only?: readonly number[];
  readonly maxSweeps?: number;
  /** True: takes what has not come to rest after so many sweeps; otherwise it is done over with care. */
  readonly keepMoving?: boolean;
  /** True: stand-ins only ever add precision. Always ends well, but two-sided evidence comes out too narrow. */
  readonly careful?: boolean;
}

const MAX_SWEEPS = 60;
/** A sweep that moves no site's mean or width by more than this many of its standard deviations is the last. */
const STILL = 1e-3;
/** A sweep that moves more than this part of the one before shortens the steps of the next. */
const SLOW = 0.8;
const LEAST_STEP = 0.4;
/** No visit takes away more than this part of the precision along its direction. */
const WIDEST_STEP = 0.3;
/** Sweeps between fresh multiplications, against rounding. */
const FRESH = 10;

/** Things written to again and again. */
interface Bench {
  moving: MovingGaussian;
  readonly cavity: Cavity;
  readonly tilted: Tilted;
}

/** Posterior of a Gaussian prior and factors along directions; careful where it must be. */
export function propagate(
  prior: Prepared,
  sights: readonly Sight[],
  factors: readonly Factor[],
  start: Start = {},
): Propagated {
  const free = iterate(prior, sights, factors, start);
  const settled = free.converged || start.keepMoving === true;
  return free.proper && settled ? free : iterate(prior, sights, factors, { careful: true });
}

function iterate(
  prior: Prepared,
  sights: readonly Sight[],
  factors: readonly Factor[],
  { from, only = [...sights.keys()], maxSweeps = MAX_SWEEPS, careful = false }: Start = {},
): Propagated {
  const stands: Stand[] = sights.map((_, i) => ({ ...(from?.stands[i] ?? firstStand(factors[i]!)) }));
  const samePrior = from !== undefined && from.prior === prior;
  const bench: Bench = {
    moving: movingGaussian(samePrior ? from.posterior : multiplied(prior, sights, stands).gaussian),
    cavity: { precision: 0, centre: 0 },
    tilted: { mass: 0, mean: 0, variance: 0 },
  };
  const widest = new Float64Array(sights.length);
  for (const i of only) widest[i] = widestAlong(prior.gaussian, sights[i]!);
  let sweeps = 0;
  let last = Infinity;
  let damping = 1;
  let converged = only.length === 0;
  while (!converged && sweeps < maxSweeps) {
    let moved = 0;
    for (const i of only) {
      const by = visit(bench, sights[i]!, factors[i]!, stands[i]!, damping, widest[i]!, careful);
      if (by > moved) moved = by;
    }
    sweeps++;
    converged = moved < STILL * damping;
    if (moved > SLOW * last && damping > LEAST_STEP) damping *= 0.7;
    else if (moved < 0.5 * last) damping = Math.min(1, damping * 1.3);
    last = moved;
    if (!converged && sweeps % FRESH === 0)
      bench.moving = movingGaussian(multiplied(prior, sights, stands).gaussian);
  }
  const { gaussian, logMass } = multiplied(prior, sights, stands);
  bench.moving = movingGaussian(gaussian);
  const constants = from?.constants.slice() ?? new Float64Array(sights.length);
  for (const i of only) constants[i] = logConstant(bench, sights[i]!, factors[i]!, stands[i]!, widest[i]!);
  let logEvidence = logMass - prior.logMass;
  for (let i = 0; i < constants.length; i++) logEvidence += constants[i]!;
  const proper = only.every((i) => Number.isFinite(constants[i]!));
  return { prior, posterior: gaussian, stands, constants, logEvidence, sweeps, converged, careful, proper };
}

/** Where to start: a reading is trusted until the rest speaks against it, all else says nothing yet. */
function firstStand({ bumps: [bump] }: Factor): Stand {
  if (bump === undefined) return { precision: 0, shift: 0 };
  const precision = 1 / (bump.sd * bump.sd);
  return { precision, shift: precision * bump.at };
}

/** A bound on the variance of a prior along a direction, four times over: no surroundings are wider than that. */
function widestAlong({ mean, covariance }: Gaussian, { along, places }: Sight): number {
  let sd = 0;
  for (const k of places) sd += Math.abs(along[k]!) * Math.sqrt(covariance[k * mean.length + k]!);
  return Math.max(4 * sd * sd, 1e-12);
}

/** What surrounds a site, its own stand-in taken out, as a Gaussian along its direction. */
interface Cavity {
  precision: number;
  centre: number;
}

/**
 * Fills in what surrounds a site. Other stand-ins can take away more than the prior holds for a while: then
 * the surroundings are as wide as makes sense, and near the middle.
 */
function surround(cavity: Cavity, { variance, at }: MovingGaussian, stand: Stand, widest: number): Cavity {
  const precision = 1 / variance - stand.precision;
  if (precision * widest > 1) {
    cavity.precision = precision;
    cavity.centre = (at / variance - stand.shift) / precision;
  } else {
    const away = (stand.precision * at - stand.shift) * widest;
    const most = Math.sqrt(widest);
    cavity.precision = 1 / widest;
    cavity.centre = at + Math.min(most, Math.max(-most, away));
  }
  return cavity;
}

/** One site: take its stand-in out, put the true factor in, match mean and variance. Gives the move. */
function visit(
  { moving, cavity, tilted }: Bench,
  sight: Sight,
  factor: Factor,
  stand: Stand,
  damping: number,
  widest: number,
  careful: boolean,
): number {
  look(moving, sight);
  const { variance, at } = moving;
  if (!(variance > 1e-14)) return 0;
  surround(cavity, moving, stand, widest);
  tiltInto(tilted, factor, cavity.centre, 1 / cavity.precision);
  const target = 1 / tilted.variance - cavity.precision;
  const kept = careful ? Math.max(0, target) : target;
  const wanted = kept - stand.precision;
  const widening = -wanted * variance;
  const step = widening > WIDEST_STEP ? (damping * WIDEST_STEP) / widening : damping;
  const precision = step * wanted;
  const shift =
    step * (tilted.mean * (cavity.precision + kept) - cavity.precision * cavity.centre - stand.shift);
  absorb(moving, precision, shift);
  stand.precision += precision;
  stand.shift += shift;
  const width = Math.sqrt(variance);
  return width * Math.abs(shift - precision * at) + variance * Math.abs(precision);
}

/** log of the mass of the factor in its surroundings less that of its stand-in there. */
function logConstant(
  { moving, cavity, tilted }: Bench,
  sight: Sight,
  factor: Factor,
  stand: Stand,
  widest: number,
): number {
  look(moving, sight);
  if (!(moving.variance > 1e-14)) return 0;
  if (!((1 / moving.variance - stand.precision) * widest > 1)) return Number.NaN;
  const { precision, centre } = surround(cavity, moving, stand, widest);
  const { mass } = tiltInto(tilted, factor, centre, 1 / precision);
  const both = precision + stand.precision;
  const shift = precision * centre + stand.shift;
  const half = 0.5 * ((shift * shift) / both - precision * centre * centre);
  return log(mass * Math.sqrt(both / precision)) - half;
}
