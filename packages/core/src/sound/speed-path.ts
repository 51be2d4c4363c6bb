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
const BETA = 0.17;
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
const NOT_TRACED = -2;
/** More places than the speed can change by from frame to frame. */
const EDGE = 24;
/** Where a heard state came from when not from another heard one. */
const FROM_NONE = 255;
const FROM_UNHEARD = 254;

export function speedPath({ speeds, speedsFrom, maySkip, hop, lag, penalty }: SpeedPathSetting): SpeedPath {
  const modes = maySkip ? 2 : 1;
  const slews = SLEWS.length;
  const states = modes * slews * speeds;
  const expected = SLEWS.map((slew) => slew * hop * STEPS);
  const nearest = expected.map((steps) => Math.round(steps));
  /** For each slew what a step of nearest − 1, nearest and nearest + 1 costs. */
  const costs = expected.map((steps, a) =>
    [-1, 0, 1].map((d) => SPEED_CHANGE * (nearest[a]! + d - steps) * (nearest[a]! + d - steps)),
  );
  let old = new Float64Array(states).fill(-Infinity);
  let now = new Float64Array(states).fill(-Infinity);
  let oldNone = 0;
  /** The best score of a state in which an engine is heard, and that state: of the latest frame and the one before. */
  let [top, topState] = [-Infinity, NONE];
  let [oldTop, oldTopState] = [-Infinity, NONE];
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
  const best = new Float64Array(speeds + 2 * EDGE).fill(-Infinity);
  const bestFrom = new Uint8Array(speeds + 2 * EDGE);
  /** States of the open frames on the path that was followed back last. */
  const traced = new Int32Array(lag + 1).fill(NOT_TRACED);
  let frames = 0;
  let decided = 0;

  const step = (rows: readonly (Float64Array | null)[]): void => {
    const back = ring[frames % ring.length]!;
    const fromNone = oldNone - COME;
    [oldTop, oldTopState] = [top, topState];
    [top, topState] = [-Infinity, NONE];
    for (let a = 0; a < slews; a++) active[a] = rows[a] ? 1 : 0;
    for (let m = 0; m < modes; m++) {
      mergeModes(m);
      for (let a = 0; a < slews; a++) {
        const row = rows[a];
        if (!row) continue;
        mergeSlews(a);
        const shift = m === 0 ? speedsFrom : speedsFrom - STEPS;
        placeSpeeds(row, shift, m, (m * slews + a) * speeds, a, fromNone, back);
      }
    }
    const none = BETA * NOTHING + stopOr();
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
    top -= level;
    [oldUnheard, unheard] = [unheard, oldUnheard];
    [old, now] = [now, old];
    [oldActive, active] = [active, oldActive];
    frames += 1;
  };

  /** Scores every speed in one mode at one slew. */
  const placeSpeeds = (
    row: Float64Array,
    shift: number,
    mode: number,
    from: number,
    a: number,
    fromNone: number,
    back: Uint8Array,
  ): void => {
    const n = nearest[a]!;
    const [less, same, more] = costs[a]! as [number, number, number];
    const start = mode === 0 ? 0 : SKIP_START;
    const skipLess = mode === 0 ? 0 : SKIP_LESS;
    const earlier = oldUnheard;
    const into = now;
    let [highest, at] = [top, topState];
    for (let b = 0; b < speeds; b++) {
      const found = earlier[b]! - FIND;
      let value = Math.max(found, fromNone) - start;
      let came = found > fromNone ? FROM_UNHEARD : FROM_NONE;
      // `best` has EDGE places more on either side that nothing comes from.
      const source = b - n + EDGE;
      const candidateLess = best[source + 1]! - less;
      if (candidateLess > value) {
        value = candidateLess;
        came = bestFrom[source + 1]!;
      }
      const candidateSame = best[source]! - same;
      if (candidateSame > value) {
        value = candidateSame;
        came = bestFrom[source]! + 1;
      }
      const candidateMore = best[source - 1]! - more;
      if (candidateMore > value) {
        value = candidateMore;
        came = bestFrom[source - 1]! + 2;
      }
      const salience = Math.min(row[b + shift]!, SALIENCE_CAP) - skipLess;
      const total = value + BETA * (penalty === null ? salience : salience - penalty[b]!);
      into[from + b] = total;
      back[from + b] = came;
      if (total > highest) {
        highest = total;
        at = from + b;
      }
    }
    [top, topState] = [highest, at];
  };

  /** Best score before of no engine now: none before either, or one that stops, heard until now or not. */
  const stopOr = (): number => {
    let value = oldNone;
    let from = NONE;
    if (oldTop - GO > value) {
      value = oldTop - GO;
      from = oldTopState;
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
    const earlier = oldUnheard;
    const into = unheard;
    for (let b = 0; b < speeds; b++) {
      let value = -Infinity;
      let from = NONE;
      const end = Math.min(speeds - 1, b + drift);
      for (let source = Math.max(0, b - drift); source <= end; source++) {
        const candidate = earlier[source]! - UNHEARD_CHANGE * (source - b) * (source - b);
        if (candidate > value) {
          value = candidate;
          from = states + source;
        }
      }
      into[b] = value;
      came[b] = from;
    }
    for (let m = 0; m < modes; m++) {
      for (let a = 0; a < slews; a++) {
        if (!oldActive[a]) continue;
        const from = (m * slews + a) * speeds;
        for (let b = 0; b < speeds; b++) {
          const candidate = old[from + b]! - LOSE;
          if (candidate > into[b]!) {
            into[b] = candidate;
            came[b] = from + b;
          }
        }
      }
    }
    let top = -Infinity;
    for (let b = 0; b < speeds; b++) {
      into[b]! += BETA * NOTHING;
      if (into[b]! > top) top = into[b]!;
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
    best.fill(-Infinity, EDGE, EDGE + speeds);
    for (let o = 0; o < 3; o++) {
      const before = a + o - 1;
      if (before < 0 || before >= slews || !oldActive[before]) continue;
      const cost = o === 1 ? 0 : SLEW_CHANGE;
      const values = merged[before]!;
      const mode = mergedMode[before]!;
      for (let b = 0; b < speeds; b++) {
        const value = values[b]! - cost;
        if (value > best[b + EDGE]!) {
          best[b + EDGE] = value;
          bestFrom[b + EDGE] = 9 * mode[b]! + 3 * o;
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
    let state = top > oldNone ? topState : NONE;
    let value = Math.max(top, oldNone);
    for (let b = 0; b < speeds; b++) {
      if (oldUnheard[b]! > value) {
        value = oldUnheard[b]!;
        state = states + b;
      }
    }
    return state;
  };

  /** Follows the best path back to the oldest open frame, as far as it differs from the one followed last. */
  const oldestOpen = (): number => {
    let state = bestNow();
    for (let frame = frames - 1; frame >= decided; frame--) {
      if (traced[frame % ring.length] === state && frame < frames - 1) break;
      traced[frame % ring.length] = state;
      state = before(frame, state);
    }
    return traced[decided % ring.length]!;
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
      const state = oldestOpen();
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
  };
}
