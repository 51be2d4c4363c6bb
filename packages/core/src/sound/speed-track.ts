import { exp, log } from "../numerics/elementary.ts";
import { type EngineSound, firingsPerRpm } from "./engine-sound.ts";
import { frameConfidence } from "./frame-confidence.ts";
import { rumble } from "./rumble.ts";
import type { HeardFrame } from "./speed-follower.ts";

/** Engine speed against time, a value each hop. */
export interface SpeedTrack {
  /** Seconds from value to value; the first is at 0. */
  readonly hop: number;
  /** Revolutions a minute; 0 where no engine was heard. */
  readonly rpm: Float64Array;
  /** Chance that the speed is right within 3 %, from made sounds; 0 where it was not heard. */
  readonly confidence: Float64Array;
  /** 1 where it fired every second time only. */
  readonly skipping: Uint8Array;
  /** Decibels above 350 Hz. */
  readonly loudness: Float64Array;
  readonly salience: Float64Array;
  /** How much better than the best other speed that is neither its half nor its double. */
  readonly apart: Float64Array;
  /** Part of the evidence that lies in the sound itself, not in its beat alone. */
  readonly toneShare: Float64Array;
}

/** Runs of speed shorter than this, alone, are chance. Seconds. */
const ISLAND = 0.25;
const ISLAND_GAP = 0.15;
const ISLAND_SALIENCE = 3;
/** Gaps up to this many seconds are bridged. */
const BRIDGE = 0.3;
/** Frames less clear than this between clearer ones are read from those, if the gap can be bridged. */
const UNCLEAR = -0.85;
/** A frame's speed is read with its neighbours over so many firings to either side. */
const FIRINGS = { steady: 1.6, moving: 0.8 } as const;

/** Takes away wind and what stands alone, bridges short gaps and reads each speed with its neighbours. */
export function speedTrack(frames: readonly HeardFrame[], hop: number, engine: EngineSound): SpeedTrack {
  const wind = rumble(frames);
  const raw = Float64Array.from(frames, ({ rpm }, i) => (wind[i] ? 0 : rpm));
  dropIslands(raw, frames, hop);
  const longest = Math.round(BRIDGE / hop);
  dropUnclear(raw, frames, engine, longest);
  const bridged = bridgeGaps(raw, longest);
  const rpm = smoothed(raw, frames, hop, firingsPerRpm(engine));
  const confidence = frameConfidence(frames, raw, rpm, bridged, hop, engine);
  return {
    hop,
    rpm,
    confidence,
    skipping: Uint8Array.from(frames, ({ skipping }, i) => (skipping && rpm[i]! > 0 ? 1 : 0)),
    loudness: Float64Array.from(frames, ({ loudness }) => loudness),
    salience: Float64Array.from(frames, ({ salience }) => salience),
    apart: Float64Array.from(frames, ({ apart }) => apart),
    toneShare: Float64Array.from(frames, ({ toneShare }) => toneShare),
  };
}

/** A four-stroke's margins are lower by nature. */
const clearness = ({ salience, margin }: HeardFrame, { strokes }: EngineSound): number =>
  0.9 * (salience - 3) + 0.8 * (margin + (strokes === 4 ? 1.5 : 0));

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

/** Takes away what is unclear where both sides are clear and near. */
function dropUnclear(
  rpm: Float64Array,
  frames: readonly HeardFrame[],
  engine: EngineSound,
  longest: number,
): void {
  const clear = (i: number): boolean => rpm[i]! > 0 && clearness(frames[i]!, engine) >= UNCLEAR;
  let last = -1;
  for (let i = 0; i < rpm.length; i++) {
    if (!clear(i)) continue;
    if (last >= 0 && i - last <= longest) rpm.fill(0, last + 1, i);
    last = i;
  }
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
    const firings = frames[i]!.slew === 0 ? FIRINGS.steady : FIRINGS.moving;
    const half = Math.max(2, Math.min(6, Math.round(firings / (own * perRpm * hop))));
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
