import { describe, expect, test } from "vitest";
import { DEMO, shopOf } from "../test-shop.ts";
import { soundEngine } from "./sound-engine.ts";
import { takeHeard } from "./take-heard.ts";

const take = (id: string, hour: number, figures: object, more: object = {}) => ({
  id,
  kind: "sound-heard",
  v: 1,
  at: `2026-05-03T${hour}:00:00Z`,
  bike: "kestrel",
  body: { figures, ...more },
});
const CLIP = "c".repeat(64);
const TAKES = [
  take("t1", 10, { idleRpm: 1700, hangSeconds: 0 }, { good: true }),
  take("t2", 11, { idleRpm: 1690, hangSeconds: 0.2 }, { clip: CLIP }),
  take(
    "t3",
    12,
    { idleRpm: 1500 },
    { speed: { everySeconds: 0.1, rpm: [1500, 1510] }, events: [{ kind: "chop", atSeconds: 2 }] },
  ),
];
const soundOf = (lines: readonly object[], figures?: Record<string, number>) => {
  const sound = soundEngine(shopOf([...DEMO, ...lines]), { bike: "kestrel", ...(figures && { figures }) });
  if (!sound.ok) throw new RangeError(sound.detail);
  return sound.value;
};

describe("what is known before listening", () => {
  test("the engine's strokes, and as a hint the idle heard last", () => {
    expect(soundOf([]).engine).toEqual({ strokes: 2, cylinders: 1, idleHint: null });
    expect(soundOf(TAKES).engine.idleHint).toBe(1500);
  });

  test("two cylinders where the bike's description tells them", () => {
    const twin = {
      id: "d2",
      kind: "bike-described",
      v: 1,
      at: "2026-05-02T10:00:00Z",
      bike: "kestrel",
      body: { engine: { strokes: 4, cylinders: 2 } },
    };
    expect(soundOf([twin]).engine).toMatchObject({ strokes: 4, cylinders: 2 });
  });

  test("takes come newest first; the good one is what others are held against, else the last", () => {
    const { takes, against } = soundOf(TAKES);
    expect(takes.map(({ record, clip, drawn }) => [record, clip, drawn])).toEqual([
      ["t3", null, true],
      ["t2", CLIP, false],
      ["t1", null, false],
    ]);
    expect(against?.record).toBe("t1");
    expect(soundOf(TAKES.slice(1)).against?.record).toBe("t3");
    expect(soundOf([]).against).toBeNull();
  });

  test("what differs is said only when there are figures to hold against a take", () => {
    expect(soundOf(TAKES).differs).toEqual([]);
    expect(soundOf([], { idleRpm: 1 }).differs).toEqual([]);
    expect(soundOf(TAKES, { idleRpm: 1710, hangSeconds: 1.5 }).differs).toEqual([
      { name: "hangSeconds", way: "more", by: 1.5 },
    ]);
  });

  test("a take gives its speed and what happened; one that was struck is gone", () => {
    const shop = shopOf([...DEMO, ...TAKES]);
    expect(takeHeard(shop, { bike: "kestrel", record: "t3" })).toMatchObject({
      ok: true,
      value: { speed: { everySeconds: 0.1, rpm: [1500, 1510] }, events: [{ kind: "chop", atSeconds: 2 }] },
    });
    expect(takeHeard(shop, { bike: "kestrel", record: "t2" })).toMatchObject({
      value: { speed: null, events: [], body: { clip: CLIP } },
    });
    const struck = shopOf([
      ...DEMO,
      ...TAKES,
      {
        id: "s",
        kind: "record-struck",
        v: 1,
        at: "2026-05-03T13:00:00Z",
        bike: "kestrel",
        body: { record: "t3" },
      },
    ]);
    expect(takeHeard(struck, { bike: "kestrel", record: "t3" })).toMatchObject({
      ok: false,
      reason: "no-such-take",
    });
  });
});
