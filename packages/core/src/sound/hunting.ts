import type { Hunting } from "./sound-event.ts";
import { LINE_RATE, type SpeedLine, share } from "./speed-line.ts";

/** Octave-like limits of "about idle", as ratios. */
const NEAR_IDLE = 1.35;
/** A stretch shorter than this, seconds, cannot show it. */
const LEAST = 2.4;
/** Swing, to either side, from which an idle hunts. */
const LEAST_SWING = 0.04;
/** How far it must come back before a turn counts. */
const BAND = 0.065;
/** Turns of the swing that must be seen. */
const LEAST_TURNS = 4;

/** The longest stretch near idle that swings up and down by itself, or null. */
export function findHunting(line: SpeedLine, idleRpm: number): Omit<Hunting, "confidence"> | null {
  let found: Omit<Hunting, "confidence"> | null = null;
  let from = -1;
  for (let i = 0; i <= line.rpm.length; i++) {
    const near =
      i < line.rpm.length && line.rpm[i]! < idleRpm * NEAR_IDLE && line.rpm[i]! > idleRpm / NEAR_IDLE;
    if (near && from < 0) from = i;
    if (!near && from >= 0) {
      const swing = swingIn(line, from, i);
      if (swing !== null && (found === null || swing.swingPercent > found.swingPercent)) found = swing;
      from = -1;
    }
  }
  return found;
}

function swingIn(line: SpeedLine, from: number, to: number): Omit<Hunting, "confidence"> | null {
  if (to - from < LEAST * LINE_RATE) return null;
  // A turn counts once the speed has come back from it by a whole band: small wander makes none.
  const turns: number[] = [];
  let [high, low] = [from, from];
  let rising: boolean | null = null;
  for (let i = from; i < to; i++) {
    const value = line.rpm[i]!;
    if (value > line.rpm[high]!) high = i;
    if (value < line.rpm[low]!) low = i;
    if (rising !== false && value < line.rpm[high]! * (1 - BAND)) {
      turns.push(high);
      rising = false;
      low = i;
    } else if (rising !== true && value > line.rpm[low]! * (1 + BAND)) {
      turns.push(low);
      rising = true;
      high = i;
    }
  }
  // The first turn is only where the stretch was entered.
  const real = turns.slice(1);
  if (real.length < LEAST_TURNS) return null;
  const first = real[0]!;
  const last = real.at(-1)!;
  const speeds = [...line.rpm.slice(first, last + 1)];
  const [top, bottom] = [share(speeds, 0.95), share(speeds, 0.05)];
  const swing = (top - bottom) / (top + bottom);
  const every = (2 * (last - first)) / LINE_RATE / (real.length - 1);
  if (swing < LEAST_SWING || every > 4) return null;
  return {
    kind: "hunting",
    at: first / LINE_RATE,
    until: last / LINE_RATE,
    swingPercent: 100 * swing,
    everySeconds: every,
  };
}
