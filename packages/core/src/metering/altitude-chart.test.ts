import { describe, expect, test } from "vitest";
import { known, UNKNOWN } from "../parts/known.ts";
import { fromCelsius } from "../units/convert.ts";
import { accept } from "../units/outcome.ts";
import type { Kelvin, Metre } from "../units/quantity.ts";
import { usualAir } from "./air-lookup.ts";
import { altitudeChart, type ChartCell, type ChartOptions } from "./altitude-chart.ts";
import { compare } from "./compare.ts";
import { crossing } from "./search.ts";
import type { Situation } from "./situation.ts";
import { boreJet, dryAir, FUEL_SCREW, fitted, HERE, withScrew } from "./test-situations.ts";

const metres = (...xs: number[]) => xs as Metre[];
const celsius = (...xs: number[]) => xs.map(fromCelsius);
const ISA: [number, number][] = [
  [500, 0.95287],
  [1000, 0.90746],
  [1500, 0.86373],
  [2000, 0.82162],
  [3000, 0.74214],
];
/** Dry standard air of the tables, ideal gas, so that the carried figures can be met. */
const isa: ChartOptions = {
  air: (height) => accept(dryAir(1.225 * (ISA.find(([h]) => h === height)?.[1] ?? 1))),
};

function cells(situation: Situation, heights: Metre[], temperatures: Kelvin[], options: ChartOptions = {}) {
  const chart = altitudeChart(situation, heights, temperatures, options);
  if (!chart.ok) throw new Error(chart.detail);
  return chart.value.cells;
}
const cell = (situation: Situation, height: number, options: ChartOptions = isa): ChartCell =>
  cells(situation, metres(height), celsius(15), options)[0]![0]!;

describe("the altitude by temperature chart", () => {
  // Carried figures of our own model, rounded there to half a number and a tenth of a groove; not proof.
  test.each([
    [500, 172, 41.5, -0.4],
    [1000, 169, 41, -0.7],
    [1500, 166, 40.5, -1.1],
    [2000, 163.5, 40, -1.4],
    [3000, 158, 39, -2.1],
  ])("carried: %d m", (height, main, pilot, grooves) => {
    const at = cell(HERE, height);
    expect(Math.abs(at.exactMain! - main)).toBeLessThan(0.4);
    expect(Math.abs(at.exactPilot! - pilot)).toBeLessThan(0.4);
    // with main and pilot jet changed, that clip leaves less than 0.15 groove (0.5 %) at 1/2
    const air = dryAir(1.225 * ISA.find(([h]) => h === height)![1]);
    const parts = { main: known(boreJet(main)), pilot: known(boreJet(pilot)), clip: known(3 + grooves) };
    const result = compare(HERE, { ...fitted(parts), air });
    expect(Math.abs(result.ok ? result.value.at[6]!.logRatio : 1)).toBeLessThan(0.005);
    // left alone, the pilot jet asks for a little more of the clip
    expect(at.exactClip! - 3).toBeLessThan(grooves + 0.05);
    expect(at.exactClip! - 3).toBeGreaterThan(1.2 * grooves - 0.05);
  });

  test("each number does what it is for", () => {
    const at = cell(HERE, 1500);
    const there = { ...HERE, air: dryAir(1.225 * 0.86373) };
    const errorOf = (parts: Parameters<typeof fitted>[0]) => {
      const result = compare(HERE, fitted(parts, there));
      if (!result.ok) throw new Error(result.detail);
      return result.value.at.map((x) => x.logRatio);
    };
    expect(errorOf({})).toEqual(at.unchanged);
    expect(errorOf({ main: known(boreJet(at.exactMain!)) })[10]).toBeCloseTo(0, 9);
    expect(errorOf({ main: known(boreJet(at.exactMain!)), clip: known(at.exactClip!) })[6]).toBeCloseTo(0, 9);
    expect(errorOf({ pilot: known(boreJet(at.exactPilot!)) })[0]).toBeCloseTo(0, 9);
    const safe = errorOf({ main: known(boreJet(at.main!)), clip: known(at.clip!) });
    for (const error of safe.slice(8)) expect(error).toBeGreaterThan(-1e-9);
  });

  test("rounds to the rich side, of the list or of whole numbers", () => {
    expect(cell(HERE, 2000, { ...isa, mains: [160, 162.5, 165, 167.5] }).main).toBe(165);
    expect(cell(HERE, 2000).main).toBe(Math.ceil(cell(HERE, 2000).exactMain!));
    const small = cell(HERE, 2000, { ...isa, mains: [100, 150] });
    expect(small.main).toBe(null);
    expect(small.clip).not.toBe(null);
  });

  test("the whole groove leans the middle only as far as the top allows", () => {
    expect(cell(HERE, 0).clip).toBe(3);
    const high = cell(HERE, 3000, { ...isa, mains: [165] });
    expect(high.clip).toBeLessThan(3);
    // a list too small keeps the top from being lean by lifting the needle
    expect(cell(HERE, 500, { ...isa, mains: [172.5] }).clip).toBeGreaterThanOrEqual(3);
  });

  test("the screw answers in its own direction and within its range", () => {
    expect(cell(HERE, 500).screwTurns).toBeGreaterThan(1.5);
    expect(cell(HERE, 3000).screwTurns).toBe(null);
    const four = withScrew(1.5, { ...HERE, setup: FUEL_SCREW });
    expect(cell(four, 500).screwTurns).toBeLessThan(1.5);
    expect(cell(HERE, 0).screwTurns).toBeCloseTo(1.5, 9);
  });

  test("colder asks for more, higher for less; rows are heights", () => {
    const grid = cells(HERE, metres(0, 1000, 2500), celsius(-10, 15, 35));
    expect(grid.map((row) => row.length)).toEqual([3, 3, 3]);
    for (const row of grid) expect(row[0]!.exactMain!).toBeGreaterThan(row[2]!.exactMain!);
    for (let j = 0; j < 3; j++) expect(grid[0]![j]!.exactMain!).toBeGreaterThan(grid[2]![j]!.exactMain!);
    expect(grid[1]![2]).toMatchObject({ height: 1000, temperature: fromCelsius(35) });
  });

  test("moist air asks for a little less", () => {
    const at = (relativeHumidity: number) => cell(HERE, 0, { relativeHumidity }).exactMain!;
    expect(at(1)).toBeLessThan(at(0) - 0.5);
    expect(cell(HERE, 0, {}).exactMain).toBe(at(0.5));
  });

  test("unknown parts leave blanks, wrong places are refused", () => {
    const blank = cell(
      fitted({ main: UNKNOWN, needle: UNKNOWN, clip: UNKNOWN, pilot: UNKNOWN, screw: UNKNOWN }),
      1000,
    );
    expect(blank).toMatchObject({
      exactMain: null,
      main: null,
      exactClip: null,
      clip: null,
      exactPilot: null,
      screwTurns: null,
    });
    expect(altitudeChart(HERE, metres(9000), celsius(0))).toMatchObject({
      ok: false,
      reason: "outside the tables",
    });
    expect(altitudeChart(HERE, metres(0), celsius(70))).toMatchObject({
      ok: false,
      reason: "outside the tables",
    });
    expect(altitudeChart(fitted({ main: known(boreJet(0)) }), metres(0), celsius(0))).toMatchObject({
      ok: false,
    });
    expect(altitudeChart(HERE, metres(0), celsius(0), { air: () => accept(dryAir(0)) })).toMatchObject({
      ok: false,
      reason: "impossible air or fuel",
    });
  });
});

describe("usual air", () => {
  test("is standard pressure at the height, whatever the temperature", () => {
    const air = usualAir(1000 as Metre, fromCelsius(30), 0.6);
    if (!air.ok) throw new Error(air.detail);
    expect(air.value.pressure).toBeCloseTo(89874.6, 0);
    expect(air.value.temperature).toBe(fromCelsius(30));
    expect(air.value.vapourFraction).toBeGreaterThan(0.02);
    expect(air.value.relativeSd).toBe(0.01);
  });
  test.each([
    [-501, 15, 0.5],
    [6001, 15, 0.5],
    [0, -41, 0.5],
    [0, 61, 0.5],
    [0, 15, -0.1],
    [0, 15, 1.1],
    [Number.NaN, 15, 0.5],
  ])("refuses %d m, %d °C, humidity %d", (height, temperature, humidity) => {
    expect(usualAir(height as Metre, fromCelsius(temperature), humidity)).toMatchObject({ ok: false });
  });
  test.each([
    [-500, -39.9, 0],
    [6000, 59.9, 1],
  ])("takes %d m, %d °C, humidity %d", (height, temperature, humidity) => {
    expect(usualAir(height as Metre, fromCelsius(temperature), humidity).ok).toBe(true);
  });
});

describe("crossing", () => {
  test("finds where a function changes sign, rising or falling", () => {
    expect(crossing((x) => x * x - 2, 0, 2)).toBeCloseTo(Math.SQRT2, 12);
    expect(crossing((x) => 2 - x * x, 0, 2)).toBeCloseTo(Math.SQRT2, 12);
    expect(crossing((x) => x, 0, 1)).toBe(0);
    expect(crossing((x) => x - 1, 0, 1)).toBe(1);
    expect(crossing((x) => x - 0.5, 0, 1)).toBe(0.5);
    expect(crossing((x) => x + 1, 0, 1)).toBe(null);
    expect(crossing((x) => (x < 0.5 ? Number.NaN : x), 0, 1)).toBe(null);
  });
});
