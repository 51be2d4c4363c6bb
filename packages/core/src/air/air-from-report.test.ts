import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fromCelsius, fromMetre, toCelsius, toHectopascal } from "../units/convert.ts";
import { airFromReport, type ReportPlace } from "./air-from-report.ts";
import { vapourFraction } from "./humidity.ts";
import { stationPressure } from "./pressure-reduction.ts";
import { text } from "./test-airs.ts";
import { readWeatherReport } from "./weather-report.ts";

const metres = (value: number) => ({ value, unit: "m" }) as const;
const reckon = (groups: string, place: Partial<ReportPlace> = {}) => {
  const report = readWeatherReport(`METAR LFLB 121130Z 24008KT 9999 ${groups}`);
  if (!report.ok) throw new Error(report.detail);
  return airFromReport(report.value, {
    height: metres(500),
    stationHeight: metres(500),
    ageMinutes: 0,
    ...place,
  });
};
const taken = (groups: string, place: Partial<ReportPlace> = {}) => {
  const air = reckon(groups, place);
  if (!air.ok) throw new Error(`${air.reason}: ${air.detail}`);
  return air.value;
};
type Air = ReturnType<typeof taken>;
const codes = (air: Air) => air.warnings.map((w) => w.code);
const doubt = (air: Air, cause: string) => air.doubts.find((d) => d.cause === cause)?.relativeSd;
const reason = (groups: string, place: Partial<ReportPlace> = {}) => {
  const air = reckon(groups, place);
  return air.ok ? "taken" : air.reason;
};

describe("at the station", () => {
  test("Q is rounded down: half a hPa is added; A is not", () => {
    // ICAO: 1013.25 hPa at 500 m is 954.61 on the spot.
    expect(toHectopascal(taken("20/10 Q1013").pressure)).toBeCloseTo(954.61 + 0.25 * 0.952, 1);
    expect(taken("20/10 Q1013").pressure).toBe(stationPressure(101_350 as never, fromMetre(500)));
    expect(toHectopascal(taken("20/10 A2992").pressure)).toBeCloseTo(954.57, 1);
    expect(codes(taken("20/10 A2992"))).toEqual([]);
  });

  test("temperature and dew point as reported", () => {
    const air = taken("20/10 Q1013");
    expect(toCelsius(air.temperature)).toBeCloseTo(20, 9);
    const dew = { kind: "dew-point", temperature: fromCelsius(10), sd: 0 } as const;
    expect(air.vapourFraction).toBeCloseTo(vapourFraction(dew, air.temperature, air.pressure), 12);
  });

  test("rounding and place widen the band: tenths less than whole degrees", () => {
    const whole = taken("20/10 Q1013");
    const tenths = taken("20/10 Q1013 RMK T02000100");
    // 0.5 K and an even spread over 1 K, or over 0.1 K; 0.342 % for each K at the same dew point.
    expect(doubt(whole, "temperature")).toBeCloseTo(0.00342 * Math.sqrt(0.25 + 1 / 12), 4);
    expect(doubt(tenths, "temperature")).toBeCloseTo(0.00342 * 0.5, 4);
    expect(doubt(whole, "another place")).toBeCloseTo(0.00342, 4);
    expect(doubt(whole, "temperature by height")).toBe(0);
    expect(doubt(whole, "pressure group")! / (Math.hypot(50, 100 / Math.sqrt(12)) / 101_350)).toBeCloseTo(
      1,
      1,
    );
    expect(doubt(taken("20/10 A2992"), "pressure group")).toBeCloseTo(
      Math.hypot(50, 34 / Math.sqrt(12)) / 101_321,
      4,
    );
    expect(tenths.relativeSd).toBeLessThan(whole.relativeSd);
    const sum = whole.doubts.reduce((total, d) => total + d.relativeSd ** 2, 0);
    expect(whole.relativeSd).toBeCloseTo(Math.sqrt(sum), 12);
    expect(whole.relativeSd).toBeGreaterThan(0.003);
    expect(whole.relativeSd).toBeLessThan(0.008);
  });

  test("[12.2] no dew point: 50 % and a wider band; the temperature is kept", () => {
    const air = taken("30/// Q1013");
    expect(toCelsius(air.temperature)).toBeCloseTo(30, 9);
    expect(codes(air)).toEqual(expect.arrayContaining(["dew-point-missing", "humidity-assumed"]));
    expect(doubt(air, "humidity")).toBeGreaterThan(0.01);
  });

  test("[12.1] dew point a degree above is saturation, two are refused", () => {
    const air = taken("10/11 Q1013");
    expect(codes(air)).toContain("humidity-clamped");
    expect(air.vapourFraction).toBeCloseTo(taken("10/10 Q1013").vapourFraction, 12);
    expect(reason("10/12 Q1013")).toBe("dew-point-above-temperature");
  });

  test("no pressure but the sea-level remark: the height alone, and it is said", () => {
    const air = taken("20/10 RMK SLP200");
    expect(toHectopascal(air.pressure)).toBeCloseTo(954.61, 2);
    expect(codes(air)).toEqual(["pressure-missing", "pressure-from-height"]);
  });

  test("Q and A that disagree widen the band by half of it", () => {
    expect(doubt(taken("20/10 Q1013 A3022"), "Q against A")).toBeCloseTo(0.005, 3);
    expect(doubt(taken("20/10 Q1013 A2992"), "Q against A")).toBeUndefined();
  });
});

describe("[12.8] the riding place is not the station", () => {
  test("pressure and temperature are carried up and said", () => {
    const air = taken("20/10 Q1013", { height: metres(1500) });
    expect(toCelsius(air.temperature)).toBeCloseTo(13.5, 9);
    // 954.85 hPa carried 1000 m up through air of 16.75 °C, hypsometric equation by hand: 849.1 hPa.
    const byHand = 954.85 * Math.exp((-9.80665 * 1000) / (287.05287 * 289.9 * 1.0048));
    expect(toHectopascal(air.pressure)).toBeCloseTo(byHand, 0);
    expect(codes(air)).toEqual(["station-height-differs", "outside-formula-range"]);
    expect(text(air, "station-height-differs")).toContain("1000 m below the riding place");
    expect(text(air, "station-height-differs")).toContain("13.5 °C");
    expect(doubt(air, "temperature by height")).toBeCloseTo(0.0035 * 3, 3);
    expect(doubt(air, "height difference")).toBeCloseTo(0.0012, 3);
    expect(air.relativeSd).toBeGreaterThan(1.5 * taken("20/10 Q1013").relativeSd);
  });
  test("downhill too", () => {
    const air = taken("10/05 Q1013", { stationHeight: metres(1500) });
    expect(toCelsius(air.temperature)).toBeCloseTo(16.5, 9);
    expect(air.pressure).toBeGreaterThan(stationPressure(101_350 as never, fromMetre(1500)) * 1.1);
    expect(text(air, "station-height-differs")).toContain("1000 m above the riding place");
  });
  test("under 150 m it is not worth a word", () => {
    expect(codes(taken("20/10 Q1013", { height: metres(650) }))).toEqual([]);
    expect(codes(taken("20/10 Q1013", { height: metres(651) }))).toEqual(["station-height-differs"]);
  });
  test("going there and back changes nothing", () => {
    const flat = taken("20/10 Q1013");
    const up = taken("20/10 Q1013", { height: metres(501) });
    expect(up.pressure / flat.pressure).toBeCloseTo(1 - 9.80665 / (287.05 * 294.5), 6);
  });
  test("dew point falls 1.8 K for 1000 m and never above the temperature", () => {
    const air = taken("20/10 Q1013", { height: metres(1500) });
    const dew = { kind: "dew-point", temperature: fromCelsius(8.2), sd: 0 } as const;
    expect(air.vapourFraction).toBeCloseTo(vapourFraction(dew, air.temperature, air.pressure), 12);
    const cloud = taken("11/10 Q1013", { height: metres(1500) });
    expect(text(cloud, "humidity-clamped")).toContain("taken as saturated");
    const saturated = { kind: "relative", fraction: 1, sd: 0 } as const;
    expect(cloud.vapourFraction).toBeCloseTo(
      vapourFraction(saturated, cloud.temperature, cloud.pressure),
      12,
    );
  });
  test("station height not known: said, and the band is wider", () => {
    const report = readWeatherReport("METAR LFLB 121130Z 30/10 Q1013");
    if (!report.ok) throw new Error(report.detail);
    const air = airFromReport(report.value, { height: metres(1500), ageMinutes: 0 });
    if (!air.ok) throw new Error(air.detail);
    expect(codes(air.value)).toContain("station-height-unknown");
    expect(air.value.pressure).toBe(stationPressure(101_350 as never, fromMetre(1500)));
    expect(doubt(air.value, "temperature by height")).toBeCloseTo(0.0033 * 1.95, 3);
    expect(doubt(air.value, "height of the station")).toBeCloseTo(0.003, 3);
  });
});

describe("station pressure remark", () => {
  test("it is used before the altimeter setting, and tells the station's height with it", () => {
    const report = readWeatherReport("METAR UACC 121200Z M05/M07 Q1018 NOSIG RMK QFE729/0972");
    if (!report.ok) throw new Error(report.detail);
    const air = airFromReport(report.value, { height: metres(393), ageMinutes: 0 });
    if (!air.ok) throw new Error(air.detail);
    // Q 1018.5 and 972 hPa lie 393 m apart in the standard atmosphere.
    expect(toHectopascal(air.value.pressure)).toBeCloseTo(972, 0);
    expect(codes(air.value)).not.toContain("station-height-unknown");
    expect(doubt(air.value, "height of the station")).toBeCloseTo(5 * 1.27e-4, 4);
  });
  test("a station height that does not fit is said", () => {
    const air = taken("M05/M07 Q1018 RMK QFE729/0972");
    expect(codes(air)).toContain("station-pressure-mismatch");
    expect(toHectopascal(air.pressure)).toBeCloseTo(972, 6);
    expect(codes(taken("M05/M07 Q1018 RMK QFE0959"))).not.toContain("station-pressure-mismatch");
    expect(codes(taken("M05/M07 Q1018 RMK QFE0955"))).toContain("station-pressure-mismatch");
    expect(doubt(air, "height of the station")).toBeCloseTo(10 * 1.27e-4, 4);
  });
  test("alone, with the station's height unknown, the band is wide", () => {
    const report = readWeatherReport("METAR UACC 121200Z 20/10 RMK QFE729");
    if (!report.ok) throw new Error(report.detail);
    const air = airFromReport(report.value, { height: metres(400), ageMinutes: 0 });
    if (!air.ok) throw new Error(air.detail);
    expect(air.value.relativeSd).toBeGreaterThan(0.03);
    expect(toHectopascal(air.value.pressure)).toBeCloseTo(971.92, 2);
    expect(doubt(air.value, "pressure group")! / (Math.hypot(50, 133 / Math.sqrt(12)) / 97_192)).toBeCloseTo(
      1,
      1,
    );
    const known = taken("20/10 RMK QFE729", { height: metres(500) });
    expect(toHectopascal(known.pressure)).toBeCloseTo(971.92, 2);
  });
});

describe("[12.8] age of the report", () => {
  test("about 1 % of density for each hour, up to six; over two hours it is named", () => {
    expect(doubt(taken("20/10 Q1013"), "age of the report")).toBe(0);
    expect(doubt(taken("20/10 Q1013", { ageMinutes: 60 }), "age of the report")).toBeCloseTo(0.01, 12);
    expect(codes(taken("20/10 Q1013", { ageMinutes: 120 }))).toEqual([]);
    const old = taken("20/10 Q1013", { ageMinutes: 150 });
    expect(text(old, "report-old")).toContain("2.5 hours old");
    expect(doubt(old, "age of the report")).toBeCloseTo(0.025, 12);
    expect(doubt(taken("20/10 Q1013", { ageMinutes: 6000 }), "age of the report")).toBeCloseTo(0.06, 12);
  });
  test("not known: two hours are assumed and said", () => {
    const air = taken("20/10 Q1013", { ageMinutes: null });
    expect(codes(air)).toEqual(["report-age-unknown"]);
    expect(doubt(air, "age of the report")).toBeCloseTo(0.02, 12);
  });
  test("a report from the future is a wrong clock", () => {
    expect(doubt(taken("20/10 Q1013", { ageMinutes: -15 }), "age of the report")).toBe(0);
    for (const ageMinutes of [-16, Number.NaN, Infinity]) {
      expect(reason("20/10 Q1013", { ageMinutes })).toBe("report-age");
    }
  });
});

describe("a thermometer on the spot", () => {
  test("replaces the report's temperature, and most of what age and place make unsure", () => {
    const air = taken("20/10 Q1013", { temperature: { value: 26, unit: "C", sd: 0.5 }, ageMinutes: 60 });
    expect(toCelsius(air.temperature)).toBeCloseTo(26, 9);
    expect(doubt(air, "age of the report")).toBeCloseTo(0.002, 12);
    expect(doubt(air, "another place")).toBeUndefined();
    expect(doubt(air, "temperature")).toBeCloseTo(0.0034 * 0.5, 4);
    expect(doubt(taken("20/10 Q1013", { temperature: { value: 26 } }), "temperature")).toBeCloseTo(0.0034, 4);
    const far = taken("20/10 Q1013", { temperature: { value: 26 }, height: metres(1500) });
    expect(text(far, "station-height-differs")).toContain("its pressure was carried there.");
  });
  test("serves when the report has none", () => {
    expect(reason("Q1013")).toBe("temperature-missing");
    expect(toCelsius(taken("Q1013", { temperature: { value: 18 } }).temperature)).toBeCloseTo(18, 9);
  });
  test("lower than the dew point the air is saturated", () => {
    const air = taken("20/10 Q1013", { temperature: { value: 8, unit: "C" } });
    expect(codes(air)).toContain("humidity-clamped");
  });
  test("bad readings are refused with their own reasons", () => {
    expect(reason("20/10 Q1013", { temperature: { value: 55 } })).toBe("temperature-unit");
    expect(reason("20/10 Q1013", { height: { value: 5000 } })).toBe("height-unit");
    expect(reason("20/10 Q1013", { stationHeight: metres(9000) })).toBe("height-out-of-range");
    expect(reason("75/10 Q1013")).toBe("temperature-out-of-range");
    expect(codes(taken("52/10 Q1013"))).toContain("unusual-temperature");
  });
});

describe("any report at any place", () => {
  test("finite air or a refusal, never a throw", () => {
    const digits = fc.integer({ min: 0, max: 9999 }).map((n) => String(n).padStart(4, "0"));
    const group = fc.oneof(
      fc.integer({ min: 850, max: 1090 }).map((n) => `Q${String(n).padStart(4, "0")}`),
      fc.integer({ min: 2500, max: 3250 }).map((n) => `A${n}`),
      fc.integer({ min: 480, max: 1110 }).map((n) => `QFE${String(n).padStart(4, "0")}`),
      digits.map((n) => `QFE${n}`),
      fc.integer({ min: 0, max: 60 }).map((n) => `${String(n).padStart(2, "0")}/05`),
      fc.integer({ min: 0, max: 50 }).map((n) => `M${String(n).padStart(2, "0")}/`),
    );
    const height = fc.integer({ min: -500, max: 6000 }).map(metres);
    let accepted = 0;
    fc.assert(
      fc.property(
        fc.array(group, { minLength: 1, maxLength: 5 }),
        height,
        fc.option(height),
        (groups, here, there) => {
          const report = readWeatherReport(`METAR LFLB 121130Z ${groups.join(" ")}`);
          if (!report.ok) return;
          const place: ReportPlace = { height: here, ageMinutes: 30, temperature: { value: 5, unit: "C" } };
          const air = airFromReport(
            report.value,
            there === null ? place : { ...place, stationHeight: there },
          );
          if (!air.ok) return;
          accepted++;
          expect(air.value.density > 0.4 && air.value.density < 2).toBe(true);
          expect(Number.isFinite(air.value.relativeSd)).toBe(true);
        },
      ),
      { seed: 31, numRuns: 2000 },
    );
    expect(accepted).toBeGreaterThan(500);
  });
  test("QFE and Q that belong to no station on land: Q is used, and it is said", () => {
    const report = readWeatherReport("METAR LFLB 121130Z 20/10 Q0900 RMK QFE1090");
    if (!report.ok) throw new Error(report.detail);
    const air = airFromReport(report.value, { height: metres(100), ageMinutes: 0 });
    if (!air.ok) throw new Error(air.detail);
    expect(codes(air.value)).toContain("station-pressure-mismatch");
    expect(air.value.pressure).toBe(stationPressure(90_050 as never, fromMetre(100)));
  });
  test("a station height that makes nonsense of the pressure is refused", () => {
    expect(
      reason("20/10 RMK QFE1013", {
        height: metres(-400),
        stationHeight: metres(3000),
        temperature: { value: 20 },
      }),
    ).toBe("pressure-height-mismatch");
  });
});
