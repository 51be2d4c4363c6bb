import { exp, log } from "../numerics/elementary.ts";
import { middle } from "./speed-line.ts";

/** A speed that held still for a while. */
export interface StillSpeed {
  /** Revolutions a minute. */
  readonly rpm: number;
  /** One standard error of it, revolutions a minute, from how the half seconds scatter. */
  readonly error: number;
  /** Seconds it has held. */
  readonly seconds: number;
}

/** Waits for an idle to settle while somebody turns a screw. */
export interface StillMeter {
  /** Takes a speed as it was heard; 0: none. Seconds must not go back. */
  readonly take: (seconds: number, rpm: number) => void;
  /** The speed that has held until now, or null when it still moves or is not heard. */
  readonly reading: () => StillSpeed | null;
  /** The speed of the last second, smoothed; null when it was hardly heard. */
  readonly recent: () => number | null;
  /** Forgets what was before: the screw was turned. */
  readonly forget: () => void;
}

/** Speeds are gathered into pieces of so many seconds. */
const PIECE = 0.5;
/** A piece with fewer of its speeds heard than this share says nothing. */
const HEARD = 0.6;
/** A piece further than this from the middle of the others is another speed, ± ln ratio. */
const SAME = 0.03;
/** The longest stretch that is looked at, seconds. */
const LONGEST = 12;
/** Fewer pieces than this are no stretch. */
const LEAST_PIECES = 4;
/** The later half may differ from the earlier by this much beyond its scatter, ± ln ratio: more is drift. */
const DRIFT = 0.008;
/** Neighbouring pieces wander together: a stretch tells as much as this share of as many pieces apart. Estimate. */
const APART = 0.35;
/** What the reading of the sound itself may be off by, part of the speed (docs/sound.md: idle, middle error). */
const OWN_ERROR = 0.002;

/** A meter for live speed. Accuracy on made sweeps: docs/sound.md. */
export function stillMeter(): StillMeter {
  let pieces: (number | null)[] = [];
  let logs: number[] = [];
  let taken = 0;
  let until: number | null = null;
  const close = (): void => {
    pieces.push(taken > 0 && logs.length >= HEARD * taken ? middle(logs) : null);
    if (pieces.length > LONGEST / PIECE) pieces.shift();
    logs = [];
    taken = 0;
  };
  return {
    take(seconds, rpm) {
      until ??= seconds + PIECE;
      while (seconds >= until) {
        close();
        until += PIECE;
      }
      taken += 1;
      if (rpm > 0) logs.push(log(rpm));
    },
    reading: () => held(pieces),
    recent() {
      const heard = pieces.slice(-2).filter((piece) => piece !== null);
      return heard.length === 0 ? null : exp(average(heard));
    },
    forget() {
      pieces = [];
      logs = [];
      taken = 0;
      until = null;
    },
  };
}

function held(pieces: readonly (number | null)[]): StillSpeed | null {
  const own: number[] = [];
  for (let i = pieces.length - 1; i >= 0; i--) {
    const piece = pieces[i]!;
    if (piece === null || (own.length > 0 && Math.abs(piece - middle(own)) > SAME)) break;
    own.unshift(piece);
  }
  if (own.length < LEAST_PIECES) return null;
  const mean = average(own);
  const scatter = Math.sqrt(own.reduce((sum, value) => sum + square(value - mean), 0) / (own.length - 1));
  const half = Math.floor(own.length / 2);
  const drift = average(own.slice(-half)) - average(own.slice(0, half));
  if (Math.abs(drift) > DRIFT + 2 * scatter * Math.sqrt(2 / half)) return null;
  const error = Math.sqrt(square(scatter) / (APART * own.length) + square(OWN_ERROR));
  const rpm = exp(mean);
  return { rpm, error: error * rpm, seconds: own.length * PIECE };
}

const square = (x: number): number => x * x;

const average = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
