import type { Step } from "@jetwright/core";
import { readLog, writeRecord } from "@jetwright/records";
import { describe, expect, test } from "vitest";
import { adviceBody, adviceWords, isWritten } from "./advice-record.ts";
import { stepAddress } from "./step-address.ts";

const STEP = {
  kind: "change",
  id: "pilot",
  title: "Pilot jet 45 to 42",
  why: [
    { record: "r1", text: "Idle loads up and dies" },
    { record: "r2", text: "Revs dive below idle" },
  ],
  minutes: 37.4,
  opening: null,
  changes: [{ part: "pilot", from: "45", to: "42", inDrawer: true }],
} as unknown as Step;
const BELIEF = {
  at: [
    { opening: 0, percent: 14.13, sdPercent: 5.35, leaning: "rich", sure: true },
    { opening: 0.125, percent: -3.26, sdPercent: 2, leaning: "right", sure: true },
  ],
} as never;
const SUSPECTS = { suspects: [{ fault: "air-leak", words: "an air leak", chance: 0.12345 }] } as const;

describe("a piece of advice as a record", () => {
  test("is one the log can use, with belief and what came of it", () => {
    const body = adviceBody(STEP, SUSPECTS, BELIEF, false);
    const log = readLog([
      writeRecord({
        id: "a1",
        kind: "advice-given",
        v: 1,
        at: "2026-05-01T10:00:00Z",
        bike: "bramble",
        body,
      }),
    ]);
    expect(log.problems).toEqual([]);
    expect(log.counts.used).toBe(1);
    expect(body).toEqual({
      words: "Pilot jet 45 to 42: Idle loads up and dies; Revs dive below idle.",
      step: {
        kind: "change",
        id: "pilot",
        title: "Pilot jet 45 to 42",
        minutes: 37,
        changes: [{ part: "pilot", from: "45", to: "42" }],
      },
      belief: {
        mixture: [
          { opening: 0, errorPercent: 14.1, sdPercent: 5.4 },
          { opening: 0.125, errorPercent: -3.3, sdPercent: 2 },
        ],
        faults: { "air-leak": 0.123 },
      },
      followed: false,
    });
  });

  test("without a reason is its title", () => {
    expect(adviceWords({ ...STEP, why: [] })).toBe("Pilot jet 45 to 42.");
  });

  test("is not written twice, and is when it comes out otherwise", () => {
    const words = adviceWords(STEP);
    expect(isWritten(STEP, true, { lastAdvice: null })).toBe(false);
    expect(isWritten(STEP, true, { lastAdvice: { words, followed: true } })).toBe(true);
    expect(isWritten(STEP, false, { lastAdvice: { words, followed: true } })).toBe(false);
    expect(isWritten(STEP, true, { lastAdvice: { words: "Ride it.", followed: true } })).toBe(false);
  });
});

describe("where a step is carried out", () => {
  const at = (change: Partial<Step>, index = 0, checkOf = {}) =>
    stepAddress("old iron", { ...STEP, ...change } as Step, index, checkOf);

  test("is the screen of its kind", () => {
    expect(at({})).toBe("/bike/old%20iron/change/0");
    expect(at({}, 2)).toBe("/bike/old%20iron/change/2");
    expect(at({ kind: "look-over" })).toBe("/bike/old%20iron/look-over");
    expect(at({ kind: "check", id: "air-filter" })).toBe("/bike/old%20iron/check/air-filter");
    expect(at({ kind: "test", id: "roll-on", opening: 0.25 as never })).toBe(
      "/bike/old%20iron/test/roll-on/1%2F4",
    );
    expect(at({ kind: "test", id: "chop-warm" })).toBe("/bike/old%20iron/test/chop-warm");
    expect(at({ kind: "read-parts" })).toBe("/bike/old%20iron/fitted");
    expect(at({ kind: "ride" })).toBe("/bike/old%20iron/report");
    expect(at({ kind: "stop" })).toBeNull();
  });

  test("is the card of the check that found what is to be put right", () => {
    expect(at({ kind: "mend" }, 0, { r2: "air-filter" })).toBe("/bike/old%20iron/check/air-filter");
    expect(at({ kind: "mend" })).toBeNull();
  });
});
