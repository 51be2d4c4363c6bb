import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { EngineState } from "../../state.ts";
import { airPreview } from "./air-preview.ts";
import { heightChart } from "./height-chart.ts";
import { tripPlan } from "./trip-plan.ts";

const DEMO = readFileSync(join(import.meta.dirname, "../../../../../../demo/shop.jsonl"), "utf8").split("\n");
const state = new EngineState();
state.add(DEMO);
const at = Date.UTC(2026, 5, 20);

describe("air before it is kept", () => {
  test("a sea-level pressure typed as a barometer's is caught, with its cost", () => {
    const air = airPreview(state, {
      bike: "bramble",
      body: { temperatureC: 15, stationPressureHpa: 1013, heightM: 1500 },
      at,
    });
    if (!air.ok) throw new Error(air.detail);
    const warning = air.value.warnings.find(({ code }) => code.includes("sea-level"));
    // By the standard atmosphere the air at 1500 m is 0.8346 of sea level's pressure: 20 % too dense otherwise.
    expect(warning?.text).toContain("20 %");
  });

  test("thin warm air runs the fitted setup richer everywhere, dense cold air leaner", () => {
    const effect = (heightM: number, temperatureC: number) => {
      const air = airPreview(state, { bike: "bramble", body: { heightM, temperatureC }, at });
      if (!air.ok) throw new Error(air.detail);
      return air.value;
    };
    expect(effect(2000, 25).effect!.every((percent) => percent > 3)).toBe(true);
    expect(effect(0, -5).effect!.every((percent) => percent < -3)).toBe(true);
    expect(effect(2000, 25).percentOfStandard).toBeLessThan(85);
  });

  test("what cannot be air is refused with a sentence", () => {
    const air = airPreview(state, {
      bike: "bramble",
      body: { temperatureC: 15, stationPressureHpa: 350 },
      at,
    });
    expect(air.ok).toBe(false);
    expect(!air.ok && air.detail.length).toBeGreaterThan(20);
  });
});

describe("a trip", () => {
  test("the lowest, coldest place decides, and each other place is as rich or richer", () => {
    const plan = tripPlan(state, {
      bike: "bramble",
      places: [
        { name: "valley", heightM: 300, celsius: 8 },
        { name: "pass", heightM: 2100, celsius: 12 },
      ],
    });
    if (!plan.ok) throw new Error(plan.detail);
    expect(plan.value.decides).toBe("valley");
    const [valley, pass] = plan.value.stops;
    expect(pass!.full).toBeGreaterThan(valley!.full + 5);
    expect(pass!.main!).toBeLessThan(plan.value.safeMain!);
    expect(pass!.backBelowM!).toBeGreaterThan(300);
    expect(pass!.backBelowM!).toBeLessThan(2100);
  });

  test("no place, or a bike nobody knows, is refused", () => {
    expect(tripPlan(state, { bike: "bramble", places: [] }).ok).toBe(false);
    expect(tripPlan(state, { bike: "nobody", places: [] }).ok).toBe(false);
  });
});

describe("the chart", () => {
  test("colder and lower ask for as big a main jet or a bigger one; the air last noted is marked", () => {
    const chart = heightChart(state, { bike: "bramble", heights: [0, 1000, 2000], celsius: [-10, 10, 30] });
    if (!chart.ok) throw new Error(chart.detail);
    const mains = chart.value.cells.map((row) => row.map(({ main }) => main!));
    for (const row of mains) expect(row[0]! >= row[1]! && row[1]! >= row[2]!).toBe(true);
    for (let c = 0; c < 3; c++)
      expect(mains[0]![c]! > mains[1]![c]! && mains[1]![c]! > mains[2]![c]!).toBe(true);
    expect(chart.value.base).toEqual({ row: 0, column: 1 });
  });
});
