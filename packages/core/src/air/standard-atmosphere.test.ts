import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fromFoot, fromMetre, toFoot } from "../units/convert.ts";
import type { KgPerCubicMetre, Metre, Pascal } from "../units/quantity.ts";
import {
  densityAltitude,
  geometricHeight,
  geopotentialHeight,
  pressureAltitude,
  standardAir,
  standardDensity,
  standardPressure,
  standardTemperature,
} from "./standard-atmosphere.ts";

describe("standard atmosphere", () => {
  // ISO 2533:1975 by its defining formulas, worked out apart from this code.
  test.each([
    [0, 288.15, 101_325, 1.225, 101_325],
    [500, 284.9, 95_460.8, 1.167269, 95_461.3],
    [1000, 281.65, 89_874.6, 1.111643, 89_876.3],
    [1500, 278.4, 84_556.0, 1.058067, 84_559.7],
    [2000, 275.15, 79_495.2, 1.00649, 79_501.4],
    [3000, 268.65, 70_108.5, 0.909122, 70_121.1],
    [4000, 262.15, 61_640.2, 0.819129, 61_660.4],
    [1524, 278.244, 84_307.3, 1.055546, 84_311.1],
  ])("%s m", (metre, kelvin, pascal, rho, geometricPascal) => {
    const h = fromMetre(metre);
    expect(standardTemperature(h)).toBeCloseTo(kelvin, 3);
    expect(standardPressure(h)).toBeCloseTo(pascal, 0);
    expect(standardDensity(h)).toBeCloseTo(rho, 5);
    expect(standardPressure(geopotentialHeight(h))).toBeCloseTo(geometricPascal, 0);
  });

  test("ends at -5 and 11 km", () => {
    expect(() => standardTemperature(fromMetre(11_001))).toThrow(/11001/);
    expect(() => standardTemperature(fromMetre(-5001))).toThrow(RangeError);
    expect(standardTemperature(fromMetre(11_000))).toBeCloseTo(216.65, 6);
    expect(standardTemperature(fromMetre(-5000))).toBeCloseTo(320.65, 6);
  });

  test("pressure and density altitude give back the height, below sea level too", () => {
    fc.assert(
      fc.property(fc.double({ min: -1000, max: 9000, noNaN: true }), (metre) => {
        expect(pressureAltitude(standardPressure(metre as Metre))).toBeCloseTo(metre, 6);
        expect(densityAltitude(standardDensity(metre as Metre))).toBeCloseTo(metre, 6);
        expect(geometricHeight(geopotentialHeight(metre as Metre))).toBeCloseTo(metre, 6);
      }),
      { seed: 11 },
    );
    expect(pressureAltitude(104_000 as Pascal)).toBeLessThan(-200);
    expect(() => pressureAltitude(0 as Pascal)).toThrow(/0/);
    expect(() => densityAltitude(0 as KgPerCubicMetre)).toThrow(/0/);
  });

  test("standard air at sea level is 0.04 % denser by CIPM than the standard's ideal gas", () => {
    const air = standardAir(fromMetre(0));
    expect(air.density).toBeCloseTo(1.225521, 5);
    expect(air.vapourFraction).toBe(0);
    expect(air.relativeSd).toBe(0);
    expect(toFoot(densityAltitude(standardAir(fromFoot(5000)).density))).toBeCloseTo(4986, -2);
  });
});
