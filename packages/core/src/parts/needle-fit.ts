import { log } from "../numerics/elementary.ts";
import { type BrokenLine, bestBrokenLine, brokenLineAt, type WeightedPoint } from "./broken-line.ts";

/** A reading in mm. */
export interface Reading {
  readonly x: number;
  readonly y: number;
  /** 1 sd of the diameter alone. */
  readonly sd: number;
}

export interface ChosenLine {
  readonly line: BrokenLine;
  readonly points: readonly WeightedPoint[];
  /** Readings left out, as indices into the sorted readings. */
  readonly leftOut: readonly number[];
  /** misfit + the price of bends and of readings left out; less is better. */
  readonly score: number;
}

/** Most tapers a needle has. */
const MOST_BENDS = 3;
/** What leaving out one reading costs: it must be more than four standard deviations off. */
const PRICE_OF_LEAVING_OUT = 16;
const MOST_LEFT_OUT = 2;
/** Readings nearer than this many standard deviations to the line are never suspects. */
const SUSPECT = 2.5;
/** Score for each reading beyond which the readings scatter too widely for one or two of them to be the cause. */
const HOPELESS = 3;

/**
 * Picks the number of tapers and the readings to leave out: least misfit (chi square) + 3 ln n a bend + 16 a
 * reading left out. The first is Schwarz's criterion with a bend's place counted as two parameters, as is usual for
 * change points (N. Zhang and D. Siegmund, Biometrics 63 (2007), from memory). Weighs each reading by its own doubt
 * and by that of its distance times the slope there. `readings` sorted by x.
 * @param level the top of the needle is straight
 */
export function chooseLine(
  readings: readonly Reading[],
  distanceSd: number,
  level: boolean,
): ChosenLine | null {
  const rough = chooseWith(
    weigh(readings, distanceSd, (i) => localSlope(readings, i)),
    level,
  );
  if (!rough) return null;
  const fine = weigh(readings, distanceSd, (i) => slopeAt(rough.line, readings[i]!.x));
  return chooseWith(fine, level);
}

function weigh(
  readings: readonly Reading[],
  distanceSd: number,
  slope: (i: number) => number,
): readonly WeightedPoint[] {
  return readings.map(({ x, y, sd }, i) => {
    const byDistance = slope(i) * distanceSd;
    return { x, y, weight: 1 / (sd * sd + byDistance * byDistance) };
  });
}

function chooseWith(all: readonly WeightedPoint[], level: boolean): ChosenLine | null {
  let start = null as ChosenLine | null;
  for (const leftOut of grossErrors(all)) start = cheapest(all, leftOut, level, start?.score) ?? start;
  if (!start || start.score > HOPELESS * all.length) return start;
  if (start.leftOut.length === 0 && !suspicious(all, start)) return start;
  const one = withOneMoreLeftOut(all, [], level, start);
  return one.leftOut.length === 1 && suspicious(all, one)
    ? withOneMoreLeftOut(all, one.leftOut, level, one)
    : one;
}

function withOneMoreLeftOut(
  all: readonly WeightedPoint[],
  leftOut: readonly number[],
  level: boolean,
  start: ChosenLine,
): ChosenLine {
  let chosen = start;
  for (const i of all.keys()) {
    if (!leftOut.includes(i)) chosen = cheapest(all, [...leftOut, i], level, chosen.score) ?? chosen;
  }
  return chosen;
}

/** Whether a reading that was kept lies far enough off to try without it. */
const suspicious = (all: readonly WeightedPoint[], { line, leftOut }: ChosenLine): boolean =>
  all.some(
    (point, i) =>
      !leftOut.includes(i) &&
      Math.abs(point.y - brokenLineAt(line, point.x)) * Math.sqrt(point.weight) > SUSPECT,
  );

/**
 * Sets of readings worth trying without, most first: those furthest from the line between their neighbours. It only
 * orders the search, so that a slip of the pen does not make it slow.
 */
function grossErrors(all: readonly WeightedPoint[]): readonly (readonly number[])[] {
  const sets: (readonly number[])[] = [[]];
  let leftOut: readonly number[] = [];
  while (leftOut.length < MOST_LEFT_OUT) {
    const rest = [...all.keys()].filter((i) => !leftOut.includes(i));
    let worst = { i: -1, off: SUSPECT };
    for (const [k, i] of rest.entries()) {
      const off = fromNeighbours(all, rest, k) * Math.sqrt(all[i]!.weight);
      if (off > worst.off) worst = { i, off };
    }
    if (worst.i < 0) break;
    leftOut = [...leftOut, worst.i];
    sets.unshift(leftOut);
  }
  return sets;
}

function fromNeighbours(all: readonly WeightedPoint[], rest: readonly number[], k: number): number {
  const point = all[rest[k]!]!;
  const start = k === 0 ? 1 : k === rest.length - 1 ? k - 2 : k - 1;
  const a = all[rest[start] ?? -1];
  const b = all[rest[k === 0 ? 2 : k === rest.length - 1 ? k - 1 : k + 1] ?? -1];
  if (!a || !b || b.x <= a.x) return 0;
  return Math.abs(point.y - a.y - ((b.y - a.y) * (point.x - a.x)) / (b.x - a.x));
}

function cheapest(
  all: readonly WeightedPoint[],
  leftOut: readonly number[],
  level: boolean,
  bound = Infinity,
): ChosenLine | null {
  const points = all.filter((_, i) => !leftOut.includes(i));
  const base = PRICE_OF_LEAVING_OUT * leftOut.length;
  let chosen: ChosenLine | null = null;
  for (let bends = 0; bends <= MOST_BENDS; bends++) {
    const price = base + 3 * log(points.length) * bends;
    const line = bestBrokenLine(points, bends, level, (chosen?.score ?? bound) - price);
    if (line) chosen = { line, points, leftOut, score: line.misfit + price };
  }
  return chosen;
}

function slopeAt(line: BrokenLine, x: number): number {
  let k = 0;
  while (k < line.breaks.length && x > line.breaks[k]!) k++;
  return line.slopes[k]!;
}

/** Median of the slopes between the readings around: a single wrong one does not move it far. */
function localSlope(readings: readonly Reading[], i: number): number {
  const around = readings.slice(Math.max(0, i - 2), i + 3);
  const slopes: number[] = [];
  for (const [j, a] of around.entries()) {
    for (const b of around.slice(j + 1)) if (b.x > a.x) slopes.push((b.y - a.y) / (b.x - a.x));
  }
  slopes.sort((a, b) => a - b);
  return slopes[Math.floor(slopes.length / 2)] ?? 0;
}
