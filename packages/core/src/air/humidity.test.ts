import { describe, expect, test } from "vitest";
import { fromCelsius, fromHectopascal, toCelsius } from "../units/convert.ts";
import type { Pascal } from "../units/quantity.ts";
import {
  driestWetBulb,
  relativeHumidity,
  UNKNOWN_HUMIDITY,
  vapourFraction,
  wetBulbFraction,
} from "./humidity.ts";
import { saturatedFraction } from "./saturation.ts";

const p = fromHectopascal(1013.25);
const t = fromCelsius(30);

describe("humidity in its forms", () => {
  test("saturated air is the same by each", () => {
    const saturated = saturatedFraction(t, p);
    expect(vapourFraction({ kind: "relative", fraction: 1, sd: 0 }, t, p)).toBe(saturated);
    expect(vapourFraction({ kind: "dew-point", temperature: t, sd: 0 }, t, p)).toBe(saturated);
    expect(vapourFraction({ kind: "wet-bulb", temperature: t, sd: 0 }, t, p)).toBeCloseTo(saturated, 12);
  });

  test("relative humidity comes back from the vapour fraction", () => {
    const x = vapourFraction({ kind: "relative", fraction: 0.37, sd: 0 }, t, p);
    expect(relativeHumidity({ temperature: t, pressure: p, vapourFraction: x })).toBeCloseTo(0.37, 12);
  });

  test("wet bulb 20 °C at 40 °C is 14 %", () => {
    // ASHRAE Fundamentals (2017), ch. 1, example 1: relative humidity 0.14.
    const forty = fromCelsius(40);
    const x = wetBulbFraction(forty, fromCelsius(20), 101_325 as Pascal);
    expect(relativeHumidity({ temperature: forty, pressure: p, vapourFraction: x })).toBeCloseTo(0.14, 2);
  });

  test("a wet bulb cannot fall below the one of dry air", () => {
    const driest = driestWetBulb(fromCelsius(40), p);
    // Psychrometric chart at sea level: 40 °C and no vapour meets the 14.4 to 14.6 °C wet-bulb line [memory].
    expect(toCelsius(driest)).toBeCloseTo(14.5, 0);
    expect(wetBulbFraction(fromCelsius(40), driest, p)).toBeCloseTo(0, 9);
    const below = { kind: "wet-bulb", temperature: fromCelsius(10), sd: 0 } as const;
    expect(wetBulbFraction(fromCelsius(40), below.temperature, p)).toBeLessThan(0);
    expect(vapourFraction(below, fromCelsius(40), p)).toBe(0);
  });

  test("unknown is 50 % spread over everything", () => {
    expect(UNKNOWN_HUMIDITY).toMatchObject({ kind: "relative", fraction: 0.5 });
    expect(UNKNOWN_HUMIDITY.sd).toBeCloseTo(0.2887, 4);
  });
});
