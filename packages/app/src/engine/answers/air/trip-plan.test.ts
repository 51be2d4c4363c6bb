import { describe, expect, test } from "vitest";
import { DEMO, shopOf } from "../test-shop.ts";
import { heightChart } from "./height-chart.ts";
import type { JetSource } from "./mains-at-hand.ts";
import { type TripPlace, tripPlan } from "./trip-plan.ts";

const SHOP = shopOf(DEMO);
const VALLEY = { name: "Valley", heightM: 300, celsius: 2 };
const PASS = { name: "Pass", heightM: 2300, celsius: 8 };
const plan = (places: readonly TripPlace[], source: JetSource = "sold", bike = "sorrel") => {
  const made = tripPlan(SHOP, { bike, places, source });
  if (!made.ok) throw new Error(made.detail);
  return made.value;
};

describe("a trip", () => {
  test("the densest place decides, and no place is lean on the safe jet", () => {
    const { decides, safeMain, stops } = plan([PASS, VALLEY]);
    expect(decides).toEqual(VALLEY);
    expect(safeMain! % 2.5).toBe(0);
    expect(stops.map(({ name }) => name)).toEqual(["Pass", "Valley"]);
    for (const { full } of stops) expect(full).toBeGreaterThanOrEqual(-1e-6);
    expect(stops[0]!.full).toBeGreaterThan(5);
  });

  test("a smaller jet up high comes with the way back; the deciding place needs none", () => {
    const [pass, valley] = plan([PASS, VALLEY]).stops;
    expect(pass!.main).toBeLessThan(plan([PASS, VALLEY]).safeMain!);
    expect(pass!.backBelowM).toBeGreaterThan(300);
    expect(pass!.backBelowM).toBeLessThan(2300);
    expect(valley).toMatchObject({ main: null, backBelowM: null });
  });

  test("two places of one name are kept apart", () => {
    const { decides, stops } = plan([PASS, { ...VALLEY, name: "Pass" }]);
    expect(decides.heightM).toBe(300);
    expect(stops.map(({ heightM }) => heightM)).toEqual([2300, 300]);
  });

  test("from the drawer only what is in it or in the bike", () => {
    const owned = [160, 162.5, 165, 167.5, 170, 172.5, 175, 177.5, 180, 182.5, 185, 112, 115];
    const { safeMain, safeOwned, stops } = plan([PASS, VALLEY], "drawer");
    expect(safeOwned).toBe(true);
    expect(owned).toContain(safeMain);
    for (const { main, mainOwned } of stops) expect(mainOwned).toBe(main !== null);
  });

  test("where nothing at hand is big enough there is no safe jet, and it says so", () => {
    const lines = DEMO.filter(
      (line) => !line.includes('"parts-counted"') && !line.includes('"parts-bought"'),
    );
    const made = tripPlan(shopOf(lines), {
      bike: "sorrel",
      places: [{ name: "Frost", heightM: 0, celsius: -30 }],
      source: "drawer",
    });
    expect(made).toMatchObject({ ok: true, value: { safeMain: null, safeOwned: false } });
    expect(made.ok && made.value.warnings.join()).toContain("Frost");
  });

  test("no places and no such bike are refused", () => {
    expect(tripPlan(SHOP, { bike: "sorrel", places: [], source: "sold" }).ok).toBe(false);
    expect(tripPlan(SHOP, { bike: "nobody", places: [VALLEY], source: "sold" }).ok).toBe(false);
  });
});

describe("the chart", () => {
  const chart = (source: JetSource, bike = "sorrel", heights = [0, 500, 3000]) => {
    const made = heightChart(SHOP, { bike, heights, celsius: [0, 10, 30], source });
    if (!made.ok) throw new Error(made.detail);
    return made.value;
  };

  test("frames the cell nearest to the air it is counted from, where the fitted jet stands", () => {
    const { base, from, cells, fitted } = chart("sold");
    expect(from.heightM).toBe(420);
    expect(base).toEqual({ row: 1, column: 1 });
    expect(Math.abs(cells[1]![1]!.main! - fitted.main!)).toBeLessThanOrEqual(2.5);
  });

  test("smaller higher up and hotter, always a size sold", () => {
    const { cells } = chart("sold");
    expect(cells[0]![0]!.main).toBeGreaterThan(cells[2]![2]!.main!);
    for (const { main } of cells.flat()) expect(main! % 2.5).toBe(0);
  });

  test("from the drawer a cell may be out of reach", () => {
    const { cells } = chart("drawer", "heron", [-400]);
    const sold = chart("sold", "heron", [-400]).cells;
    expect(sold[0]![0]!.main).not.toBeNull();
    expect(cells[0]![0]!.main ?? Infinity).toBeGreaterThanOrEqual(sold[0]![0]!.main!);
  });
});
