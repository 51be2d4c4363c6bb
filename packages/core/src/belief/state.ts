import { CIRCUITS, type Shift } from "../units/circuit.ts";
import { OPENINGS } from "../units/opening.ts";
import type { Opening } from "../units/quantity.ts";

/**
 * What is believed about one engine, as one vector: the mixture error ln(fuel-air ratio / wanted) of the
 * reference situation at the eleven openings, then how strongly the engine answers to each circuit (1 is
 * what the metering model says). Under any other situation the mixture error is linear in it.
 */
export const STATE_SIZE = OPENINGS.length + CIRCUITS.length;
export const FIRST_CIRCUIT = OPENINGS.length;

/** How much each of the eleven openings counts, in the order of OPENINGS; sums to 1. */
export type Stretch = readonly number[];

export function openingIndex(opening: Opening): number {
  const index = OPENINGS.indexOf(opening);
  if (index < 0) throw new RangeError(`Opening ${opening} is not one of the eleven held`);
  return index;
}

/** A stretch from pairs of opening and weight; the weights are scaled to sum to 1. */
export function stretchOf(weights: readonly (readonly [Opening, number])[]): Stretch {
  const stretch = new Array<number>(OPENINGS.length).fill(0);
  let sum = 0;
  for (const [opening, weight] of weights) {
    if (!(weight >= 0)) throw new RangeError(`A weight must be at least 0, got ${weight} at ${opening}`);
    const index = openingIndex(opening);
    stretch[index] = stretch[index]! + weight;
    sum += weight;
  }
  if (sum === 0) throw new RangeError("A stretch needs at least one opening with weight above 0");
  return stretch.map((weight) => weight / sum);
}

export const stretchAt = (opening: Opening): Stretch => stretchOf([[opening, 1]]);

/** The mean opening of a stretch. */
export const stretchCentre = (stretch: Stretch): number =>
  stretch.reduce((sum, weight, i) => sum + weight * OPENINGS[i]!, 0);

/** The direction along which the state is looked at by an observation of that stretch under that shift. */
export function direction(stretch: Stretch, shift: Shift): Float64Array {
  const along = new Float64Array(STATE_SIZE);
  for (let i = 0; i < OPENINGS.length; i++) along[i] = stretch[i]!;
  CIRCUITS.forEach((circuit, c) => {
    let sum = 0;
    for (let i = 0; i < OPENINGS.length; i++) sum += stretch[i]! * shift[circuit][i]!;
    along[FIRST_CIRCUIT + c] = sum;
  });
  return along;
}

/** The shift of the reference against itself. */
export const NO_SHIFT: Shift = {
  pilot: new Array<number>(OPENINGS.length).fill(0),
  screw: new Array<number>(OPENINGS.length).fill(0),
  slide: new Array<number>(OPENINGS.length).fill(0),
  needle: new Array<number>(OPENINGS.length).fill(0),
  main: new Array<number>(OPENINGS.length).fill(0),
  air: new Array<number>(OPENINGS.length).fill(0),
};

/** Total nominal shift over a stretch, every engine answering as the model says. */
export function nominalShift(stretch: Stretch, shift: Shift): number {
  let sum = 0;
  for (const circuit of CIRCUITS) {
    for (let i = 0; i < OPENINGS.length; i++) sum += stretch[i]! * shift[circuit][i]!;
  }
  return sum;
}
