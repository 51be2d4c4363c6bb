import { describe, expect, test } from "vitest";
import { chanceOf, chanceOfStall, HEARD_FIGURES, type HeardFigure } from "./heard-likelihood.ts";

const figureOf = (name: string): HeardFigure => HEARD_FIGURES.find(({ figure }) => figure === name)!;

/** The value at which a figure is as likely with as without. */
function evenAt(heard: HeardFigure): number {
  let [low, high] = [0, heard.most];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (chanceOf(heard, middle, 1, 3) < 0.5) low = middle;
    else high = middle;
  }
  return low;
}

describe("a figure that was heard", () => {
  test("turns at about the limits the trade takes: 0.7 s of hang, 8 % of dip, 0.25 s of delay", () => {
    // Common practice, no source.
    expect(Math.abs(evenAt(figureOf("hangSeconds")) - 0.7)).toBeLessThan(0.15);
    expect(Math.abs(evenAt(figureOf("undershootPercent")) - 8)).toBeLessThan(1.5);
    expect(Math.abs(evenAt(figureOf("delaySeconds")) - 0.25)).toBeLessThan(0.06);
  });

  test("never speaks more clearly than its limits allow, and grows more certain with the figure", () => {
    for (const heard of HEARD_FIGURES) {
      let before = 0;
      for (const part of [0, 0.25, 0.5, 1, 1.5]) {
        const chance = chanceOf(heard, part * heard.something, 0.98, 5);
        expect(chance).toBeGreaterThanOrEqual(Math.max(before - 1e-12, 1 - heard.surest - 1e-12));
        expect(chance).toBeLessThanOrEqual(heard.surest + 1e-12);
        before = chance;
      }
      expect(chanceOf(heard, heard.something, 0.98, 5)).toBeGreaterThan(0.7);
    }
  });

  test("says less the less surely it was read and the fewer the tries, and nothing at no confidence", () => {
    const hang = figureOf("hangSeconds");
    const at = (confidence: number, tries?: number): number => chanceOf(hang, 0.8, confidence, tries);
    expect(at(0)).toBe(0.5);
    expect(at(0.2, 3)).toBeLessThan(at(0.9, 3));
    expect(at(0.9)).toBe(at(0.9, 1));
    expect(at(0.9, 1)).toBeLessThan(at(0.9, 2));
    expect(at(0.9, 0)).toBeLessThan(at(0.9, 1));
  });

  test("a stall is told by being there, its absence a little less surely", () => {
    expect(chanceOfStall(true, 1)).toBe(0.9);
    expect(chanceOfStall(false, 1)).toBeCloseTo(0.15 / (0.15 + 0.92), 12);
    expect(chanceOfStall(true, 0)).toBe(0.5);
    expect(chanceOfStall(true, 0.5)).toBeLessThan(0.9);
    expect(chanceOfStall(true, 0.5)).toBeGreaterThan(0.5);
  });
});
