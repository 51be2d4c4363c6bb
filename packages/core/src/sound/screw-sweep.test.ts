import { describe, expect, test } from "vitest";
import { readSweep, SWEEP_DROP, type SweepMark, sweepOutcome } from "./screw-sweep.ts";

/** Marks of an idle that falls as a parabola from its best. */
const marks = (places: readonly number[], best: number, perTurn2: number, idle = 1700): SweepMark[] =>
  places.map((turns) => ({ turns, rpm: idle - perTurn2 * (turns - best) ** 2, error: 4 }));

const from = (first: number, last: number, step = 0.25): number[] =>
  Array.from({ length: Math.round((last - first) / step) + 1 }, (_, i) => first + i * step);

function read(made: readonly SweepMark[]) {
  const reading = readSweep(made);
  if (!reading.ok) throw new RangeError(reading.reason);
  return reading.value;
}

function peak(made: readonly SweepMark[]) {
  const reading = read(made);
  if (reading.kind !== "peak") throw new RangeError(reading.kind);
  return reading;
}

describe("the best idle of a sweep", () => {
  test("a parabola's own top and edges are found, whatever the order of the marks", () => {
    // 50 rpm below the top at 0.5 turns to either side: 200 rpm a square turn.
    const made = marks(from(0.75, 2.5), 1.6, 200);
    for (const order of [made, [...made].reverse()]) {
      const { turns, rpm, inner, outer } = peak(order);
      expect(turns).toBeCloseTo(1.6, 6);
      expect(rpm).toBeCloseTo(1700, 6);
      // Straight lines between quarter turns cut the curve a little.
      expect(Math.abs(inner! - 1.1)).toBeLessThan(0.03);
      expect(Math.abs(outer! - 2.1)).toBeLessThan(0.03);
    }
    expect(SWEEP_DROP).toBe(50);
  });

  test("the spread of the best place is that of many sweeps with scatter", () => {
    // Sample spread against the stated one, seeded scatter of 8 rpm.
    let seed = 12345;
    const normal = (): number => {
      let sum = 0;
      for (let i = 0; i < 12; i++) {
        seed = (seed * 1103515245 + 12345) % 2147483648;
        sum += seed / 2147483648;
      }
      return sum - 6;
    };
    const tops: number[] = [];
    const said: number[] = [];
    for (let run = 0; run < 400; run++) {
      const made = marks(from(0.75, 2.5), 1.6, 200).map((mark) => ({
        ...mark,
        rpm: mark.rpm + 8 * normal(),
        error: Math.sqrt(64 - 25),
      }));
      const reading = readSweep(made);
      if (!reading.ok || reading.value.kind !== "peak") throw new RangeError("no peak");
      tops.push(reading.value.turns);
      said.push(Math.sqrt(reading.value.turnsSd ** 2 - 0.06 ** 2));
    }
    const mean = tops.reduce((a, b) => a + b) / tops.length;
    const sd = Math.sqrt(tops.reduce((a, b) => a + (b - mean) ** 2, 0) / (tops.length - 1));
    expect(Math.abs(mean - 1.6)).toBeLessThan(0.02);
    const middle = said.sort((a, b) => a - b)[200]!;
    expect(middle / sd).toBeGreaterThan(0.8);
    expect(middle / sd).toBeLessThan(1.5);
  });

  test("marks that do not fit the curve widen the spread", () => {
    const even = marks(from(0.75, 2.5), 1.6, 200);
    const rough = even.map((mark, i) => ({ ...mark, rpm: mark.rpm + (i % 2 === 0 ? 25 : -25) }));
    expect(peak(rough).turnsSd).toBeGreaterThan(1.5 * peak(even).turnsSd);
  });

  test("an even drift of the idle is taken out where the first place was measured again", () => {
    const places = [...from(1, 2.25), 1];
    const drifting = marks(places, 1.6, 200).map((mark, i) => ({ ...mark, rpm: mark.rpm + 6 * i }));
    expect(peak(drifting).turns).toBeCloseTo(1.6, 6);
    // Without the second look at the first place the drift pulls the best outwards.
    expect(peak(drifting.slice(0, -1)).turns).toBeGreaterThan(1.6);
  });

  test("what lies far down the sides does not bend the top", () => {
    // Steep on the lean side: 700 rpm a turn beyond half a turn from the best.
    const made = marks(from(0.5, 3), 1.6, 200).map((mark) =>
      mark.turns > 2.1 ? { ...mark, rpm: 1650 - 700 * (mark.turns - 2.1) } : mark,
    );
    expect(Math.abs(peak(made).turns - 1.6)).toBeLessThan(0.1);
  });

  test("an edge that was not reached is not made up", () => {
    const { inner, outer } = peak(marks(from(1.25, 2.5), 1.6, 200));
    expect(inner).toBeNull();
    expect(outer).not.toBeNull();
  });

  test("an idle still best at the last place is no peak", () => {
    expect(read(marks(from(0.25, 1.5), 2, 200))).toEqual({ kind: "at-end", end: "out", turns: 1.5 });
    expect(read(marks(from(0.5, 2), 0.2, 200))).toEqual({ kind: "at-end", end: "in", turns: 0.5 });
  });

  test("an idle that does not answer over a whole turn is flat; over less it is not known yet", () => {
    const made = marks(from(1, 2), 1.5, 20);
    expect(read(made)).toMatchObject({ kind: "flat", spanTurns: 1 });
    expect(readSweep(made.slice(0, 3))).toMatchObject({ ok: false, reason: "unclear-peak" });
    // 24 rpm are none; 30 are something.
    expect(read(marks(from(1, 2), 1.5, 96))).toMatchObject({ kind: "flat" });
    expect(read(marks(from(1, 2), 1.5, 120))).toMatchObject({ kind: "peak" });
  });

  test("two places are too few, and a place measured twice is one", () => {
    expect(readSweep(marks([1, 1.25, 1], 1.5, 200))).toMatchObject({ ok: false, reason: "too-few-marks" });
    expect(() => readSweep([{ turns: 1, rpm: 0, error: 1 }])).toThrow(RangeError);
  });

  test("the outcome follows the trade's good range of one to two and a half turns", () => {
    expect([0.9, 1, 2.5, 2.6].map(sweepOutcome)).toEqual(["nearly-closed", "middle", "middle", "far-out"]);
  });
});
