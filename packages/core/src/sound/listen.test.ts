import { noEngine, type Story, type TakeSetting, take, truthFigures } from "@jetwright/sound-lab";
import { describe, expect, test } from "vitest";
import { listen } from "./listen.ts";
import { type HeardFrame, speedFollower } from "./speed-follower.ts";

const ENGINE = { strokes: 2, cylinders: 1, idleHint: null } as const;
const CLEAN: TakeSetting = { snr: 15, noise: ["pink"], path: { place: "open", clip: 1, telephone: false } };

function heard(story: Story, setting: TakeSetting = {}) {
  const made = take(story, 4201, { ...CLEAN, ...setting });
  const result = listen(made.samples, made.rate, { ...ENGINE, strokes: made.strokes }, { pictures: false });
  if (!result.ok) throw new Error(result.reason);
  return { made, truth: truthFigures(made), heard: result.value };
}

// Making and hearing a clip takes a second or two, more on a busy machine.
describe("listening to an engine", { timeout: 90_000 }, () => {
  test.each([2, 4] as const)("reads the speed of a %i-stroke within half a percent", (strokes) => {
    const { made, heard: found } = heard("idle", { strokes, rate: 44100 });
    expect(found.doubts).toEqual([]);
    const errors: number[] = [];
    found.track.rpm.forEach((rpm, i) => {
      const true_ = made.truth.rpm[Math.round(i * found.track.hop * 1000)];
      if (true_) errors.push(Math.abs(rpm / true_ - 1));
    });
    errors.sort((a, b) => a - b);
    expect(errors[Math.floor(errors.length / 2)]).toBeLessThan(0.005);
    expect(errors[Math.floor(errors.length * 0.95)]).toBeLessThan(0.02);
  });

  test("finds a hang and how long it lasted", () => {
    const { truth, heard: found } = heard("hang");
    const chops = found.events.filter((event) => event.kind === "chop");
    expect(chops).toHaveLength(2);
    chops.forEach((chop, i) => {
      expect(Math.abs(chop.hangSeconds - truth.chops[i]!.hangSeconds)).toBeLessThan(0.08);
      expect(chop.hangSeconds).toBeGreaterThan(0.4);
    });
  });

  test("finds a dive below idle", () => {
    const { truth, heard: found } = heard("dive");
    const chops = found.events.filter((event) => event.kind === "chop");
    expect(chops).toHaveLength(2);
    chops.forEach((chop, i) => {
      expect(chop.hangSeconds).toBe(0);
      expect(Math.abs(chop.undershootPercent! - truth.chops[i]!.undershootPercent!)).toBeLessThan(3);
    });
  });

  test("finds a stall, a hunting idle and no more than there is", () => {
    expect(heard("stall").heard.events.some(({ kind }) => kind === "stall")).toBe(true);
    expect(heard("hunt").heard.events.some(({ kind }) => kind === "hunting")).toBe(true);
    const kinds = heard("snaps").heard.events.map(({ kind }) => kind);
    expect(kinds).not.toContain("stall");
    expect(kinds).not.toContain("hunting");
    expect(kinds.filter((kind) => kind === "snap")).toHaveLength(3);
  });

  test("reads a four-stroke at its own idle where every turn is heard, and one that idles fast as it is", () => {
    const idleOf = (setting: TakeSetting, seed: number) => {
      const made = take("stall", seed, { strokes: 4, snr: 10, ...setting });
      const result = listen(made.samples, made.rate, { ...ENGINE, strokes: 4 }, { pictures: false });
      if (!result.ok) throw new Error(result.reason);
      return { doubts: result.value.doubts.map(({ reason }) => reason), track: result.value.track, made };
    };
    const own = idleOf({}, 3003);
    expect(own.doubts).toEqual([]);
    expect(own.track.rpm[60]! / own.made.truth.rpm[960]!).toBeCloseTo(1, 1);
    const fast = idleOf({ idleRpm: 2700 }, 3004);
    expect(fast.doubts).toEqual(["no-idle"]);
    expect(fast.track.rpm[60]! / fast.made.truth.rpm[960]!).toBeCloseTo(1, 1);
  });

  test.each(["white", "wind", "voice", "claps", "hum", "music"] as const)("refuses %s", (kind) => {
    const made = noEngine(kind, 4301);
    const result = listen(made.samples, made.rate, ENGINE, { pictures: false });
    expect(result.ok && result.value.doubts.length).toBeGreaterThan(0);
    expect(result.ok && result.value.events).toEqual([]);
  });

  test("refuses hum as loud as the idle, which would be read as 3000 rpm", () => {
    const made = take("snaps", 953, { snr: 0, noise: ["hum"] });
    const result = listen(made.samples, made.rate, ENGINE, { pictures: false });
    expect(result.ok && result.value.doubts.map(({ reason }) => reason)).toContain("hum");
  });

  test.each([2, 4] as const)("hears even claps for what they are, on the card of a %i-stroke", (strokes) => {
    const made = noEngine("claps", 5010, 5);
    const result = listen(made.samples, made.rate, { ...ENGINE, strokes }, { pictures: false });
    expect(result.ok && result.value.doubts.map(({ reason }) => reason)).toContain("knocking");
  });

  test("gives the same frames whether the sound comes whole or in pieces", () => {
    const { samples, rate } = take("dive", 4201, CLEAN);
    const frames = (piece: number): HeardFrame[] => {
      const follower = speedFollower(ENGINE, rate, { penalty: null, pictures: true });
      const out: HeardFrame[] = [];
      for (let at = 0; at < samples.length; at += piece)
        out.push(...follower.push(samples.subarray(at, at + piece)));
      return [...out, ...follower.finish()];
    };
    expect(frames(1777)).toEqual(frames(samples.length));
  });

  test("refuses what it cannot work on", () => {
    const silence = new Float32Array(48000 * 3);
    expect(listen(silence, 4000, ENGINE, { pictures: false })).toMatchObject({
      ok: false,
      reason: "coarse-sound",
    });
    expect(listen(silence.subarray(0, 48000), 48000, ENGINE, { pictures: false })).toMatchObject({
      ok: false,
      reason: "too-short",
    });
    expect(listen(new Float32Array(8000 * 181), 8000, ENGINE, { pictures: false })).toMatchObject({
      ok: false,
      reason: "too-long",
    });
    const quiet = listen(silence, 48000, ENGINE, { pictures: true });
    expect(quiet.ok && quiet.value.doubts[0]?.reason).toBe("no-engine");
    expect(quiet.ok && quiet.value.picture?.values.length).toBe(
      quiet.ok ? quiet.value.picture!.rows * quiet.value.picture!.frames : 0,
    );
  });
});
