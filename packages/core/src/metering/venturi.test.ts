import { describe, expect, test } from "vitest";
import type { Kelvin, KgPerCubicMetre, Metre, Pascal, SquareMetre } from "../units/quantity.ts";
import {
  airFuelRatio,
  compressibilityFactor,
  freeVentRichness,
  lipPressure,
  orificeArea,
  orificeDrop,
  orificeFlow,
  startSpeed,
  throatAt,
} from "./venturi.ts";

const area = 2e-6 as SquareMetre;
const petrol = 750 as KgPerCubicMetre;

describe("the textbook carburetor (worked examples stand in reference/metering.ts)", () => {
  test("flow, area and drop are one equation solved three ways", () => {
    const drop = 1500 as Pascal;
    const flow = orificeFlow(area, 0.8, petrol, drop);
    expect(flow).toBeCloseTo(0.8 * 2e-6 * 1500, 12); // √(2 · 750 · 1500) = 1500
    expect(orificeArea(flow, 0.8, petrol, drop)).toBeCloseTo(area, 15);
    expect(orificeDrop(flow, area, 0.8, petrol)).toBeCloseTo(drop, 9);
    expect(orificeFlow(area, 0.8, petrol, -5 as Pascal)).toBe(0);
  });

  test("a millimetre of petrol is about 7.3 Pa", () => {
    expect(lipPressure(745, 0.001)).toBeCloseTo(7.306, 3);
  });

  test("fuel starts when the air's speed has made the lip pressure", () => {
    const speed = startSpeed(1.2 as KgPerCubicMetre, petrol, 0.005 as Metre);
    expect(0.5 * 1.2 * speed * speed).toBeCloseTo(lipPressure(petrol, 0.005), 9);
  });

  test("the throat keeps energy and the isentropic law", () => {
    const throat = throatAt(101_325 as Pascal, 300 as Kelvin, 100);
    expect(300 - throat.temperature).toBeCloseTo((100 * 100) / (2 * 1004.685), 3);
    expect(throat.pressure / 101_325).toBeCloseTo((throat.temperature / 300) ** 3.5, 12);
    expect(throat.density).toBeCloseTo(throat.pressure / (287.05287 * throat.temperature), 12);
    expect(() => throatAt(101_325 as Pascal, 300 as Kelvin, 800)).toThrow(RangeError);
  });

  test("the compressibility factor is the exact flow over the plain one", () => {
    for (const drop of [1000, 3000, 6000, 15_000]) {
      const entry = 101_325;
      const ratio = (entry - drop) / entry;
      const density = entry / (287.05287 * 288.15);
      // the exact flow per area, from energy and density at the throat
      const cold = 288.15 * ratio ** (0.4 / 1.4);
      const exact = Math.sqrt(2 * 1004.685045 * (288.15 - cold)) * density * ratio ** (1 / 1.4);
      expect(compressibilityFactor(ratio)).toBeCloseTo(exact / Math.sqrt(2 * density * drop), 9);
    }
    expect(() => compressibilityFactor(1)).toThrow(RangeError);
    expect(() => compressibilityFactor(0)).toThrow(RangeError);
  });

  test("air over fuel falls with the root of the air's density", () => {
    const jet = { area, coefficient: 0.65, density: petrol };
    const at = (density: number) =>
      airFuelRatio(
        { area: 3e-4 as SquareMetre, coefficient: 0.8, density: density as KgPerCubicMetre },
        jet,
        5000 as Pascal,
        0 as Metre,
      );
    expect(at(0.9) / at(1.2)).toBeCloseTo(Math.sqrt(0.75), 12);
  });

  test("a restriction ahead of a free-vented bowl adds to what drives the fuel", () => {
    expect(freeVentRichness(1500, 0)).toBe(1);
    expect(freeVentRichness(100, 300)).toBe(2);
  });
});
