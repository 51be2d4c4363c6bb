import { describe, expect, test } from "vitest";
import { frameConfidence } from "./frame-confidence.ts";
import type { HeardFrame } from "./speed-follower.ts";

const HOP = 0.016;
const TWO = { strokes: 2, cylinders: 1, idleHint: null } as const;
const FOUR = { ...TWO, strokes: 4 } as const;

/** Confidence of the middle frame of a second of sound. */
function said(
  {
    apart = 2.5,
    slope = 0,
    step = 0,
    bridged = false,
  }: { apart?: number; slope?: number; step?: number; bridged?: boolean },
  engine: typeof TWO | typeof FOUR = TWO,
): number {
  const smooth = Float64Array.from({ length: 61 }, (_, i) => 1700 * 2 ** (slope * (i - 30) * HOP));
  const own = smooth.map((rpm) => rpm * 2 ** step);
  const marks = new Uint8Array(61);
  marks[30] = bridged ? 1 : 0;
  const frames = Array.from({ length: 61 }, () => ({ apart }) as HeardFrame);
  return frameConfidence(frames, own, smooth, marks, HOP, engine)[30]!;
}

describe("confidence of a frame", () => {
  test("a clear steady frame is all but sure", () => {
    // 4.015 + 2.5 · 0.484, and 2.49 + 2.5 · 1.011, through the logistic curve.
    expect(said({})).toBeCloseTo(1 / (1 + Math.exp(-5.225)), 9);
    expect(said({}, FOUR)).toBeCloseTo(1 / (1 + Math.exp(-5.0175)), 9);
  });

  test("a rival, a fast change and a step from the neighbours each take some away, the last most", () => {
    for (const engine of [TWO, FOUR] as const) {
      expect(said({ apart: 0 }, engine)).toBeLessThan(said({}, engine));
      expect(said({ slope: 5 }, engine)).toBeLessThan(said({}, engine));
      expect(said({ step: 0.05 }, engine)).toBeLessThan(0.6);
      expect(said({ step: -0.05 }, engine)).toBeCloseTo(said({ step: 0.05 }, engine), 9);
    }
    expect(said({ slope: -5 }, FOUR)).toBeCloseTo(1 / (1 + Math.exp(-(5.0175 - 0.357 * 5))), 9);
    expect(said({ slope: 40 })).toBeCloseTo(said({ slope: 6 }), 9);
    expect(said({ apart: 40 })).toBeCloseTo(said({ apart: 4 }), 9);
  });

  test("what was bridged is right three times in four, and nothing heard is nothing known", () => {
    expect(said({ bridged: true })).toBe(0.76);
    const none = frameConfidence(
      [{ apart: 3 } as HeardFrame],
      Float64Array.of(0),
      Float64Array.of(0),
      new Uint8Array(1),
      HOP,
      TWO,
    );
    expect(none[0]).toBe(0);
  });
});
