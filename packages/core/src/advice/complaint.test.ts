import { describe, expect, test } from "vitest";
import { signById } from "../belief/signs/all.ts";
import { stretchAt, stretchOf } from "../belief/state.ts";
import { boreJet, dryAir, fitted, inAir, withScrew } from "../metering/test-situations.ts";
import { known } from "../parts/known.ts";
import { OPENINGS } from "../units/opening.ts";
import type { BikeCase, CheckResult } from "./case.ts";
import { bandOfStretch, noticedNow, since, sweptWithoutCure, verdictOf } from "./complaint.ts";
import { FOUND, notThere, ride, saw, story, tested } from "./test-stories.ts";
import { weighingOf } from "./test-weighing.ts";

const noticed = (given: Partial<BikeCase>) => {
  const { trouble, health } = noticedNow(weighingOf(story(given)));
  return { trouble: [...trouble].sort(), health: [...health].sort() };
};
const check = (at: number, found: CheckResult["found"]): CheckResult => ({
  record: `check-${at}`,
  at,
  check: "pressure-test",
  found,
  fault: "air-leak",
});

describe("where trouble and health were noticed", () => {
  test("a sign counts for the stretch it speaks of, or where it was reported", () => {
    expect(noticed({ rides: [ride([saw("hangs-after-closing"), saw("pulls-clean-to-peak")])] })).toEqual({
      trouble: ["bottom"],
      health: ["top"],
    });
    expect(noticed({ rides: [ride([saw("jerks-at-constant-grip", OPENINGS[6]!)])] }).trouble).toEqual([
      "middle",
    ]);
    expect(bandOfStretch(stretchAt(OPENINGS[9]!))).toBe("top");
    const of = (...weights: readonly (readonly [number, number])[]) =>
      bandOfStretch(stretchOf(weights.map(([i, weight]) => [OPENINGS[i]!, weight])));
    expect(of([2, 5], [6, 4])).toBe("bottom");
    expect(of([2, 4], [6, 5])).toBe("middle");
    expect(of([0, 1], [4, 1], [8, 1])).toBe("bottom");
    expect(of([4, 1], [8, 1])).toBe("middle");
  });

  test("a bog or a stumble on a quick opening is the bottom's (common practice, no source)", () => {
    for (const sign of ["bogs-hollow-no-smoke", "stumbles-with-smoke", "answers-crisply"])
      expect(bandOfStretch(stretchOf(signById(sign)!.speaksOf)), sign).toBe("bottom");
  });

  test("a sign of trouble looked for and not there proves no health; a sign of health not there is trouble", () => {
    expect(
      noticed({ rides: [ride([notThere("hangs-after-closing"), notThere("pulls-clean-to-peak")])] }),
    ).toEqual({
      trouble: ["top"],
      health: [],
    });
  });

  test("a stretch counts as reported whatever was said of it", () => {
    const reports = [notThere("hangs-after-closing"), saw("will-not-rev-out")];
    const { reported } = noticedNow(weighingOf(story({ rides: [ride(reports)] })));
    expect([...reported].sort()).toEqual(["bottom", "top"]);
  });

  test("[A9] what was noticed before the last mend is no complaint, nor what another mixture there did", () => {
    const hang = (given: Parameters<typeof ride>[1]) => ride([saw("hangs-after-closing")], given);
    expect(noticed({ rides: [hang({ at: 5 })], checks: [check(5, "mended")] }).trouble).toEqual([]);
    expect(noticed({ rides: [hang({ at: 5 })], checks: [check(4, "mended")] }).trouble).toEqual(["bottom"]);
    expect(noticed({ rides: [hang({ at: 5 })], checks: [check(6, "sound")] }).trouble).toEqual(["bottom"]);
    const other = fitted({ pilot: known(boreJet(47.5)) }, FOUND);
    expect(noticed({ rides: [hang({ situation: other })] }).trouble).toEqual([]);
    expect(noticed({ rides: [hang({ situation: inAir(dryAir(1.1), FOUND) })] }).trouble).toEqual([]);
    expect(noticed({ rides: [hang({ situation: inAir(dryAir(1.19), FOUND) })] }).trouble).toEqual(["bottom"]);
  });

  test("[A9] what was noticed stays while only parts change that do not reach there", () => {
    const main = fitted({ main: known(boreJet(180)) }, FOUND);
    const reports = [saw("hangs-after-closing"), saw("pulls-smoothly"), saw("will-not-rev-out")];
    expect(noticed({ rides: [ride(reports)] })).toEqual({ trouble: ["bottom", "top"], health: ["middle"] });
    expect(noticed({ rides: [ride(reports, { situation: main })] }).trouble).toEqual(["bottom"]);
    const screw = withScrew(2.75, FOUND);
    expect(noticed({ rides: [ride(reports, { situation: screw })] })).toEqual({
      trouble: ["top"],
      health: ["middle"],
    });
  });

  test("a fresh start or the last mend, the later", () => {
    expect(since(story())).toBe(-Infinity);
    expect(since(story({ freshStartAt: 7 }))).toBe(7);
    expect(
      since(
        story({ freshStartAt: 7, checks: [check(9, "mended"), check(4, "mended"), check(12, "faulty")] }),
      ),
    ).toBe(9);
  });
});

describe("what a sign says by itself", () => {
  const says = (id: string, seen = true) => verdictOf(signById(id)!, seen);

  test.each([
    ["hangs-after-closing", "trouble"],
    ["four-strokes-under-load", "trouble"],
    ["gearbox-oil-goes-missing", "trouble"],
    ["kicks-over-easily", "trouble"],
    ["drops-straight-to-idle", "health"],
    ["pulls-clean-to-peak", "health"],
    ["screw-peak-in-the-middle", "health"],
    ["four-strokes-at-about-80-percent", "health"],
  ] as const)("%s seen: %s", (id, verdict) => {
    expect(says(id)).toBe(verdict);
  });

  test("the other way round when it was looked for and not there", () => {
    expect(says("hangs-after-closing", false)).toBeNull();
    expect(says("drops-straight-to-idle", false)).toBe("trouble");
    expect(says("gearbox-oil-goes-missing", false)).toBeNull();
  });

  test("twice as likely with a wrong mixture or a fault is trouble; with a right one, and no fault, health", () => {
    const of = (rich: number, right: number, lean: number, faults = {}, healthy = false) =>
      verdictOf({ chance: { rich, right, lean }, faults, healthy }, true);
    expect(of(0.1, 0.3, 0.6)).toBe("trouble");
    expect(of(0.1, 0.3, 0.59)).toBeNull();
    expect(of(0.6, 0.3, 0.1)).toBe("trouble");
    expect(of(0.25, 0.5, 0.1)).toBe("health");
    expect(of(0.26, 0.5, 0.1)).toBeNull();
    expect(of(0.1, 0.5, 0.26)).toBeNull();
    expect(of(0.1, 0.5, 0.1, { "air-leak": 0.2 })).toBeNull();
    expect(of(0.1, 0.3, 0.2, { "air-leak": 0.6 })).toBe("trouble");
    expect(of(0.1, 0.3, 0.2, { "air-leak": 0.6 }, true)).toBe("health");
  });
});

describe("a screw that was swept", () => {
  const sweep = (outcome: string, given: Parameters<typeof tested>[2] = {}) =>
    sweptWithoutCure(story({ tests: [tested("screw-sweep-air", outcome, given)] }));

  test("is no cure when its best was at either end, on the parts and air of now", () => {
    expect([sweep("nearly-closed"), sweep("far-out"), sweep("middle")]).toEqual([true, true, false]);
    expect(sweep("far-out", { situation: fitted({ pilot: known(boreJet(45)) }, FOUND) })).toBe(false);
    expect(sweptWithoutCure(story({ tests: [tested("quick-opening", "bog")] }))).toBe(false);
    expect(sweptWithoutCure(story({ tests: [tested("screw-sweep-air", "far-out")], freshStartAt: 2 }))).toBe(
      false,
    );
  });
});
