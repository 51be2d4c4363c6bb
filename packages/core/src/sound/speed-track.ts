import { exp, log } from "../numerics/elementary.ts";
import { type EngineSound, firingsPerRpm } from "./engine-sound.ts";
import type { HeardFrame } from "./speed-follower.ts";

/** Engine speed against time, a value each hop. */
export interface SpeedTrack {
  /** Seconds from value to value; the first is at 0. */
  readonly hop: number;
  /** Revolutions a minute; 0 where no engine was heard. */
  readonly rpm: Float64Array;
  /** Chance that the speed is right within 3 %, from made sounds; 0 where it was bridged or not heard. */
  readonly confidence: Float64Array;
  /** 1 where it fired every second time only. */
  readonly skipping: Uint8Array;
  /** Decibels above 350 Hz. */
  readonly loudness: Float64Array;
  readonly salience: Float64Array;
  readonly margin: Float64Array;
}

/** Runs of speed shorter than this, alone, are chance. Seconds. */
const ISLAND = 0.25;
const ISLAND_GAP = 0.15;
const ISLAND_SALIENCE = 3;
/** Gaps up to this many seconds are bridged. */
const BRIDGE = 0.2;
/** A frame's speed is read with its neighbours over so many firings. */
const FIRINGS = 1.6;

/** Takes away what stands alone, bridges short gaps and reads each speed with its neighbours. */
export function speedTrack(frames: readonly HeardFrame[], hop: number, engine: EngineSound): SpeedTrack {
  const raw = Float64Array.from(frames, ({ rpm }) => rpm);
  dropIslands(raw, frames, hop);
  const bridged = bridgeGaps(raw, Math.round(BRIDGE / hop));
  const rpm = smoothed(raw, frames, hop, firingsPerRpm(engine));
  const confidence = Float64Array.from(frames, (frame, i) =>
    rpm[i] === 0 || bridged[i] ? 0 : frameConfidence(frame.salience, frame.margin, engine.strokes),
  );
  return {
    hop,
    rpm,
    confidence,
    skipping: Uint8Array.from(frames, ({ skipping }, i) => (skipping && rpm[i]! > 0 ? 1 : 0)),
    loudness: Float64Array.from(frames, ({ loudness }) => loudness),
    salience: Float64Array.from(frames, ({ salience }) => salience),
    margin: Float64Array.from(frames, ({ margin }) => margin),
  };
}

/** Chance that one frame's speed is within 3 % of the truth. Fitted on made sounds (docs/sound.md). */
export function frameConfidence(salience: number, margin: number, strokes: 2 | 4): number {
  const lift = strokes === 4 ? 1.5 : 0;
  const score = 0.9 * (salience - 3) + 0.8 * (margin + lift);
  return 1 / (1 + exp(-score));
}

function dropIslands(rpm: Float64Array, frames: readonly HeardFrame[], hop: number): void {
  const runs: { from: number; to: number }[] = [];
  for (let i = 0; i < rpm.length; i++) {
    if (rpm[i] === 0) continue;
    const last = runs.at(-1);
    if (last !== undefined && last.to === i) last.to = i + 1;
    else runs.push({ from: i, to: i + 1 });
  }
  runs.forEach((run, r) => {
    const before = runs[r - 1];
    const after = runs[r + 1];
    const near = (gap: number): boolean => gap * hop <= ISLAND_GAP;
    const alone = !(before && near(run.from - before.to)) && !(after && near(after.from - run.to));
    let sum = 0;
    for (let i = run.from; i < run.to; i++) sum += frames[i]!.salience;
    const weak = sum / (run.to - run.from) < ISLAND_SALIENCE;
    if (weak || (alone && (run.to - run.from) * hop < ISLAND)) rpm.fill(0, run.from, run.to);
  });
}

function bridgeGaps(rpm: Float64Array, most: number): Uint8Array {
  const bridged = new Uint8Array(rpm.length);
  let last = -1;
  for (let i = 0; i < rpm.length; i++) {
    if (rpm[i] === 0) continue;
    if (last >= 0 && i - last > 1 && i - last <= most) {
      const ratio = log(rpm[i]! / rpm[last]!);
      for (let k = last + 1; k < i; k++) {
        rpm[k] = rpm[last]! * exp((ratio * (k - last)) / (i - last));
        bridged[k] = 1;
      }
    }
    last = i;
  }
  return bridged;
}

/** A straight line through log speed, nearer and clearer frames weighing more. */
function smoothed(
  rpm: Float64Array,
  frames: readonly HeardFrame[],
  hop: number,
  perRpm: number,
): Float64Array {
  const logs = rpm.map((value) => (value > 0 ? log(value) : 0));
  return rpm.map((own, i) => {
    if (own === 0) return 0;
    const half = Math.max(2, Math.min(6, Math.round(FIRINGS / (own * perRpm * hop))));
    let [w, wx, wy, wxx, wxy] = [0, 0, 0, 0, 0];
    for (let k = -half; k <= half; k++) {
      const j = i + k;
      if (j < 0 || j >= rpm.length || rpm[j] === 0) continue;
      // A jump of an octave is another reading of the sound, not a neighbour.
      if (Math.abs(logs[j]! - logs[i]!) > 0.35) continue;
      const weight = (half + 1 - Math.abs(k)) * Math.max(0.3, frames[j]!.salience);
      w += weight;
      wx += weight * k;
      wy += weight * logs[j]!;
      wxx += weight * k * k;
      wxy += weight * k * logs[j]!;
    }
    const spread = w * wxx - wx * wx;
    return exp(spread > 0 ? (wy * wxx - wx * wxy) / spread : wy / w);
  });
}
