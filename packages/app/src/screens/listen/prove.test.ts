import { sparkChannel, take } from "@jetwright/sound-lab";
import { describe, expect, test } from "vitest";
import { prove } from "./prove.ts";

const ENGINE = { strokes: 2, cylinders: 1, idleHint: null } as const;
const made = take("idle", 2400, {
  snr: 20,
  noise: ["pink"],
  path: { place: "open", clip: 1, telephone: false, gain: false },
});
const sparks = sparkChannel(made);
const proved = (channels: readonly Float32Array[]) => prove({ channels, rate: made.rate }, ENGINE, 1);

describe("a recording held against its sparks", () => {
  test("agrees, whichever channel they are on", () => {
    for (const channels of [
      [made.samples, sparks],
      [sparks, made.samples],
    ]) {
      const result = proved(channels);
      if (typeof result === "string") throw new RangeError(result);
      expect(result.proof.middlePercent).toBeLessThan(1.2);
      expect(result.proof.grossPercent).toBeLessThan(2);
      expect(result.doubts).toEqual([]);
    }
  }, 30_000);

  test("says why it cannot be", () => {
    expect(proved([made.samples])).toBe("one-channel");
    expect(proved([made.samples, new Float32Array(made.samples.length)])).toBe("no-pulses");
    expect(proved([made.samples.slice(0, 48000), sparks.slice(0, 48000)])).toBe("too-short");
    expect(prove(new TextEncoder().encode("no sound at all").buffer as ArrayBuffer, ENGINE, 1)).toBe(
      "not-wave",
    );
  });
});
