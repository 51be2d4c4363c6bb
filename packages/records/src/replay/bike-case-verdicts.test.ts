import { describe, expect, test } from "vitest";
import type { ReplayedCase } from "./bike-case.ts";
import { knownGoodSetups } from "./known-good.ts";
import { air, caseOf, clip, codes, fuel, full, ride, stateOf, type Told } from "./test-shop.ts";

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
    expect(wrong.warnings).toContainEqual(
      expect.objectContaining({ code: "unknown-comparison", given: { record: "r99" } }),
    );
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
