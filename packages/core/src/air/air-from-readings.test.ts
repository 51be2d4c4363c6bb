import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fromCelsius, fromFahrenheit, toCelsius, toHectopascal } from "../units/convert.ts";
import { type AirInput, airFrom } from "./air-from.ts";
import { standardPressure } from "./standard-atmosphere.ts";
import { codes, doubt, metres, refused, seaLevel, taken, text } from "./test-airs.ts";

describe("[12.5] temperature by its size", () => {
  test("above 60 without a unit it must be Fahrenheit, and that is said", () => {
    const air = taken({ temperature: { value: 95 } });
    expect(toCelsius(air.temperature)).toBeCloseTo(35, 9);
    expect(text(air, "read-as-fahrenheit")).toContain("35 °C");
    expect(toCelsius(taken({ temperature: { value: 61 } }).temperature)).toBeCloseTo(16.1, 1);
  });
  test("a dew point without a unit follows the temperature", () => {
    const air = taken({ temperature: { value: 70 }, humidity: { kind: "dew-point", value: 50 } });
    const celsius = taken({
      temperature: { value: fromFahrenheit(70), unit: "K" },
      humidity: { kind: "dew-point", value: 10, unit: "C" },
    });
    expect(air.vapourFraction).toBeCloseTo(celsius.vapourFraction, 12);
    const kelvin = taken({ humidity: { kind: "dew-point", value: 283.15, unit: "K" } });
    expect(kelvin.vapourFraction).toBeCloseTo(celsius.vapourFraction, 12);
  });
  test("50 to 60 without a unit is asked", () => {
    const refusal = refused({ temperature: { value: 55 } });
    expect(refusal.reason).toBe("temperature-unit");
    expect(refusal.detail).toContain("12.8 °C");
    expect(refused({ temperature: { value: 60 } }).reason).toBe("temperature-unit");
    expect(toCelsius(taken({ temperature: { value: 50 } }).temperature)).toBeCloseTo(50, 9);
  });
  test("refused below -40 and above 60 °C, warned outside -30 to 50", () => {
    const c = (value: number) => ({ temperature: { value, unit: "C" } }) as const;
    for (const value of [-41, 61]) expect(refused(c(value)).reason).toBe("temperature-out-of-range");
    for (const value of [-40, -31, 51, 60]) expect(codes(taken(c(value)))).toContain("unusual-temperature");
    for (const value of [-30, 50]) expect(codes(taken(c(value)))).not.toContain("unusual-temperature");
    expect(refused({ temperature: { value: 141 } }).reason).toBe("temperature-out-of-range");
    expect(toCelsius(taken({ temperature: { value: 140 } }).temperature)).toBeCloseTo(60, 9);
    expect(refused({ temperature: { value: Number.NaN } }).reason).toBe("temperature-not-a-number");
  });
  test("the refusal names the unit that would fit", () => {
    expect(refused({ temperature: { value: 75, unit: "C" } }).detail).toContain("75 °F is 23.9 °C");
    expect(refused({ temperature: { value: 293 } }).detail).toMatch(/293 K is 19\.[89] °C/);
    expect(refused({ temperature: { value: 20, unit: "K" } }).detail).toContain("20 °C is 68 °F");
    expect(refused({ temperature: { value: -60 } }).detail).toMatch(/check the reading\.$/);
  });
});

describe("[12.6] heights", () => {
  test("the Dead Sea shore and above 4000 m are taken", () => {
    expect(taken({ pressure: { kind: "none" }, height: metres(-430) }).pressure).toBeGreaterThan(106_000);
    const high = taken({ pressure: { kind: "none" }, height: metres(5200) });
    expect(high.pressure).toBe(standardPressure(5200 as never));
  });
  test("feet are feet, and a large number without a unit is asked", () => {
    const feet = taken({ pressure: { kind: "none" }, height: { value: 5000, unit: "ft" } });
    expect(feet.pressure).toBeCloseTo(84_307.3, 0);
    const refusal = refused({ pressure: { kind: "none" }, height: { value: 5280 } });
    expect(refusal.reason).toBe("height-unit");
    expect(refusal.detail).toContain("1609 m");
    expect(taken({ pressure: { kind: "none" }, height: { value: 3000 } }).pressure).toBeCloseTo(70_108.5, 0);
  });
  test("outside -500 to 6000 m is refused", () => {
    for (const value of [-501, 6001]) {
      expect(refused({ height: metres(value) }).reason).toBe("height-out-of-range");
    }
    expect(refused({ height: { value: 30_000 } }).reason).toBe("height-out-of-range");
    expect(refused({ height: { value: Infinity } }).reason).toBe("height-not-a-number");
    expect(taken({ pressure: { kind: "none" }, height: metres(6000) }).pressure).toBeGreaterThan(47_000);
    expect(taken({ pressure: { kind: "none" }, height: metres(-500) }).pressure).toBeGreaterThan(107_000);
  });
  test("height alone: usual pressure, the weather's doubt, and it is said", () => {
    const air = taken({ pressure: { kind: "none" }, height: metres(1500) });
    expect(toHectopascal(air.pressure)).toBeCloseTo(845.56, 2);
    expect(codes(air)).toEqual(["pressure-from-height"]);
    expect(doubt(air, "weather")).toBeCloseTo(0.0099, 3);
    expect(air.relativeSd).toBeGreaterThan(2 * taken({}).relativeSd);
  });
  test("far from standard temperature the kind of sea-level pressure matters, by half its effect", () => {
    const at = (celsius: number) =>
      taken({
        temperature: { value: celsius, unit: "C" },
        pressure: seaLevel(1013, "hPa"),
        height: metres(1500),
      });
    const hot = at(30);
    // 1013 hPa at 1500 m and 30 °C: the two reductions part by 1.5 % (845.6 hPa against 998.6 at sea level).
    expect(doubt(hot, "reduction to sea level")).toBeCloseTo(0.0076, 3);
    expect(text(hot, "reduction-uncertain")).toContain("1.5 %");
    expect(codes(at(10))).not.toContain("reduction-uncertain");
    expect(doubt(at(5.25), "reduction to sea level")).toBeLessThan(1e-6);
  });
});

describe("any input", () => {
  const number = fc.oneof(fc.double(), fc.double({ min: -100, max: 1200 }), fc.integer({ min: 0, max: 110 }));
  const maybe = <T>(arb: fc.Arbitrary<T>, key: string) =>
    fc.option(arb, { nil: undefined }).map((value) => (value === undefined ? {} : { [key]: value }));
  const typed = (units: readonly string[]) =>
    fc
      .tuple(number, maybe(fc.constantFrom(...units), "unit"), maybe(fc.double(), "sd"))
      .map(([value, unit, sd]) => ({ value, ...unit, ...sd }));
  const input = fc.record({
    temperature: typed(["C", "F", "K"]),
    pressure: fc.oneof(
      fc.constant({ kind: "none" }),
      fc
        .tuple(fc.constantFrom("station", "sea-level"), typed(["hPa", "mbar", "kPa", "Pa", "mmHg", "inHg"]))
        .map(([kind, rest]) => ({ kind, ...rest })),
    ),
    humidity: fc.oneof(
      fc.constant({ kind: "unknown" }),
      number.map((percent) => ({ kind: "relative", percent })),
      fc
        .tuple(fc.constantFrom("dew-point", "wet-bulb"), typed(["C", "F", "K"]))
        .map(([kind, rest]) => ({ kind, ...rest })),
    ),
    height: typed(["m", "ft"]),
  }) as fc.Arbitrary<AirInput>;

  test("gives finite air with a band, or a refusal that says what to do; never throws", () => {
    let accepted = 0;
    fc.assert(
      fc.property(input, (typedInput) => {
        const air = airFrom(typedInput);
        if (!air.ok) {
          expect(air.detail.length).toBeGreaterThan(20);
          return;
        }
        accepted++;
        const { density, dryDensity, relativeSd, vapourFraction } = air.value;
        expect(dryDensity).toBeLessThanOrEqual(density);
        expect(density).toBeGreaterThan(0.4);
        expect(density).toBeLessThan(1.8);
        expect(vapourFraction).toBeGreaterThanOrEqual(0);
        expect(Number.isFinite(relativeSd) && relativeSd > 0).toBe(true);
      }),
      { seed: 20, numRuns: 3000 },
    );
    expect(accepted).toBeGreaterThan(20);
  });

  test("warmer, higher or damper air carries less oxygen", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -20, max: 40, noNaN: true }),
        fc.double({ min: 0, max: 2900, noNaN: true }),
        fc.double({ min: 5, max: 95, noNaN: true }),
        (celsius, metre, percent) => {
          const dry = (c: number, m: number, h: number) =>
            taken({
              temperature: { value: fromCelsius(c), unit: "K" },
              pressure: { kind: "none" },
              humidity: { kind: "relative", percent: h },
              height: metres(m),
            }).dryDensity;
          const here = dry(celsius, metre, percent);
          expect(dry(celsius + 1, metre, percent)).toBeLessThan(here);
          expect(dry(celsius, metre + 10, percent)).toBeLessThan(here);
          expect(dry(celsius, metre, percent + 3)).toBeLessThan(here);
        },
      ),
      { seed: 21, numRuns: 200 },
    );
  });
});
