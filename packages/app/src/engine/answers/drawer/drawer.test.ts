import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { EngineState } from "../../state.ts";
import { drawerView } from "./drawer-view.ts";
import { jetsWanted } from "./jets-wanted.ts";
import { needleShape } from "./needle-shape.ts";

const DEMO = readFileSync(join(import.meta.dirname, "../../../../../../demo/shop.jsonl"), "utf8").split("\n");
const state = new EngineState();
state.add(DEMO);

describe("the drawer", () => {
  test("main jets come first, the smaller number before the larger", () => {
    const { parts } = drawerView(state, null);
    const mains = parts.flatMap(({ part }) => (part.part === "main" ? [part.number] : []));
    expect(mains.length).toBeGreaterThan(5);
    expect(mains).toEqual([...mains].sort((a, b) => a - b));
    expect(parts[0]!.part.part).toBe("main");
  });

  test("an empty log has an empty drawer", () => {
    expect(drawerView(new EngineState(), null)).toEqual({ parts: [], kinds: [] });
  });
});

describe("what to buy", () => {
  test("nothing is bought twice, nothing owned is bought, and a colder corner asks for more", () => {
    const corners = (celsius: readonly number[]) =>
      [0, 1000, 2000].flatMap((heightM) => celsius.map((each) => ({ heightM, celsius: each })));
    const few = jetsWanted(state, { corners: corners([15]) });
    const many = jetsWanted(state, { corners: corners([-15, 15, 35]) });
    if (!few.ok || !many.ok) throw new Error("refused");
    const bought = (wanted: typeof few.value) => wanted.kinds.reduce((sum, { buy }) => sum + buy.length, 0);
    expect(bought(many.value)).toBeGreaterThan(bought(few.value));
    for (const { owned, buy } of many.value.kinds) {
      const numbers = buy.map(({ number }) => number);
      expect(new Set(numbers).size).toBe(numbers.length);
      expect(numbers.some((number) => owned.includes(number))).toBe(false);
    }
    expect(many.value.leftOut.some(({ why }) => why.includes("not known"))).toBe(true);
  });

  test("without a corner there is nothing to reckon", () => {
    expect(jetsWanted(state, { corners: [] })).toMatchObject({ ok: false, reason: "no-corners" });
  });
});

describe("a needle from a micrometer", () => {
  // A needle drawn for the test: 2.52 mm straight down to 24 mm, then 1.5 degrees between the flanks.
  const diameter = (below: number): number =>
    2.52 - (below > 24 ? 2 * Math.tan((0.75 * Math.PI) / 180) * (below - 24) : 0);
  const points = [0, 5, 10, 15, 20, 22, 24, 26, 28, 30, 35, 40].map((below) => ({
    belowTopGrooveMm: below,
    diameterMm: Number(diameter(below).toFixed(3)),
  }));

  test("its shape is found, and the line to draw runs through the readings", () => {
    const shape = needleShape(state, { points });
    if (!shape.ok) throw new Error(shape.detail);
    expect(shape.value.straightMm).toBeCloseTo(2.52, 2);
    expect(shape.value.tapers).toHaveLength(1);
    expect(shape.value.tapers[0]!.startMm).toBeCloseTo(24, 0);
    expect(shape.value.tapers[0]!.degrees).toBeCloseTo(1.5, 1);
    const [first, bend, last] = shape.value.line;
    expect(first!.diameterMm).toBeCloseTo(2.52, 2);
    expect(bend!.belowTopGrooveMm).toBeCloseTo(24, 0);
    expect(last).toMatchObject({ belowTopGrooveMm: 40 });
    expect(last!.diameterMm).toBeCloseTo(diameter(40), 2);
  });

  test("too few readings say what to measure next", () => {
    const shape = needleShape(state, { points: points.slice(0, 3) });
    expect(shape.ok).toBe(false);
    expect(!shape.ok && shape.detail).toMatch(/read|measure/i);
  });
});
