import { invertSymmetric } from "../numerics/invert-symmetric.ts";

/** A weighted reading; weight is one over the variance. */
export interface WeightedPoint {
  readonly x: number;
  readonly y: number;
  readonly weight: number;
}

/** A line without jumps that bends at `breaks`; `slopes` has one more entry than `breaks`. */
export interface BrokenLine {
  /** Value at x = 0 of the first stretch, carried on. */
  readonly intercept: number;
  readonly slopes: readonly number[];
  readonly breaks: readonly number[];
  /** Weighted sum of squared residuals. */
  readonly misfit: number;
}

export const brokenLineAt = (line: BrokenLine, x: number): number => {
  let y = line.intercept + line.slopes[0]! * x;
  for (let k = 0; k < line.breaks.length; k++) {
    if (x > line.breaks[k]!) y += (line.slopes[k + 1]! - line.slopes[k]!) * (x - line.breaks[k]!);
  }
  return y;
};

/** How many points of different x a stretch needs. */
const FIRST_STRETCH = 2;
const OTHER_STRETCH = 3;
/** Readings of a needle need a few dozen at most; beyond this they are no broken line and any answer is refused later. */
const MOST_SHARINGS = 40;

/**
 * Best line of `bends` bends through points sorted by x, by weighted least squares: exact, not from a starting guess.
 * For each way to share the points among the stretches the stretches are fitted apart; where neighbours cross between
 * their points that is the best line for this sharing, otherwise a bend sits on a point and the joined stretches are
 * fitted together. Sharings whose stretches apart already fit worse than `bound`, or than the best found, are skipped.
 * Source: D. J. Hudson, "Fitting segmented curves whose join points have to be estimated", J. Am. Stat. Assoc. 61
 * (1966) 1097 (from memory; checked in tests against a grid search).
 * @param level the first stretch has slope 0
 * @returns null when no line fits better than `bound`
 */
export function bestBrokenLine(
  points: readonly WeightedPoint[],
  bends: number,
  level: boolean,
  bound = Infinity,
): BrokenLine | null {
  const sums = runningSums(points);
  const sharings: { starts: readonly number[]; atLeast: number }[] = [];
  const share = (starts: readonly number[], atLeast: number): void => {
    if (atLeast >= bound) return;
    const from = starts[starts.length - 1] ?? 0;
    const first = starts.length === 0;
    const need = first ? FIRST_STRETCH : OTHER_STRETCH;
    if (starts.length === bends) {
      if (points.length - from < need || !spread(points, from, points.length, first && level)) return;
      const total = atLeast + stretch(sums, from, points.length, first && level).misfit;
      if (total < bound) sharings.push({ starts, atLeast: total });
      return;
    }
    for (let end = from + need; end <= points.length - OTHER_STRETCH * (bends - starts.length); end++) {
      if (points[end]!.x <= points[end - 1]!.x || !spread(points, from, end, first && level)) continue;
      share([...starts, end], atLeast + stretch(sums, from, end, first && level).misfit);
    }
  };
  share([], 0);
  sharings.sort((a, b) => a.atLeast - b.atLeast);
  let best: BrokenLine | null = null;
  for (const { starts, atLeast } of sharings.slice(0, MOST_SHARINGS)) {
    if (atLeast >= (best?.misfit ?? bound)) break;
    best = better(best, bestForSharing(points, sums, starts, level, best?.misfit ?? bound));
  }
  return best;
}

const spread = (points: readonly WeightedPoint[], from: number, to: number, level: boolean): boolean =>
  level || points[to - 1]!.x > points[from]!.x;

function better(a: BrokenLine | null, b: BrokenLine | null): BrokenLine | null {
  return a === null || (b !== null && b.misfit < a.misfit) ? b : a;
}

interface Line {
  readonly intercept: number;
  readonly slope: number;
  readonly misfit: number;
}

type Place = "free" | "left" | "right";
const PLACES: readonly Place[] = ["free", "left", "right"];

const everyPlacing = (bends: number): readonly (readonly Place[])[] =>
  bends === 0 ? [[]] : everyPlacing(bends - 1).flatMap((places) => PLACES.map((place) => [...places, place]));

function bestForSharing(
  points: readonly WeightedPoint[],
  sums: readonly Sums[],
  starts: readonly number[],
  level: boolean,
  bound: number,
): BrokenLine | null {
  const apart = assemble(
    points,
    sums,
    starts,
    level,
    starts.map(() => "free"),
  );
  if (apart) return apart;
  let best: BrokenLine | null = null;
  for (const places of everyPlacing(starts.length)) {
    const line = assemble(points, sums, starts, level, places);
    if (line && line.misfit < (best?.misfit ?? bound)) best = line;
  }
  return best;
}

/** The line for one sharing with each bend free or on the point left or right of it; null where a free bend lands outside. */
function assemble(
  points: readonly WeightedPoint[],
  sums: readonly Sums[],
  starts: readonly number[],
  level: boolean,
  places: readonly Place[],
): BrokenLine | null {
  const edges = [0, ...starts, points.length];
  const lines: Line[] = [];
  const breaks: number[] = [];
  let misfit = 0;
  for (let first = 0; first < edges.length - 1; ) {
    let last = first;
    while (last < starts.length && places[last] !== "free") last++;
    const bends = starts
      .slice(first, last)
      .map((start, k) => points[places[first + k] === "left" ? start - 1 : start]!.x);
    const group = joined(points, sums, edges[first]!, edges[last + 1]!, bends, level && first === 0);
    if (!group) return null;
    if (first > 0) {
      const before = lines[lines.length - 1]!;
      const cross = (before.intercept - group.lines[0]!.intercept) / (group.lines[0]!.slope - before.slope);
      const start = edges[first]!;
      if (!(cross >= points[start - 1]!.x && cross <= points[start]!.x)) return null;
      breaks.push(cross);
    }
    breaks.push(...bends);
    lines.push(...group.lines);
    misfit += group.misfit;
    first = last + 1;
  }
  return { intercept: lines[0]!.intercept, slopes: lines.map((line) => line.slope), breaks, misfit };
}

/** Points `from` to `to` fitted by a line that bends at known places. */
function joined(
  points: readonly WeightedPoint[],
  sums: readonly Sums[],
  from: number,
  to: number,
  bends: readonly number[],
  level: boolean,
): { lines: readonly Line[]; misfit: number } | null {
  if (bends.length === 0) {
    const line = stretch(sums, from, to, level);
    return { lines: [line], misfit: line.misfit };
  }
  const origin = points[from]!.x;
  const basis = (x: number): number[] => [
    1,
    ...(level ? [] : [x - origin]),
    ...bends.map((bend) => Math.max(0, x - bend)),
  ];
  const rows = points.slice(from, to).map((point) => basis(point.x));
  const size = rows[0]!.length;
  const normal = Array.from({ length: size }, () => new Array<number>(size).fill(0));
  const right = new Array<number>(size).fill(0);
  for (const [i, row] of rows.entries()) {
    const { y, weight } = points[from + i]!;
    for (let a = 0; a < size; a++) {
      right[a]! += weight * row[a]! * y;
      for (let b = 0; b < size; b++) normal[a]![b]! += weight * row[a]! * row[b]!;
    }
  }
  const inverse = invertSymmetric(normal);
  if (!inverse) return null;
  const found = inverse.map((row) => row.reduce((sum, value, k) => sum + value * right[k]!, 0));
  let misfit = 0;
  for (const [i, row] of rows.entries()) {
    const { y, weight } = points[from + i]!;
    const residual = y - row.reduce((sum, value, k) => sum + value * found[k]!, 0);
    misfit += weight * residual * residual;
  }
  const turns = found.slice(level ? 1 : 2);
  let slope = level ? 0 : found[1]!;
  let intercept = found[0]! - slope * origin;
  const lines: Line[] = [{ intercept, slope, misfit: 0 }];
  for (const [k, turn] of turns.entries()) {
    slope += turn;
    intercept -= turn * bends[k]!;
    lines.push({ intercept, slope, misfit: 0 });
  }
  return { lines, misfit };
}

interface Sums {
  readonly w: number;
  readonly x: number;
  readonly y: number;
  readonly xx: number;
  readonly xy: number;
  readonly yy: number;
}

function runningSums(points: readonly WeightedPoint[]): Sums[] {
  let last: Sums = { w: 0, x: 0, y: 0, xx: 0, xy: 0, yy: 0 };
  const sums = [last];
  for (const { x, y, weight } of points) {
    last = {
      w: last.w + weight,
      x: last.x + weight * x,
      y: last.y + weight * y,
      xx: last.xx + weight * x * x,
      xy: last.xy + weight * x * y,
      yy: last.yy + weight * y * y,
    };
    sums.push(last);
  }
  return sums;
}

/** Straight line, or level, through points `from` to `to` alone. */
function stretch(sums: readonly Sums[], from: number, to: number, level: boolean): Line {
  const [a, b] = [sums[from]!, sums[to]!];
  const w = b.w - a.w;
  const [meanX, meanY] = [(b.x - a.x) / w, (b.y - a.y) / w];
  const yy = b.yy - a.yy - w * meanY * meanY;
  if (level) return { intercept: meanY, slope: 0, misfit: Math.max(0, yy) };
  const xx = b.xx - a.xx - w * meanX * meanX;
  const xy = b.xy - a.xy - w * meanX * meanY;
  const slope = xy / xx;
  return { intercept: meanY - slope * meanX, slope, misfit: Math.max(0, yy - slope * xy) };
}
