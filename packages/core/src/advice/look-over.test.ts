import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fitted } from "../metering/test-situations.ts";
import { known } from "../parts/known.ts";
import { english } from "../words/en.ts";
import type { BikeCase, CheckResult } from "./case.ts";
import { CHECKS, checkById } from "./checks.ts";
import { fits } from "./evidence.ts";
import type { FaultChances } from "./fault-cost.ts";
import { lookOver, lookOverMinutes } from "./look-over.ts";
import { faultPriorsFor } from "./next-step.ts";
import { DRAWER, FOUND, LOOKED_OVER, ride, saw, sound, story, tested } from "./test-stories.ts";
import { adviceOf, stepsOf, weighingOf } from "./test-weighing.ts";

const DAY = 86_400_000;
const bogs = ride([saw("stumbles-with-smoke"), saw("dives-below-idle")]);

/** The step for chances given by hand. */
function overWith(chances: FaultChances, given: Partial<BikeCase> = {}) {
  const told = story({ rides: [bogs], ...given });
  const checks = CHECKS.filter(({ strokes }) => fits(strokes, told.engine.strokes));
  return lookOver({ ...weighingOf(told), chances }, checks);
}

describe("[A21] a bike that was brought in with a complaint is looked over", () => {
  test("before any test and any change, once", () => {
    const { step, others } = adviceOf(story({ drawer: DRAWER, rides: [bogs] }));
    expect(step).toMatchObject({ kind: "look-over", id: "look-over", situation: null, changes: [] });
    expect(others.some(({ kind }) => kind === "change")).toBe(true);
    const after = adviceOf(
      story({ drawer: DRAWER, rides: [bogs], checks: step.looks!.map((id) => sound(id)) }),
    );
    expect(stepsOf(after).map(({ kind }) => kind)).not.toContain("look-over");
  });

  test("not while nothing is complained of, nor before parts that were changed are ridden", () => {
    const well = ["drops-straight-to-idle", "answers-crisply", "pulls-smoothly", "pulls-clean-to-peak"];
    const kinds = (given: Partial<BikeCase>) =>
      stepsOf(adviceOf(story({ drawer: DRAWER, ...given }))).map(({ kind }) => kind);
    expect(kinds({ rides: [ride(well.map((sign) => saw(sign)))] })).not.toContain("look-over");
    expect(kinds({})).not.toContain("look-over");
    const turned = fitted({ screw: known({ kind: "air" as const, turnsOut: 2.5 }) }, FOUND);
    expect(kinds({ rides: [bogs], now: turned })[0]).toBe("ride");
  });

  test("not before a fault that is likely by itself, a mend, a stop, or the cause of pinging", () => {
    const first = (given: Partial<BikeCase>) => adviceOf(story({ drawer: DRAWER, ...given })).step.kind;
    expect(first({ rides: [ride([saw("hangs-after-closing"), saw("hang-grows-with-heat")])] })).toBe("check");
    expect(first({ rides: [ride([saw("runs-on-by-itself")])] })).toBe("stop");
    expect(first({ rides: [ride([saw("pings-on-roll-on")])] })).toBe("check");
    const found: CheckResult = { ...sound("air-filter"), found: "faulty", fault: "air-filter" };
    expect(first({ rides: [bogs], checks: [found] })).toBe("mend");
  });

  test("again after a fresh start, and when the looks are a season old", () => {
    const first = (given: Partial<BikeCase>) =>
      adviceOf(story({ drawer: DRAWER, checks: LOOKED_OVER, ...given })).step.kind;
    const rode = (at: number) => [{ ...bogs, at }];
    expect(first({ rides: rode(90 * DAY) })).not.toBe("look-over");
    expect(first({ rides: rode(90 * DAY + 1) })).toBe("look-over");
    const late = { at: 91 * DAY } as const;
    expect(first({ rides: [bogs], tests: [tested("idle-hold", "holds", late)] })).toBe("look-over");
    expect(first({ rides: rode(9), freshStartAt: 1 })).toBe("look-over");
    expect(first({ rides: rode(9), freshStartAt: 0 })).not.toBe("look-over");
  });

  test("half done it goes on with what is open, from the fourth answer on it is done", () => {
    const given = (count: number) =>
      adviceOf(story({ drawer: DRAWER, rides: [bogs], checks: LOOKED_OVER.slice(0, count) }));
    const three = given(3).step;
    expect(three.kind).toBe("look-over");
    for (const { check } of LOOKED_OVER.slice(0, 3)) expect(three.looks).not.toContain(check);
    expect(stepsOf(given(4)).map(({ kind }) => kind)).not.toContain("look-over");
  });
});

describe("[A21] which looks, for this bike", () => {
  test("as it comes in, in working order: cold and fuel first, compression last, while the plug is out", () => {
    expect(overWith(faultPriorsFor(2))!.looks).toEqual([
      "tap-and-vents",
      "fuel-flow",
      "overflow-drip",
      "air-filter",
      "look-at-boots-and-clamps",
      "choke-plunger",
      "slide-snap-and-cable",
      "spark-and-plug",
      "compression",
    ]);
  });

  test("what the signs point to joins in, for what saves less; what cannot be the cause stays out", () => {
    const usual = faultPriorsFor(2);
    expect(overWith({ ...usual, cooling: 0.2 })!.looks).toContain("cooling");
    expect(overWith({ ...usual, "loose-head": 0.2 })!.looks).toContain("head-and-plug-tight");
    expect(overWith({ ...usual, "fuel-or-oil-wrong": 0.2 })!.looks![0]).toBe("fresh-fuel-and-oil");
    expect(overWith({ ...usual, "air-filter": 0 })!.looks).not.toContain("air-filter");
  });

  test("a look that saves less than a quarter of the minutes it adds stays out; with fewer than four there is none", () => {
    // The filter: 2 minutes, found 95 times in a hundred, 180 minutes at stake.
    const least = (0.25 * 2) / (0.95 * 180);
    const rest = { "fuel-supply": 0.1, "air-leak": 0.1, "slide-or-cable": 0.1, "float-valve": 0.1 };
    expect(overWith({ ...rest, "air-filter": 1.01 * least })!.looks).toContain("air-filter");
    expect(overWith({ ...rest, "air-filter": 0.99 * least })!.looks).not.toContain("air-filter");
    expect(overWith({ "air-leak": 0.1, "slide-or-cable": 0.1, "float-valve": 0.1 })).toBeNull();
  });

  test("worth: what is found and what it costs unfound, over the minutes; a second look for one fault counts for what is left", () => {
    // Setting up 2 minutes, tap 2, flow 3, drip 1, boots 2, slide 1.
    const over = overWith({
      "air-leak": 0.1,
      "slide-or-cable": 0.1,
      "float-valve": 0.1,
      "fuel-supply": 0.1,
    })!;
    expect(over.looks).toHaveLength(5);
    expect(over.minutes).toBe(11);
    const supply = 1 - 0.5 * 0.15;
    const gain = 0.1 * (0.45 * 300 + 0.85 * 300 + 0.8 * 180 + supply * 260);
    expect(over.worth).toBeCloseTo(gain / 11, 12);
    expect(over.sure.chance).toBeCloseTo(0.1 * (0.45 + 0.85 + 0.8 + supply), 12);
    expect(over.expect).toContain("about 3 of ten cases");
  });

  test("the plug out is counted once", () => {
    const rest = ["tap-and-vents", "look-at-boots-and-clamps"];
    expect(lookOverMinutes(rest)).toBe(6);
    expect(lookOverMinutes([...rest, "spark-and-plug"])).toBe(12);
    expect(lookOverMinutes([...rest, "compression"])).toBe(10);
    expect(lookOverMinutes([...rest, "spark-and-plug", "compression"])).toBe(14);
    expect(() => lookOverMinutes(["pressure-test"])).toThrow(RangeError);
  });

  test("never longer than 24 minutes, never a look twice, always shorter than its looks one by one", () => {
    const faults = [...new Set(CHECKS.flatMap(({ finds }) => Object.keys(finds)))];
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 0.2, noNaN: true }), {
          minLength: faults.length,
          maxLength: faults.length,
        }),
        fc.constantFrom(2 as const, 4 as const),
        (drawn, strokes) => {
          const chances = Object.fromEntries(faults.map((fault, i) => [fault, drawn[i]!]));
          const over = overWith(chances, { engine: { ...story().engine, strokes } });
          if (over === null) return;
          const looks = over.looks!.map((id) => checkById(id)!);
          expect(over.minutes).toBeLessThanOrEqual(24);
          expect(over.minutes).toBeLessThan(looks.reduce((sum, { minutes }) => sum + minutes, 0));
          expect(new Set(over.looks).size).toBe(looks.length);
          expect(looks.length).toBeGreaterThanOrEqual(4);
          for (const check of looks) {
            expect(fits(check.strokes, strokes)).toBe(true);
            for (const caution of check.cautions) expect(over.cautions).toContain(caution);
            for (const tool of english.checks[check.id].tools) expect(over.tools).toContain(tool);
          }
        },
      ),
      { seed: 21, numRuns: 40 },
    );
  });
});
