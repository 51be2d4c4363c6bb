import { describe, expect, test } from "vitest";
import { FAULTS, type FaultId } from "../belief/catalogue.ts";
import { FAULT_CATALOGUE } from "../belief/faults.ts";
import { signById } from "../belief/signs/all.ts";
import { english } from "../words/en.ts";
import { CAUTIONS, cautionById } from "./cautions.ts";
import { CHECKS, checkById } from "./checks.ts";
import { TESTS, testById } from "./tests-on-engine.ts";

// As people read them: figures and words together.
const SAID_CHECKS = CHECKS.map((check) => ({ ...english.checks[check.id], ...check }));
const SAID_TESTS = TESTS.map((each) => ({ ...english.tests[each.id], ...each }));

const ids = (list: readonly { readonly id: string }[]) => list.map(({ id }) => id);

describe("cautions", () => {
  test("have unique ids and are found by them", () => {
    expect(new Set(ids(CAUTIONS)).size).toBe(CAUTIONS.length);
    for (const caution of CAUTIONS) expect(cautionById(caution.id)).toBe(caution);
    expect(() => cautionById("mind-your-head")).toThrow(/"mind-your-head" is not in the list/);
  });

  test("cover the hazards of the work", () => {
    expect(ids(CAUTIONS)).toEqual(
      expect.arrayContaining([
        "makers-manual",
        "fuel-off-first",
        "petrol-vapour",
        "battery",
        "fumes",
        "hot-parts",
        "eyes-and-skin",
        "seizure-at-full-throttle",
        "runaway",
        "test-riding",
        "noise",
        "free-revving",
        "spray-fire",
        "waste",
        "law",
        "hand-over",
      ]),
    );
  });

  test("are short, and the job starts with the fuel turned off (common practice, no source)", () => {
    for (const [id, text] of Object.entries(english.cautions))
      expect(text.split(/[.!] /).length, id).toBeLessThanOrEqual(4);
    expect(english.cautions["fuel-off-first"]).toMatch(/^Turn the fuel off before the job starts/);
    expect(english.cautions["makers-manual"]).toMatch(/manual .* before anything said here/);
    expect(english.cautions.law).toMatch(/local rules/);
  });
});

describe("checks", () => {
  test("have unique ids and are found by them", () => {
    expect(new Set(ids(CHECKS)).size).toBe(CHECKS.length);
    for (const check of CHECKS) expect(checkById(check.id)).toBe(check);
    expect(checkById("kick-the-tyres")).toBeUndefined();
  });

  test("find every fault an engine can have, with at least an even chance", () => {
    for (const strokes of ["two", "four"] as const) {
      for (const { id, prior } of FAULT_CATALOGUE) {
        const best = Math.max(
          0,
          ...CHECKS.filter((check) => check.strokes === "both" || check.strokes === strokes).map(
            (check) => check.finds[id] ?? 0,
          ),
        );
        if (prior[strokes] > 0) expect(best, `${id} in a ${strokes}-stroke`).toBeGreaterThanOrEqual(0.6);
      }
    }
  });

  test.each(SAID_CHECKS.map((check) => [check.id, check] as const))("%s is complete", (_, check) => {
    const finds = Object.entries(check.finds) as [FaultId, number][];
    expect(finds.length).toBeGreaterThan(0);
    for (const [fault, chance] of finds) {
      expect(FAULTS).toContain(fault);
      expect(chance).toBeLessThan(1);
      // A check that cries as often without the fault as with it tells nothing.
      expect(chance).toBeGreaterThan(4 * check.falseAlarm);
    }
    expect(check.falseAlarm).toBeGreaterThan(0);
    expect(check.minutes).toBeGreaterThanOrEqual(2);
    expect(check.minutes).toBeLessThanOrEqual(90);
    expect(check.steps.length).toBeGreaterThanOrEqual(3);
    expect(check.tools.length).toBeGreaterThan(0);
    expect(check.mend).toMatch(/[.]$/);
    for (const caution of check.cautions) expect(ids(CAUTIONS)).toContain(caution);
    expect(check.source).toMatch(/\[estimate\]/);
  });

  test("no step names a pressure whose psi and bar differ (1 psi = 6894.757 Pa, NIST SP 811)", () => {
    const texts = [...SAID_CHECKS.flatMap(({ steps }) => steps), ...Object.values(english.cautions)];
    const pairs = texts.flatMap((text) =>
      [...text.matchAll(/(\d+)(?: to (\d+))?(?: psi)? \(([\d.]+)(?: to ([\d.]+))?(?: bar)?\)/g)].flatMap(
        ([, psi, psiTo, bar, barTo]) =>
          psiTo && barTo
            ? [
                [psi, bar],
                [psiTo, barTo],
              ]
            : [[psi, bar]],
      ),
    );
    expect(pairs.length).toBeGreaterThanOrEqual(8);
    for (const [psi, bar] of pairs) {
      const digits = (bar!.split(".")[1] ?? "").length;
      expect(Number(bar), `${psi} psi`).toBeCloseTo((Number(psi) * 6894.757) / 1e5, digits);
    }
  });

  test("the pressure test: manual first, 6 psi for 6 minutes, never above 10, no bar to a four-stroke's sump", () => {
    const check = checkById("pressure-test")!;
    const { steps } = english.checks["pressure-test"];
    expect(steps[0]).toMatch(/^The maker's manual first/);
    expect(steps.join(" ")).toMatch(/6 psi \(0\.41 bar\) and watch for 6 minutes/);
    expect(check.cautions).toContain("low-pressure-only");
    expect(check.strokes).toBe("two");
  });

  test("opening the float bowl starts with the fuel off and needs the usual tools (common practice, no source)", () => {
    const bowl = SAID_CHECKS.filter(({ tools }) =>
      tools.includes("14 or 17 mm open spanner for the bowl plug"),
    );
    expect(bowl.length).toBeGreaterThanOrEqual(4);
    for (const { cautions, tools, id } of bowl) {
      expect(cautions, id).toContain("fuel-off-first");
      expect(tools, id).toContain("no. 2 cross-head and flat screwdriver");
      expect(tools, id).toContain("3 mm hex key");
    }
  });

  test("a leak can be looked for in minutes before the long test", () => {
    const minutes = (id: string) => checkById(id)!.minutes;
    expect(minutes("look-at-boots-and-clamps")).toBeLessThan(minutes("spray-joints"));
    expect(minutes("spray-joints")).toBeLessThan(minutes("pressure-test"));
    expect(checkById("pressure-test")!.finds["air-leak"]).toBeGreaterThan(
      checkById("spray-joints")!.finds["air-leak"]!,
    );
  });
});

describe("tests on the engine", () => {
  test("have unique ids and are found by them", () => {
    expect(new Set(ids(TESTS)).size).toBe(TESTS.length);
    for (const each of TESTS) expect(testById(each.id)).toBe(each);
    expect(testById("listen-hard")).toBeUndefined();
  });

  test.each(SAID_TESTS.map((each) => [each.id, each] as const))(
    "%s ends in signs its engine can show",
    (_, each) => {
      expect(each.outcomes.length).toBeGreaterThanOrEqual(2);
      expect(new Set(ids(each.outcomes)).size).toBe(each.outcomes.length);
      for (const { sign } of each.outcomes) {
        const found = signById(sign!);
        expect(found, sign!).toBeDefined();
        expect(["both", each.strokes]).toContain(found!.strokes);
      }
      expect(each.openings.length).toBeGreaterThan(0);
      expect(each.steps.length).toBeGreaterThanOrEqual(3);
      for (const caution of each.cautions) expect(ids(CAUTIONS)).toContain(caution);
      expect(each.cautions).toContain("runaway");
      expect(each.minutes).toBeGreaterThanOrEqual(2);
      expect(each.source).toMatch(/minutes \[estimate\]/);
    },
  );

  test.each(TESTS.map((each) => [each.id, each] as const))(
    "%s says when it holds the engine wide open",
    (_, each) => {
      expect(each.wideOpen).toBe(each.openings.some((opening) => opening >= 3 / 4));
      if (each.wideOpen) {
        expect(each.openings.every((opening) => opening >= 3 / 4)).toBe(true);
        expect(each.cautions).toEqual(
          expect.arrayContaining(["seizure-at-full-throttle", "stop-at-knock", "test-riding"]),
        );
      }
    },
  );

  test("each sweep is for its own screw and says which way is more fuel", () => {
    const air = testById("screw-sweep-air")!;
    const fuel = testById("screw-sweep-fuel")!;
    expect([air.screw, fuel.screw]).toEqual(["air", "fuel"]);
    expect(english.tests["screw-sweep-air"].steps[0]).toMatch(/filter side.*Out is .*less fuel/);
    expect(english.tests["screw-sweep-fuel"].steps[0]).toMatch(/engine side.*Out is more fuel/);
    const speaks = (test: typeof air, outcome: string) => {
      const { chance } = signById(test.outcomes.find(({ id }) => id === outcome)!.sign!)!;
      return chance.lean > chance.rich ? "lean" : "rich";
    };
    // A filter-side screw best nearly closed wants a bigger pilot; an engine-side one a smaller (engineerfix.com; memory).
    expect(speaks(air, "nearly-closed")).toBe("lean");
    expect(speaks(air, "far-out")).toBe("rich");
    expect(speaks(fuel, "nearly-closed")).toBe("rich");
    expect(speaks(fuel, "far-out")).toBe("lean");
    for (const each of TESTS) if (!each.id.startsWith("screw-sweep")) expect(each.screw).toBeNull();
  });

  test("the run-down with the tap shut is never made at three quarters or more", () => {
    expect(Math.max(...testById("tap-off-run-down")!.openings)).toBe(1 / 2);
    expect(english.tests["tap-off-run-down"].steps.join(" ")).toMatch(/Never at three quarters or more/);
  });

  test("every sign shown by a test alone is reached by one", () => {
    const reached = new Set(TESTS.flatMap(({ outcomes }) => outcomes.map(({ sign }) => sign)));
    for (const id of [
      "touch-of-choke-better",
      "tap-off-clears-before-it-dies",
      "screw-peak-in-the-middle",
      "one-step-more-fuel-better",
      "one-step-more-fuel-worse",
      "stays-on-known-good-setting",
      "roll-off-picks-up",
      "choke-flick-revs-higher",
      "hang-grows-with-heat",
    ]) {
      expect(reached).toContain(id);
    }
  });
});
