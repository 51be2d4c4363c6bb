import { describe, expect, test } from "vitest";
import { toCelsius } from "../units/convert.ts";
import type { AirInput } from "./air-from.ts";
import { at950, codes, doubt, metres, refused, seaLevel, station, taken, text } from "./test-airs.ts";

describe("uncertainty budget at 20 °C, 950 hPa, 50 %", () => {
  // +1 hPa 0.106 %; +1 K at the same vapour -0.341 %; +10 % humidity -0.25 % of oxygen; +10 m -0.12 %.
  test("each reading by its own doubt", () => {
    const dew = { kind: "dew-point", value: 9.3, unit: "C", sd: 0.5 } as const;
    const air = taken({
      temperature: { value: 20, unit: "C", sd: 1 },
      pressure: { ...at950, sd: 1 },
      humidity: dew,
    });
    expect(doubt(air, "temperature")).toBeCloseTo(0.00342, 4);
    expect(doubt(air, "barometer")).toBeCloseTo(0.00106, 4);
    expect(doubt(air, "humidity")).toBeCloseTo(0.0004, 4);
    expect(doubt(air, "density formula")).toBe(22e-6);
    const damp = taken({ humidity: { kind: "relative", percent: 50, sd: 10 } });
    expect(doubt(damp, "humidity")).toBeCloseTo(0.0025, 4);
    expect(codes(air)).toEqual([]);
  });

  test("the whole is the parts in quadrature, and the parts are all there", () => {
    const air = taken({ height: metres(400), pressure: seaLevel(1010, "hPa") });
    expect(air.doubts.map((d) => d.cause)).toEqual([
      "temperature",
      "sea-level pressure",
      "height",
      "reduction to sea level",
      "humidity",
      "density formula",
    ]);
    const sum = air.doubts.reduce((total, d) => total + d.relativeSd ** 2, 0);
    expect(air.relativeSd).toBeCloseTo(Math.sqrt(sum), 12);
    expect(doubt(air, "height")).toBeCloseTo(0.00117, 4);
  });

  test("usual doubts where none is given: 1 K, 1 hPa, 5 %, and none at all when 0 is given", () => {
    const air = taken({});
    expect(doubt(air, "barometer")).toBeCloseTo(0.00106, 4);
    expect(doubt(air, "temperature")).toBeCloseTo(0.0042, 3);
    expect(doubt(air, "humidity")).toBeCloseTo(0.00125, 4);
    const sure = taken({
      temperature: { value: 20, sd: 0 },
      pressure: { ...at950, sd: 0 },
      humidity: { kind: "relative", percent: 50, sd: 0 },
    });
    expect(sure.relativeSd).toBe(22e-6);
  });

  test("a doubt in °F, inHg or feet is turned with its reading", () => {
    const air = taken({
      temperature: { value: 68, unit: "F", sd: 1.8 },
      pressure: { ...seaLevel(29.92, "inHg"), sd: 0.03 },
      height: { value: 1000, unit: "ft", sd: 100 },
      humidity: { kind: "dew-point", value: 50, sd: 1.8 },
    });
    expect(doubt(air, "temperature")).toBeCloseTo(0.00341, 4);
    expect(doubt(air, "sea-level pressure")).toBeCloseTo(0.03 / 29.92, 4);
    expect(doubt(air, "height")).toBeCloseTo(0.0117 * 0.3048, 4);
    const one = taken({ humidity: { kind: "dew-point", value: 10, unit: "C" } });
    expect(doubt(air, "humidity")! / doubt(one, "humidity")!).toBeCloseTo(1, 1);
    expect(toCelsius(air.temperature)).toBeCloseTo(20, 9);
  });

  test("outside the formula's range its own doubt grows to 0.043 %", () => {
    expect(doubt(taken({ temperature: { value: 5 } }), "density formula")).toBeCloseTo(0.000433, 6);
  });

  test("dry air has a doubt too: no step below zero vapour", () => {
    expect(doubt(taken({ humidity: { kind: "relative", percent: 0 } }), "humidity")).toBeCloseTo(0.00125, 4);
  });

  test("a doubt that is no doubt is refused", () => {
    const bad = { value: 20, sd: -1 };
    expect(refused({ temperature: bad }).reason).toBe("sd-not-usable");
    expect(refused({ temperature: { value: 20, sd: 41 } }).reason).toBe("sd-not-usable");
    expect(refused({ pressure: { ...at950, sd: Number.NaN } }).reason).toBe("sd-not-usable");
    expect(refused({ pressure: { ...at950, sd: 101 } }).detail).toContain("0 to 100");
    expect(refused({ height: { value: 100, sd: 1e9 } }).reason).toBe("sd-not-usable");
    expect(refused({ humidity: { kind: "relative", percent: 50, sd: -0.1 } }).reason).toBe("sd-not-usable");
  });
});

describe("[12.1] dew point above the temperature", () => {
  const dew = (value: number) => ({ kind: "dew-point", value, unit: "C" }) as const;
  test("up to 1 K is rounding: taken as saturated and said", () => {
    const air = taken({ humidity: dew(21) });
    expect(codes(air)).toEqual(["humidity-clamped"]);
    expect(text(air, "humidity-clamped")).toContain("21 °C");
    expect(air.density).toBeCloseTo(taken({ humidity: dew(20) }).density, 12);
    expect(codes(taken({ humidity: dew(20) }))).toEqual([]);
  });
  test("more is refused", () => {
    const refusal = refused({ humidity: dew(21.1) });
    expect(refusal.reason).toBe("dew-point-above-temperature");
    expect(refusal.detail).toContain("21.1 °C");
    expect(refusal.detail).toContain("20 °C");
  });
  test("a dew point no weather has is refused", () => {
    expect(refused({ humidity: dew(-71) }).reason).toBe("humidity-out-of-range");
    expect(codes(taken({ humidity: dew(-69) }))).toEqual([]);
  });
});

describe("[12.2] humidity not known", () => {
  const band = (celsius: number) =>
    doubt(taken({ temperature: { value: celsius, unit: "C" }, humidity: { kind: "unknown" } }), "humidity")!;
  test("50 % is assumed, said, and the band grows with temperature as the vapour does", () => {
    const air = taken({ humidity: { kind: "unknown" } });
    expect(air.vapourFraction).toBeCloseTo(taken({}).vapourFraction, 12);
    expect(codes(air)).toEqual(["humidity-assumed"]);
    // At 30 °C near sea level 50 % more or less is 2.1 % of the dry-air density, here as an even spread.
    const root3 = Math.sqrt(3);
    const at1013 = (celsius: number) =>
      doubt(
        taken({
          temperature: { value: celsius, unit: "C" },
          pressure: station(1013.25, "hPa"),
          humidity: { kind: "unknown" },
          height: metres(0),
        }),
        "humidity",
      )!;
    expect(at1013(30)).toBeCloseTo(0.0214 / root3, 3);
    expect(band(-10) < band(0) && band(0) < band(20) && band(20) < band(40)).toBe(true);
    expect(band(40) / band(0)).toBeGreaterThan(10);
  });
});

describe("[12.7] humidity in odd forms", () => {
  const relative = (percent: number, sd?: number): Partial<AirInput> => ({
    humidity: sd === undefined ? { kind: "relative", percent } : { kind: "relative", percent, sd },
  });
  test("a fraction is read as one and said", () => {
    const air = taken(relative(0.5));
    expect(text(air, "humidity-fraction")).toContain("50 %");
    expect(air.vapourFraction).toBeCloseTo(taken({}).vapourFraction, 12);
    expect(doubt(taken(relative(0.5, 0.1)), "humidity")).toBeCloseTo(
      doubt(taken(relative(50, 10)), "humidity")!,
      9,
    );
    expect(doubt(taken(relative(0.5, 10)), "humidity")).toBeCloseTo(
      doubt(taken(relative(50, 10)), "humidity")!,
      9,
    );
  });
  test("1 is asked; out of range is refused; a little above 100 is saturated; nearly 0 is doubted", () => {
    expect(refused(relative(1)).reason).toBe("humidity-unit");
    for (const percent of [-1, 105.1, 500])
      expect(refused(relative(percent)).reason).toBe("humidity-out-of-range");
    expect(refused(relative(Number.NaN)).reason).toBe("humidity-not-a-number");
    expect(codes(taken(relative(105)))).toEqual(["humidity-clamped"]);
    expect(taken(relative(105)).vapourFraction).toBe(taken(relative(100)).vapourFraction);
    expect(codes(taken(relative(100)))).toEqual([]);
    expect(codes(taken(relative(0)))).toEqual(["unusual-humidity"]);
    expect(codes(taken(relative(1.9)))).toEqual(["unusual-humidity"]);
    expect(codes(taken(relative(2)))).toEqual([]);
  });
  const wet = (value: number): Partial<AirInput> => ({ humidity: { kind: "wet-bulb", value, unit: "C" } });
  test("a wet bulb is not a dew point", () => {
    const air = taken(wet(14));
    expect(air.vapourFraction).toBeLessThan(
      taken({ humidity: { kind: "dew-point", value: 14, unit: "C" } }).vapourFraction,
    );
    expect(codes(air)).toEqual([]);
    expect(doubt(air, "humidity")).toBeGreaterThan(0.0003);
  });
  test("a wet bulb above the temperature is clamped up to 1 K and refused beyond", () => {
    expect(codes(taken(wet(20.9)))).toEqual(["humidity-clamped"]);
    expect(text(taken(wet(20.9)), "humidity-clamped")).toContain("saturated");
    expect(refused(wet(21.1)).reason).toBe("wet-bulb-above-temperature");
  });
  test("a wet bulb lower than dry air gives is likely a dew point", () => {
    const refusal = refused(wet(-2));
    expect(refusal.reason).toBe("wet-bulb-too-low");
    expect(refusal.detail).toContain("dew point");
    // Dry air of 20 °C at 950 hPa has a wet bulb near 5.4 °C.
    expect(text(taken(wet(5)), "humidity-clamped")).toContain("dry");
    expect(taken(wet(5)).vapourFraction).toBeCloseTo(0, 6);
  });
  test("a frozen wick is named, and no number is refused", () => {
    const cold = { temperature: { value: 1, unit: "C" }, ...wet(-1) } as const;
    expect(codes(taken(cold))).toContain("wet-bulb-freezing");
    expect(refused(wet(Number.NaN)).reason).toBe("humidity-not-a-number");
  });
});
