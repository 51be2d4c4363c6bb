import { take } from "@jetwright/sound-lab";
import { describe, expect, test } from "vitest";
import { readSweep, type SweepMark } from "./screw-sweep.ts";
import { speedFollower } from "./speed-follower.ts";
import { type StillSpeed, stillMeter } from "./still-speed.ts";

// A screw turned on a made engine whose idle is known at each place, heard as the live view hears it.

const BEST = 1.6;
const IDLE = 1750;
const PER_SQUARE_TURN = 200;

function swept(seed: number): { marks: SweepMark[]; errors: number[] } {
  const errors: number[] = [];
  const marks = [1, 1.25, 1.5, 1.75, 2, 2.25].map((turns) => {
    const idleRpm = IDLE - PER_SQUARE_TURN * (turns - BEST) ** 2;
    const sound = take("idle", seed + Math.round(4 * turns), { snr: 12, idleRpm });
    const follower = speedFollower({ strokes: 2, cylinders: 1, idleHint: null }, sound.rate, {
      penalty: null,
      pictures: false,
    });
    const meter = stillMeter();
    let still: StillSpeed | null = null;
    for (let at = 0; at < sound.samples.length; at += 2048) {
      follower.push(sound.samples.subarray(at, at + 2048));
      meter.take(follower.seconds(), follower.newest()?.rpm ?? 0);
      const reading = meter.reading();
      if (reading !== null && reading.seconds >= 3) still = reading;
    }
    if (still === null) throw new RangeError(`No still speed at ${turns} turns`);
    errors.push(still.rpm - idleRpm);
    return { turns, rpm: still.rpm, error: still.error };
  });
  return { marks, errors };
}

describe("a sweep of the small screw by ear", () => {
  test("gives the idle of each place to 25 rpm and the best place to an eighth of a turn", () => {
    const { marks, errors } = swept(2100);
    expect(Math.max(...errors.map(Math.abs))).toBeLessThan(25);
    const reading = readSweep(marks);
    if (!reading.ok || reading.value.kind !== "peak") throw new RangeError("No peak");
    expect(Math.abs(reading.value.turns - BEST)).toBeLessThan(0.125);
    expect(reading.value.turnsSd).toBeLessThan(0.15);
    // The idle falls by 50 half a turn from the best.
    expect(Math.abs(reading.value.inner! - 1.1)).toBeLessThan(0.15);
    expect(Math.abs(reading.value.outer! - 2.1)).toBeLessThan(0.15);
  }, 60_000);
});
