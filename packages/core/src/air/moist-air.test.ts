import { describe, expect, test } from "vitest";
import { fromCelsius, fromHectopascal } from "../units/convert.ts";
import type { Kelvin, Pascal } from "../units/quantity.ts";
import { vapourFraction } from "./humidity.ts";
import {
  airAt,
  compressibility,
  dryAirDensity,
  insideFormulaRange,
  moistAirDensity,
  molarMassDryAir,
} from "./moist-air.ts";
import { enhancementFactor, saturationPressure } from "./saturation.ts";

const airOf = (celsius: number, hectopascal: number, fraction: number) => {
  const t = fromCelsius(celsius);
  const p = fromHectopascal(hectopascal);
  return airAt(t, p, vapourFraction({ kind: "relative", fraction, sd: 0 }, t, p));
};

describe("moist air by CIPM-2007", () => {
  // Worked out apart from this code, from the formula and constants as printed in Metrologia 45 (2008) 149.
  test.each([
    [15, 1013.25, 0, 1.225521],
    [15, 1013.25, 0.5, 1.221631],
    [20, 1013.25, 0.5, 1.199314],
    [20, 1000, 0.5, 1.18356],
    [30, 1013.25, 0.8, 1.15001],
    [45, 1013.25, 0.5, 1.08987],
    [45, 1013.25, 1, 1.0702],
    [0, 1013.25, 0.5, 1.29158],
    [-10, 1013.25, 0.5, 1.34166],
    [20, 616.4, 0.5, 0.72743],
    [-10, 616.4, 0.5, 0.81567],
  ])("%s °C, %s hPa, %s of saturation: %s kg/m³", (celsius, hectopascal, fraction, rho) => {
    expect(airOf(celsius, hectopascal, fraction).density).toBeCloseTo(rho, 5);
  });

  test("its parts at 20 °C, 1013.25 hPa, 50 %", () => {
    const t = fromCelsius(20);
    const p = fromHectopascal(1013.25);
    expect(saturationPressure(t)).toBeCloseTo(2339.163, 2);
    expect(enhancementFactor(t, p)).toBeCloseTo(1.00402561, 7);
    expect(airOf(20, 1013.25, 0.5).vapourFraction).toBeCloseTo(0.01158934, 7);
    expect(compressibility(t, p, 0.01158934)).toBeCloseTo(0.99961477, 7);
  });

  // Dry-air part against dry air of the same temperature and 1013.25 hPa, worked out apart from this code.
  test.each([
    [20, 0.5, 0.98844, 0.99565],
    [20, 1, 0.97689, 0.99131],
    [30, 0.8, 0.96643, 0.98737],
    [40, 1, 0.92705, 0.97261],
  ])("oxygen falls faster than density at %s °C, %s", (celsius, fraction, dry, whole) => {
    const moist = airOf(celsius, 1013.25, fraction);
    const parched = airOf(celsius, 1013.25, 0);
    expect(moist.dryDensity / parched.dryDensity).toBeCloseTo(dry, 5);
    expect(moist.density / parched.density).toBeCloseTo(whole, 5);
    expect(parched.dryDensity).toBe(parched.density);
  });

  test("carbon dioxide makes air heavier, by 12.011 g for each mole of it", () => {
    expect(molarMassDryAir()).toBeCloseTo(0.02896546, 10);
    expect(molarMassDryAir(0.0014)).toBeCloseTo(0.02896546 + 12.011e-6, 10);
    const t = fromCelsius(20);
    const p = fromHectopascal(1000);
    expect(moistAirDensity(t, p, 0, 0.0014) / moistAirDensity(t, p, 0)).toBeCloseTo(1 + 4.1466e-4, 7);
  });

  test("the published range is 15 to 27 °C, 600 to 1100 hPa; outside it air is still reckoned and says so", () => {
    const inside = (c: number, hpa: number) => insideFormulaRange(fromCelsius(c), fromHectopascal(hpa));
    for (const [c, hpa] of [
      [15, 600],
      [27, 1100],
      [20, 1000],
    ] as const)
      expect(inside(c, hpa)).toBe(true);
    for (const [c, hpa] of [
      [14.9, 1000],
      [27.1, 1000],
      [20, 599],
      [20, 1101],
    ] as const) {
      expect(inside(c, hpa)).toBe(false);
      const air = airOf(c, hpa, 0.5);
      expect(air.density).toBeGreaterThan(0.6);
      expect(air.warnings.map((w) => w.code)).toEqual(["outside-formula-range"]);
    }
    expect(airOf(20, 1000, 0.5).warnings).toEqual([]);
    expect(airOf(-5, 900, 0.5).warnings).toEqual([
      { code: "outside-formula-range", given: { celsius: -5, hPa: 900 } },
    ]);
  });

  test("figures no air has are a bug of the caller", () => {
    const t = fromCelsius(20);
    const p = fromHectopascal(1000);
    expect(() => dryAirDensity(199 as Kelvin, p, 0)).toThrow(/199/);
    expect(() => dryAirDensity(351 as Kelvin, p, 0)).toThrow(RangeError);
    expect(() => dryAirDensity(Number.NaN as Kelvin, p, 0)).toThrow(RangeError);
    expect(() => dryAirDensity(t, 9999 as Pascal, 0)).toThrow(/9999/);
    expect(() => dryAirDensity(t, 120_001 as Pascal, 0)).toThrow(RangeError);
    expect(() => dryAirDensity(t, p, -0.001)).toThrow(/-0.001/);
    expect(() => dryAirDensity(t, p, 1)).toThrow(RangeError);
    expect(() => saturationPressure(199 as Kelvin)).toThrow(/199/);
    expect(() => saturationPressure(351 as Kelvin)).toThrow(RangeError);
    expect(dryAirDensity(200 as Kelvin, 10_000 as Pascal, 0)).toBeGreaterThan(0);
    expect(dryAirDensity(350 as Kelvin, 120_000 as Pascal, 0)).toBeGreaterThan(0);
  });

  test("given doubt and warnings are carried", () => {
    const warning = { code: "report-age-unknown" } as const;
    const air = airAt(fromCelsius(20), fromHectopascal(1000), 0.01, 0.02, [warning]);
    expect(air.relativeSd).toBe(0.02);
    expect(air.warnings).toEqual([warning]);
    expect(airAt(fromCelsius(20), fromHectopascal(1000), 0.01).relativeSd).toBe(0);
  });
});
