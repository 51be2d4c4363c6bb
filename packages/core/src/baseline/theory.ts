import { log } from "../numerics/elementary.ts";
import type { JetNumbering } from "../parts/jet.ts";
import type { TheoryBasis } from "../words/rests-on.ts";
import type { Features } from "./likeness.ts";
import { usualDisplacement } from "./usual-bore.ts";

/** What theory and published settings alone say, in standard air: the log of a number, with its spread. */
export interface Theory {
  readonly mean: number;
  /** One standard deviation from bike to bike, all doubt of the theory included. */
  readonly sd: number;
  readonly basis: TheoryBasis;
}

/** Bore number of the main jet for each mm of carburetor bore. Published two-stroke settings: 4.1 to 5.0. */
const MAIN_PER_MM = { 2: 4.65, 4: 4.4 } as const;
const MAIN_SD = { 2: 0.07, 4: 0.09 } as const;
/** Bore number of the pilot jet for each mm: 1.1 to 1.4 on two-strokes, 1.0 to 1.9 on four-strokes. Published settings. */
const PILOT_PER_MM = { 2: 1.27, 4: 1.3 } as const;
const PILOT_SD = { 2: 0.1, 4: 0.25 } as const;
/**
 * The main jet goes up with the displacement fed through one bore, to this power. One published pair on 36 mm
 * (277 cm³ 148, 447 cm³ 165) gives 0.23; a plain orifice would give 0. Estimate between the two.
 */
const DISPLACEMENT_POWER = 0.1;
/** Flow numbers stand for a bore only within 5 %, and the bodies they are sold for differ as much again. Estimate. */
const FLOW_SD = 0.14;

/**
 * The main jet by theory. A jet that feeds a throat in proportion is a fixed part of its bore (Heywood 1988,
 * sec. 7.2 [memory]); how large a part comes from published settings, 4.1 to 5.0 % on two-strokes.
 */
export function mainByTheory(input: Features, numbering: JetNumbering): Theory {
  const { strokes, bore, displacement, use } = input;
  const mean =
    log(MAIN_PER_MM[strokes] * bore * 1000) +
    DISPLACEMENT_POWER * log(displacement / usualDisplacement(bore, use));
  const blur = use === null ? 0.01 : 0;
  return inNumbering(mean, MAIN_SD[strokes] + blur, numbering, {
    of: "main",
    lowPercent: strokes === 2 ? 4.1 : 3.8,
    highPercent: 5,
  });
}

/** The pilot jet by theory: about 1.27 % of the bore on two-strokes. Estimate from published settings. */
export function pilotByTheory(input: Features, numbering: JetNumbering): Theory {
  const { strokes, bore } = input;
  return inNumbering(log(PILOT_PER_MM[strokes] * bore * 1000), PILOT_SD[strokes], numbering, {
    of: "pilot",
    lowPercent: strokes === 2 ? 1.1 : 0.9,
    highPercent: strokes === 2 ? 1.5 : 1.9,
  });
}

/** A number by bore is d in 1/100 mm; by flow it stands for d = √(n/100) mm, within 5 %. */
function inNumbering(
  mean: number,
  sd: number,
  numbering: JetNumbering,
  share: { readonly of: "main" | "pilot"; readonly lowPercent: number; readonly highPercent: number },
): Theory {
  if (numbering === "bore") return { mean, sd, basis: { ...share, flow: false } };
  return {
    mean: 2 * mean - log(100),
    sd: Math.sqrt(4 * sd * sd + FLOW_SD * FLOW_SD),
    basis: { ...share, flow: true },
  };
}

/** Cutaway by theory: 3.5 mm on a 36 mm two-stroke body. Four-stroke slides differ too much to say. */
export function cutawayByTheory(input: Features): Theory | null {
  if (input.strokes === 4) return null;
  return { mean: log((3.5 / 36) * input.bore * 1000), sd: 0.2, basis: { of: "cutaway" } };
}

/** Grooves from the middle one, below it counted up. Common practice, no source: most bikes end up on 2 or 3 of 5. */
export const CLIP_BY_THEORY: Theory = {
  mean: -0.2,
  sd: 0.8,
  basis: { of: "clip" },
};

/** Turns out. Published settings run from 1/2 to 2 1/4. */
export const SCREW_BY_THEORY: Theory = {
  mean: 1.5,
  sd: 0.5,
  basis: { of: "screw" },
};
