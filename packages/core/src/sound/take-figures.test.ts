import { describe, expect, test } from "vitest";
import type { SoundEvent } from "./sound-event.ts";
import { keptFigures, speedOutline, takeDifferences, takeFigures } from "./take-figures.ts";

const happened = { at: 1, until: 2, confidence: 0.9 };
const chop = (hangSeconds: number, undershootPercent: number | null): SoundEvent => ({
  kind: "chop",
  ...happened,
  fromRpm: 8000,
  fallRate: 3.333,
  hangSeconds,
  hangRpm: null,
  undershootPercent,
  belowSeconds: 0,
  settleSeconds: null,
});
const snap = (delaySeconds: number | null): SoundEvent => ({
  kind: "snap",
  ...happened,
  confidence: 0.85,
  delaySeconds,
  riseSeconds: 0.4,
  riseRate: 3,
  peakRpm: 8000,
  bogPercent: 3,
});
const idle: SoundEvent = { kind: "idle", ...happened, rpm: 1702.4, wanderPercent: 1, seconds: 3 };
const events = [idle, snap(0.1), chop(0, 4), snap(null), chop(1.234, null), snap(0.3), chop(0.8, 12)];

describe("the figures of a take", () => {
  test("have their middle and their extremes, try by try; what was not measured is left out", () => {
    const found = new Map(takeFigures({ events }).map((each) => [each.name, each]));
    expect(found.get("hangSeconds")).toEqual({
      name: "hangSeconds",
      tries: [0, 1.23, 0.8],
      middle: 0.8,
      least: 0,
      most: 1.23,
    });
    expect(found.get("undershootPercent")).toMatchObject({ tries: [4, 12], middle: 8 });
    expect(found.get("delaySeconds")).toMatchObject({ tries: [0.1, 0.3], middle: 0.2 });
    expect(found.get("idleRpm")).toMatchObject({ tries: [1702], middle: 1702 });
    expect(found.has("settleSeconds")).toBe(false);
    expect(found.has("huntingPercent")).toBe(false);
  });

  test("are kept with half the range where there is one, how many closings, and the weakest confidence", () => {
    expect(keptFigures({ events })).toEqual({
      idleRpm: 1702,
      hangSeconds: 0.8,
      hangSecondsSpread: 0.61,
      undershootPercent: 8,
      undershootPercentSpread: 4,
      halvingSeconds: 0.3,
      halvingSecondsSpread: 0,
      delaySeconds: 0.2,
      delaySecondsSpread: 0.1,
      riseSeconds: 0.4,
      riseSecondsSpread: 0,
      bogPercent: 3,
      bogPercentSpread: 0,
      closings: 3,
      confidence: 0.85,
    });
    expect(keptFigures({ events: [...events, { kind: "stall", ...happened }] })).toMatchObject({ stalls: 1 });
    expect(keptFigures({ events: [] })).toEqual({});
  });

  test("differ from a good take's only beyond scatter", () => {
    const good = { idleRpm: 1700, hangSeconds: 0, halvingSeconds: 0.3 };
    expect(
      takeDifferences({ idleRpm: 1770, hangSeconds: 0.3, halvingSeconds: 0.4, bogPercent: 20 }, good),
    ).toEqual([]);
    expect(takeDifferences({ idleRpm: 1600, hangSeconds: 1.2, halvingSeconds: 0.6 }, good)).toEqual([
      { name: "idleRpm", way: "less", by: 100 },
      { name: "hangSeconds", way: "more", by: 1.2 },
      { name: "halvingSeconds", way: "more", by: 0.3 },
    ]);
    const scattered = { hangSeconds: 1.2, hangSecondsSpread: 0.6 };
    expect(takeDifferences(scattered, { hangSeconds: 0, hangSecondsSpread: 0.3 })).toEqual([]);
    expect(takeDifferences(scattered, { hangSeconds: 0, hangSecondsSpread: 0.2 })).toHaveLength(1);
  });

  test("its speed is written down by tenths of a second and tens of revolutions", () => {
    const rpm = Float64Array.from({ length: 101 }, (_, i) => 1704 + i);
    const outline = speedOutline({ seconds: 1.6, track: { hop: 0.016, rpm } as never });
    expect(outline.everySeconds).toBe(0.1);
    expect(outline.rpm).toHaveLength(17);
    expect(outline.rpm[0]).toBe(1700);
    // 1.6 s is frame 100.
    expect(outline.rpm.at(-1)).toBe(1800);
    expect(outline.rpm[8]).toBe(1750);
    expect(speedOutline({ seconds: 400, track: { hop: 0.016, rpm } as never }).rpm).toHaveLength(1800);
  });
});
