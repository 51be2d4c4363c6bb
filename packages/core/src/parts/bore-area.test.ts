import { describe, expect, test } from "vitest";
import type { Metre } from "../units/quantity.ts";
import type { Bore } from "./bore.ts";
import { boreHeight } from "./bore.ts";
import { openArea, openWidth } from "./bore-area.ts";

const m = (x: number) => x as Metre;
const round: Bore = { shape: "round", diameter: m(0.036) };
const oval: Bore = { shape: "oval", width: m(0.03), height: m(0.04) };
const dShape: Bore = { shape: "D", width: m(0.034), height: m(0.036) };
const archway: Bore = { shape: "D", width: m(0.034), height: m(0.017) };

/** Width of the bore at a height, straight from the equation of its outline. */
function outline(bore: Bore, y: number): number {
  if (bore.shape === "D") {
    const above = y - (bore.height - bore.width / 2);
    return above <= 0 ? bore.width : 2 * Math.sqrt(Math.max(0, (bore.width / 2) ** 2 - above ** 2));
  }
  const [w, h] = bore.shape === "round" ? [bore.diameter, bore.diameter] : [bore.width, bore.height];
  return w * Math.sqrt(Math.max(0, 1 - ((2 * y) / h - 1) ** 2));
}

function areaByMidpoints(bore: Bore, lift: number): number {
  const steps = 200_000;
  let sum = 0;
  for (let i = 0; i < steps; i++) sum += outline(bore, (lift * (i + 0.5)) / steps);
  return (sum * lift) / steps;
}

describe.each([
  ["round", round],
  ["oval", oval],
  ["D", dShape],
  ["D without walls", archway],
] as const)("open area, %s", (_name, bore) => {
  test.each([0.001, 0.02, 0.1, 0.3, 0.5, 0.53, 0.7, 0.95, 1])("at %f of full lift", (share) => {
    const lift = m(share * boreHeight(bore));
    const want = areaByMidpoints(bore, lift);
    expect(Math.abs(openArea(bore, lift) / want - 1)).toBeLessThan(2e-6);
    expect(openWidth(bore, lift)).toBeCloseTo(outline(bore, lift), 12);
  });

  test("stops at nothing and at the whole bore", () => {
    const full = openArea(bore, boreHeight(bore));
    expect(openArea(bore, m(-0.001))).toBe(0);
    expect(openArea(bore, m(0))).toBe(0);
    expect(openArea(bore, m(1))).toBeCloseTo(full, 15);
    expect(openWidth(bore, m(-0.001))).toBe(0);
    expect(openWidth(bore, m(1))).toBe(0);
  });
});

test("whole areas are those of the textbook", () => {
  expect(openArea(round, m(0.036))).toBeCloseTo(Math.PI * 0.018 ** 2, 14);
  expect(openArea(oval, m(0.04))).toBeCloseTo(Math.PI * 0.015 * 0.02, 14);
  expect(openArea(dShape, m(0.036))).toBeCloseTo(0.034 * 0.019 + (Math.PI / 2) * 0.017 ** 2, 14);
});

test("a bore that cannot exist is a bug of ours", () => {
  for (const diameter of [0, -0.03, Number.NaN, Infinity]) {
    expect(() => openArea({ shape: "round", diameter: m(diameter) }, m(0.01))).toThrow(RangeError);
  }
  expect(() => openArea({ shape: "D", width: m(0.04), height: m(0.019) }, m(0.01))).toThrow(/half as high/);
  expect(() => openWidth({ shape: "oval", width: m(0.04), height: m(0) }, m(0.01))).toThrow(RangeError);
});
