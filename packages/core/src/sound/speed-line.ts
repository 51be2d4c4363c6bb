import { exp, log } from "../numerics/elementary.ts";
import { octaves } from "./firing-grid.ts";
import type { SpeedTrack } from "./speed-track.ts";

/** Values a second of the line that events are read from. */
export const LINE_RATE = 100;
/** Change slower than this, octaves a second, is steady. */
export const STEADY_SLOPE = 0.35;

/** Speed every 10 ms with its slope. */
export interface SpeedLine {
  /** Revolutions a minute; 0 where not heard. */
  readonly rpm: Float64Array;
  /** Octaves a second over 0.4 s; NaN where not known. */
  readonly slope: Float64Array;
  readonly confidence: Float64Array;
  readonly loudness: Float64Array;
  readonly steady: (index: number) => boolean;
}

export function speedLine(track: SpeedTrack): SpeedLine {
  const { hop } = track;
  const n = Math.max(0, Math.floor((track.rpm.length - 1) * hop * LINE_RATE) + 1);
  const rpm = new Float64Array(n);
  const confidence = new Float64Array(n);
  const loudness = new Float64Array(n);
  for (let i = 0; i < n; i++) {
    const at = i / LINE_RATE / hop;
    const k = Math.min(Math.floor(at), track.rpm.length - 1);
    const next = Math.min(k + 1, track.rpm.length - 1);
    const f = at - k;
    const [a, b] = [track.rpm[k]!, track.rpm[next]!];
    rpm[i] = a > 0 && b > 0 ? exp(log(a) + f * (log(b) - log(a))) : f < 0.5 ? a : b;
    confidence[i] = f < 0.5 ? track.confidence[k]! : track.confidence[next]!;
    loudness[i] = track.loudness[k]! * (1 - f) + track.loudness[next]! * f;
  }
  return lineFrom(rpm, confidence, loudness);
}

/** A line from speeds every 10 ms. */
export function lineFrom(rpm: Float64Array, confidence: Float64Array, loudness: Float64Array): SpeedLine {
  const slope = rpm.map((_, i) => {
    const from = Math.max(0, i - 20);
    const to = Math.min(rpm.length - 1, i + 20);
    const [a, b] = [rpm[from]!, rpm[to]!];
    return a > 0 && b > 0 && rpm[i]! > 0 && to > from
      ? octaves(b / a) / ((to - from) / LINE_RATE)
      : Number.NaN;
  });
  return { rpm, slope, confidence, loudness, steady: (i) => Math.abs(slope[i]!) < STEADY_SLOPE };
}

/** The middle value; NaN of none. */
export function middle(values: readonly number[]): number {
  return share(values, 0.5);
}

/** The value that so great a share of the values lies below. */
export function share(values: readonly number[], part: number): number {
  if (values.length === 0) return Number.NaN;
  const sorted = [...values].sort((a, b) => a - b);
  const at = part * (sorted.length - 1);
  const k = Math.floor(at);
  return sorted[k]! + (at - k) * ((sorted[k + 1] ?? sorted[k]!) - sorted[k]!);
}
