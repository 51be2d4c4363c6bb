import { octaves } from "./firing-grid.ts";
import type { Snap } from "./sound-event.ts";
import { LINE_RATE, middle, type SpeedLine } from "./speed-line.ts";

/** A snap leaves from below the first and passes the second, times idle, within a second. */
const LEAVES = 1.35;
const PASSES = 1.9;
/** The rise begins where it was last below this, times idle. */
const ONSET = 1.06;

/** Every quick opening of the throttle, in order. */
export function findSnaps(line: SpeedLine, idleRpm: number): Omit<Snap, "confidence">[] {
  const { rpm } = line;
  const snaps: Omit<Snap, "confidence">[] = [];
  let i = 1;
  while (i < rpm.length) {
    if (!(rpm[i]! >= PASSES * idleRpm && lowWithin(rpm, i, LEAVES * idleRpm))) {
      i += 1;
      continue;
    }
    let onset = i;
    while (onset > 0 && !(rpm[onset]! > 0 && rpm[onset]! < ONSET * idleRpm) && i - onset < 1.5 * LINE_RATE)
      onset -= 1;
    let peak = i;
    for (let k = i; k < Math.min(rpm.length, i + 1.5 * LINE_RATE); k++) {
      if (rpm[k]! > rpm[peak]!) peak = k;
      if (rpm[k]! > 0 && rpm[k]! < LEAVES * idleRpm) break;
    }
    snaps.push(measured(line, idleRpm, onset, peak));
    i = peak + 1;
    while (i < rpm.length && !(rpm[i]! > 0 && rpm[i]! < LEAVES * idleRpm)) i += 1;
  }
  return snaps;
}

const lowWithin = (rpm: Float64Array, i: number, below: number): boolean => {
  for (let k = i; k >= Math.max(0, i - LINE_RATE); k--) if (rpm[k]! > 0 && rpm[k]! <= below) return true;
  return false;
};

function measured(line: SpeedLine, idleRpm: number, onset: number, peak: number): Omit<Snap, "confidence"> {
  const { rpm } = line;
  const span = rpm[peak]! - idleRpm;
  const first = crossing(rpm, onset, peak, idleRpm + 0.1 * span);
  const last = crossing(rpm, onset, peak, idleRpm + 0.9 * span);
  const rise = Math.max(0.01, (last - first) / LINE_RATE);
  let least = idleRpm;
  for (let k = Math.max(0, onset - LINE_RATE / 2); k <= onset; k++)
    if (rpm[k]! > 0) least = Math.min(least, rpm[k]!);
  const opening = throttleOpening(line, onset);
  return {
    kind: "snap",
    at: onset / LINE_RATE,
    until: peak / LINE_RATE,
    delaySeconds: opening === null ? null : Math.max(0, (onset - opening) / LINE_RATE),
    riseSeconds: rise,
    riseRate: octaves((idleRpm + 0.9 * span) / (idleRpm + 0.1 * span)) / rise,
    peakRpm: rpm[peak]!,
    bogPercent: 100 * (1 - least / idleRpm),
  };
}

/** Where the speed first passes a value, between places. */
function crossing(rpm: Float64Array, from: number, to: number, value: number): number {
  for (let k = from + 1; k <= to; k++) {
    const [a, b] = [rpm[k - 1]!, rpm[k]!];
    if (b >= value) return a > 0 && b > a && a < value ? k - 1 + (value - a) / (b - a) : k;
  }
  return to;
}

/** The engine draws breath loudly when the slide goes up: where it got louder than before, or null. */
function throttleOpening(line: SpeedLine, onset: number): number | null {
  const from = Math.max(0, Math.round(onset - 1.8 * LINE_RATE));
  const to = Math.round(onset - 0.5 * LINE_RATE);
  if (to - from < 0.5 * LINE_RATE) return null;
  const before = [...line.loudness.slice(from, to)];
  const usual = middle(before);
  const spread = 1.4826 * middle(before.map((value) => Math.abs(value - usual)));
  const limit = usual + Math.max(2.5, 3 * spread);
  for (let k = to; k <= Math.min(line.loudness.length - 1, onset + 5); k++) {
    if (line.loudness[k]! > limit) return k;
  }
  return null;
}
