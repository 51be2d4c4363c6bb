import { describe, expect, test } from "vitest";
import { FAULT_CATALOGUE } from "../belief/faults.ts";
import { english } from "../words/en.ts";
import type { BikeCase, CheckResult } from "./case.ts";
import { checkSteps, mendSteps } from "./check-steps.ts";
import { CHECKS, checkById } from "./checks.ts";
import { evidenceFrom } from "./evidence.ts";
import type { FaultChances } from "./fault-cost.ts";
import { ride, saw, story } from "./test-stories.ts";
import { adviceOf, stateOf, stepsOf, sureOf, weighingOf } from "./test-weighing.ts";

const check = (
  name: string,
  found: CheckResult["found"],
  at: number,
  fault: string | null = null,
): CheckResult => ({
  record: `${name}-${at}`,
  at,
  check: name,
  found,
  fault,
});
const HANG = [ride([saw("hangs-after-closing"), saw("hang-grows-with-heat")])];

/** Steps for the checks by chances of faults given by hand. */
const steps = (chances: FaultChances, given: Partial<BikeCase> = {}) =>
  checkSteps({ ...weighingOf(story(given)), chances }, CHECKS);
const ids = (list: readonly { readonly id: string }[]) => list.map(({ id }) => id);

describe("[A1] checks by what they save for a minute", () => {
  test("chance of a find times what the fault costs, by the minutes; the best first", () => {
    const list = steps({ "air-leak": 0.2 });
    expect(ids(list)).toEqual(["look-at-boots-and-clamps", "spray-joints", "pressure-test"]);
    // 0.2 x 0.45 x 300 minutes saved for 5 minutes.
    expect(list[0]!.worth).toBeCloseTo((0.2 * 0.45 * 300) / 5, 9);
    expect(list[0]!.minutes).toBe(5);
    expect(list[0]!.sure).toEqual({ chance: 0.2, words: "not sure" });
    for (let i = 1; i < list.length; i++) expect(list[i]!.worth).toBeLessThanOrEqual(list[i - 1]!.worth);
  });

  test("four at most, and none for a suspect that hardly counts", () => {
    const even = Object.fromEntries(FAULT_CATALOGUE.map(({ id }) => [id, 0.04]));
    expect(steps(even)).toHaveLength(4);
    expect(steps({ "air-leak": 0.05 }).map(({ id }) => id)).toContain("look-at-boots-and-clamps");
    // 0.04 x 0.45 is under 2 %, 0.04 x 0.95 is not.
    expect(ids(steps({ "air-leak": 0.04 }))).not.toContain("look-at-boots-and-clamps");
    expect(ids(steps({ "air-leak": 0.04 }))).toContain("pressure-test");
    expect(steps({})).toEqual([]);
  });

  test("a check of several faults speaks of the one it most likely finds", () => {
    const [drip] = steps({ "float-valve": 0.1, "float-level": 0.2 }).filter(
      ({ id }) => id === "overflow-drip",
    );
    // 0.1 x 0.8 against 0.2 x 0.25.
    expect(drip!.expect).toMatch(
      /^If a leaking float valve is behind it, this finds it about 8 times in ten\. Then: /,
    );
    expect(drip!.wrongIf).toBe(
      "All is sound. A leaking float valve is then less likely; note the check, and go on.",
    );
    const [level] = steps({ "float-valve": 0.02, "float-level": 0.4 }).filter(
      ({ id }) => id === "overflow-drip",
    );
    expect(level!.expect).toContain("a wrong float height");
  });

  test("never said to find it ten times in ten, for no check does", () => {
    for (const { expect: text } of steps({ "air-leak": 0.3 }))
      expect(text).toMatch(/about [1-9] times in ten/);
    expect(steps({ "air-leak": 0.3 }).find(({ id }) => id === "pressure-test")!.expect).toContain(
      "about 9 times",
    );
  });
});

describe("a check already made", () => {
  const asked = (...checks: CheckResult[]) => ids(steps({ "air-leak": 0.3 }, { checks }));

  test("is not asked again after it came out sound", () => {
    expect(asked(check("pressure-test", "sound", 5))).not.toContain("pressure-test");
    expect(asked(check("pressure-test", "sound", 5))).toContain("spray-joints");
  });

  test("is asked again when its last answer was a mend", () => {
    const mended = check("pressure-test", "mended", 6, "air-leak");
    expect(asked(check("pressure-test", "sound", 5), mended)).toContain("pressure-test");
    expect(asked(mended, check("pressure-test", "sound", 5))).toContain("pressure-test");
    expect(asked(check("pressure-test", "sound", 7), mended)).not.toContain("pressure-test");
    expect(asked(check("pressure-test", "sound", 6), mended)).not.toContain("pressure-test");
    expect(asked(mended, check("pressure-test", "sound", 6))).not.toContain("pressure-test");
  });

  test("and after a fresh start, from which on nothing older counts", () => {
    const checks = [check("pressure-test", "sound", 5)];
    const of = (freshStartAt: number) => ids(steps({ "air-leak": 0.3 }, { checks, freshStartAt }));
    expect(of(6)).toContain("pressure-test");
    expect(of(5)).not.toContain("pressure-test");
  });

  test("for a fault found and not mended yet there is nothing left to look for", () => {
    const found = check("spray-joints", "faulty", 5, "air-leak");
    expect(
      stepsOf(adviceOf(story({ rides: HANG, checks: [found] }))).filter(
        ({ id }) => checkById(id)?.finds["air-leak"],
      ),
    ).toEqual([]);
  });
});

describe("[A11] a look in full", () => {
  test("why, what to mind, and how far to open it until then", () => {
    const weighing = weighingOf(story({ rides: HANG }));
    const [look] = checkSteps(weighing, CHECKS);
    expect(look!.id).toBe("look-at-boots-and-clamps");
    expect(look!.why.map(({ text }) => text)).toContain("The hang grows as it gets hotter");
    expect(look!.cautions).toEqual(checkById(look!.id)!.cautions);
    expect(look!.how).toEqual(english.checks["look-at-boots-and-clamps"].steps);
    expect(look!.undo).toBe("Nothing is changed.");
    expect(look!.topThrottle).toBe("stay below 3/4");
    const proved = weighingOf(story({ rides: HANG }), sureOf(stateOf(() => 0.02, 0.01)));
    expect(checkSteps({ ...proved, chances: { "air-leak": 0.2 } }, CHECKS)[0]!.topThrottle).toBe("free");
  });
});

describe("[A4] mend first", () => {
  const mends = (...checks: CheckResult[]) => mendSteps(weighingOf(story({ rides: HANG, checks })));

  test("a fault found and not mended comes before every check, test and change", () => {
    const { step, others } = adviceOf(
      story({ rides: HANG, checks: [check("spray-joints", "faulty", 5, "air-leak")] }),
    );
    expect(step).toMatchObject({ kind: "mend", id: "air-leak", minutes: 10, worth: Infinity });
    expect(step.title).toBe("Put this right before any jet: an air leak");
    expect(step.how).toEqual([english.checks["spray-joints"].mend]);
    expect(step.why).toEqual([
      { record: "spray-joints-5", text: `${english.checks["spray-joints"].words}: faulty` },
    ]);
    expect(step.cautions).toContain("hand-over");
    expect(others.filter(({ kind }) => kind === "mend")).toEqual([]);
  });

  test("until it is mended, or a check that finds it comes out sound", () => {
    const found = check("pressure-test", "faulty", 5, "air-leak");
    expect(mends(found)).toHaveLength(1);
    expect(mends(found, check("pressure-test", "mended", 6, "air-leak"))).toEqual([]);
    expect(mends(found, check("pressure-test", "sound", 6))).toEqual([]);
    expect(mends(found, check("pressure-test", "mended", 4, "air-leak"))).toHaveLength(1);
    expect(mends()).toEqual([]);
  });

  test("several in the order of the catalogue, each from its own last finding", () => {
    const list = mends(
      check("overflow-drip", "faulty", 5, "float-level"),
      check("pressure-test", "faulty", 6, "air-leak"),
      check("look-at-boots-and-clamps", "faulty", 4, "air-leak"),
    );
    expect(ids(list)).toEqual(["air-leak", "float-level"]);
    expect(list.map(({ why }) => why[0]!.record)).toEqual(["pressure-test-6", "overflow-drip-5"]);
    const other = mends(
      check("overflow-drip", "faulty", 5, "float-level"),
      check("overflow-drip", "faulty", 7, "float-valve"),
    );
    expect(other.map(({ id, why }) => [id, why[0]!.record])).toEqual([
      ["float-level", "overflow-drip-5"],
      ["float-valve", "overflow-drip-7"],
    ]);
  });

  test("a find without a name is the fault the check is made for", () => {
    expect(ids(mends(check("overflow-drip", "faulty", 5)))).toEqual(["float-valve"]);
    expect(mends(check("overflow-drip", "faulty", 5), check("overflow-drip", "mended", 6))).toEqual([]);
    const sound = evidenceFrom(story({ checks: [check("overflow-drip", "sound", 5)] })).observations[0];
    expect(sound).toMatchObject({ fault: null });
  });

  test("the mend takes the leak's signs from before it off the mixture", () => {
    const reading = (...checks: CheckResult[]) =>
      adviceOf(story({ rides: [ride([saw("hangs-after-closing"), saw("hangs-after-closing")])], checks }))
        .picture[0]!.mean;
    const found = check("pressure-test", "faulty", 5, "air-leak");
    const never = adviceOf(story()).picture[0]!.mean;
    const before = reading(check("pressure-test", "sound", 5));
    const after = reading(found, check("pressure-test", "mended", 6, "air-leak"));
    expect(before).toBeLessThan(never - 0.03);
    expect(Math.abs(after - never)).toBeLessThan(0.25 * Math.abs(before - never));
  });
});
