import type { MixtureReading, Opening } from "@jetwright/core";
import { describe, expect, test } from "vitest";
import { loudest, mixtureScale } from "./mixture-scale.ts";
import { percentRich } from "./percent.ts";

const reading = (opening: number, mean: number, sd: number): MixtureReading => ({
  opening: opening as Opening,
  mean,
  sd,
});

describe("percent rich", () => {
  test("is the fuel too much, so that half the fuel is 50 % lean", () => {
    expect(percentRich(Math.log(1.08))).toBeCloseTo(8, 10);
    expect(percentRich(Math.log(0.5))).toBeCloseTo(-50, 10);
    expect(percentRich(0)).toBe(0);
  });
});

describe("the scale", () => {
  test("holds the band, the line after, and right in the middle", () => {
    const scale = mixtureScale([reading(0, 0.09, 0.02), reading(1, -0.02, 0.03)], [reading(1, 0.2, 0)]);
    expect(scale.most).toBeGreaterThan(percentRich(0.2));
    expect(scale.ticks).toEqual([-20, -10, 0, 10, 20]);
    for (const tick of scale.ticks) expect(Math.abs(tick)).toBeLessThanOrEqual(scale.most);
  });

  test("does not blow a small error up", () => {
    expect(mixtureScale([reading(0, 0.001, 0.002)]).ticks).toEqual([-8, -4, 0, 4, 8]);
  });

  test("stays readable when nothing is known", () => {
    const scale = mixtureScale([reading(0, 0.5, 2)]);
    expect(scale.most).toBeLessThan(90);
    expect(scale.ticks).toEqual([-80, -40, 0, 40, 80]);
  });
});

describe("the reading that calls loudest", () => {
  test("is the one furthest beyond its doubt, not the one furthest off", () => {
    const all = [reading(0, 0.2, 0.15), reading(1 / 4, 0.09, 0.02), reading(1, -0.05, 0.01)];
    expect(loudest(all)).toBe(all[1]);
  });

  test("none when every reading may well be right", () => {
    expect(loudest([reading(0, 0.02, 0.02), reading(1, -0.03, 0.05)])).toBeNull();
    expect(loudest([])).toBeNull();
  });
});
