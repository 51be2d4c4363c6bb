import { exp } from "../numerics/elementary.ts";
import { OPENINGS, SPOKEN_OPENINGS } from "../units/opening.ts";
import type { Opening } from "../units/quantity.ts";
import type { Belief, BeliefPart } from "./believe.ts";
import { type Factor, factorValue } from "./factor.ts";
import { factorUnder } from "./site.ts";
import { surroundingsOf } from "./surroundings.ts";

/** An opening where the evidence speaks for rich or lean but not for right: two readings, not one wide one. */
export interface TwoSided {
  readonly opening: Opening;
  /** Chance of the rich reading, 0 to 1; the lean reading has the rest. */
  readonly rich: number;
  /** Where the two peaks are, as mixture errors. */
  readonly richPeak: number;
  readonly leanPeak: number;
}

const POINTS = 161;
const REACH = 0.32;
/** Each reading must hold at least this share, and the dip between be at most this deep a part of the lower peak. */
const SMALLEST_SIDE = 0.1;
const DEEPEST_DIP = 0.75;

/**
 * Openings where the belief has two peaks, one rich and one lean. The mixture along each piece of evidence
 * is read with its true likelihood put back in place of its Gaussian stand-in.
 */
export function twoSidedOpenings(belief: Belief): readonly TwoSided[] {
  const found: TwoSided[] = [];
  const densities = new Map<number, Float64Array>();
  for (const opening of SPOKEN_OPENINGS) {
    const index = OPENINGS.indexOf(opening);
    let clearest: TwoSided | null = null;
    belief.sites.forEach((site, i) => {
      if (site.along[index]! < 0.3) return;
      const density = densities.get(i) ?? densityAlong(belief, i);
      densities.set(i, density);
      const sides = peaksOf(opening, density);
      if (sides !== null && (clearest === null || evenness(sides) > evenness(clearest))) clearest = sides;
    });
    if (clearest !== null) found.push(clearest);
  }
  return found;
}

const evenness = (sides: TwoSided): number => Math.min(sides.rich, 1 - sides.rich);

/** Density of the mixture error along one site's direction, on a grid from -REACH to +REACH. */
function densityAlong(belief: Belief, index: number): Float64Array {
  const site = belief.sites[index]!;
  const density = new Float64Array(POINTS);
  // Most faults leave a site's likelihood as it is: the same values over and over.
  const values = new Map<Factor, Float64Array>();
  for (const part of belief.parts) {
    if (!(part.probability > 1e-4)) continue;
    const factor = factorUnder(site, part.fault);
    let known = values.get(factor);
    if (known === undefined) {
      known = Float64Array.from({ length: POINTS }, (_, k) => factorValue(factor, gridPoint(k)));
      values.set(factor, known);
    }
    addPart(density, part, index, site.along, known);
  }
  return density;
}

function addPart(
  density: Float64Array,
  part: BeliefPart,
  index: number,
  along: Float64Array,
  likelihood: Float64Array,
): void {
  const around = surroundingsOf(part, index, along);
  if (around === null) return;
  const values = new Float64Array(POINTS);
  let total = 0;
  for (let k = 0; k < POINTS; k++) {
    const s = gridPoint(k);
    values[k] = exp((-0.5 * (s - around.mean) * (s - around.mean)) / around.variance) * likelihood[k]!;
    total += values[k]!;
  }
  if (!(total > 0)) return;
  for (let k = 0; k < POINTS; k++) density[k] = density[k]! + (part.probability * values[k]!) / total;
}

const gridPoint = (k: number): number => -REACH + (2 * REACH * k) / (POINTS - 1);

function peaksOf(opening: Opening, density: Float64Array): TwoSided | null {
  const middle = (POINTS - 1) / 2;
  let lean = 0;
  let rich = middle;
  for (let k = 0; k < POINTS; k++) {
    if (k <= middle && density[k]! > density[lean]!) lean = k;
    if (k >= middle && density[k]! > density[rich]!) rich = k;
  }
  let dip = lean;
  for (let k = lean; k <= rich; k++) if (density[k]! < density[dip]!) dip = k;
  if (dip === lean || dip === rich) return null;
  if (density[dip]! > DEEPEST_DIP * Math.min(density[lean]!, density[rich]!)) return null;
  let total = 0;
  let above = 0;
  for (let k = 0; k < POINTS; k++) {
    total += density[k]!;
    if (k > dip) above += density[k]!;
  }
  const share = above / total;
  if (share < SMALLEST_SIDE || share > 1 - SMALLEST_SIDE) return null;
  return { opening, rich: share, richPeak: gridPoint(rich), leanPeak: gridPoint(lean) };
}
