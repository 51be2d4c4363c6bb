import { exp } from "../numerics/elementary.ts";
import type { EngineSound } from "./engine-sound.ts";
import { octaves } from "./firing-grid.ts";
import type { HeardFrame } from "./speed-follower.ts";

/** Frames to either side over which the clearness, and the change, of a frame is taken. */
const CLEAR_OVER = 12;
const CHANGE_OVER = 6;
/** Share of bridged frames that are within 3 %, on made sounds (646 of 849). */
const BRIDGED = 0.76;

/**
 * A logistic fit to 100 000 frames of 150 made takes, on seeds below those of docs/sound.md. `apart`: for each step by
 * which no other speed explains the sound as well; `change`: each octave a second; `step`: each octave between what the
 * frame alone says and what it says with its neighbours.
 */
const FIT = {
  2: { at: 4.015, apart: 0.484, change: -0.12, step: -125.6 },
  4: { at: 2.49, apart: 1.011, change: -0.357, step: -99.9 },
} as const;
const MOST_CHANGE = 6;
const MOST_STEP = 0.2;

/**
 * Chance that each speed is within 3 % of the truth; 0 where none was heard.
 * @param own speeds as each frame alone gives them
 * @param smooth the same read with their neighbours
 */
export function frameConfidence(
  frames: readonly HeardFrame[],
  own: Float64Array,
  smooth: Float64Array,
  bridged: Uint8Array,
  hop: number,
  { strokes }: EngineSound,
): Float64Array {
  const fit = FIT[strokes];
  return smooth.map((rpm, i) => {
    if (rpm === 0) return 0;
    if (bridged[i]) return BRIDGED;
    const score =
      fit.at +
      fit.apart * apartAround(frames, i) +
      fit.change * Math.min(MOST_CHANGE, changeAround(smooth, i, hop)) +
      fit.step * Math.min(MOST_STEP, Math.abs(octaves(rpm / own[i]!)));
    return 1 / (1 + exp(-score));
  });
}

function apartAround(frames: readonly HeardFrame[], i: number): number {
  const from = Math.max(0, i - CLEAR_OVER);
  const to = Math.min(frames.length - 1, i + CLEAR_OVER);
  let sum = 0;
  for (let k = from; k <= to; k++) sum += Math.max(-3, Math.min(4, frames[k]!.apart));
  return sum / (to - from + 1);
}

/** Octaves a second. */
function changeAround(rpm: Float64Array, i: number, hop: number): number {
  const before = rpm[Math.max(0, i - CHANGE_OVER)]!;
  const after = rpm[Math.min(rpm.length - 1, i + CHANGE_OVER)]!;
  return before > 0 && after > 0 ? Math.abs(octaves(after / before)) / (2 * CHANGE_OVER * hop) : 0;
}
