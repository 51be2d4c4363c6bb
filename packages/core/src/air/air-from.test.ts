import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fromCelsius, fromFahrenheit, toCelsius, toHectopascal } from "../units/convert.ts";
import type { AirEstimate } from "./air-estimate.ts";
import { type AirInput, airFrom } from "./air-from.ts";
import { standardPressure } from "./standard-atmosphere.ts";
import type { TypedHumidity } from "./typed-humidity.ts";
import type { TypedPressure } from "./typed-pressure.ts";

const half: TypedHumidity = { kind: "relative", percent: 50 };
const at950: TypedPressure = { kind: "station", value: 950, unit: "hPa" };
const base: AirInput = { temperature: { value: 20, unit: "C" }, pressure: at950, humidity: half };

const taken = (input: Partial<AirInput>): AirEstimate => {
  const air = airFrom({ ...base, ...input });
  if (!air.ok) throw new Error(`${air.reason}: ${air.detail}`);
  return air.value;
};
const refused = (input: Partial<AirInput>) => {
  const air = airFrom({ ...base, ...input });
  if (air.ok) throw new Error(`taken: ${JSON.stringify(air.value)}`);
  return air;
};
const codes = (air: AirEstimate) => air.warnings.map((w) => w.code);
const text = (air: AirEstimate, code: string) => air.warnings.find((w) => w.code === code)?.text ?? "";
const doubt = (air: AirEstimate, cause: string) => air.doubts.find((d) => d.cause === cause)?.relativeSd;
const station = (value: number, unit?: TypedPressure["unit"]): TypedPressure =>
  unit === undefined ? { kind: "station", value } : { kind: "station", value, unit };
const seaLevel = (value: number, unit?: TypedPressure["unit"]): TypedPressure =>
  unit === undefined ? { kind: "sea-level", value } : { kind: "sea-level", value, unit };
const metres = (value: number) => ({ value, unit: "m" }) as const;

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

describe("[12.3] sea-level pressure typed as station pressure", () => {
  test.each([
    [1013, 1500, "20 %"],
    [1013, 500, "6.1 %"],
    [1013, 1000, "13 %"],
    [1013, 2000, "27 %"],
  ])("%s hPa at %s m: read as sea-level pressure, with the cost %s", (hectopascal, metre, cost) => {
    const air = taken({ pressure: station(hectopascal, "hPa"), height: metres(metre) });
    const right = taken({ pressure: seaLevel(hectopascal, "hPa"), height: metres(metre) });
    expect(codes(air)).toContain("sea-level-pressure-as-station");
    expect(text(air, "sea-level-pressure-as-station")).toContain(
      `${hectopascal} hPa at ${metre} m is surely a sea-level pressure: the air would come out ${cost} too dense`,
    );
    expect(air.pressure).toBe(right.pressure);
    expect(air.relativeSd).toBe(right.relativeSd);
  });
  test("near the ground it may be either: kept, with the cost", () => {
    const air = taken({ pressure: station(1013, "hPa"), height: metres(300) });
    expect(codes(air)).toEqual(["station-pressure-high"]);
    expect(text(air, "station-pressure-high")).toContain("3.6 %");
    expect(toHectopascal(air.pressure)).toBeCloseTo(1013, 9);
    expect(codes(taken({ pressure: station(1013, "hPa"), height: metres(100) }))).toEqual([]);
  });
  test("below sea level a high station pressure is in order", () => {
    const air = taken({ pressure: station(1063, "hPa"), height: metres(-400) });
    expect(codes(air)).toEqual([]);
    expect(
      text(taken({ pressure: station(1094, "hPa"), height: metres(-400) }), "station-pressure-high"),
    ).toMatch(/sea-level pressure\.$/);
  });
  test("without a height it cannot be seen, and that is said where it matters", () => {
    const air = taken({ pressure: station(1013, "hPa") });
    expect(codes(air)).toEqual(["station-pressure-unchecked"]);
    expect(text(air, "station-pressure-unchecked")).toContain("13 %");
    expect(codes(taken({ pressure: station(979, "hPa") }))).toEqual([]);
    expect(codes(taken({ pressure: station(980, "hPa") }))).toEqual(["station-pressure-unchecked"]);
  });
  test("a station pressure given as sea-level pressure is refused", () => {
    const refusal = refused({ pressure: seaLevel(845, "hPa"), height: metres(1500) });
    expect(refusal.reason).toBe("pressure-out-of-range");
    expect(refusal.detail).toContain("give it as station pressure");
  });
  test("a sea-level pressure needs the height", () => {
    expect(refused({ pressure: seaLevel(1013, "hPa") }).reason).toBe("height-missing");
    expect(refused({ pressure: { kind: "none" } }).reason).toBe("height-missing");
  });
  test("station pressure that fits no weather at that height is refused with the likely cause", () => {
    const feet = refused({ pressure: station(845, "hPa"), height: metres(5000) });
    expect(feet.reason).toBe("pressure-height-mismatch");
    expect(feet.detail).toContain("1510 m");
    expect(feet.detail).toContain("in feet (1524 m)");
    const mercury = refused({ pressure: station(745, "hPa"), height: metres(100) });
    expect(mercury.detail).toContain("in mmHg (993 hPa)");
    expect(refused({ pressure: station(800, "hPa"), height: metres(700) }).detail).toMatch(/check both\.$/);
    expect(codes(taken({ pressure: station(820, "hPa"), height: metres(1100) }))).toContain(
      "station-pressure-low",
    );
    expect(codes(taken({ pressure: station(870, "hPa"), height: metres(1100) }))).toEqual([]);
  });
  test("rare sea-level pressures are named", () => {
    for (const [value, rare] of [
      [949, true],
      [951, false],
      [1049, false],
      [1051, true],
    ] as const) {
      const air = taken({ pressure: seaLevel(value, "hPa"), height: metres(100) });
      expect(codes(air).includes("unusual-sea-level-pressure")).toBe(rare);
    }
  });
});

describe("[12.4] pressure unit by its size", () => {
  test.each([
    [29.92, 1013.21, "inHg"],
    [2992, 1013.21, "hundredths of inHg"],
    [101.3, 1013, "kPa"],
    [101_325, 1013.25, "Pa"],
  ])("%s without a unit is %s hPa, from %s", (value, hectopascal, name) => {
    for (const kind of ["station", "sea-level"] as const) {
      const air = taken({ pressure: { kind, value }, height: metres(0) });
      expect(toHectopascal(air.pressure)).toBeCloseTo(hectopascal, 1);
      expect(text(air, "pressure-unit-guessed")).toContain(`read as ${name},`);
    }
  });
  test.each([
    ["hPa", 900, 900],
    ["mbar", 900, 900],
    ["kPa", 90, 900],
    ["Pa", 90_000, 900],
    ["mmHg", 675, 899.93],
    ["inHg", 26.58, 900.1],
  ] as const)("%s stated", (unit, value, hectopascal) => {
    const air = taken({ pressure: station(value, unit) });
    expect(toHectopascal(air.pressure)).toBeCloseTo(hectopascal, 1);
    expect(codes(air)).toEqual([]);
  });
  test("850 to 1060 is hPa, without a word", () => {
    expect(codes(taken({ pressure: station(850) }))).toEqual([]);
    expect(codes(taken({ pressure: station(978) }))).toEqual([]);
  });
  test("650 to 800 is asked: hPa high up, or mmHg", () => {
    for (const value of [650, 720, 800]) {
      const refusal = refused({ pressure: station(value) });
      expect(refusal.reason).toBe("pressure-unit");
      expect(refusal.detail).toContain(`${value} hPa or ${value} mmHg`);
    }
  });
  test("the height settles it where only one reading fits, and it is said", () => {
    const low = taken({ pressure: station(720), height: metres(300) });
    expect(toHectopascal(low.pressure)).toBeCloseTo(959.9, 1);
    expect(text(low, "pressure-unit-guessed")).toContain("mmHg, 960 hPa");
    const high = taken({ pressure: station(720), height: metres(2700) });
    expect(toHectopascal(high.pressure)).toBeCloseTo(720, 9);
    expect(text(high, "pressure-unit-guessed")).toContain("hPa, 720 hPa");
    expect(refused({ pressure: station(720), height: metres(1500) }).reason).toBe("pressure-unit");
    const mercury = taken({ pressure: seaLevel(760), height: metres(1500) });
    expect(text(mercury, "pressure-unit-guessed")).toContain("mmHg, 1013 hPa");
  });
  test("a unit that cannot be is refused with the one that could", () => {
    expect(refused({ pressure: station(29.92, "hPa") }).detail).toContain("29.92 inHg would be 1013 hPa");
    expect(refused({ pressure: station(1013, "mmHg") }).detail).toContain("1013 hPa would be 1013 hPa");
    expect(refused({ pressure: station(2992, "inHg") }).detail).toContain("hundredths of inHg");
    expect(refused({ pressure: station(2992, "inHg") }).reason).toBe("pressure-unit");
    expect(refused({ pressure: station(5, "hPa") }).reason).toBe("pressure-out-of-range");
  });
  test("what is no pressure at all is refused", () => {
    for (const value of [0, -5, Number.NaN, Infinity]) {
      expect(refused({ pressure: station(value) }).reason).toBe("pressure-not-a-number");
    }
    expect(refused({ pressure: station(300) }).reason).toBe("pressure-out-of-range");
    expect(refused({ pressure: seaLevel(5), height: metres(0) }).detail).toContain("no sea-level pressure");
    expect(refused({ pressure: station(5) }).detail).toContain("no pressure to ride in");
  });
});

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
