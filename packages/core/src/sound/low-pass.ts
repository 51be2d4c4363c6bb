import { cosine, sine, tangent } from "../numerics/elementary.ts";

/**
 * A windowed-sinc low-pass filter (Blackman window) of 2·half + 1 taps that sum to 1. Below 0.6 of the cut it
 * passes within 0.1 dB and beyond 1.6 of it stops by 70 dB when half is at least 2.6 / cut.
 * @param cut half-gain frequency in cycles a sample, above 0, below 0.5
 */
export function lowPass(cut: number, half: number): Float64Array {
  if (!(cut > 0 && cut < 0.5)) throw new RangeError(`A cut must lie between 0 and 0.5, got ${cut}`);
  const taps = new Float64Array(2 * half + 1);
  let sum = 0;
  for (let i = 0; i < taps.length; i++) {
    const t = i - half;
    const phase = (Math.PI * (t + half + 1)) / (half + 1);
    const window = 0.42 - 0.5 * cosine(phase) + 0.08 * cosine(2 * phase);
    const value = (t === 0 ? 2 * cut : sine(2 * Math.PI * cut * t) / (Math.PI * t)) * window;
    taps[i] = value;
    sum += value;
  }
  return taps.map((tap) => tap / sum);
}

/** A second-order filter: y = b0 x + b1 x₁ + b2 x₂ − a1 y₁ − a2 y₂. */
export interface Biquad {
  readonly b0: number;
  readonly b1: number;
  readonly b2: number;
  readonly a1: number;
  readonly a2: number;
}

/** A second-order Butterworth high-pass by the bilinear transform, 3 dB down at `cut` cycles a sample. */
export function highPass(cut: number): Biquad {
  if (!(cut > 0 && cut < 0.5)) throw new RangeError(`A cut must lie between 0 and 0.5, got ${cut}`);
  const w = tangent(Math.PI * cut);
  const scale = 1 / (1 + Math.SQRT2 * w + w * w);
  return {
    b0: scale,
    b1: -2 * scale,
    b2: scale,
    a1: 2 * (w * w - 1) * scale,
    a2: (1 - Math.SQRT2 * w + w * w) * scale,
  };
}
