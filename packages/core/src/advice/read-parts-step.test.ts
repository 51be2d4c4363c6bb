import { describe, expect, test } from "vitest";
import { fitted } from "../metering/test-situations.ts";
import { UNKNOWN } from "../parts/known.ts";
import type { Setup } from "../parts/setup.ts";
import { listed } from "../words/en/listed.ts";
import { readPartsStep } from "./read-parts-step.ts";
import { FOUND, LOOKED_OVER, ride, saw, story } from "./test-stories.ts";
import { adviceOf, stateOf, stepsOf, sureOf, weighingOf } from "./test-weighing.ts";

const without = (parts: Partial<Setup>, reports = [saw("four-strokes-under-load")]) => {
  const now = fitted(parts, FOUND);
  return story({ now, reference: now, rides: [ride(reports, { situation: now })] });
};

describe("[A8] know what is fitted", () => {
  test("nothing to read where all is known", () => {
    expect(readPartsStep(weighingOf(story()))).toEqual([]);
  });

  test("each part that is not known is named", () => {
    const title = (parts: Partial<Setup>) => readPartsStep(weighingOf(without(parts)))[0]!.title;
    expect(title({ main: UNKNOWN })).toBe("Find out what is fitted: main jet");
    expect(title({ pilot: UNKNOWN, screw: UNKNOWN })).toBe(
      "Find out what is fitted: pilot jet and screw setting",
    );
    expect(title({ pilot: UNKNOWN, needle: UNKNOWN, clip: UNKNOWN, main: UNKNOWN })).toBe(
      "Find out what is fitted: pilot jet, needle, clip groove and main jet",
    );
  });

  test("worth a share of the trouble in the stretch it governs, not of what lies elsewhere", () => {
    const worth = (parts: Partial<Setup>, from: number, to: number) => {
      const rich = stateOf((opening) => (opening >= from && opening <= to ? 0.1 : 0), 0.005);
      return readPartsStep(weighingOf(without(parts, []), sureOf(rich)))[0]!.worth;
    };
    // Between 0 and the first opening beyond, by part: pilot to 3/16, screw to 1/16, needle 1/4 to 5/8, main from 3/4.
    for (const [parts, from, to] of [
      [{ pilot: UNKNOWN }, 0, 0.1875],
      [{ screw: UNKNOWN }, 0, 0.0625],
      [{ needle: UNKNOWN }, 0.25, 0.625],
      [{ clip: UNKNOWN }, 0.25, 0.625],
      [{ main: UNKNOWN }, 0.75, 1],
    ] as const) {
      const own = worth(parts, from, to);
      const all = worth(parts, 0, 1);
      expect(own).toBeCloseTo(all, 6);
      expect(own).toBeGreaterThan(1);
      expect(worth(parts, from, (from + to) / 2 - 1e-9)).toBeLessThan(0.9 * own);
      expect(worth(parts, (from + to) / 2 + 1e-9, to)).toBeLessThan(0.9 * own);
    }
  });

  test("0.6 of that trouble over 25 minutes: rich by 10 % costs about 30 minutes for each weighted per cent", () => {
    // One opening, full throttle: weight 0.1 of 300 minutes for each per cent, less what LINEX saves near right.
    const rich = stateOf((opening) => (opening === 1 ? 0.1 : 0), 1e-6);
    const step = readPartsStep(weighingOf(without({ main: UNKNOWN }, []), sureOf(rich)))[0]!;
    const loss = ((0.1 * 100 * 300) / 20) * (Math.exp(-2) + 2 - 1);
    expect(step.worth).toBeCloseTo((0.6 * loss) / 25, 2);
    expect(step.minutes).toBe(25);
  });

  test("with trouble where the unknown needle works, reading it is the step, and no step changes it", () => {
    const given = without({ needle: UNKNOWN, clip: UNKNOWN }, [
      saw("four-strokes-under-load"),
      saw("heavy-in-the-middle-clean-on-top"),
    ]);
    const advice = adviceOf({ ...given, checks: LOOKED_OVER });
    expect(advice.step.kind).toBe("read-parts");
    for (const { changes } of stepsOf(advice))
      for (const { part } of changes) expect(["clip", "needle"]).not.toContain(part);
  });

  test("[A11] why: the records of the stretch with most trouble", () => {
    const [step] = readPartsStep(
      weighingOf(without({ main: UNKNOWN }, [saw("will-not-rev-out"), saw("drops-straight-to-idle")])),
    );
    expect(step!.why).toEqual([{ record: "ride-1", text: "Will not rev out: flat and rough on top" }]);
  });
});

test("a list in words", () => {
  expect(listed([])).toBe("");
  expect(listed(["one"])).toBe("one");
  expect(listed(["one", "two"])).toBe("one and two");
  expect(listed(["one", "two", "three"])).toBe("one, two and three");
});
