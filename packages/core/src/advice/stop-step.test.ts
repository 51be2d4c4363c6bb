import { describe, expect, test } from "vitest";
import { SIGNS } from "../belief/signs/all.ts";
import { boreJet, fitted } from "../metering/test-situations.ts";
import { known } from "../parts/known.ts";
import { english } from "../words/en.ts";
import type { BikeCase, CheckResult } from "./case.ts";
import { knockNotes, stopStep, warnedOfKnock } from "./stop-step.ts";
import { FOUND, notThere, ride, saw, story, tested } from "./test-stories.ts";
import { adviceOf } from "./test-weighing.ts";
import type { Weighing } from "./weighing.ts";

const stop = (given: Partial<BikeCase>) => stopStep({ story: story(given), words: english } as Weighing);
const checked = (at: number, found: CheckResult["found"] = "sound"): CheckResult => ({
  record: `check-${at}`,
  at,
  check: "spark-and-plug",
  found,
  fault: null,
});

describe("[A6] a stop sign ends tuning", () => {
  test.each(SIGNS.filter((sign) => sign.stop).map(({ id }) => id))("%s", (id) => {
    const advice = adviceOf(story({ rides: [ride([saw(id), saw("pulls-smoothly")])] }));
    expect(advice.step.kind).toBe("stop");
    expect(advice.others).toEqual([]);
    expect(advice.step.how.join(" ")).toMatch(/licensed technician/);
    expect(advice.step.how.join(" ")).toMatch(/Do not start it again/);
    expect(advice.step.cautions).toEqual(expect.arrayContaining(["hand-over", "stop-at-knock"]));
    expect(advice.step.why).toHaveLength(1);
    expect(advice.step.topThrottle).toBe("stay below 3/4");
    expect(advice.step.notes.join(" ")).toMatch(/a richer main jet first, never a leaner one/);
  });

  test("no other sign does, nor a stop sign looked for and not there", () => {
    for (const { id } of SIGNS.filter((sign) => !sign.stop))
      expect(stop({ rides: [ride([saw(id)])] })).toBeNull();
    expect(stop({ rides: [ride([notThere("runs-on-by-itself")])] })).toBeNull();
    expect(stop({ rides: [ride([saw("no-such-sign")])] })).toBeNull();
  });

  test("the outcome of a test stops too", () => {
    const specks = stop({ tests: [tested("plug-look-full", "specks", { at: 4 })] });
    expect(specks?.why).toEqual(
      [{ record: "test-4", text: "Grey specks or metal beads on the plug" }].map((each) =>
        expect.objectContaining({ record: each.record }),
      ),
    );
    expect(stop({ tests: [tested("full-pull", "tearing")] })?.kind).toBe("stop");
    expect(stop({ tests: [tested("plug-look-full", "tan")] })).toBeNull();
    expect(stop({ tests: [tested("no-such-test", "specks")] })).toBeNull();
    expect(stop({ tests: [tested("plug-look-full", "no-such-outcome")] })).toBeNull();
  });

  test("until a later check is on record, whatever it found; an earlier one does not answer it", () => {
    const rides = [ride([saw("knocks-from-inside")], { at: 5 })];
    for (const found of ["sound", "faulty", "mended"] as const) {
      expect(stop({ rides, checks: [checked(6, found)] })).toBeNull();
      expect(stop({ rides, checks: [checked(4, found)] })?.kind).toBe("stop");
    }
    expect(
      stop({ rides: [...rides, ride([saw("knocks-from-inside")], { at: 8 })], checks: [checked(6)] })?.why,
    ).toEqual([expect.objectContaining({ record: "ride-8" })]);
    const tests = [tested("full-pull", "tearing", { at: 5 })];
    expect(stop({ tests, checks: [checked(6)] })).toBeNull();
  });

  test("or a fresh start; and on whatever parts it was seen", () => {
    const rides = [
      ride([saw("knocks-from-inside")], { at: 5, situation: fitted({ main: known(boreJet(180)) }, FOUND) }),
    ];
    expect(stop({ rides })?.kind).toBe("stop");
    expect(stop({ rides, freshStartAt: 6 })).toBeNull();
    expect(stop({ rides, freshStartAt: 4 })?.kind).toBe("stop");
  });

  test("[A11] with every sign that is open, the oldest first", () => {
    const rides = [
      ride([saw("tearing-note-at-full-throttle")], { at: 7 }),
      ride([saw("runs-on-by-itself")], { at: 3 }),
    ];
    expect(stop({ rides })?.why.map(({ record }) => record)).toEqual(["ride-3", "ride-7"]);
    const both = [saw("tearing-note-at-full-throttle"), saw("knocks-from-inside")];
    const told = [both, [...both].reverse()].map((reports) => stop({ rides: [ride(reports)] })?.why);
    expect(told[0]).toHaveLength(2);
    expect(told[1]).toEqual(told[0]);
    const same = [ride([both[0]!], { at: 4, record: "b" }), ride([both[0]!], { at: 4, record: "a" })];
    for (const rides of [same, [...same].reverse()])
      expect(stop({ rides })?.why.map(({ record }) => record)).toEqual(["a", "b"]);
  });
});

describe("[A6] pinging is a warning", () => {
  const ping = (at: number, given = {}) => ride([saw("pings-on-roll-on")], { at, ...given });
  const warned = (given: Partial<BikeCase>) => warnedOfKnock(story(given));

  test("on the parts and air of now, since the last mend or fresh start", () => {
    expect(warned({ rides: [ping(2)] })).toBe(true);
    expect(warned({ rides: [ping(2, { situation: fitted({ main: known(boreJet(170)) }, FOUND) })] })).toBe(
      false,
    );
    expect(warned({ rides: [ping(2)], checks: [checked(3, "mended")] })).toBe(false);
    expect(warned({ rides: [ping(4)], checks: [checked(3, "mended")] })).toBe(true);
    expect(warned({ rides: [ping(3)], checks: [checked(3, "mended")] })).toBe(false);
    expect(warned({ rides: [ping(2)], freshStartAt: 3 })).toBe(false);
    expect(warned({ rides: [ride([notThere("pings-on-roll-on")])] })).toBe(false);
    expect(warned({ rides: [ride([saw("jerks-at-constant-grip")])] })).toBe(false);
  });

  test("also as the outcome of a test", () => {
    expect(warned({ tests: [tested("roll-on", "pings")] })).toBe(true);
    expect(warned({ tests: [tested("roll-on", "clean")] })).toBe(false);
  });

  test("the next ride is told to mind it", () => {
    expect(knockNotes(story({ rides: [ping(2)] }), english)).toHaveLength(1);
    expect(knockNotes(story(), english)).toEqual([]);
  });
});
