import { STEPS } from "./firing-grid.ts";
import { SLEWS, STEADY } from "./slews.ts";

/** Firing every turn (or, in a four-stroke, every second one), or skipping every other firing. */
export type FiringMode = "every" | "skipping";

/** What was decided for one frame. */
export interface Decided {
  /** Place of the speed among the speeds looked for; −1: no engine speed heard. */
  readonly bin: number;
  readonly slew: number;
  readonly skipping: boolean;
}

/** All that weighs a path; scores are in units of comb salience times BETA. */
export const BETA = 0.17;
const SALIENCE_CAP = 9;
/** Salience that hearing no engine stands for. */
const NOTHING = 2.6;
const SKIP_LESS = 0.25;
const SLEW_CHANGE = 0.3;
const MODE_CHANGE = 2;
const SKIP_START = 2.4;
const SPEED_CHANGE = 0.35;
const COME_OR_GO = 3.5;

/** The likeliest path of speed through the frames, decided a fixed number of frames late. */
export interface SpeedPath {
  /**
   * Takes the next frame. Rows are saliences by grid place for each slew; null rows were not worked out and
   * cannot be chosen.
   * @returns what is decided for the frame `lag` frames back, or null while there is none
   */
  readonly take: (rows: readonly (Float64Array | null)[]) => Decided | null;
  /** Decides the frames still open, oldest first. */
  readonly finish: () => readonly Decided[];
  /** The best guess for the newest frame, which later frames may change. */
  readonly newest: () => Decided;
  /** Total score of the best path so far, penalties taken off. */
  readonly score: () => number;
}

export interface SpeedPathSetting {
  /** Number of speeds. */
  readonly speeds: number;
  /** Grid place of the first speed; above 0 an engine may skip, heard one octave (STEPS) lower. */
  readonly speedsFrom: number;
  readonly maySkip: boolean;
  /** Seconds from frame to frame. */
  readonly hop: number;
  /** Frames. */
  readonly lag: number;
  /** Taken off the salience of each speed, or null. */
  readonly penalty: Float64Array | null;
}

const NONE = -1;

export function speedPath({ speeds, speedsFrom, maySkip, hop, lag, penalty }: SpeedPathSetting): SpeedPath {
  const modes = maySkip ? 2 : 1;
  const slews = SLEWS.length;
  const states = modes * slews * speeds;
  const expected = SLEWS.map((slew) => slew * hop * STEPS);
  const nearest = expected.map((steps) => Math.round(steps));
  let old = new Float64Array(states).fill(-Infinity);
  let now = new Float64Array(states).fill(-Infinity);
  let oldNone = 0;
  let levels = 0;
  let oldActive = new Uint8Array(slews);
  let active = new Uint8Array(slews);
  /** Where each state of a frame came from: 9·mode + 3·(slew − 1…+1) + (step − 1…+1), or 255 from nothing. */
  const ring = Array.from({ length: lag + 1 }, () => new Uint8Array(states));
  const cameNone = new Int32Array(lag + 1);
  const merged = Array.from({ length: slews }, () => new Float64Array(speeds));
  const mergedMode = Array.from({ length: slews }, () => new Uint8Array(speeds));
  const best = new Float64Array(speeds);
  const bestFrom = new Uint8Array(speeds);
  let frames = 0;
  let decided = 0;

  const step = (rows: readonly (Float64Array | null)[]): void => {
    const back = ring[frames % ring.length]!;
    let oldBest = -Infinity;
    let oldBestState = NONE;
    for (let m = 0; m < modes; m++) {
      for (let a = 0; a < slews; a++) {
        if (!oldActive[a]) continue;
        const from = (m * slews + a) * speeds;
        for (let b = from; b < from + speeds; b++) {
          if (old[b]! > oldBest) {
            oldBest = old[b]!;
            oldBestState = b;
          }
        }
      }
    }
    const fromNone = oldNone - COME_OR_GO;
    let top = -Infinity;
    for (let m = 0; m < modes; m++) {
      mergeModes(m);
      for (let a = 0; a < slews; a++) {
        const row = rows[a];
        active[a] = row ? 1 : 0;
        if (!row) continue;
        mergeSlews(a);
        const from = (m * slews + a) * speeds;
        const n = nearest[a]!;
        const costs = [n - 1, n, n + 1].map((d) => SPEED_CHANGE * (d - expected[a]!) * (d - expected[a]!));
        const shift = m === 0 ? speedsFrom : speedsFrom - STEPS;
        const start = fromNone - (m === 0 ? 0 : SKIP_START);
        for (let b = 0; b < speeds; b++) {
          let value = start;
          let came = 255;
          for (let d = 0; d < 3; d++) {
            const source = b - (n + d - 1);
            if (source < 0 || source >= speeds) continue;
            const candidate = best[source]! - costs[d]!;
            if (candidate > value) {
              value = candidate;
              came = bestFrom[source]! + d;
            }
          }
          let salience = row[b + shift]!;
          if (salience > SALIENCE_CAP) salience = SALIENCE_CAP;
          if (m === 1) salience -= SKIP_LESS;
          if (penalty !== null) salience -= penalty[b]!;
          const total = value + BETA * salience;
          now[from + b] = total;
          back[from + b] = came;
          if (total > top) top = total;
        }
      }
    }
    const stay = oldNone;
    const leave = oldBest - COME_OR_GO;
    const none = BETA * NOTHING + Math.max(stay, leave);
    cameNone[frames % ring.length] = leave > stay ? oldBestState : NONE;
    // Kept near 0, so that an hour is as exact as a second.
    const level = Math.max(top, none);
    for (let a = 0; a < slews; a++) {
      if (!active[a]) continue;
      for (let m = 0; m < modes; m++) {
        const from = (m * slews + a) * speeds;
        for (let b = from; b < from + speeds; b++) now[b]! -= level;
      }
    }
    oldNone = none - level;
    levels += level;
    [old, now] = [now, old];
    [oldActive, active] = [active, oldActive];
    frames += 1;
  };

  /** Best over the mode before, for each slew and speed. */
  const mergeModes = (m: number): void => {
    for (let a = 0; a < slews; a++) {
      const into = merged[a]!;
      const mode = mergedMode[a]!;
      if (!oldActive[a]) {
        into.fill(-Infinity);
        continue;
      }
      const same = (m * slews + a) * speeds;
      const other = ((1 - m) * slews + a) * speeds;
      for (let b = 0; b < speeds; b++) {
        const stay = old[same + b]!;
        const change = modes === 2 ? old[other + b]! - MODE_CHANGE : -Infinity;
        into[b] = Math.max(change, stay);
        mode[b] = change > stay ? 1 - m : m;
      }
    }
  };

  /** Best over the slew before, for each speed. */
  const mergeSlews = (a: number): void => {
    best.fill(-Infinity);
    for (let o = 0; o < 3; o++) {
      const before = a + o - 1;
      if (before < 0 || before >= slews || !oldActive[before]) continue;
      const cost = o === 1 ? 0 : SLEW_CHANGE;
      const values = merged[before]!;
      const mode = mergedMode[before]!;
      for (let b = 0; b < speeds; b++) {
        const value = values[b]! - cost;
        if (value > best[b]!) {
          best[b] = value;
          bestFrom[b] = 9 * mode[b]! + 3 * o;
        }
      }
    }
  };

  const before = (frame: number, state: number): number => {
    if (state === NONE) return cameNone[frame % ring.length]!;
    const came = ring[frame % ring.length]![state]!;
    if (came === 255) return NONE;
    const a = Math.floor(state / speeds) % slews;
    const b = state % speeds;
    const mode = Math.floor(came / 9);
    const slew = a + Math.floor((came % 9) / 3) - 1;
    return (mode * slews + slew) * speeds + b - (nearest[a]! + (came % 3) - 1);
  };

  const bestNow = (): number => {
    let state = NONE;
    let value = oldNone;
    for (let m = 0; m < modes; m++) {
      for (let a = 0; a < slews; a++) {
        if (!oldActive[a]) continue;
        const from = (m * slews + a) * speeds;
        for (let b = from; b < from + speeds; b++) {
          if (old[b]! > value) {
            value = old[b]!;
            state = b;
          }
        }
      }
    }
    return state;
  };

  const spoken = (state: number): Decided =>
    state === NONE
      ? { bin: NONE, slew: STEADY, skipping: false }
      : {
          bin: state % speeds,
          slew: Math.floor(state / speeds) % slews,
          skipping: Math.floor(state / (speeds * slews)) === 1,
        };

  return {
    take(rows) {
      step(rows);
      if (frames - decided <= lag) return null;
      let state = bestNow();
      for (let frame = frames - 1; frame > decided; frame--) state = before(frame, state);
      decided += 1;
      return spoken(state);
    },
    finish() {
      let state = bestNow();
      const open: Decided[] = [];
      for (let frame = frames - 1; frame >= decided; frame--) {
        open.push(spoken(state));
        state = before(frame, state);
      }
      decided = frames;
      return open.reverse();
    },
    newest: () => spoken(bestNow()),
    // The best path is kept at 0.
    score: () => levels,
  };
}
