import { describe, expect, test } from "vitest";
import { STEADY } from "./slews.ts";
import { type Decided, speedPath } from "./speed-path.ts";

const SPEEDS = 60;

/** Bins decided for frames whose best salience is 8 at the given place (null: only noise), all else 0. */
function decided(places: readonly (number | null)[], { maySkip = false, lag = 10 } = {}): Decided[] {
  const speedsFrom = maySkip ? 40 : 0;
  const path = speedPath({ speeds: SPEEDS, speedsFrom, maySkip, hop: 0.016, lag, penalty: null });
  const out: Decided[] = [];
  for (const place of places) {
    const row = new Float64Array(SPEEDS + speedsFrom);
    if (place !== null) row[place] = 8;
    const verdict = path.take(Array.from({ length: 7 }, (_, slew) => (slew === STEADY ? row : null)));
    if (verdict !== null) out.push(verdict);
  }
  return [...out, ...path.finish()];
}

describe("the path of speed", () => {
  test("stays on a steady speed and says nothing where nothing is", () => {
    const steady = decided(new Array(40).fill(20));
    expect(steady).toHaveLength(40);
    expect(new Set(steady.map(({ bin }) => bin))).toEqual(new Set([20]));
    expect(decided(new Array(40).fill(null)).every(({ bin }) => bin === -1)).toBe(true);
  });

  test("does not follow a single stray frame, nor leap an octave", () => {
    const places: number[] = new Array(40).fill(20);
    places[17] = 45;
    expect(decided(places).map(({ bin }) => bin)).toEqual(new Array(40).fill(20));
  });

  test("an octave down is an engine that skips, when it may", () => {
    // The grid starts an octave below the speeds: place 60 is speed 20, and place 20 the same speed skipping.
    const places = [...new Array<number>(40).fill(60), ...new Array<number>(40).fill(20)];
    const path = decided(places, { maySkip: true });
    expect(path.map(({ bin }) => bin)).toEqual(new Array(80).fill(20));
    expect(path[10]!.skipping).toBe(false);
    expect(path[70]!.skipping).toBe(true);
  });

  test("an engine lost for a moment is found again where its flywheel can have got to, not an octave off", () => {
    // Five frames of noise: 60 steps are too many to have gone by, 4 are not. A lone reading an octave up is passed over.
    const lost = new Array<null>(5).fill(null);
    const near = decided([...new Array<number>(40).fill(10), ...lost, ...new Array<number>(40).fill(14)]);
    expect(near.slice(46).map(({ bin }) => bin)).toEqual(new Array(39).fill(14));
    const far = decided([
      ...new Array<number>(40).fill(10),
      ...lost,
      ...new Array<number>(7).fill(50),
      ...new Array<number>(40).fill(10),
    ]);
    expect(far.slice(0, 40).map(({ bin }) => bin)).toEqual(new Array(40).fill(10));
    expect(far.slice(40, 52).every(({ bin }) => bin === -1)).toBe(true);
    expect(far.slice(53).map(({ bin }) => bin)).toEqual(new Array(39).fill(10));
  });

  test("is the same for any lag when nothing later speaks against it", () => {
    const places = Array.from({ length: 60 }, (_, i) => 20 + Math.floor(i / 6));
    expect(decided(places, { lag: 10 })).toEqual(decided(places, { lag: 50 }));
  });
});
