import { describe, expect, test } from "vitest";
import { findChops } from "./chops.ts";
import { findHunting } from "./hunting.ts";
import { findIdle } from "./idle.ts";
import { findSnaps } from "./snaps.ts";
import { lineFrom } from "./speed-line.ts";
import { findStall } from "./stall.ts";

// Every event formula on a speed that is drawn by hand: no sound is in it.

/** A line through points of second and speed, straight in log speed; 0 is silence. */
function drawn(points: readonly (readonly [second: number, rpm: number])[]) {
  const rpm = new Float64Array(Math.round(points.at(-1)![0] * 100) + 1);
  points.slice(1).forEach(([until, to], i) => {
    const [from, start] = points[i]!;
    for (let k = Math.round(from * 100); k <= Math.round(until * 100); k++) {
      const part = (k / 100 - from) / (until - from);
      rpm[k] = start === 0 || to === 0 ? 0 : start * (to / start) ** part;
    }
  });
  return lineFrom(
    rpm,
    rpm.map(() => 1),
    rpm.map(() => -40),
  );
}

const snapTo = (from: number, idle = 1700) =>
  [
    [from, idle],
    [from + 0.4, 8000],
    [from + 0.8, 8000],
  ] as const;

describe("events on a drawn speed", () => {
  test("idle is the speed of the first seconds, whatever follows", () => {
    const idle = findIdle(
      drawn([
        [0, 1700],
        [3, 1700],
        [3.5, 6000],
        [9, 6000],
      ]),
    )!;
    expect(idle.rpm).toBeCloseTo(1700, 6);
    expect(idle.seconds).toBeCloseTo(2.9, 0);
    expect(idle.wanderPercent).toBeCloseTo(0, 6);
    expect(
      findIdle(
        drawn([
          [0, 1700],
          [2, 6000],
        ]),
      ),
    ).toBeNull();
  });

  test("a snap has its onset, rise and sag", () => {
    const line = drawn([
      [0, 1700],
      [2.8, 1700],
      [2.9, 1530],
      ...snapTo(3.1, 1700),
      [1.2 + 3.1, 1700],
      [7, 1700],
    ]);
    const [snap, ...more] = findSnaps(line, 1700);
    expect(more).toEqual([]);
    expect(snap!.at).toBeCloseTo(3.11, 1);
    expect(snap!.peakRpm).toBeCloseTo(8000, 6);
    expect(snap!.bogPercent).toBeCloseTo(10, 6);
    // From 2330 to 7370 rpm at 5.59 octaves a second.
    expect(snap!.riseSeconds).toBeCloseTo(Math.log2(7370 / 2330) / (Math.log2(8000 / 1700) / 0.4), 2);
    expect(snap!.delaySeconds).toBeNull();
  });

  test("a slow opening is no snap", () => {
    expect(
      findSnaps(
        drawn([
          [0, 1700],
          [3, 1700],
          [8, 8000],
          [9, 8000],
        ]),
        1700,
      ),
    ).toEqual([]);
  });

  test("a clean closing neither hangs nor dives", () => {
    const line = drawn([[0, 1700], ...snapTo(3), [4.4, 1700], [8, 1700]]);
    const [chop] = findChops(line, 1700, findSnaps(line, 1700));
    expect(chop).toMatchObject({ hangSeconds: 0, hangRpm: null, belowSeconds: 0 });
    expect(chop!.undershootPercent).toBeCloseTo(0, 6);
    // Down 2.23 octaves in 0.6 s.
    expect(chop!.fallRate).toBeCloseTo(Math.log2(8000 / 1700) / 0.6, 0);
    expect(chop!.settleSeconds).toBeCloseTo(0.6, 1);
  });

  test("a hang lasts as long as it is held", () => {
    const line = drawn([[0, 1700], ...snapTo(3), [4.2, 2600], [6.2, 2600], [6.6, 1700], [9, 1700]]);
    const [chop] = findChops(line, 1700, findSnaps(line, 1700));
    // The slope is taken over 0.4 s, so an eighth of a second or so of each end is still a fall.
    expect(chop!.hangSeconds).toBeGreaterThan(1.7);
    expect(chop!.hangSeconds).toBeLessThan(2.05);
    expect(chop!.hangRpm).toBeCloseTo(2600, 0);
  });

  test("a dive has its depth and length", () => {
    const line = drawn([[0, 1700], ...snapTo(3), [4.4, 1360], [4.8, 1360], [5.2, 1700], [8, 1700]]);
    const [chop] = findChops(line, 1700, findSnaps(line, 1700));
    expect(chop!.undershootPercent).toBeCloseTo(20, 1);
    expect(chop!.belowSeconds).toBeGreaterThan(0.5);
    expect(chop!.belowSeconds).toBeLessThan(0.9);
  });

  const stallIn = (points: Parameters<typeof drawn>[0], loudness = -40) => {
    const line = drawn(points);
    const silent = line.rpm.indexOf(0);
    const loud = line.loudness.map((usual, k) => (silent >= 0 && k >= silent ? loudness : usual));
    return findStall(
      { ...line, loudness: loud },
      findIdle(line)!,
      findChops(line, 1700, findSnaps(line, 1700)),
    );
  };

  test("a stall dips before silence; breaking off at idle does not", () => {
    const dies = (second: number, rpm: number, end: number) =>
      stallIn([
        [0, 1700],
        [3, 1700],
        [second, rpm],
        [second + 0.01, 0],
        [end, 0],
      ]);
    expect(dies(3.5, 900, 5)?.at).toBeCloseTo(3.5, 1);
    expect(dies(3.5, 1700, 5)).toBeNull();
    expect(dies(3.5, 900, 4)).toBeNull();
  });

  test("an engine not heard again after the throttle was shut has stalled, unless something louder covers it", () => {
    const shut = (back: readonly (readonly [number, number])[], end: number) =>
      [[0, 1700], ...snapTo(3), ...back, [back.at(-1)![0] + 0.01, 0], [end, 0]] as const;
    const falling = [[4.5, 2100]] as const;
    expect(stallIn(shut(falling, 6))?.at).toBeCloseTo(4.5, 1);
    expect(stallIn(shut(falling, 5.5))).toBeNull();
    expect(stallIn(shut(falling, 6), -38)).toBeNull();
    expect(stallIn(shut([...falling, [4.9, 1700], [5.4, 1700]], 7))).toBeNull();
    expect(stallIn(shut([...falling, [4.9, 1700], [5.0, 1700]], 7))?.at).toBeCloseTo(5, 1);
  });

  test("hunting swings, wandering does not", () => {
    const swing = (size: number) => {
      const points: (readonly [number, number])[] = [[0, 1700]];
      for (let i = 1; i <= 12; i++) points.push([i * 0.5, 1700 * (1 + (i % 2 === 0 ? -size : size))]);
      return drawn(points);
    };
    const hunting = findHunting(swing(0.1), 1700)!;
    expect(hunting.everySeconds).toBeCloseTo(1, 1);
    expect(hunting.swingPercent).toBeGreaterThan(7);
    expect(hunting.swingPercent).toBeLessThan(10.5);
    expect(findHunting(swing(0.02), 1700)).toBeNull();
  });
});
