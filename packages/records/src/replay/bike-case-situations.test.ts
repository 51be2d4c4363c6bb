import { type AirState, airFrom, fromCelsius, fuelState } from "@jetwright/core";
import { describe, expect, test } from "vitest";
import { air, caseOf, clip, codes, fuel, full, ride, type Told, two } from "./test-shop.ts";

describe("[R25] every ride stands in its own setup, air and fuel", () => {
  test("as in force at its time, and the same are the same objects", () => {
    const got = caseOf(
      full,
      air,
      fuel,
      clip(3),
      ride,
      ride,
      clip(2),
      ride,
      ["air-measured", { temperatureC: 5, heightM: 500 }],
      ride,
    );
    const [a, b, c, d] = got.rides;
    expect(a!.situation).toBe(b!.situation);
    expect([a, b, c, d].map((one) => one!.situation.setup.clip.part)).toEqual([3, 3, 2, 2]);
    expect(c!.situation.air).toBe(a!.situation.air);
    expect(c!.situation.fuel).toBe(a!.situation.fuel);
    expect(d!.situation.air.temperature).toBeCloseTo(278.15, 9);
    expect(got.now).toBe(d!.situation);
    expect(got.reference).toBe(a!.situation);
    expect(a).toMatchObject({
      record: "r4",
      at: Date.UTC(2026, 4, 2, 10, 4),
      warm: true,
      reports: [{ sign: "answers-crisply", opening: 0.125, seen: true }],
      against: null,
    });
  });

  test("air and fuel are the core's own, from what the records say", () => {
    const got = caseOf(full, air, fuel, ride);
    const expectedAir = airFrom({
      temperature: { value: 20, unit: "C" },
      pressure: { kind: "station", value: 960, unit: "hPa" },
      humidity: { kind: "relative", percent: 50 },
    });
    const expectedFuel = fuelState({
      ethanol: 0.1,
      alkylate: 0,
      oilPerFuel: 1 / 50,
      temperature: fromCelsius(20),
    });
    expect(expectedAir).toEqual({ ok: true, value: got.rides[0]!.situation.air });
    expect(expectedFuel).toEqual({ ok: true, value: got.rides[0]!.situation.fuel });
  });

  test.each([
    ["dew point", { dewPointC: 9 }, { kind: "dew-point", value: 9, unit: "C" }],
    ["wet bulb", { wetBulbC: 14 }, { kind: "wet-bulb", value: 14, unit: "C" }],
    ["none", {}, { kind: "unknown" }],
  ] as const)("humidity by %s", (_name, said, humidity) => {
    const got = caseOf(full, [
      "air-measured",
      { temperatureC: 20, seaLevelPressureHpa: 1015, heightM: 300, ...said },
    ]);
    expect(
      airFrom({
        temperature: { value: 20, unit: "C" },
        pressure: { kind: "sea-level", value: 1015, unit: "hPa" },
        humidity,
        height: { value: 300, unit: "m" },
      }),
    ).toEqual({ ok: true, value: got.now.air });
  });

  test("a weather report gives the air at the riding place, and its warnings come along", () => {
    const report = "METAR YUDO 020950Z 24004MPS 9999 FEW020 17/16 Q1018";
    const got = caseOf(full, ["air-measured", { report, heightM: 300, stationHeightM: 300 }], ride);
    // A Q group is rounded down, so 1018.5 hPa; standard air loses 35.5 hPa over 300 m (ISO 2533: 977.7 at 300 m).
    expect(got.now.air.pressure / 100).toBeCloseTo(982.9, 0);
    expect(got.now.air.temperature).toBeCloseTo(290.15, 1);
    expect(codes(got)).not.toContain("report-age-unknown");
    const own = caseOf(
      full,
      ["air-measured", { report, heightM: 300, stationHeightM: 300, temperatureC: 25 }],
      ride,
    );
    expect(own.now.air.temperature).toBeCloseTo(298.15, 1);
    // A barometer at the place counts before the report.
    const barometer = caseOf(
      full,
      ["air-measured", { report, stationPressureHpa: 950, temperatureC: 25 }],
      ride,
    );
    expect(barometer.now.air.pressure).toBeCloseTo(95_000, 6);
  });

  test("height that is left out is the place's, else sea level and it is said", () => {
    const placed = caseOf(full, ["air-measured", { temperatureC: 20 }]);
    expect(placed.now.air.pressure).toBeCloseTo(95_461, -1);
    expect(codes(placed)).not.toContain("height-assumed");
    const unplaced = caseOf(two, ["air-measured", { temperatureC: 20 }]);
    expect(unplaced.now.air.pressure).toBeCloseTo(101_325, 0);
    expect(unplaced.now.air.relativeSd).toBeGreaterThan(0.03);
    expect(codes(unplaced)).toContain("height-assumed");
    const heightOnly = caseOf(two, ["air-measured", { heightM: 500 }]);
    expect(heightOnly.now.air.temperature).toBeCloseTo(288.15 - 3.25, 9);
    expect(codes(heightOnly)).toContain("temperature-assumed");
  });

  test("air the core refuses is not used, and it is said with its record", () => {
    const got = caseOf(full, ["air-measured", { temperatureC: 10, dewPointC: 25, heightM: 500 }], ride);
    expect(got.warnings.find(({ code }) => code === "air-unusable")).toMatchObject({
      record: "r1",
      given: { why: { detail: expect.stringContaining("dew point") } },
    });
    expect(got.rides[0]!.situation.air.temperature).toBeCloseTo(288.15 - 3.25, 9);
  });

  test("fuel the core refuses is not used, and it is said with its record", () => {
    const got = caseOf(full, ["fuel-used", { ethanolPercent: 85, oil: "50:1" }]);
    expect(got.warnings.find(({ code }) => code === "fuel-unusable")!.record).toBe("r1");
    expect(codes(caseOf(full, ["fuel-used", { ethanolPercent: 5 }]))).toContain("oil-assumed");
    const alkylate = caseOf(full, ["fuel-used", { alkylatePercent: 100, oil: { percentOfMix: 2 } }]);
    expect(fuelState({ ethanol: 0, alkylate: 1, oilPerFuel: 2 / 98, temperature: fromCelsius(20) })).toEqual({
      ok: true,
      value: alkylate.now.fuel,
    });
    const heavy = caseOf(full, [
      "fuel-used",
      { petrolDensityKgPerM3: 760, oil: { percentOfFuel: 3 }, ethanolPercent: 0 },
    ]);
    expect(
      fuelState({
        ethanol: 0,
        alkylate: 0,
        oilPerFuel: 0.03,
        temperature: fromCelsius(20),
        petrolDensity: 760 as never,
      }),
    ).toEqual({ ok: true, value: heavy.now.fuel });
  });

  test("[R21] air soon after the first ride is taken for it; old air gets a wider band", () => {
    const dated = ([kind, body]: Told, day: number, hour: number): Told => [
      kind,
      body,
      { at: new Date(Date.UTC(2026, 4, day, hour)).toISOString() },
    ];
    const airs = (...told: Told[]): AirState[] =>
      caseOf(full, ...told).rides.map(({ situation }) => situation.air);
    const [before] = airs(dated(ride, 3, 10), dated(air, 3, 22));
    expect(before!.temperature).toBeCloseTo(293.15, 9);
    const [tooSoon] = airs(dated(ride, 3, 10), dated(air, 3, 23));
    expect(tooSoon!.temperature).toBeCloseTo(288.15 - 3.25, 9);
    const [fresh, old, older] = airs(
      dated(air, 3, 10),
      dated(ride, 3, 22),
      dated(ride, 3, 23),
      dated(ride, 25, 23),
    );
    expect(old!.relativeSd).toBeCloseTo(Math.hypot(fresh!.relativeSd, 0.02), 12);
    expect(older!.relativeSd).toBeCloseTo(Math.hypot(fresh!.relativeSd, 0.04), 12);
    expect(old!.density).toBe(fresh!.density);
    expect(codes(caseOf(full, dated(air, 3, 10), dated(ride, 3, 23)))).toContain("air-old");
  });

  test("tests, checks and readings", () => {
    const got = caseOf(
      full,
      clip(3),
      [
        "test-done",
        { test: "screw-sweep-air", outcome: "middle", opening: "closed", numbers: { bestTurns: 1.75 } },
      ],
      ["check-done", { check: "pressure-test", found: "faulty", fault: "air-leak" }],
      [
        "mixture-measured",
        {
          readings: [
            { opening: "3/4", errorPercent: 4, sdPercent: 3 },
            { opening: 1, lambda: 0.84, wantedLambda: 0.88 },
          ],
        },
      ],
      ["test-done", { test: "chop-warm", outcome: "hangs" }],
      ["check-done", { check: "reeds", found: "sound" }],
    );
    expect(got.tests).toMatchObject([
      {
        record: "r2",
        test: "screw-sweep-air",
        outcome: "middle",
        opening: 0,
        numbers: { bestTurns: 1.75 },
        situation: got.now,
      },
      { record: "r5", test: "chop-warm", opening: null, numbers: {} },
    ]);
    expect(got.checks).toMatchObject([
      { record: "r3", check: "pressure-test", found: "faulty", fault: "air-leak" },
      { record: "r6", check: "reeds", found: "sound", fault: null },
    ]);
    expect(got.measurements.map(({ opening, sd }) => [opening, sd])).toEqual([
      [0.75, 0.03],
      [1, 0.05],
    ]);
    expect(got.measurements[0]!.error).toBeCloseTo(Math.log(1.04), 14);
    // Less lambda than wanted is rich.
    expect(got.measurements[1]!.error).toBeCloseTo(Math.log(0.88 / 0.84), 14);
  });
});
