import { describe, expect, test } from "vitest";
import { DEMO, shopOf } from "../test-shop.ts";
import { screwSweep } from "./screw-sweep.ts";

const demo = shopOf(DEMO);

/** Marks of an idle best at some turns. */
const marks = (best: number, first: number, last: number) =>
  Array.from({ length: 4 * (last - first) + 1 }, (_, i) => first + i / 4).map((turns) => ({
    turns,
    rpm: 1700 - 200 * (turns - best) ** 2,
    error: 4,
  }));
const sweepOf = (made: ReturnType<typeof marks>, bike = "kestrel", state = demo) => {
  const sweep = screwSweep(state, { bike, marks: made });
  if (!sweep.ok) throw new RangeError(sweep.detail);
  return sweep.value;
};

describe("a sweep by ear", () => {
  test("starts from the bike's own screw, with nothing to keep", () => {
    const sweep = sweepOf([]);
    expect(sweep).toMatchObject({
      screw: "air",
      test: "screw-sweep-air",
      reading: null,
      why: null,
      result: null,
    });
    expect(sweep.fitted! * 8).toBe(Math.round(sweep.fitted! * 8));
    expect(sweepOf(marks(1.5, 1.5, 1.75)).why).toBe("too-few-marks");
  });

  test("a peak is kept with its place, its spread and the edges that were reached", () => {
    // Half a turn to either side; straight lines between the marks cut it by 0.02.
    expect(sweepOf(marks(1.62, 1, 2.25)).result).toMatchObject({
      outcome: "middle",
      words: expect.stringMatching(/middle|turns/i),
      numbers: { bestTurns: 1.62, bestRpm: 1700, marks: 6, fiftyLowerIn: 1.14, fiftyLowerOut: 2.1 },
    });
    const { numbers } = sweepOf(marks(1.62, 1.25, 2.25)).result!;
    expect(numbers.fiftyLowerIn).toBeUndefined();
    expect(numbers.bestTurnsSd).toBeGreaterThan(0.05);
    expect(sweepOf(marks(0.8, 0.25, 1.5)).result).toMatchObject({ outcome: "nearly-closed" });
    expect(sweepOf(marks(2.8, 2, 3.5)).result).toMatchObject({ outcome: "far-out" });
  });

  test("an idle still best at the end is kept without a place only where the screw has no way left", () => {
    expect(sweepOf(marks(0, 0.75, 2)).result).toBeNull();
    expect(sweepOf(marks(0, 0.5, 2)).result).toEqual({
      outcome: "nearly-closed",
      words: expect.any(String),
      numbers: { marks: 7 },
    });
    expect(sweepOf(marks(4, 1.5, 2.75)).result).toBeNull();
    expect(sweepOf(marks(4, 1.5, 3)).result).toMatchObject({ outcome: "far-out", numbers: { marks: 7 } });
  });

  test("an idle that does not answer is kept as that", () => {
    const flat = marks(1.5, 1, 2).map((mark) => ({ ...mark, rpm: 1700 }));
    expect(sweepOf(flat).result).toMatchObject({ outcome: "no-difference" });
  });

  test("a screw whose side nobody has said is asked for, and a bike that is not there refused", () => {
    const bare = shopOf([
      {
        id: "a",
        kind: "bike-described",
        at: "2026-05-02T09:00:00Z",
        bike: "x",
        body: { name: "X", engine: { strokes: 4 } },
      },
    ]);
    expect(sweepOf([], "x", bare)).toMatchObject({ screw: null, fitted: null });
    expect(screwSweep(demo, { bike: "nobody", marks: [] })).toMatchObject({ ok: false });
  });
});
