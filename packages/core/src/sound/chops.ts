import { octaves } from "./firing-grid.ts";
import type { Chop, Snap } from "./sound-event.ts";
import { LINE_RATE, middle, type SpeedLine } from "./speed-line.ts";

/** Limits of a hang: above this times idle, below this part of the span, slower than this many octaves a second. */
const HANG_ABOVE = 1.15;
const HANG_PART = 0.6;
const HANG_SLOPE = 0.45;
/** Seconds from which a hang is one. */
export const LEAST_HANG = 0.4;
/** Come down when below this times idle. */
const REACHED = 1.1;
/** Settled: within this of idle for this many seconds. */
const SETTLED = 0.07;
const SETTLED_FOR = 0.6;

/** The closing of the throttle after each snap. */
export function findChops(
  line: SpeedLine,
  idleRpm: number,
  snaps: readonly Omit<Snap, "confidence">[],
): Omit<Chop, "confidence">[] {
  return snaps.flatMap((snap, s) => {
    const end = s + 1 < snaps.length ? Math.round(snaps[s + 1]!.at * LINE_RATE) : line.rpm.length;
    const chop = chopAfter(line, idleRpm, Math.round(snap.until * LINE_RATE), end);
    return chop === null ? [] : [chop];
  });
}

function chopAfter(
  line: SpeedLine,
  idle: number,
  peak: number,
  end: number,
): Omit<Chop, "confidence"> | null {
  const { rpm } = line;
  let high = 0;
  for (let k = peak; k < Math.min(end, peak + 6 * LINE_RATE); k++) high = Math.max(high, rpm[k]!);
  const half = firstBelow(rpm, peak, end, idle + 0.5 * (high - idle));
  if (half === null) return null;
  // What it really came from: the highest of the second before it fell through half.
  let top = 0;
  for (let k = Math.max(peak, half - LINE_RATE); k < half; k++) top = Math.max(top, rpm[k]!);
  const span = top - idle;
  let start = half;
  while (start > peak && rpm[start]! < idle + 0.93 * span) start -= 1;
  const fallEnd = firstBelow(rpm, start, end, idle + 0.3 * span) ?? end - 1;
  const rest = restIdle(rpm, idle, end);
  const hang = hangIn(line, rest, span, fallStarts(line, start, end), end);
  const reach = firstBelow(rpm, start, end, REACHED * rest);
  const dive = reach === null ? null : diveAfter(rpm, rest, reach, end);
  return {
    kind: "chop",
    at: start / LINE_RATE,
    until: (end - 1) / LINE_RATE,
    fromRpm: top,
    fallRate:
      fallEnd > start && rpm[fallEnd]! > 0
        ? octaves(rpm[start]! / rpm[fallEnd]!) / ((fallEnd - start) / LINE_RATE)
        : 0,
    hangSeconds: hang.seconds,
    hangRpm: hang.rpm,
    undershootPercent: dive?.percent ?? null,
    belowSeconds: dive?.seconds ?? 0,
    settleSeconds: settled(rpm, rest, start, end),
  };
}

const fallStarts = (line: SpeedLine, start: number, end: number): number => {
  let k = start;
  while (k < end && !(line.slope[k]! < -HANG_SLOPE)) k += 1;
  return k;
};

function firstBelow(rpm: Float64Array, from: number, end: number, value: number): number | null {
  for (let k = from; k < end; k++) if (rpm[k]! > 0 && rpm[k]! < value) return k;
  return null;
}

/** Idle as it came back to, when it did; else the idle from before. */
function restIdle(rpm: Float64Array, idle: number, end: number): number {
  const last = [...rpm.slice(Math.max(0, end - LINE_RATE - 6), Math.max(0, end - 6))].filter(
    (value) => value > 0,
  );
  if (last.length < LINE_RATE / 2) return idle;
  const own = middle(last);
  return Math.abs(octaves(own / idle)) < 0.2 ? own : idle;
}

function hangIn(
  line: SpeedLine,
  rest: number,
  span: number,
  from: number,
  end: number,
): { seconds: number; rpm: number | null } {
  const held: number[] = [];
  for (let k = from; k < end; k++) {
    const value = line.rpm[k]!;
    const above = value > HANG_ABOVE * rest && value < rest + HANG_PART * span;
    if (above && Math.abs(line.slope[k]!) < HANG_SLOPE) held.push(value);
  }
  const seconds = held.length / LINE_RATE;
  return seconds < LEAST_HANG ? { seconds: 0, rpm: null } : { seconds, rpm: middle(held) };
}

function diveAfter(
  rpm: Float64Array,
  rest: number,
  reach: number,
  end: number,
): { percent: number; seconds: number } {
  let least = rest;
  let below = 0;
  for (let k = reach; k < Math.min(end, reach + 1.5 * LINE_RATE); k++) {
    if (rpm[k] === 0) continue;
    least = Math.min(least, rpm[k]!);
    if (rpm[k]! < 0.93 * rest) below += 1;
  }
  return { percent: 100 * (1 - least / rest), seconds: below / LINE_RATE };
}

function settled(rpm: Float64Array, rest: number, start: number, end: number): number | null {
  let since = start;
  for (let k = start; k < end; k++) {
    if (!(Math.abs(rpm[k]! / rest - 1) <= SETTLED)) since = k + 1;
    else if (k - since >= SETTLED_FOR * LINE_RATE) return (since - start) / LINE_RATE;
  }
  return null;
}
