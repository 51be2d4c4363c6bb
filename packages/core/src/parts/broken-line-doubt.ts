import { invertSymmetric } from "../numerics/invert-symmetric.ts";
import type { BrokenLine, WeightedPoint } from "./broken-line.ts";

/** Standard deviations of a fitted broken line whose first stretch is level. */
export interface BrokenLineDoubt {
  /** Of the level stretch. */
  readonly level: number;
  readonly breaks: readonly number[];
  /** Of each slope after a bend. */
  readonly slopes: readonly number[];
  /** Root mean square over the points, of the line itself. */
  readonly line: number;
  /** Misfit over the readings to spare; about 1 when the readings' own doubt is right. */
  readonly scatter: number;
}

/**
 * Doubt of a least-squares broken line from the curvature of its misfit, scaled up by the scatter where the readings
 * disagree more than their own doubt says. Null where a bend cannot be told from the readings.
 */
export function brokenLineDoubt(points: readonly WeightedPoint[], line: BrokenLine): BrokenLineDoubt | null {
  const bends = line.breaks.length;
  const size = 1 + 2 * bends;
  const rows = points.map((point) => derivatives(line, point.x));
  const normal = Array.from({ length: size }, (_, a) =>
    Array.from({ length: size }, (_, b) =>
      rows.reduce((sum, row, i) => sum + points[i]!.weight * row[a]! * row[b]!, 0),
    ),
  );
  const inverse = invertSymmetric(normal);
  if (!inverse) return null;
  const spare = points.length - size;
  const scatter = spare > 0 ? line.misfit / spare : 1;
  const scale = Math.sqrt(Math.max(1, scatter));
  const sd = (k: number): number => scale * Math.sqrt(inverse[k]![k]!);
  let variance = 0;
  for (const row of rows) {
    for (let a = 0; a < size; a++)
      for (let b = 0; b < size; b++) variance += row[a]! * row[b]! * inverse[a]![b]!;
  }
  return {
    level: sd(0),
    breaks: line.breaks.map((_, k) => sd(1 + k)),
    slopes: line.breaks.map((_, k) => sd(1 + bends + k)),
    line: scale * Math.sqrt(variance / points.length),
    scatter,
  };
}

/** By the level, each break, each slope after a bend. */
function derivatives(line: BrokenLine, x: number): number[] {
  const byBreak: number[] = [];
  const bySlope: number[] = [];
  for (const [k, start] of line.breaks.entries()) {
    const end = line.breaks[k + 1] ?? Infinity;
    byBreak.push(x > start ? line.slopes[k]! - line.slopes[k + 1]! : 0);
    bySlope.push(Math.max(0, Math.min(x, end) - start));
  }
  return [1, ...byBreak, ...bySlope];
}
