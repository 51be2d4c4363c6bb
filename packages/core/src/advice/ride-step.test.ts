import { describe, expect, test } from "vitest";
import { boreJet, dryAir, fitted, inAir, withScrew } from "../metering/test-situations.ts";
import { known } from "../parts/known.ts";
import type { BikeCase, CheckResult } from "./case.ts";
import { rideStep } from "./ride-step.ts";
import { DRAWER, FOUND, ride, saw, story, tested } from "./test-stories.ts";
import { adviceOf, stateOf, sureOf, weighingOf } from "./test-weighing.ts";

const step = (given: Partial<BikeCase> = {}, belief = {}) => rideStep(weighingOf(story(given), belief));
const bigger = fitted({ main: known(boreJet(180)) }, FOUND);
const RIGHT = sureOf(stateOf(() => 0.01, 0.015));
const HEARD = { rides: [ride([saw("lazy-and-heavy")])] };
const HEALTHY = [
  ride([
    saw("drops-straight-to-idle"),
    saw("idles-steadily"),
    saw("answers-crisply"),
    saw("pulls-smoothly"),
    saw("pulls-clean-to-peak"),
    saw("four-strokes-at-about-80-percent"),
  ]),
];

describe("[A10] ride what was fitted", () => {
  test("when nothing was ever reported", () => {
    expect(step()).toMatchObject({ id: "ride", title: "Ride it as it is, and report what it does" });
    expect(step().worth).toBeCloseTo(50 / 12, 9);
  });

  test("when the parts of now were never ridden, whatever was known of others: before anything else", () => {
    const given = story({
      now: bigger,
      drawer: DRAWER,
      rides: [ride([saw("dives-below-idle"), saw("idle-loads-up")])],
    });
    expect(adviceOf(given).step).toMatchObject({ kind: "ride", id: "ride" });
    const ridden = {
      ...given,
      rides: [...given.rides, ride([saw("dives-below-idle")], { at: 2, situation: bigger })],
    };
    expect(adviceOf(ridden).step.kind).not.toBe("ride");
  });

  test("heard of are the parts as fitted in any air, by a ride or a test, since the last mend or fresh start", () => {
    const heard = (given: Partial<BikeCase>) => step(given).worth === 0;
    expect(heard(HEARD)).toBe(true);
    expect(heard({ rides: [ride([], { situation: inAir(dryAir(1.0), FOUND) })] })).toBe(true);
    expect(heard({ tests: [tested("quick-opening", "crisp")] })).toBe(true);
    expect(heard({ rides: [ride([], { situation: bigger })] })).toBe(false);
    const mended: CheckResult = {
      record: "m",
      at: 5,
      check: "pressure-test",
      found: "mended",
      fault: "air-leak",
    };
    expect(heard({ rides: [ride([], { at: 5 })], checks: [mended] })).toBe(false);
    expect(heard({ rides: [ride([], { at: 6 })], checks: [mended] })).toBe(true);
    expect(heard({ rides: [ride([], { at: 6 })], freshStartAt: 7 })).toBe(false);
  });
});

describe("[A10] a turned screw is proved on the stand", () => {
  const turned = withScrew(2.5, FOUND);
  const reports = [saw("dives-below-idle"), saw("pulls-smoothly")];

  test("when the screw alone was turned since these parts were ridden: in four minutes, and before anything else", () => {
    const given = { now: turned, rides: [ride(reports)] };
    expect(step(given)).toMatchObject({ id: "stand", minutes: 4, tools: [] });
    expect(step(given).title).toMatch(/^Let it idle and snap it open/);
    expect(step(given).how.join(" ")).toMatch(/20 seconds at idle/);
    expect(step(given).cautions).not.toContain("test-riding");
    for (const caution of ["fumes", "free-revving", "runaway"])
      expect(step(given).cautions).toContain(caution);
    expect(step(given).worth).toBeCloseTo(50 / 4, 9);
    expect(adviceOf(story(given)).step).toMatchObject({ kind: "ride", id: "stand" });
  });

  test("not when another part was changed too, nor when nothing was heard since the last mend", () => {
    const both = fitted({ main: known(boreJet(180)) }, turned);
    expect(step({ now: both, rides: [ride(reports)] }).id).toBe("ride");
    expect(step({ now: turned, rides: [ride(reports)], freshStartAt: 9 }).id).toBe("ride");
  });

  test("once it was heard of, it is ridden like any other", () => {
    const rides = [ride(reports), ride([saw("idles-steadily")], { at: 2, situation: turned })];
    expect(step({ now: turned, rides }).id).not.toBe("stand");
    expect(step({ now: turned, rides }).worth).toBe(0);
  });
});

describe("[A10] nothing needs changing", () => {
  test("when every spoken opening is right with a 60 % chance: the ride confirms it", () => {
    const confirm = step({ rides: [ride([])] }, RIGHT);
    expect(confirm).toMatchObject({
      id: "confirm",
      title: "Nothing needs changing: confirm it with this ride",
    });
    expect(confirm.expect).toBe("It runs as well as it did, at every opening.");
    expect(confirm.sure.chance).toBeGreaterThan(0.9);
  });

  test("right is from 4 % lean to 6 % rich", () => {
    const at = (mean: number) => step({ rides: [ride([])] }, sureOf(stateOf(() => mean, 0.001))).id;
    expect([-0.039, 0.059].map(at)).toEqual(["confirm", "confirm"]);
    expect([-0.041, 0.061].map(at)).toEqual(["ride", "ride"]);
  });

  test("a chance of 60 %, not less", () => {
    // Half the width over the spread: 0.05 / sd. A normal is within 0.8416 spreads of its middle with 60 % (tables [memory]).
    const with_ = (spreads: number) =>
      step({ rides: [ride([])] }, sureOf(stateOf(() => 0.01, 0.05 / spreads))).id;
    expect([with_(0.85), with_(0.83)]).toEqual(["confirm", "ride"]);
  });

  test("or when all that was noticed is health at the bottom, in the middle and at the top", () => {
    const advice = adviceOf(story({ rides: HEALTHY, drawer: DRAWER }));
    expect(advice.step).toMatchObject({ kind: "ride", id: "confirm", topThrottle: "free" });
    expect(advice.others.filter(({ kind }) => kind === "change")).toEqual([]);
  });

  test("and says otherwise while there is trouble", () => {
    const troubled = step({ rides: [ride([saw("hangs-after-closing")])] }, RIGHT);
    expect(troubled.title).toBe("No change is worth its minutes now: ride on, and report what changes");
    expect(troubled.expect).toMatch(/^It runs as it did\./);
  });
});

describe("what is asked of the next ride", () => {
  const open = (error: (opening: number) => number, sd = 0.01) =>
    step({ rides: [ride([])] }, sureOf(stateOf(error, sd))).title;

  test("the openings least sure to be right, three at most, in the order of the grip", () => {
    expect(open((opening) => (opening === 0.25 ? 0.09 : 0))).toBe("Ride it again and report at 1/4 throttle");
    expect(open((opening) => (opening === 0 || opening === 0.5 ? 0.1 : 0))).toBe(
      "Ride it again and report at closed throttle and at 1/2 throttle",
    );
    expect(open((opening) => ({ 0: 0.1, 0.125: 0.07, 0.25: 0.12, 0.5: 0.09 })[opening] ?? 0)).toBe(
      "Ride it again and report at closed throttle and at 1/4 and 1/2 throttle",
    );
  });

  test("[A3] not from 3/4 up while the top may be lean, and the ride leaves it alone", () => {
    const lean = step(
      { rides: [ride([])] },
      sureOf(stateOf((opening) => (opening >= 0.75 ? -0.08 : opening === 0.5 ? 0.1 : 0), 0.01)),
    );
    expect(lean.title).toBe("Ride it again and report at 1/2 throttle");
    expect(lean.topThrottle).toBe("stay below 3/4");
    expect(lean.how.join(" ")).toMatch(/Leave 3\/4 and more alone/);
    expect(lean.cautions).toContain("seizure-at-full-throttle");
    const rich = step(
      { rides: [ride([])] },
      sureOf(stateOf((opening) => (opening >= 0.75 ? 0.12 : 0), 0.01)),
    );
    expect(rich.title).toBe("Ride it again and report at 3/4 and full throttle");
    expect(rich.how.join(" ")).toMatch(/hold a few seconds, then roll back a little/);
    expect(rich.cautions).not.toContain("seizure-at-full-throttle");
  });

  test("not a stretch reported well already", () => {
    const rides = [ride([saw("pulls-smoothly")])];
    const asked = (given: Partial<BikeCase>) => step(given, sureOf(stateOf(() => 0.08, 0.01))).title;
    expect(asked({ rides })).not.toMatch(/1\/4|1\/2/);
    expect(asked({ rides: [ride([])] })).toMatch(/1\/4|1\/2|1\/8/);
  });

  test("how: the grip marked, warm, from closed up, and what was looked for and not there", () => {
    const { how, tools } = step();
    const order = [
      /Mark the grip/,
      /fully warm.*three times/,
      /20 seconds at idle.*1\/8 to 1\/4/,
      /1\/4 to 1\/2/,
      /did not find/,
    ];
    expect(how).toHaveLength(order.length);
    order.forEach((words, i) => {
      expect(how[i]).toMatch(words);
    });
    expect(tools.join(" ")).toMatch(/tape/);
    expect(step({ rides: HEALTHY }, RIGHT).why).toEqual([]);
  });

  test("[A11] why: what is known of the opening most in doubt", () => {
    expect(step(HEARD).why).toEqual([{ record: "ride-1", text: "Smooth but lazy and heavy" }]);
    expect(step().why).toEqual([]);
  });
});
