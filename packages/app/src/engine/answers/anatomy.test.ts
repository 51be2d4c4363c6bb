import { readFileSync } from "node:fs";
import { english } from "@jetwright/core/words/en";
import { describe, expect, test } from "vitest";
import { EngineState } from "../state.ts";
import { anatomyFor } from "./anatomy.ts";

const line = (kind: string, body: object, i: number): string =>
  JSON.stringify({ id: `t${i}`, kind, v: 1, at: `2026-05-01T08:0${i}:00Z`, bike: "fern", body });

const BIKE = {
  name: "Fern",
  engine: { strokes: 2, displacementCc: 249 },
  carburetor: {
    bore: { shape: "round", diameterMm: 36 },
    screw: "air",
    seatToJetMm: 31,
    idleLiftMm: 1.5,
    jetNumbering: "bore",
  },
};
const PARTS = {
  main: { number: 175 },
  pilot: { number: 42 },
  needle: {
    marks: "N2K",
    grooves: 5,
    groovePitchMm: 1,
    straightDiameterMm: 2.5,
    tapers: [{ startMm: 41, includedAngleDeg: 2 }],
  },
  clip: { groove: 3 },
  needleJet: { boreMm: 2.7 },
  slide: { cutawayMm: 3.5 },
  screw: { turnsOut: 1.5 },
};

function fern(parts: object) {
  const state = new EngineState();
  state.speak(english);
  state.add([line("bike-described", BIKE, 1), line("setup-fitted", { ...parts, asFound: true }, 2)]);
  const answer = anatomyFor(state, { bike: "fern", step: null });
  if (!answer.ok) throw new RangeError(answer.detail);
  return answer.value.now;
}

describe("the carburetor to be drawn", () => {
  test("has the sizes that were read", () => {
    const now = fern(PARTS);
    expect(now).toMatchObject({
      shape: "round",
      clip: 3,
      grooves: 5,
      numbers: { main: 175, pilot: 42, needle: "N2K" },
      screw: { kind: "air", turns: 1.5 },
      usual: ["fuelLift"],
    });
    expect(now.heightMm).toBeCloseTo(36, 9);
    expect(now.seatToJetMm).toBeCloseTo(31, 9);
    expect(now.cutawayMm).toBeCloseTo(3.5, 9);
    expect(now.mainBoreMm).toBeCloseTo(1.75, 9);
  });

  // Trigonometry by hand: with the clip in groove 3 the needle sits 31 + 2 + lift mm below the top groove in the jet;
  // at half lift that is 51 mm, 10 mm into a taper of 2° between its flanks: 2.5 − 2 · 10 · tan 1° = 2.1509 mm.
  test("has the needle's diameter in the jet at each opening", () => {
    const { at } = fern(PARTS);
    const half = at.find(({ opening }) => opening === 0.5)!;
    expect(half.needleMm).toBeCloseTo(2.1509, 3);
    expect(half.gapMm).toBeCloseTo((2.7 - 2.1509) / 2, 3);
    expect(at[0]!.liftMm).toBeCloseTo(1.5, 9);
    expect(at[0]!.needleMm).toBeCloseTo(2.5, 9);
    expect(at[at.length - 1]!.liftMm).toBeCloseTo(36, 9);
  });

  test("says what leads at each opening, in shares of one", () => {
    const { at } = fern(PARTS);
    expect(at.map(({ leads }) => leads).filter((part, i, all) => part !== all[i - 1])).toEqual([
      "pilot",
      "slide",
      "needle",
      "main",
    ]);
    for (const { shares } of at) expect(shares.pilot + shares.needle + shares.main).toBeCloseTo(1, 9);
  });

  test("has a needle that still reaches into its jet at full throttle", () => {
    const now = fern(PARTS);
    expect(now.needle.map(({ belowTopGrooveMm }) => belowTopGrooveMm).slice(0, 2)).toEqual([0, 41]);
    const tip = now.needle[now.needle.length - 1]!;
    expect(tip.belowTopGrooveMm).toBeGreaterThan(31 + 36 + 4);
    expect(tip.diameterMm).toBeLessThan(2.5);
  });

  test("names what nobody knows", () => {
    expect([...fern({ main: { number: 175 } }).usual].sort()).toEqual(
      ["clip", "cutaway", "fuelLift", "needle", "needleJet", "pilot", "profile", "screw"].sort(),
    );
  });
});

test("a change of the example shop draws the parts it would fit", () => {
  const state = new EngineState();
  state.speak(english);
  state.add(readFileSync("demo/shop.jsonl", "utf8").split("\n").filter(Boolean));
  const answer = anatomyFor(state, { bike: "bramble", step: 0 });
  expect(answer.ok && answer.value.after).not.toBeNull();
  const without = anatomyFor(state, { bike: "bramble", step: 99 });
  expect(without.ok && without.value.after).toBeNull();
  expect(anatomyFor(state, { bike: "nobody", step: 0 }).ok).toBe(false);
});
