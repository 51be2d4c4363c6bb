import { describe, expect, test } from "vitest";
import type { CubicMetre, Metre } from "../units/quantity.ts";
import { readUse, USES, useRank } from "./use.ts";
import { believableBores, fullPowerRevs, usualBore, usualDisplacement } from "./usual-bore.ts";

const cc = (x: number): CubicMetre => (x / 1e6) as CubicMetre;

describe("usual bores", () => {
  test("revs fall by the third root of displacement", () => {
    expect(fullPowerRevs(cc(250), "race")).toBeCloseTo(8700, 6);
    expect(fullPowerRevs(cc(250 / 8), "enduro")).toBeCloseTo(2 * 7800, 6);
    expect(fullPowerRevs(cc(250), "trail")).toBeCloseTo(7000, 6);
    expect(fullPowerRevs(cc(250), null)).toBe(fullPowerRevs(cc(250), "enduro"));
  });
  test("so the bore goes by the third root too, and back", () => {
    for (const use of USES) {
      expect(usualBore(cc(500), use) / usualBore(cc(62.5), use)).toBeCloseTo(2, 10);
      expect(usualDisplacement(usualBore(cc(180), use), use)).toBeCloseTo(180e-6, 12);
    }
    expect(usualDisplacement((2 * usualBore(cc(100), null)) as Metre, null)).toBeCloseTo(800e-6, 12);
  });
  test("wilder uses take bigger bores; belief is wider than any of them", () => {
    const [trail, enduro, race] = USES.map((use) => usualBore(cc(250), use)) as [Metre, Metre, Metre];
    expect(trail).toBeLessThan(enduro);
    expect(enduro).toBeLessThan(race);
    const [least, most] = believableBores(cc(250));
    expect(least / trail).toBeCloseTo(0.62, 10);
    expect(most / race).toBeCloseTo(1.6, 10);
  });
});

describe("use in words", () => {
  test.each([
    ["Motocross, sand", "race"],
    ["MX", "race"],
    ["hare scrambles and enduro", "enduro"],
    ["trail riding, some motocross", "trail"],
    ["Trials", "trail"],
    ["kids' pit bike", "trail"],
    ["farm", "trail"],
    ["cross-country", "enduro"],
    ["something else", null],
    ["", null],
  ])("%s: %s", (text, use) => {
    expect(readUse(text)).toBe(use);
  });
  test("their order", () => {
    expect([useRank("trail"), useRank("enduro"), useRank("race"), useRank(null)]).toEqual([0, 1, 2, 1]);
  });
});
