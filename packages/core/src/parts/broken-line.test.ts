import { describe, expect, test } from "vitest";
import { seededRandom } from "../numerics/random.ts";
import { type BrokenLine, bestBrokenLine, brokenLineAt, type WeightedPoint } from "./broken-line.ts";

const misfitOf = (line: BrokenLine, points: readonly WeightedPoint[]): number =>
  points.reduce((sum, { x, y, weight }) => sum + weight * (y - brokenLineAt(line, x)) ** 2, 0);

/** Least squares for a level line that bends at given places, by Gram-Schmidt: shares nothing with the subject. */
function misfitWithBends(points: readonly WeightedPoint[], bends: readonly number[]): number {
  const columns = [
    points.map((p) => Math.sqrt(p.weight)),
    ...bends.map((bend) => points.map((p) => Math.sqrt(p.weight) * Math.max(0, p.x - bend))),
  ];
  let rest = points.map((p) => Math.sqrt(p.weight) * p.y);
  const basis: number[][] = [];
  const dot = (a: number[], b: number[]): number => a.reduce((sum, value, i) => sum + value * b[i]!, 0);
  for (const column of columns) {
    let left = column;
    for (const unit of [...basis, ...basis]) {
      const along = dot(left, unit);
      left = left.map((value, i) => value - along * unit[i]!);
    }
    const size = Math.sqrt(dot(left, left));
    if (size < 1e-9) continue;
    const unit = left.map((value) => value / size);
    basis.push(unit);
    const along = dot(rest, unit);
    rest = rest.map((value, i) => value - along * unit[i]!);
  }
  return dot(rest, rest);
}

function noisy(seed: number, n: number, bends: readonly [number, number][]): WeightedPoint[] {
  const random = seededRandom(seed);
  return Array.from({ length: n }, (_, i) => {
    const x = i + 0.3 * random.uniform();
    const y = bends.reduce((sum, [at, turn]) => sum + turn * Math.max(0, x - at), 5) + 0.4 * random.normal();
    return { x, y, weight: 4 + 4 * random.uniform() };
  });
}

describe("exact: no line on a fine grid of bends fits better", () => {
  test.each([1, 2, 3, 4, 5, 6, 7, 8])("one bend, points %i", (seed) => {
    const points = noisy(seed, 14, [[6, -0.5]]);
    const best = bestBrokenLine(points, 1, true)!;
    let grid = Infinity;
    for (let at = points[1]!.x; at <= points[11]!.x; at += 0.01)
      grid = Math.min(grid, misfitWithBends(points, [at]));
    expect(best.misfit).toBeLessThanOrEqual(grid + 1e-9);
    expect(best.misfit).toBeGreaterThan(grid - 0.02);
    expect(misfitOf(best, points)).toBeCloseTo(best.misfit, 8);
  });

  test.each([11, 12, 13, 14])("two bends, points %i", (seed) => {
    const points = noisy(seed, 15, [
      [4, -0.6],
      [9, -0.9],
    ]);
    const best = bestBrokenLine(points, 2, true)!;
    let grid = Infinity;
    for (let i = 2; i <= points.length - 6; i++) {
      for (let j = i + 3; j <= points.length - 3; j++) {
        for (let s = 0; s <= 1; s += 0.1) {
          for (let t = 0; t <= 1; t += 0.1) {
            const a = points[i - 1]!.x + s * (points[i]!.x - points[i - 1]!.x);
            const b = points[j - 1]!.x + t * (points[j]!.x - points[j - 1]!.x);
            grid = Math.min(grid, misfitWithBends(points, [a, b]));
          }
        }
      }
    }
    expect(best.misfit).toBeLessThanOrEqual(grid + 1e-9);
    expect(best.misfit).toBeGreaterThan(grid - 0.3);
    expect(misfitOf(best, points)).toBeCloseTo(best.misfit, 8);
  });
});

test("points without noise give their line back", () => {
  const points = Array.from({ length: 20 }, (_, x) => ({
    x,
    y: 3 - 0.5 * Math.max(0, x - 6.5) - 0.7 * Math.max(0, x - 13.25),
    weight: 1,
  }));
  const line = bestBrokenLine(points, 2, true)!;
  expect(line.breaks[0]).toBeCloseTo(6.5, 8);
  expect(line.breaks[1]).toBeCloseTo(13.25, 8);
  expect(line.slopes[0]).toBe(0);
  expect(line.slopes[1]).toBeCloseTo(-0.5, 8);
  expect(line.slopes[2]).toBeCloseTo(-1.2, 8);
  const tilted = points.map((p) => ({ ...p, y: p.y + 0.1 * p.x }));
  expect(bestBrokenLine(tilted, 2, false)!.slopes[0]).toBeCloseTo(0.1, 8);
});

test("nothing better than the bound, or too few points: null", () => {
  const points = noisy(3, 14, [[6, -0.5]]);
  const best = bestBrokenLine(points, 1, true)!;
  expect(bestBrokenLine(points, 1, true, best.misfit * 0.999)).toBeNull();
  expect(bestBrokenLine(points, 1, true, best.misfit * 1.001)!.misfit).toBeCloseTo(best.misfit, 10);
  expect(bestBrokenLine(points.slice(0, 4), 1, true)).toBeNull();
  expect(bestBrokenLine(points.slice(0, 5), 1, true)).not.toBeNull();
  const oneSpot = points.map((p) => ({ ...p, x: 7 }));
  expect(bestBrokenLine(oneSpot, 1, true)).toBeNull();
});
