import { STEPS } from "./firing-grid.ts";

/** Frames to either side over which a move is looked at. */
const HALF = 4;
/** Frames to either side that a move opens. */
const OPENS = 4;
/** A frame this far below what is usual, as a share, may be smeared by a fast change. */
const WEAK = 0.6;
/** A best place this many steps from the last frame's, octaves aside, belongs to no steady speed. */
const LEAP = 4;
/** Frames over which "usual" is taken. */
const USUAL = 125;

/** How many frames ahead must be known before a frame can be judged. */
export const CHANGE_AHEAD = HALF + OPENS;

/**
 * Tells in which frames the speed may be changing fast, from the best place and score of each steady row: only
 * there is the sound read again at other slews.
 */
export interface FastChange {
  /** Tells the best place and score of the next frame. */
  readonly tell: (place: number, score: number) => void;
  /** Whether a frame may hold a fast change; CHANGE_AHEAD further frames must have been told, or it is the end. */
  readonly at: (frame: number) => boolean;
}

export function fastChange(): FastChange {
  const ring = 4 * CHANGE_AHEAD;
  const places = new Float64Array(ring);
  const weak = new Uint8Array(ring);
  let told = 0;
  let usual = 0;
  const moving = (frame: number): boolean => {
    const from = frame - HALF;
    const to = frame + HALF;
    if (from < 0 || to >= told) return false;
    const first = folded(places[frame % ring]! - places[from % ring]!);
    const second = folded(places[to % ring]! - places[frame % ring]!);
    return (
      first * second > 0 && Math.abs(first) > 1.3 && Math.abs(second) > 1.3 && Math.abs(first + second) > 4
    );
  };
  return {
    tell(place, score) {
      usual += (score - usual) / Math.min(told + 1, USUAL);
      places[told % ring] = place;
      const leap = told > 0 ? Math.abs(folded(place - places[(told - 1) % ring]!)) : 0;
      weak[told % ring] = score < WEAK * usual || leap >= LEAP ? 1 : 0;
      told += 1;
    },
    at(frame) {
      for (let near = Math.max(0, frame - OPENS); near <= frame + OPENS && near < told; near++) {
        if (weak[near % ring] || moving(near)) return true;
      }
      return false;
    },
  };
}

/** A step on the grid, octave jumps taken out. */
const folded = (steps: number): number => steps - STEPS * Math.round(steps / STEPS);
