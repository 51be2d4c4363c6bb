import { checkById, TESTS, testById } from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import { describe, expect, test } from "vitest";
import { cards } from "../../words/en/cards.ts";
import { checkTimers, clockText, middleTry, testTimers } from "./timers.ts";

describe("timers", () => {
  test("no test that is ridden has one, and those that count seconds standing do", () => {
    for (const { id, cautions } of TESTS) {
      const hasTimer = testTimers(id).length > 0;
      // The hot chop rides a lap first, then times standing.
      if (cautions.includes("test-riding") && id !== "chop-hot") expect(hasTimer, id).toBe(false);
    }
    for (const id of ["idle-hold", "chop-warm", "chop-hot", "screw-sweep-air", "screw-sweep-fuel"]) {
      expect(testById(id)).toBeDefined();
      expect(testTimers(id).length).toBeGreaterThan(0);
    }
    for (const id of ["pressure-test", "overflow-drip", "fuel-flow"]) {
      expect(checkById(id)).toBeDefined();
      expect(checkTimers(id)).toHaveLength(1);
    }
    expect(checkTimers("reeds")).toEqual([]);
    expect(testTimers("constructor-like")).toEqual([]);
  });

  test("last as long as the steps say", () => {
    const secondsOf = (timer: ReturnType<typeof testTimers>[number] | undefined) =>
      timer?.kind === "countdown" ? timer.seconds : null;
    expect(english.tests["idle-hold"].steps.join(" ")).toContain("60 s");
    expect(secondsOf(testTimers("idle-hold")[0])).toBe(60);
    expect(english.checks["pressure-test"].steps.join(" ")).toContain("for 6 minutes");
    expect(secondsOf(checkTimers("pressure-test")[0])).toBe(6 * 60);
    expect(english.checks["fuel-flow"].steps.join(" ")).toContain("two minutes");
    expect(secondsOf(checkTimers("fuel-flow")[0])).toBe(2 * 60);
    expect(english.tests["screw-sweep-air"].steps.join(" ")).toContain("10 to 20 s");
    expect(secondsOf(testTimers("screw-sweep-air")[0])).toBe(20);
    expect(english.checks["overflow-drip"].steps.join(" ")).toContain("two minutes");
    expect(secondsOf(checkTimers("overflow-drip")[0])).toBe(2 * 60);
  });

  test("have words", () => {
    for (const timer of [...testTimers("chop-hot"), ...checkTimers("pressure-test")])
      expect(cards.timers[timer.words].length).toBeGreaterThan(3);
  });
});

test("a clock shows the second that is running", () => {
  expect(clockText(360_000)).toBe("6:00");
  expect(clockText(359_001)).toBe("6:00");
  expect(clockText(65_000)).toBe("1:05");
  expect(clockText(1)).toBe("0:01");
  expect(clockText(0)).toBe("0:00");
  expect(clockText(-50)).toBe("0:00");
});

test("the middle try is one of the tries", () => {
  expect(middleTry([])).toBeNull();
  expect(middleTry([2])).toBe(2);
  expect(middleTry([4, 1])).toBe(4);
  expect(middleTry([1, 9, 2])).toBe(2);
  expect(middleTry([10, 9, 2, 1])).toBe(9);
});
