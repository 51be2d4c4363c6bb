import { cholesky, dot, solveWithCholesky } from "../numerics/matrix.ts";
import { type Features, likeness } from "./likeness.ts";

/** A bike known to run well: how far it lies from theory, and how well that is known. */
export interface Example {
  readonly features: Features;
  /** Its value less what theory gives for it. */
  readonly offset: number;
  /** One standard deviation of that, from bringing it to standard air and the like. */
  readonly sd: number;
}

/** What the examples say about another bike. */
export interface Borrowed {
  /** How far that bike probably lies from theory. */
  readonly offset: number;
  /** One standard deviation of its own best value, twins' scatter included. */
  readonly sd: number;
  /** Weight of each example in `offset`; what is missing to 1 is theory. */
  readonly weights: readonly number[];
}

/**
 * Best linear estimate (kriging; Rasmussen & Williams 2006, sec. 2.2 [memory]) of how far a bike lies from
 * theory. `theorySd` is the spread of bikes about theory, `twinSd` what is left of it between twins: it stays
 * whatever the number of examples, and limits how far any one is trusted.
 */
export function borrow(
  target: Features,
  examples: readonly Example[],
  theorySd: number,
  twinSd: number,
): Borrowed {
  if (!(theorySd > twinSd && twinSd > 0)) {
    throw new RangeError(`Theory's spread ${theorySd} must be above the twins' ${twinSd}, and that above 0`);
  }
  const twins = twinSd * twinSd;
  const shared = theorySd * theorySd - twins;
  const n = examples.length;
  if (n === 0) return { offset: 0, sd: theorySd, weights: [] };
  const matrix = new Float64Array(n * n);
  examples.forEach((a, i) => {
    examples.forEach((b, j) => {
      matrix[i * n + j] = shared * likeness(a.features, b.features);
    });
    matrix[i * n + i]! += twins + a.sd * a.sd;
  });
  const like = examples.map(({ features }) => shared * likeness(target, features));
  const weights = [...solveWithCholesky(cholesky(matrix, n), n, like)];
  return {
    offset: dot(
      weights,
      examples.map(({ offset }) => offset),
    ),
    sd: Math.sqrt(Math.max(0, shared - dot(weights, like)) + twins),
    weights,
  };
}
