import { describe, expect, test } from "vitest";
import { doubtsAbout } from "./doubts.ts";
import { findIdle } from "./idle.ts";
import { speedLine } from "./speed-line.ts";
import type { SpeedTrack } from "./speed-track.ts";

const HOP = 0.016;
const TWO = { strokes: 2, cylinders: 1, idleHint: null } as const;

/** A track of speeds drawn by hand, every value else as a clear engine has it. */
function drawn(rpm: (second: number) => number, given: Partial<Record<"apart", (i: number) => number>> = {}) {
  const frames = Math.round(8 / HOP);
  const fill = (value: number) => new Float64Array(frames).fill(value);
  const track: SpeedTrack = {
    hop: HOP,
    rpm: Float64Array.from({ length: frames }, (_, i) => rpm(i * HOP)),
    confidence: fill(0.99),
    skipping: new Uint8Array(frames),
    loudness: fill(-30),
    salience: fill(7),
    apart: Float64Array.from({ length: frames }, (_, i) => given.apart?.(i) ?? 3),
    toneShare: fill(0.7),
  };
  const line = speedLine(track);
  return doubtsAbout(track, line, findIdle(line), 0, TWO).map(({ reason }) => reason);
}

/** An idle that wanders by 1 %, as an engine's does. */
const idling = (second: number): number =>
  1700 * (1 + 0.01 * Math.sin(7 * second) + 0.004 * Math.sin(31 * second));

describe("doubts about a sound", () => {
  test("an idle that wanders and stands apart has none", () => {
    expect(drawn(idling)).toEqual([]);
  });

  test("a speed that keeps to a multiple of the mains for more than a second is hum, between whatever it lies", () => {
    const hum = (from: number, to: number, rpm: number) => (second: number) =>
      second >= from && second < to ? rpm : idling(second);
    expect(drawn(hum(5, 6.4, 3000))).toContain("hum");
    expect(drawn(hum(5, 6.4, 3606))).toContain("hum");
    expect(drawn(hum(5, 6.0, 3000))).not.toContain("hum");
    expect(drawn(hum(5, 6.4, 3100))).not.toContain("hum");
  });

  test("two sounds are told by how far other speeds are off, middle and worst tenth together", () => {
    const mixed = (usual: number, low: number) => (i: number) => (i % 5 === 0 ? low : usual);
    expect(drawn(idling, { apart: mixed(1.6, -1.3) })).toEqual(["two-sounds"]);
    expect(drawn(idling, { apart: mixed(1.6, -0.9) })).toEqual([]);
    expect(drawn(idling, { apart: mixed(0.3, 0.1) })).toEqual(["two-sounds"]);
    expect(drawn(idling, { apart: mixed(0.4, 0.2) })).toEqual([]);
  });
});
