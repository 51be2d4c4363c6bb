import {
  clipLift,
  fromMillimetre,
  JET_NUMBERINGS,
  jetArea,
  known,
  OPENINGS,
  type Setup,
  shiftBetween,
  totalAt,
} from "@jetwright/core";
import { describe, expect, test } from "vitest";
import { adviceFor, caseFrom } from "./advice-for.ts";
import { FERN, HERON } from "./invented-bikes.ts";
import { changesOffered } from "./which-way.ts";

// Facts of the trade, seen through the whole tool. All of them: common practice, no source.

const { now } = caseFrom(FERN, "fern");

/** What other parts do at the eleven openings; above 0 richer. */
function effect(parts: Partial<Setup>): number[] {
  const shift = shiftBetween(now, { ...now, setup: { ...now.setup, ...parts } });
  if (!shift.ok) throw new Error(shift.detail);
  return OPENINGS.map((_, i) => totalAt(shift.value, i));
}

const strongest = (effects: readonly number[]): number =>
  OPENINGS[effects.reduce((best, each, i) => (Math.abs(each) > Math.abs(effects[best]!) ? i : best), 0)]!;

describe("parts", () => {
  test("the higher the number on a jet, the bigger the hole and the richer", () => {
    for (const numbering of JET_NUMBERINGS) {
      for (const number of [25, 48, 125, 180]) {
        const jet = { number, numbering, maker: "" };
        expect(jetArea({ ...jet, number: number + 2.5 })).toBeGreaterThan(jetArea(jet));
      }
    }
    const main = effect({ main: known({ ...now.setup.main.part!, number: 180 }) });
    const pilot = effect({ pilot: known({ ...now.setup.pilot.part!, number: 45 }) });
    expect(Math.min(...main, ...pilot)).toBeGreaterThanOrEqual(0);
    expect(main[10]).toBeGreaterThan(0.03);
    expect(pilot[0]).toBeGreaterThan(0.05);
  });

  test.each([
    ["pilot jet", { pilot: known({ ...now.setup.pilot.part!, number: 45 }) }, 0, 1 / 8],
    ["slide", { cutaway: known(fromMillimetre(4)) }, 1 / 16, 1 / 2],
    ["needle, by its clip", { clip: known(4) }, 1 / 4, 3 / 4],
    ["main jet", { main: known({ ...now.setup.main.part!, number: 185 }) }, 3 / 4, 1],
  ] as const)("the %s meters, and most where it should", (_, parts, from, to) => {
    const where = strongest(effect(parts));
    expect(where).toBeGreaterThanOrEqual(from);
    expect(where).toBeLessThanOrEqual(to);
  });

  test("clip grooves count from 1 at the top to 5 at the bottom", () => {
    const needle = now.setup.needle.part!;
    expect(needle.grooves).toBe(5);
    expect(clipLift(needle, 1)).toBe(0);
    for (let groove = 2; groove <= 5; groove++) {
      expect(clipLift(needle, groove) - clipLift(needle, groove - 1)).toBeCloseTo(needle.groovePitch, 12);
    }
  });

  test("a higher clip lowers the needle and leans the middle, not idle and hardly the top", () => {
    const higher = effect({ clip: known(2) });
    expect(higher[6]).toBeLessThan(-0.02);
    expect(Math.abs(higher[0]!)).toBeLessThan(0.005);
    expect(Math.abs(higher[10]!)).toBeLessThan(0.3 * Math.abs(higher[6]!));
  });

  test("a slide cut higher is leaner", () => {
    expect(Math.max(...effect({ cutaway: known(fromMillimetre(4)) }))).toBeLessThanOrEqual(0);
  });
});

describe("what it does says rich or lean", () => {
  const after = (log: string, bike: string, sign: string) =>
    adviceFor(
      `${log}
{"id":"r1","kind":"ride-reported","at":"2026-05-02T09:00:00Z","bike":"${bike}","body":{"reports":[{"sign":"${sign}"}]}}`,
      bike,
    ).picture;
  const most = (picture: ReturnType<typeof after>): number =>
    picture.reduce((best, { mean }) => (Math.abs(mean) > Math.abs(best) ? mean : best), 0);

  test.each([
    ["slow, blubbering answer to a quick opening at low revs", "stumbles-with-smoke"],
    ["revs that dive below idle after closing", "dives-below-idle"],
    ["stalls after closing the throttle", "stalls-on-closing"],
    ["heavy smoke", "smokes-when-warm"],
    ["black unburnt oil at the silencer", "black-oil-at-silencer"],
    ["plugs fouling again and again", "fouls-plugs"],
  ])("%s: rich", (_, sign) => {
    expect(most(after(FERN, "fern", sign))).toBeGreaterThan(0.005);
  });

  test.each([
    ["an idle that hangs after closing the throttle", "fern", "hangs-after-closing"],
    ["a bog with nothing happening on a big handful", "fern", "bogs-hollow-no-smoke"],
    ["pinging", "fern", "pings-on-roll-on"],
    ["an idle that hangs, on a four-stroke", "heron", "hangs-after-closing"],
  ])("%s: lean", (_, bike, sign) => {
    expect(most(after(bike === "fern" ? FERN : HERON, bike, sign))).toBeLessThan(-0.015);
  });

  test("the hang first in the pilot circuit", () => {
    const picture = after(FERN, "fern", "hangs-after-closing");
    expect(picture[0]!.mean).toBeLessThan(2 * picture[3]!.mean);
    expect(picture[0]!.mean).toBeLessThan(3 * picture[5]!.mean);
  });
});

describe("the work", () => {
  const rich = adviceFor(
    `${FERN}
{"id":"r1","kind":"ride-reported","at":"2026-05-02T09:00:00Z","bike":"fern","body":{"reports":[{"sign":"dives-below-idle"},{"sign":"stumbles-with-smoke","opening":"1/8"},{"sign":"four-strokes-under-load","opening":"1/2"},{"sign":"will-not-rev-out"},{"sign":"four-strokes-after-tiny-cut"}]}}
{"id":"c1","kind":"check-done","at":"2026-05-02T09:10:00Z","bike":"fern","body":{"check":"air-filter","found":"sound"}}
{"id":"c2","kind":"check-done","at":"2026-05-02T09:20:00Z","bike":"fern","body":{"check":"spark-and-plug","found":"sound"}}`,
    "fern",
  );
  const opened = changesOffered(rich).filter(({ changes }) => changes.some(({ part }) => part !== "screw"));

  test("starts with the fuel turned off", () => {
    expect(opened.length).toBeGreaterThan(0);
    for (const { cautions } of opened) expect(cautions[0]).toBe("fuel-off-first");
  });

  test("the usual tools: no. 2 cross-head and flat screwdriver, 3 mm hex key, 14 or 17 mm spanner for the bowl plug", () => {
    const bowl = opened.find(({ changes }) => changes.some(({ part }) => part === "main"));
    const tools = bowl!.tools.join(", ");
    for (const tool of ["no. 2 cross-head", "flat screwdriver", "3 mm hex key", "14 or 17 mm open spanner"]) {
      expect(tools).toContain(tool);
    }
  });

  test("ends with a test ride: every change is ridden and reported next", () => {
    const { step } = adviceFor(
      `${FERN}
{"id":"r1","kind":"ride-reported","at":"2026-05-02T09:00:00Z","bike":"fern","body":{"reports":[{"sign":"will-not-rev-out"}]}}
{"id":"r2","kind":"setup-fitted","at":"2026-05-02T10:00:00Z","bike":"fern","body":{"main":{"number":170}}}`,
      "fern",
    );
    expect(step.kind).toBe("ride");
    for (const { cautions } of opened) expect(cautions).toContain("test-riding");
  });
});
