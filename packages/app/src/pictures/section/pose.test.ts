import type { Opening } from "@jetwright/core";
import { describe, expect, test } from "vitest";
import type { Anatomy } from "../../engine/answers/anatomy.ts";
import { diameterAt, poseAt } from "./pose.ts";

const ANATOMY: Anatomy = {
  widthMm: 36,
  heightMm: 36,
  shape: "round",
  cutawayMm: 3.5,
  seatToJetMm: 30,
  needleJetMm: 2.7,
  mainBoreMm: 1.75,
  pilotBoreMm: 0.42,
  fuelLiftMm: 12,
  grooves: 5,
  groovePitchMm: 1,
  clip: 3,
  needle: [
    { belowTopGrooveMm: 0, diameterMm: 2.5 },
    { belowTopGrooveMm: 40, diameterMm: 2.5 },
    { belowTopGrooveMm: 60, diameterMm: 2.1 },
    { belowTopGrooveMm: 70, diameterMm: 1.5 },
  ],
  screw: { kind: "air", turns: 1.5 },
  nozzle: "primary",
  numbers: { main: 175, pilot: 42, needle: "N2K" },
  usual: [],
  at: [
    {
      opening: 0 as Opening,
      liftMm: 1.6,
      needleMm: 2.5,
      gapMm: 0.1,
      leads: "pilot",
      shares: { pilot: 1, needle: 0, main: 0 },
      steps: { slide: 0, screw: 0, clip: 0 },
    },
  ],
  stretches: [
    { part: "pilot", from: 0, to: 0.125 },
    { part: "needle", from: 0.125, to: 0.75 },
    { part: "main", from: 0.75, to: 1 },
  ],
};

describe("slide and needle at an opening", () => {
  test("the needle rises with the slide and thins in its jet", () => {
    const half = poseAt(ANATOMY, 0.5);
    expect(half.liftMm).toBe(18);
    expect(half.seatMm).toBe(48);
    expect(half.topGrooveMm).toBe(50);
    // Halfway down the first taper.
    expect(half.needleMm).toBeCloseTo(2.3, 12);
    expect(half.gapMm).toBeCloseTo(0.2, 12);
    expect(half.leads).toBe("needle");
  });

  test("a lower groove lifts the needle", () => {
    const higher = poseAt({ ...ANATOMY, clip: 4 }, 0.5);
    expect(higher.topGrooveMm).toBe(51);
    expect(higher.gapMm).toBeGreaterThan(poseAt(ANATOMY, 0.5).gapMm);
    expect(higher.seatMm).toBe(48);
  });

  test("closed is the idle lift, and the ends lead to their parts", () => {
    expect(poseAt(ANATOMY, 0)).toMatchObject({ liftMm: 1.6, leads: "pilot" });
    expect(poseAt(ANATOMY, 1)).toMatchObject({ liftMm: 36, leads: "main" });
  });

  test("past the tip the needle stays as thin as its tip", () => {
    expect(diameterAt(ANATOMY.needle, 65)).toBeCloseTo(1.8, 12);
    expect(diameterAt(ANATOMY.needle, 90)).toBe(1.5);
    expect(diameterAt(ANATOMY.needle, -2)).toBe(2.5);
  });
});
