import { describe, expect, test } from "vitest";
import { rumble } from "./rumble.ts";
import type { HeardFrame } from "./speed-follower.ts";

const frame = (of: Partial<HeardFrame>): HeardFrame => ({
  at: 0,
  rpm: 1700,
  slew: 0,
  skipping: false,
  salience: 7,
  margin: 2,
  apart: 2.5,
  toneShare: 0.7,
  halfSalience: 3,
  loudness: -30,
  picture: null,
  ...of,
});
const many = (count: number, of: Partial<HeardFrame> = {}) => Array.from({ length: count }, () => frame(of));
/** As wind alone reads on made sounds: weak, with no beat and a rival as good. */
const WIND = { salience: 3.4, apart: -0.1, toneShare: 1.1, rpm: 1200 };
const marked = (frames: readonly HeardFrame[]) => [...rumble(frames)].join("");

describe("wind followed as if it were the engine", () => {
  test("is marked from where the engine died", () => {
    expect(marked([...many(100), ...many(80, WIND)])).toBe("0".repeat(100) + "1".repeat(80));
  });

  test("is marked when there is nothing else", () => {
    expect(marked(many(200, WIND))).toBe("1".repeat(200));
  });

  test("is not found in a weak moment of an engine, nor in a clear moment of wind", () => {
    expect(marked([...many(100), ...many(12, WIND), ...many(100)])).toBe("0".repeat(212));
    expect(marked([...many(100, WIND), ...many(12), ...many(100, WIND)])).toBe("1".repeat(212));
  });

  test("is told by its missing beat: as weak a sound with a beat is an engine", () => {
    expect(marked(many(200, { ...WIND, toneShare: -0.3 }))).toBe("0".repeat(200));
  });

  test("never runs fast, and what was not heard tells nothing", () => {
    expect(marked(many(200, { ...WIND, rpm: 4000 }))).toBe("0".repeat(200));
    expect(marked([...many(50), ...many(200, { rpm: 0, salience: 2, toneShare: Number.NaN })])).toBe(
      "0".repeat(250),
    );
  });
});
