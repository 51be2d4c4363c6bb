import { describe, expect, test } from "vitest";
import { known, UNKNOWN } from "../parts/known.ts";
import { fromCelsius } from "../units/convert.ts";
import type { Metre } from "../units/quantity.ts";
import { usualAir } from "./air-lookup.ts";
import { altitudeChart } from "./altitude-chart.ts";
import { jetsWanted, spread } from "./jets-wanted.ts";
import { fitted, flowJet, HERE } from "./test-situations.ts";

const RANGE = {
  lowest: 0 as Metre,
  highest: 2000 as Metre,
  coldest: fromCelsius(0),
  hottest: fromCelsius(30),
};
const air = usualAir(0 as Metre, fromCelsius(15), 0.5);
if (!air.ok) throw new Error(air.detail);
const AT_SEA = { ...HERE, air: air.value };

function wanted(situation = AT_SEA, place: "main" | "pilot" = "main", range = RANGE) {
  const made = jetsWanted("fern", situation, range);
  if (!made.ok) throw new Error(made.detail);
  return made.value[place];
}

describe("a spread", () => {
  test.each([
    [0, 2000, 500, [0, 500, 1000, 1500, 2000]],
    [0, 1001, 500, [0, 1001 / 3, 2002 / 3, 1001]],
    [7, 7, 10, [7]],
    [0, 10, 10, [0, 10]],
  ])("%d to %d by %d", (low, high, step, values) => {
    expect(spread(low, high, step).map((x) => Number(x.toFixed(6)))).toEqual(
      values.map((x) => Number(x.toFixed(6))),
    );
  });

  test("upside down or without a step is a bug of ours", () => {
    expect(() => spread(2, 1, 1)).toThrow(/got 2 to 1 by 1/);
    expect(() => spread(1, 2, 0)).toThrow(RangeError);
  });
});

describe("jets wanted", () => {
  test("at places not over 500 m and 10 degrees apart, ends included", () => {
    const places = wanted();
    expect(places).toHaveLength(5 * 4);
    expect([...new Set(places.map(({ height }) => height))]).toEqual([0, 500, 1000, 1500, 2000]);
    expect(places.at(-1)!.temperature).toBeCloseTo(303.15, 9);
    expect(places.every(({ bike, fitted }) => bike === "fern" && fitted === 175)).toBe(true);
  });

  test("a main jet serves from a quarter size lean to two sizes rich", () => {
    const chart = altitudeChart(AT_SEA, [2000 as Metre], [fromCelsius(30)]);
    const high = wanted().at(-1)!;
    const exact = chart.ok ? chart.value.cells[0]![0]!.exactMain! : Number.NaN;
    expect(exact - high.least).toBeCloseTo(0.625, 9);
    expect(high.most - exact).toBeCloseTo(5, 9);
    const cold = wanted()[0]!;
    expect(cold.least).toBeGreaterThan(175);
    expect(high.least).toBeLessThan(166);
  });

  test("steps are those of the numbering", () => {
    const flow = { ...AT_SEA, ...fitted({ main: known(flowJet(300)) }, AT_SEA) };
    const here = wanted(flow, "main", { ...RANGE, highest: 0 as Metre, hottest: fromCelsius(0) });
    expect(here[0]!.most - here[0]!.least).toBeCloseTo(22.5, 9);
  });

  test("a pilot jet is wanted only where the screw does not reach", () => {
    const near = wanted(AT_SEA, "pilot", {
      ...RANGE,
      highest: 0 as Metre,
      coldest: fromCelsius(15),
      hottest: fromCelsius(15),
    });
    const jet = AT_SEA.setup.pilot.part!.number;
    expect(near).toMatchObject([{ least: jet, most: jet, fitted: jet }]);
    const far = wanted(AT_SEA, "pilot", { ...RANGE, highest: 5000 as Metre }).at(-1)!;
    expect(far.least).toBeLessThan(jet);
    expect(far.most).toBeGreaterThan(far.least);
  });

  test("what is not known wants nothing; air off the tables is refused", () => {
    expect(wanted({ ...AT_SEA, ...fitted({ main: UNKNOWN }, AT_SEA) })).toEqual([]);
    const off = jetsWanted("fern", AT_SEA, { ...RANGE, highest: 7000 as Metre });
    expect(off.ok ? "" : off.reason).toBe("outside the tables");
  });
});
