import { type AirState, airFrom, fromCelsius, fuelState } from "@jetwright/core";
import { describe, expect, test } from "vitest";
import { readLog } from "../log-reader.ts";
import { bikeCase, type ReplayedCase } from "./bike-case.ts";
import { knownGoodSetups } from "./known-good.ts";
import { replay } from "./replay.ts";
import type { ShopState } from "./shop-state.ts";

/** A log of records one minute apart from ten o'clock, all of bike "b" unless told; ids r0, r1 ... */
type Told = [kind: string, body: object, more?: object];
function stateOf(...told: Told[]): ShopState {
  const log = readLog(
    told.map(([kind, body, more], i) =>
      JSON.stringify({
        id: `r${i}`,
        kind,
        at: new Date(Date.UTC(2026, 4, 2, 10, i)).toISOString(),
        bike: "b",
        body,
        ...more,
      }),
    ),
  );
  expect(log.problems).toEqual([]);
  return replay(log.entries);
}
function caseOf(...told: Told[]): ReplayedCase {
  const got = bikeCase(stateOf(...told), "b");
  if (!got.ok) throw new Error(got.detail);
  return got.value;
}
const codes = (one: ReplayedCase): string[] => one.warnings.map(({ code }) => code);
const two: Told = ["bike-described", { engine: { strokes: 2 } }];
const full: Told = [
  "bike-described",
  {
    engine: { strokes: 2, displacementCc: 250 },
    carburetor: {
      bore: { shape: "round", diameterMm: 36 },
      screw: "air",
      nozzle: "primary",
      jetNumbering: "bore",
    },
    place: { heightM: 500 },
  },
];
const clip = (groove: number): Told => ["setup-fitted", { clip: { groove } }];
const ride: Told = ["ride-reported", { reports: [{ sign: "answers-crisply", opening: "1/8" }] }];
const air: Told = ["air-measured", { temperatureC: 20, stationPressureHpa: 960, humidityPercent: 50 }];
const fuel: Told = ["fuel-used", { oil: "50:1", ethanolPercent: 10, temperatureC: 20 }];

describe("[R24] works with little, and says what it took", () => {
  test("refuses a bike that is not there, with the near name or the list", () => {
    const state = stateOf(two, ["note", { text: "x" }, { bike: "bramble" }]);
    expect(bikeCase(state, "brambel")).toMatchObject({
      ok: false,
      reason: "no-such-bike",
      detail: expect.stringContaining("bramble"),
    });
    expect(bikeCase(state, "zzzzzz")).toMatchObject({ detail: expect.stringContaining("b, bramble") });
    expect(bikeCase(replay([]), "b")).toMatchObject({ detail: expect.stringContaining("no bike at all") });
  });

  test("refuses a bike whose engine nobody described", () => {
    const state = stateOf(["bike-described", { name: "x" }], ["note", { text: "x" }, { bike: "c" }]);
    for (const bike of ["b", "c"]) {
      expect(bikeCase(state, bike)).toMatchObject({
        ok: false,
        reason: "bike-not-described",
        detail: expect.stringContaining("strokes"),
      });
    }
  });

  test("two strokes alone make a case of unknown parts in standard air at sea level", () => {
    const got = caseOf(two);
    expect(codes(got).sort()).toEqual(["air-assumed", "bore-assumed", "fuel-assumed", "nothing-fitted"]);
    expect(got.engine).toEqual({ strokes: 2, displacement: null, acceleratorPump: false });
    expect(got.now.setup.main).toEqual({ part: null, how: "unknown" });
    expect(got.now.setup.body).toMatchObject({
      screwKind: "air",
      nozzle: "primary",
      bowlVent: "free air",
      seatToJet: null,
    });
    expect(got.now.air.temperature).toBeCloseTo(288.15, 9);
    expect(got.now.air.pressure).toBeCloseTo(101_325, 3);
    expect(got.now.air.relativeSd).toBeGreaterThan(0.05);
    expect(got.reference).toBe(got.now);
    expect([got.rides, got.tests, got.checks, got.measurements]).toEqual([[], [], [], []]);
    expect([got.oneChangeAtATime, got.freshStartAt, got.minutes]).toEqual([false, null, {}]);
  });

  test("without air, the height of the place gives the standard one, less in doubt", () => {
    const got = caseOf(full);
    expect(got.now.air.temperature).toBeCloseTo(288.15 - 3.25, 9);
    // ISO 2533 table, 500 m: 95 461 Pa [from memory; also ASHRAE Fundamentals 2017, chapter 1, table 1].
    expect(got.now.air.pressure).toBeCloseTo(95_461, -1);
    expect(got.now.air.relativeSd).toBeLessThan(0.05);
    expect(codes(got)).toContain("air-assumed");
    expect(codes(got)).not.toContain("bore-assumed");
  });

  test("a four-stroke is taken with fuel screw, bled nozzle and no oil", () => {
    const got = caseOf([
      "bike-described",
      { engine: { strokes: 4, displacementCc: 250, acceleratorPump: true } },
    ]);
    expect(got.now.setup.body).toMatchObject({
      screwKind: "fuel",
      nozzle: "bleed",
      bore: { shape: "round", diameter: 0.038 },
    });
    expect(got.now.fuel.fuelShare).toBe(1);
    expect(got.engine.displacement).toBeCloseTo(0.00025, 12);
    expect(got.engine.acceleratorPump).toBe(true);
  });

  test("usual bores: two-strokes of 65 and 300 cc, and of unknown size", () => {
    const bore = (engine: object): number => {
      const body = caseOf(["bike-described", { engine }]).now.setup.body;
      return body.bore.shape === "round" ? Math.round(body.bore.diameter * 1000) : Number.NaN;
    };
    // Common practice, no source: 24 to 26 mm on a 65, 36 to 38 on a 300.
    expect(bore({ strokes: 2, displacementCc: 65 })).toBe(26);
    expect(bore({ strokes: 2, displacementCc: 300 })).toBe(38);
    expect(bore({ strokes: 2 })).toBe(34);
    expect(bore({ strokes: 4, displacementCc: 650 })).toBe(41);
  });

  test("turns of a screw whose side is not told cannot be used, and it is said", () => {
    const screw: Told = ["setup-fitted", { screw: { turnsOut: 1.5, how: "measured" } }];
    const blind = caseOf(two, screw);
    expect(blind.now.setup.screw).toEqual({ part: null, how: "unknown" });
    expect(codes(blind)).toContain("screw-side-unknown");
    const seen = caseOf(full, screw);
    expect(seen.now.setup.screw).toEqual({ part: { kind: "air", turnsOut: 1.5 }, how: "measured" });
    expect(codes(seen)).not.toContain("screw-side-unknown");
  });

  test("[R5] what is given without how is taken as told; unknown stays unknown", () => {
    const got = caseOf(full, [
      "setup-fitted",
      { main: { number: 175 }, pilot: { number: 42, how: "read by eye" }, clip: "unknown" },
    ]);
    expect(got.now.setup.main).toEqual({ part: { number: 175, numbering: "bore", maker: "" }, how: "told" });
    expect(got.now.setup.pilot.how).toBe("read by eye");
    expect(got.now.setup.clip.part).toBeNull();
  });

  test("numbering: the jet's own, else the carburetor's, else bore and it is said", () => {
    const main = (description: Told, body: object): [string, boolean] => {
      const got = caseOf(description, ["setup-fitted", { main: { number: 175, ...body } }]);
      return [got.now.setup.main.part!.numbering, codes(got).includes("numbering-assumed")];
    };
    const flow: Told = ["bike-described", { engine: { strokes: 2 }, carburetor: { jetNumbering: "flow" } }];
    expect(main(flow, {})).toEqual(["flow", false]);
    expect(main(flow, { numbering: "bore" })).toEqual(["bore", false]);
    expect(main(two, {})).toEqual(["bore", true]);
  });

  test("sizes come out in SI", () => {
    const got = caseOf(
      [
        "bike-described",
        {
          engine: { strokes: 2 },
          carburetor: {
            bore: { shape: "D", widthMm: 26, heightMm: 28 },
            seatToJetMm: 41,
            idleLiftMm: 1.2,
            bowlVent: "airbox",
          },
        },
      ],
      [
        "setup-fitted",
        {
          needleJet: { boreMm: 2.7 },
          slide: { cutawayMm: 3.5 },
          fuelLevel: { liftMm: 14 },
          mainAirJet: { number: 80 },
          pilotAirJet: { number: 100 },
        },
      ],
    );
    expect(got.now.setup.body).toMatchObject({
      bore: { shape: "D", width: 0.026, height: 0.028 },
      seatToJet: 0.041,
      idleLift: 0.0012,
      bowlVent: "airbox",
    });
    expect(got.now.setup.needleJet.part).toBeCloseTo(0.0027, 12);
    expect(got.now.setup.cutaway.part).toBeCloseTo(0.0035, 12);
    expect(got.now.setup.fuelLift.part).toBeCloseTo(0.014, 12);
    expect([got.now.setup.mainAirJet.part!.number, got.now.setup.pilotAirJet.part!.number]).toEqual([
      80, 100,
    ]);
  });

  test("a clip beyond the needle's grooves is said", () => {
    const needle: Told = ["setup-fitted", { needle: { marks: "N", grooves: 5, groovePitchMm: 1 } }];
    expect(codes(caseOf(full, needle, clip(6)))).toContain("clip-beyond-grooves");
    expect(codes(caseOf(full, needle, clip(5.5)))).not.toContain("clip-beyond-grooves");
  });
});

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
      text: expect.stringContaining("dew point"),
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

describe("[R26] the reference", () => {
  test("is the first evidence, be it a ride, a test or a reading", () => {
    const test1: Told = ["test-done", { test: "chop-warm", outcome: "hangs" }];
    const reading: Told = ["mixture-measured", { readings: [{ opening: 1, errorPercent: 1 }] }];
    for (const evidence of [ride, test1, reading]) {
      const got = caseOf(full, clip(3), clip(4), evidence, clip(2), ride);
      expect(got.reference.setup.clip.part).toBe(4);
    }
  });

  test("without evidence it is the first setup fitted, in the air of now", () => {
    const got = caseOf(full, clip(3), air, clip(2));
    expect(got.reference.setup.clip.part).toBe(3);
    expect(got.reference.air).toBe(got.now.air);
  });

  test("[R23] a change of the engine voids what was before", () => {
    const pipe: Told = ["engine-changed", { what: "pipe" }];
    const after = caseOf(full, clip(3), ride, pipe, clip(2), ride);
    expect(after.freshStartAt).toBe(Date.UTC(2026, 4, 2, 10, 3));
    expect(after.reference.setup.clip.part).toBe(2);
    expect(after.rides).toHaveLength(2);
    const none = caseOf(full, clip(3), ride, clip(2), pipe);
    expect(none.reference).toBe(none.now);
  });

  test("what it will be ridden in can be given", () => {
    const state = stateOf(full, clip(3), ride);
    const other = caseOf(full, air, fuel).now;
    const got = bikeCase(state, "b", { now: { air: other.air, fuel: other.fuel } });
    expect(got.ok && got.value.now).toMatchObject({ air: other.air, fuel: other.fuel });
    expect(got.ok && got.value.rides[0]!.situation.air).not.toBe(other.air);
  });
});

describe("[R27] better, same or worse than what", () => {
  const felt = (record?: string): Told => [
    "ride-reported",
    { against: { ...(record && { record }), felt: [{ opening: "1/2", felt: "better" }] } },
  ];
  const clipOf = (got: ReplayedCase, i: number): number | null | undefined =>
    got.rides[i]!.against?.situation.setup.clip.part;

  test("the last setup ridden that differs", () => {
    const got = caseOf(full, clip(3), ride, clip(4), clip(2), felt());
    expect(clipOf(got, 1)).toBe(3);
    expect(got.rides[1]!.against!.situation).toBe(got.rides[0]!.situation);
    expect(got.rides[1]!.against!.verdicts).toEqual([{ opening: 0.5, felt: "better" }]);
  });

  test("never ridden: the setup before, in the air of this ride", () => {
    const got = caseOf(full, air, clip(3), clip(2), felt());
    expect(clipOf(got, 0)).toBe(3);
    expect(got.rides[0]!.against!.situation.air).toBe(got.rides[0]!.situation.air);
  });

  test("a setup, ride or test that is named", () => {
    const told: Told[] = [
      full,
      clip(4),
      ride,
      clip(3),
      ["test-done", { test: "chop-warm", outcome: "hangs" }],
      clip(1),
      clip(2),
    ];
    expect(["r1", "r2", "r4", "r5"].map((record) => clipOf(caseOf(...told, felt(record)), 1))).toEqual([
      4, 4, 3, 1,
    ]);
  });

  test("nothing to compare with is left out and said", () => {
    const alone = caseOf(full, clip(2), felt());
    expect(alone.rides[0]!.against).toBeNull();
    expect(codes(alone)).toContain("nothing-to-compare");
    const wrong = caseOf(full, clip(3), clip(2), felt("r99"));
    expect(wrong.rides[0]!.against).toBeNull();
    expect(wrong.warnings.find(({ code }) => code === "unknown-comparison")!.text).toContain("r99");
  });
});

describe("[R28] the needle", () => {
  const told: Told = [
    "setup-fitted",
    {
      needle: {
        marks: "N2K",
        straightDiameterMm: 2.5,
        tapers: [
          { startMm: 24, includedAngleDeg: 3 },
          { startMm: 9, includedAngleDeg: 1.5 },
        ],
      },
    },
  ];
  // A needle of 2.60 mm, straight to 20 mm and then 1 in 25: readings without error.
  const points = [4, 8, 12, 16, 20, 24, 28, 32, 36, 40].map((x) => ({
    belowTopGrooveMm: x,
    diameterMm: 2.6 - Math.max(0, x - 20) / 25,
  }));
  const straight = (got: ReplayedCase): number => got.now.setup.needle.part!.profile!.straightDiameter * 1000;

  test("as told: tapers in order, usual grooves said where not told", () => {
    const got = caseOf(full, told);
    const needle = got.now.setup.needle.part!;
    expect(straight(got)).toBeCloseTo(2.5, 9);
    expect(needle.profile!.tapers.map(({ start }) => Math.round(start * 1000))).toEqual([9, 24]);
    expect(needle.profile!.tapers[1]!.includedAngle).toBeCloseTo((3 * Math.PI) / 180, 12);
    expect([needle.grooves, needle.groovePitch]).toEqual([5, 0.001]);
    expect(codes(got)).toContain("needle-grooves-assumed");
    expect(
      caseOf(full, ["setup-fitted", { needle: { marks: "X", grooves: 4, groovePitchMm: 0.9 } }]).now.setup
        .needle.part,
    ).toEqual({ marks: "X", grooves: 4, groovePitch: 0.0009, profile: null });
  });

  test("the micrometer before what was told, by marks, and the bike's own before the shop's", () => {
    const measured = (more: object, thicker = 0): Told => [
      "needle-measured",
      {
        marks: "n2k ",
        grooves: 4,
        groovePitchMm: 0.9,
        points: points.map((p) => ({ ...p, diameterMm: p.diameterMm + thicker })),
      },
      more,
    ];
    const shop = caseOf(full, told, measured({ bike: undefined }));
    expect(straight(shop)).toBeCloseTo(2.6, 3);
    expect(shop.now.setup.needle.part).toMatchObject({ grooves: 4, groovePitch: 0.0009 });
    expect(straight(caseOf(full, told, measured({}, 0.1), measured({ bike: undefined })))).toBeCloseTo(
      2.7,
      3,
    );
    expect(straight(caseOf(full, told, measured({ bike: "other" })))).toBeCloseTo(2.5, 3);
    expect(straight(caseOf(full, told, measured({}), measured({}, 0.1)))).toBeCloseTo(2.7, 3);
  });

  test("a measurement that makes no needle is not used, and it is said", () => {
    const got = caseOf(full, told, ["needle-measured", { marks: "N2K", points: points.slice(0, 2) }]);
    expect(straight(got)).toBeCloseTo(2.5, 9);
    expect(got.warnings.find(({ code }) => code === "needle-measurement-unusable")!.record).toBe("r2");
  });
});

describe("[R23] known-good setups", () => {
  test("speak of the setup, air and fuel of their own time, oldest first", () => {
    const good: Told = ["known-good-marked", {}];
    const other = (told: Told): Told => [told[0], told[1], { bike: "c" }];
    const state = stateOf(
      full,
      air,
      fuel,
      clip(3),
      other(full),
      other(clip(1)),
      other(good),
      good,
      clip(2),
      other(clip(5)),
      good,
    );
    const found = knownGoodSetups(state);
    expect(found.map(({ record, bike, situation }) => [record, bike, situation.setup.clip.part])).toEqual([
      ["r6", "c", 1],
      ["r7", "b", 3],
      ["r10", "b", 2],
    ]);
    expect(found[1]!.situation.air.temperature).toBeCloseTo(293.15, 9);
    expect(found[0]!.engine.strokes).toBe(2);
    expect(knownGoodSetups(stateOf(["known-good-marked", {}]))).toEqual([]);
  });
});
