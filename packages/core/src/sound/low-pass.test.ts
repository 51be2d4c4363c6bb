import { describe, expect, test } from "vitest";
import { highPass, lowPass } from "./low-pass.ts";

/** Gain of taps at a frequency in cycles a sample, by the definition of the frequency response. */
function gain(taps: Float64Array, frequency: number): number {
  let [re, im] = [0, 0];
  taps.forEach((tap, i) => {
    re += tap * Math.cos(2 * Math.PI * frequency * i);
    im -= tap * Math.sin(2 * Math.PI * frequency * i);
  });
  return Math.hypot(re, im);
}

describe("the filters in front of the streams", () => {
  test("a low-pass passes, halves and stops where it says", () => {
    const taps = lowPass(0.11, 24);
    expect(taps.reduce((sum, tap) => sum + tap, 0)).toBeCloseTo(1, 12);
    taps.forEach((tap, i) => {
      expect(tap).toBeCloseTo(taps[taps.length - 1 - i]!, 12);
    });
    expect(Math.abs(20 * Math.log10(gain(taps, 0.066)))).toBeLessThan(0.1);
    expect(gain(taps, 0.11)).toBeCloseTo(0.5, 2);
    for (let f = 0.176; f < 0.5; f += 0.01) expect(20 * Math.log10(gain(taps, f))).toBeLessThan(-70);
    expect(() => lowPass(0.5, 4)).toThrow(RangeError);
  });

  test("a high-pass is Butterworth: 3 dB down at its cut, 0 at rest, 1 at the top", () => {
    const { b0, b1, b2, a1, a2 } = highPass(0.04375);
    const response = (f: number): number => {
      const [c1, s1] = [Math.cos(2 * Math.PI * f), -Math.sin(2 * Math.PI * f)];
      const [c2, s2] = [Math.cos(4 * Math.PI * f), -Math.sin(4 * Math.PI * f)];
      return (
        Math.hypot(b0 + b1 * c1 + b2 * c2, b1 * s1 + b2 * s2) /
        Math.hypot(1 + a1 * c1 + a2 * c2, a1 * s1 + a2 * s2)
      );
    };
    expect(response(0)).toBeCloseTo(0, 12);
    expect(response(0.5)).toBeCloseTo(1, 12);
    expect(response(0.04375)).toBeCloseTo(Math.SQRT1_2, 9);
    // |H|² = 1 / (1 + (tan πc / tan πf)⁴).
    const bent = (Math.tan(Math.PI * 0.04375) / Math.tan(Math.PI * 0.02)) ** 4;
    expect(response(0.02)).toBeCloseTo(1 / Math.sqrt(1 + bent), 9);
    expect(() => highPass(0)).toThrow(RangeError);
  });
});
