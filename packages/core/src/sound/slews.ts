import { cosine, log } from "../numerics/elementary.ts";

/**
 * How fast the speed may be changing inside a frame, octaves a second: for each of these the frame is stretched
 * so that a change at that rate becomes a steady tone. Falls are slower than rises, as throttles go.
 */
export const SLEWS: readonly number[] = [-7.5, -4.5, -2, 0, 2.5, 5.5, 10];
/** Place of the steady one. */
export const STEADY = 3;

/** Weights that read one frame out of a stream: value n is the sum of w[4n+j] · x[middle + at[n] + j]. */
export interface FrameReading {
  readonly length: number;
  readonly at: Int32Array;
  readonly weights: Float64Array;
  /** Set for steady frames, which need no stretching: plain window weights. */
  readonly plain: Float64Array | null;
}

const LOG_2 = log(2);

/**
 * A Hann window of that many seconds, stretched for a slew. Time t and stretched time u go by
 * u = (exp(at) − 1)/a, a being the slew in nepers a second; both are 0 in the middle of the frame, so a tone
 * found there is the one at that moment. Between samples: Catmull and Rom's cubic.
 */
export function frameReading(seconds: number, slew: number, rate: number): FrameReading {
  const a = slew * LOG_2;
  // A window must end before the stretched tone would have come from nowhere.
  const half = Math.min(seconds / 2, a === 0 ? seconds : 0.65 / Math.abs(a)) * rate;
  const reach = Math.floor(half);
  const length = 2 * reach + 1;
  const at = new Int32Array(length);
  const weights = new Float64Array(4 * length);
  const plain = a === 0 ? new Float64Array(length) : null;
  for (let n = 0; n < length; n++) {
    const u = n - reach;
    const window = 0.5 + 0.5 * cosine((Math.PI * u) / (half + 1));
    if (plain !== null) {
      plain[n] = window;
      at[n] = u;
      continue;
    }
    const t = (log(1 + (a * u) / rate) / a) * rate;
    const whole = Math.floor(t);
    const f = t - whole;
    at[n] = whole - 1;
    weights[4 * n] = window * 0.5 * f * (-1 + f * (2 - f));
    weights[4 * n + 1] = window * 0.5 * (2 + f * f * (-5 + 3 * f));
    weights[4 * n + 2] = window * 0.5 * f * (1 + f * (4 - 3 * f));
    weights[4 * n + 3] = window * 0.5 * f * f * (f - 1);
  }
  return { length, at, weights, plain };
}
