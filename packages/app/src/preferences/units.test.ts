import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  heightText,
  pressureText,
  readHeight,
  readPressure,
  readTemperature,
  temperatureText,
  temperatureUnit,
} from "./units.ts";

const METRIC = { temperature: "C", height: "m", pressure: "hPa", language: "en" } as const;
const OTHER = { temperature: "F", height: "ft", pressure: "inHg", language: "en" } as const;

describe("what is shown", () => {
  test("is in the unit chosen", () => {
    expect(heightText(640, METRIC)).toBe("640 m");
    // 1 ft is 0.3048 m by definition.
    expect(heightText(1524, OTHER)).toBe("5000 ft");
    expect(temperatureText(14, METRIC)).toBe("14 °C");
    expect(temperatureText(14, OTHER)).toBe("57.2 °F");
    expect(pressureText(938.25, METRIC)).toBe("938.3 hPa");
    // The standard atmosphere, 1013.25 hPa, is 29.92 inHg: common practice, no source.
    expect(pressureText(1013.25, OTHER)).toBe("29.92 inHg");
    expect(temperatureUnit(OTHER)).toBe("°F");
  });

  test("has the decimal mark of the language", () => {
    for (const language of ["de", "es"] as const) {
      expect(temperatureText(14.5, { ...METRIC, language })).toBe("14,5 °C");
      expect(temperatureText(-5.25, { ...METRIC, language })).toBe("−5,3 °C");
      expect(pressureText(1013.25, { ...OTHER, language })).toBe("29,92 inHg");
      expect(heightText(1524, { ...OTHER, language })).toBe("5000 ft");
    }
  });

  test("has a true minus and none before nothing", () => {
    expect(temperatureText(-5.25, METRIC)).toBe("−5.3 °C");
    expect(temperatureText(-0.01, METRIC)).toBe("0 °C");
    expect(heightText(-430, METRIC)).toBe("−430 m");
  });
});

describe("what is typed", () => {
  test("is in the unit chosen, unless another stands behind it", () => {
    expect(readHeight("640", METRIC)).toBe(640);
    expect(readHeight("5000", OTHER)).toBeCloseTo(1524, 9);
    expect(readHeight("5000 ft", METRIC)).toBeCloseTo(1524, 9);
    expect(readHeight("5000'", METRIC)).toBeCloseTo(1524, 9);
    expect(readHeight("640 Meters", OTHER)).toBe(640);
    expect(readTemperature("75F", METRIC)).toBeCloseTo(23.889, 3);
    expect(readTemperature("24 °C", OTHER)).toBe(24);
    expect(readTemperature("24 ° c", OTHER)).toBe(24);
    expect(readPressure("29.92 inHg", METRIC)).toBeCloseTo(1013.21, 2);
    expect(readPressure("29,92", OTHER)).toBeCloseTo(1013.21, 2);
    expect(readPressure("938 mbar", OTHER)).toBe(938);
    expect(readPressure("101,325 kPa", METRIC)).toBeCloseTo(1013.25, 6);
    expect(readPressure("760 mmHg", METRIC)).toBeCloseTo(1013.25, 3);
  });

  test("takes comma and point for the decimals", () => {
    expect(readTemperature("14,5", METRIC)).toBe(14.5);
    expect(readTemperature("14.", METRIC)).toBe(14);
    expect(readTemperature(",5", METRIC)).toBe(0.5);
    expect(readTemperature("-5", METRIC)).toBe(-5);
    expect(readTemperature("−5 C", OTHER)).toBe(-5);
    expect(readTemperature("+5", METRIC)).toBe(5);
  });

  test("takes three digits behind a mark as thousands in a height only", () => {
    expect(readHeight("5,000 ft", METRIC)).toBeCloseTo(1524, 9);
    expect(readHeight("1.250 m", METRIC)).toBe(1250);
    expect(readHeight("1 250", METRIC)).toBe(1250);
    expect(readHeight("-1,250", METRIC)).toBe(-1250);
    expect(readHeight("12,5", METRIC)).toBe(12.5);
    expect(readPressure("938,125", METRIC)).toBe(938.125);
  });

  test.each(["", "  ", "high", "14 15", "1.2.3", "20 K", "5 inHg", "--5", "5 constructor"])(
    "is nothing when %j is typed for a temperature",
    (typed) => {
      expect(readTemperature(typed, METRIC)).toBeNull();
    },
  );

  test("is nothing where the unit is of something else", () => {
    expect(readHeight("20 C", METRIC)).toBeNull();
    expect(readPressure("20 m", METRIC)).toBeNull();
  });

  test("comes back as it was shown", () => {
    fc.assert(
      fc.property(fc.integer({ min: -400, max: 6000 }), fc.boolean(), (metres, feet) => {
        const units = feet ? OTHER : METRIC;
        expect(Math.abs(readHeight(heightText(metres, units), METRIC)! - metres)).toBeLessThan(0.16);
      }),
      { seed: 20261126 },
    );
  });
});
