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
/** From no engine to one that is heard, and the other way. */
const COME = 3.5;
const GO = 5;
/** Losing a running engine out of hearing for a moment, and finding it again. */
const LOSE = 1.75;
const FIND = 1.75;
/** An unheard crankshaft changes its speed by no more than this, octaves a second: its flywheel sees to that. */
const UNHEARD_SLEW = 8;
/** For each squared step of the grid it changes by. */
const UNHEARD_CHANGE = 0.01;

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
/** Where a heard state came from when not from another heard one. */
const FROM_NONE = 255;
const FROM_UNHEARD = 254;

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
  /** Where each state of a frame came from: 9·mode + 3·(slew − 1…+1) + (step − 1…+1), or FROM_NONE or FROM_UNHEARD. */
  const ring = Array.from({ length: lag + 1 }, () => new Uint8Array(states));
  const cameNone = new Int32Array(lag + 1);
  /** Scores of an engine that runs at each speed but is not heard; its states come after all others. */
  let oldUnheard = new Float64Array(speeds).fill(-Infinity);
  let unheard = new Float64Array(speeds).fill(-Infinity);
  const cameUnheard = Array.from({ length: lag + 1 }, () => new Int32Array(speeds));
  const drift = Math.round(UNHEARD_SLEW * hop * STEPS);
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
    const fromNone = oldNone - COME;
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
        const start = m === 0 ? 0 : SKIP_START;
        for (let b = 0; b < speeds; b++) {
          const found = oldUnheard[b]! - FIND;
          let value = Math.max(fromNone, found) - start;
          let came = found > fromNone ? FROM_UNHEARD : FROM_NONE;
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
    const none = BETA * NOTHING + stopOr(oldBest, oldBestState);
    // Kept near 0, so that an hour is as exact as a second.
    const level = Math.max(top, none, lose());
    for (let a = 0; a < slews; a++) {
      if (!active[a]) continue;
      for (let m = 0; m < modes; m++) {
        const from = (m * slews + a) * speeds;
        for (let b = from; b < from + speeds; b++) now[b]! -= level;
      }
    }
    for (let b = 0; b < speeds; b++) unheard[b]! -= level;
    oldNone = none - level;
    levels += level;
    [oldUnheard, unheard] = [unheard, oldUnheard];
    [old, now] = [now, old];
    [oldActive, active] = [active, oldActive];
    frames += 1;
  };

  /** Best score before of no engine now: none before either, or one that stops, heard until now or not. */
  const stopOr = (oldBest: number, oldBestState: number): number => {
    let value = oldNone;
    let from = NONE;
    if (oldBest - GO > value) {
      value = oldBest - GO;
      from = oldBestState;
    }
    for (let b = 0; b < speeds; b++) {
      if (oldUnheard[b]! - (GO - LOSE) > value) {
        value = oldUnheard[b]! - (GO - LOSE);
        from = states + b;
      }
    }
    cameNone[frames % ring.length] = from;
    return value;
  };

  /** Fills the scores of running on unheard; gives the best of them. */
  const lose = (): number => {
    const came = cameUnheard[frames % ring.length]!;
    let top = -Infinity;
    for (let b = 0; b < speeds; b++) {
      let value = -Infinity;
      let from = NONE;
      for (let source = Math.max(0, b - drift); source <= Math.min(speeds - 1, b + drift); source++) {
        const candidate = oldUnheard[source]! - UNHEARD_CHANGE * (source - b) * (source - b);
        if (candidate > value) {
          value = candidate;
          from = states + source;
        }
      }
      for (let m = 0; m < modes; m++) {
        for (let a = 0; a < slews; a++) {
          if (!oldActive[a]) continue;
          const state = (m * slews + a) * speeds + b;
          if (old[state]! - LOSE > value) {
            value = old[state]! - LOSE;
            from = state;
          }
        }
      }
      came[b] = from;
      unheard[b] = BETA * NOTHING + value;
      if (unheard[b]! > top) top = unheard[b]!;
    }
    return top;
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
    if (state >= states) return cameUnheard[frame % ring.length]![state - states]!;
    const came = ring[frame % ring.length]![state]!;
    if (came === FROM_NONE) return NONE;
    if (came === FROM_UNHEARD) return states + (state % speeds);
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
    for (let b = 0; b < speeds; b++) {
      if (oldUnheard[b]! > value) {
        value = oldUnheard[b]!;
        state = states + b;
      }
    }
    return state;
  };

  const spoken = (state: number): Decided =>
    state === NONE || state >= states
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
