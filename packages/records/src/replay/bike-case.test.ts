import { describe, expect, test } from "vitest";
import { bikeCase } from "./bike-case.ts";
import { replay } from "./replay.ts";
import { air, caseOf, clip, codes, fuel, full, ride, stateOf, type Told, two } from "./test-shop.ts";

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
