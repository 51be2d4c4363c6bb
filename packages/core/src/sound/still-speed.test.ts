import { describe, expect, test } from "vitest";
import { type StillSpeed, stillMeter } from "./still-speed.ts";

/** Feeds speeds sixty times a second. */
function fed(speedAt: (seconds: number) => number, seconds: number): StillSpeed | null {
  const meter = stillMeter();
  for (let i = 0; i < seconds * 60; i++) meter.take(i / 60, speedAt(i / 60));
  return meter.reading();
}

describe("a speed that holds still", () => {
  test("is read, with its error and how long it held", () => {
    const reading = fed((t) => 1700 * (1 + 0.01 * Math.sin(2 * Math.PI * 1.7 * t)), 8)!;
    expect(Math.abs(reading.rpm - 1700)).toBeLessThan(4);
    expect(reading.seconds).toBeGreaterThanOrEqual(7);
    expect(reading.error).toBeGreaterThan(0.002 * 1700);
    expect(reading.error).toBeLessThan(10);
  });

  test("is held from where it came to rest", () => {
    const reading = fed((t) => (t < 6 ? 1500 : 1650), 10)!;
    expect(Math.abs(reading.rpm - 1650)).toBeLessThan(2);
    expect(reading.seconds).toBeLessThanOrEqual(4.5);
  });

  test("is not there while it drifts, is not heard, or has just begun", () => {
    expect(fed((t) => 1500 + 12 * t, 8)).toBeNull();
    expect(fed((t) => (t > 7 ? 0 : 1700), 9)).toBeNull();
    expect(fed(() => 1700, 1.5)).toBeNull();
    expect(fed((t) => (Math.floor(t * 60) % 2 === 0 ? 0 : 1700), 8)).toBeNull();
  });

  test("the last second is there at once, moving or not", () => {
    const meter = stillMeter();
    expect(meter.recent()).toBeNull();
    for (let i = 0; i <= 3 * 60; i++) meter.take(i / 60, 1500 + 200 * (i / 60));
    // The middle of the second before the third.
    expect(Math.abs(meter.recent()! - 2000)).toBeLessThan(10);
    for (let i = 3 * 60; i < 5 * 60; i++) meter.take(i / 60, 0);
    expect(meter.recent()).toBeNull();
  });

  test("single wild frames do not move it", () => {
    const reading = fed((t) => (Math.floor(t * 60) % 7 === 0 ? 3400 : 1700), 8)!;
    expect(reading.rpm).toBeCloseTo(1700, 6);
  });

  test("is forgotten when the screw is turned, and never looks back further than twelve seconds", () => {
    const meter = stillMeter();
    for (let i = 0; i < 20 * 60; i++) meter.take(i / 60, 1700);
    expect(meter.reading()!.seconds).toBe(12);
    meter.forget();
    expect(meter.reading()).toBeNull();
    for (let i = 20 * 60; i < 23 * 60; i++) meter.take(i / 60, 1500);
    expect(Math.round(meter.reading()!.rpm)).toBe(1500);
  });
});
