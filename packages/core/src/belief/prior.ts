import { exp } from "../numerics/elementary.ts";
import { CIRCUITS, type Circuit } from "../units/circuit.ts";
import { OPENINGS } from "../units/opening.ts";
import { FIRST_CIRCUIT, STATE_SIZE } from "./state.ts";

/** A Gaussian over the state: mean, and covariance row by row. */
export interface Gaussian {
  readonly mean: Float64Array;
  readonly covariance: Float64Array;
}

export interface PriorFigures {
  /** Mean mixture error at the eleven openings. */
  readonly means: readonly number[];
  /** One standard deviation of what all openings share. */
  readonly commonSd: number;
  /** One standard deviation of what each opening adds, in the order of OPENINGS. */
  readonly ownSd: readonly number[];
  /** One standard deviation of what each opening has quite for itself, no neighbour sharing it; above 0. */
  readonly apartSd: readonly number[];
  /** How far neighbours move together, in the square root of opening. */
  readonly length: number;
  /** One standard deviation of the answer to each circuit around 1. */
  readonly answerSd: Readonly<Record<Circuit, number>>;
}

/**
 * What is believed of a bike nobody knows: about right, by 10 % at the bottom and 7 % at the top, neighbours alike but
 * for what each opening has of its own. Estimate: the spread of setups people bring in. Needle and main answer almost
 * as computed (the metering model's own robustness runs: within a few per cent of the change); pilot and slide do not,
 * and least the screw: the cone of its tip and the hole below it are in nobody's records. Rules B22 and B23.
 */
export const DEFAULT_PRIOR: PriorFigures = {
  means: OPENINGS.map(() => 0),
  commonSd: 0.04,
  ownSd: [0.085, 0.08, 0.075, 0.07, 0.065, 0.06, 0.06, 0.06, 0.06, 0.06, 0.06],
  // Up to a quarter pilot, holes, slide edge and needle hand over to one another: no curve through the neighbours tells it.
  apartSd: OPENINGS.map((opening) => (opening <= 0.25 ? 0.025 : opening < 0.5 ? 0.015 : 0.005)),
  length: 0.3,
  answerSd: { pilot: 0.35, screw: 0.6, slide: 0.25, needle: 0.08, main: 0.08, air: 0.1 },
};

/**
 * The prior Gaussian from its figures: squared-exponential in √opening, plus a common offset.
 * @param wrongParts what each part wrong by one standard deviation does to the mixture at the eleven openings
 */
export function priorGaussian(
  figures: PriorFigures = DEFAULT_PRIOR,
  wrongParts: readonly (readonly number[])[] = [],
): Gaussian {
  const mean = new Float64Array(STATE_SIZE);
  const covariance = new Float64Array(STATE_SIZE * STATE_SIZE);
  for (let i = 0; i < OPENINGS.length; i++) {
    mean[i] = figures.means[i]!;
    for (let j = 0; j < OPENINGS.length; j++) {
      const apart = (Math.sqrt(OPENINGS[i]!) - Math.sqrt(OPENINGS[j]!)) / figures.length;
      const together = exp(-0.5 * apart * apart);
      covariance[i * STATE_SIZE + j] =
        figures.commonSd * figures.commonSd +
        figures.ownSd[i]! * figures.ownSd[j]! * together +
        wrongParts.reduce((sum, part) => sum + part[i]! * part[j]!, 0) +
        (i === j ? figures.apartSd[i]! * figures.apartSd[i]! : 0);
    }
  }
  CIRCUITS.forEach((circuit, c) => {
    const at = FIRST_CIRCUIT + c;
    mean[at] = 1;
    covariance[at * STATE_SIZE + at] = figures.answerSd[circuit] * figures.answerSd[circuit];
  });
  return { mean, covariance };
}
