import { sparkChannel, take } from "@jetwright/sound-lab";
import { describe, expect, test } from "vitest";
import { listen } from "./listen.ts";
import { soundProof, sparkSpeed } from "./spark-pulses.ts";

const RATE = 48000;

/** Turns a crank at a known speed; the moments at which it sparks. */
function sparkTimes(rpmAt: (seconds: number) => number, seconds: number, sparksPerTurn: number): number[] {
  const times: number[] = [];
  let turned = 0.3;
  for (let i = 0; i < seconds * 10_000; i++) {
    const before = Math.floor(turned * sparksPerTurn);
    turned += rpmAt(i / 10_000) / 60 / 10_000;
    if (Math.floor(turned * sparksPerTurn) > before) times.push(i / 10_000);
  }
  return times;
}

let seed = 7;
const noise = (): number => {
  seed = (seed * 1103515245 + 12345) % 2147483648;
  return seed / 1073741824 - 1;
};

/** Pulses that ring, of uneven height, in noise. */
function channelOf(times: readonly number[], seconds: number, sign = 1, floor = 0.004): Float32Array {
  const channel = Float32Array.from({ length: seconds * RATE }, () => floor * noise());
  for (const at of times) {
    const height = sign * (0.5 + 0.1 * noise());
    for (let k = 0; k < 90; k++) {
      const i = Math.round(at * RATE) + k;
      if (i < channel.length) channel[i]! += height * Math.exp(-k / 14) * Math.cos(1.1 * k);
    }
  }
  return channel;
}

function counted(channel: Float32Array, sparksPerTurn: 1 | 0.5 = 1) {
  const counted = sparkSpeed(channel, RATE, sparksPerTurn);
  if (!counted.ok) throw new RangeError(counted.detail);
  return counted.value;
}

describe("speed from the sparks", () => {
  const rising = (t: number): number => 1500 + 900 * t;

  test("is that of the crank, whatever the sign of the pulses and however often it sparks", () => {
    for (const [sparksPerTurn, sign] of [
      [1, 1],
      [1, -1],
      [0.5, 1],
    ] as const) {
      const times = sparkTimes(rising, 6, sparksPerTurn);
      const speed = counted(channelOf(times, 6, sign), sparksPerTurn);
      expect(speed.sparks).toHaveLength(times.length);
      expect(speed.oddShare).toBe(0);
      for (let t = 0.5; t < 5.5; t += 0.25)
        expect(Math.abs(speed.at(t)! / rising(t) - 1)).toBeLessThan(0.025);
      expect(speed.at(0)).toBeNull();
      expect(speed.at(6)).toBeNull();
    }
  });

  test("sparks that are missing are not counted as half the speed", () => {
    const times = sparkTimes(() => 3000, 4, 1);
    const speed = counted(
      channelOf(
        times.filter((_, i) => i % 40 !== 20),
        4,
      ),
    );
    expect(speed.oddShare).toBeGreaterThan(0.02);
    const seen = Array.from({ length: 390 }, (_, i) => speed.at(0.05 + i / 100));
    for (const rpm of seen) expect(rpm === null || Math.abs(rpm / 3000 - 1) < 0.02).toBe(true);
    expect(seen.filter((rpm) => rpm === null).length).toBeLessThan(40);
  });

  test("noise, silence and sparks that come anyhow are refused", () => {
    expect(sparkSpeed(channelOf([], 3), RATE, 1)).toMatchObject({ ok: false, reason: "no-pulses" });
    expect(sparkSpeed(new Float32Array(3 * RATE), RATE, 1)).toMatchObject({ ok: false, reason: "no-pulses" });
    expect(sparkSpeed(new Float32Array(0), RATE, 1)).toMatchObject({ ok: false, reason: "no-pulses" });
    const anyhow = Array.from({ length: 90 }, () => 1.5 * (1 + noise())).sort((a, b) => a - b);
    expect(sparkSpeed(channelOf(anyhow, 3), RATE, 1)).toMatchObject({ ok: false, reason: "uneven-pulses" });
  });
});

describe("sound held against the sparks", () => {
  const steady = { at: (t: number) => (t < 3 ? 3000 : null) };

  test("errors are counted where both are there", () => {
    const rpm = Float64Array.from({ length: 400 }, (_, i) => {
      if (i < 100) return 3030;
      if (i < 150) return 1500;
      return i < 200 ? 0 : 2970;
    });
    const proof = soundProof({ hop: 0.01, rpm }, steady)!;
    // Looking 0.03 s to either side.
    expect(proof.seconds).toBeCloseTo(3.03, 1);
    expect(proof.middlePercent).toBeCloseTo(1, 6);
    expect(proof.most95Percent).toBeCloseTo(50, 6);
    expect(proof.grossPercent).toBeCloseTo((100 * 50) / 253, 0);
    expect(proof.unansweredPercent).toBeCloseTo((100 * 50) / 303, 0);
    expect(proof.bySecond.slice(0, 3)).toEqual([
      { second: 0, rpm: 3000, errorPercent: expect.closeTo(1, 6) },
      { second: 1, rpm: 3000, errorPercent: expect.closeTo(-50, 6) },
      { second: 2, rpm: 3000, errorPercent: expect.closeTo(-1, 6) },
    ]);
  });

  test("no overlap is no proof", () => {
    expect(soundProof({ hop: 0.01, rpm: new Float64Array(300) }, steady)).toBeNull();
    expect(soundProof({ hop: 0.01, rpm: new Float64Array(300).fill(3000) }, { at: () => null })).toBeNull();
  });

  test("a made take agrees with sparks made from its own crank", () => {
    const made = take("snaps", 2300, {
      snr: 18,
      noise: ["pink"],
      path: { place: "open", clip: 1, telephone: false },
    });
    const seconds = Math.floor(made.truth.seconds);
    const heard = listen(
      made.samples,
      made.rate,
      { strokes: 2, cylinders: 1, idleHint: null },
      { pictures: false },
    );
    if (!heard.ok) throw new RangeError(heard.detail);
    const proof = soundProof(heard.value.track, counted(sparkChannel(made)))!;
    expect(proof.middlePercent).toBeLessThan(0.8);
    expect(proof.grossPercent).toBeLessThan(2);
    expect(proof.seconds).toBeGreaterThan(seconds - 1.5);
  }, 60_000);
});
