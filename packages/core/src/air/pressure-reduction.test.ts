import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fromCelsius, fromHectopascal, fromMetre, toHectopascal } from "../units/convert.ts";
import type { Metre, Pascal } from "../units/quantity.ts";
import {
  altimeterSetting,
  heightBetween,
  pressureAfterRise,
  reductionError,
  stationPressure,
} from "./pressure-reduction.ts";
import { standardTemperature } from "./standard-atmosphere.ts";

describe("sea-level pressure and station pressure", () => {
  // ICAO's reduction worked out apart from this code.
  test.each([
    [1013.25, 500, 954.61],
    [1013.25, 1000, 898.75],
    [1013.25, 2000, 794.95],
    [1013.25, 4000, 616.4],
    [980, 300, 945.43],
    [1040, 300, 1003.72],
    [1030, 1500, 860.03],
    [995, 2240, 756.92],
  ])("%s hPa at %s m is %s hPa on the spot", (setting, metre, station) => {
    expect(toHectopascal(stationPressure(fromHectopascal(setting), fromMetre(metre)))).toBeCloseTo(
      station,
      2,
    );
  });

  test("forth, back and between", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 94_000, max: 106_000, noNaN: true }),
        fc.double({ min: -430, max: 5000, noNaN: true }),
        (pascal, metre) => {
          const station = stationPressure(pascal as Pascal, metre as Metre);
          expect(altimeterSetting(station, metre as Metre)).toBeCloseTo(pascal, 4);
          expect(heightBetween(pascal as Pascal, station)).toBeCloseTo(metre, 5);
          if (Math.abs(metre) > 1e-3) expect(pascal > station).toBe(metre > 0);
        },
      ),
      { seed: 12 },
    );
  });

  test("limits are a bug of the caller", () => {
    const p = fromHectopascal(1013);
    for (const metre of [-1001, 9001, Number.NaN]) {
      expect(() => stationPressure(p, metre as Metre)).toThrow(RangeError);
      expect(() => altimeterSetting(p, metre as Metre)).toThrow(RangeError);
    }
    expect(() => stationPressure(79_999 as Pascal, 0 as Metre)).toThrow(/79999/);
    expect(() => stationPressure(115_001 as Pascal, 0 as Metre)).toThrow(RangeError);
    expect(() => altimeterSetting(0 as Pascal, 0 as Metre)).toThrow(RangeError);
    expect(stationPressure(80_000 as Pascal, 9000 as Metre)).toBeGreaterThan(0);
    expect(stationPressure(115_000 as Pascal, -1000 as Metre)).toBeGreaterThan(115_000);
  });

  test("hot air loses less pressure with height: 1000 m, 20 K off, 0.8 %", () => {
    const standard = standardTemperature(fromMetre(1000));
    const hot = fromCelsius(8.5 + 20);
    expect(reductionError(1000, hot, standard)).toBeCloseTo(0.0081, 3);
    expect(reductionError(1000, standard, standard)).toBe(0);
    const p = fromHectopascal(1000);
    const ratio = pressureAfterRise(p, 1000, hot) / pressureAfterRise(p, 1000, standard);
    expect(ratio - 1).toBeCloseTo(reductionError(1000, hot, standard), 4);
    expect(pressureAfterRise(pressureAfterRise(p, 700, hot), -700, hot)).toBeCloseTo(p, 6);
  });
});
