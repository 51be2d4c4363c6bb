import {
  airFrom,
  compare,
  type Metre,
  OPENINGS,
  pressureAltitude,
  relativeHumidity,
  standardPressure,
  toCelsius,
  toHectopascal,
} from "@jetwright/core";
import { bikeCase, shopDrawer } from "@jetwright/records";
import { describe, expect, test } from "vitest";
import { DEMO, shopOf } from "../test-shop.ts";
import { sheetOf } from "./sheet.ts";
import { mainsToHad, smallChart } from "./small-chart.ts";
import { LEAN_EDGE, RICH_EDGE, staysRight } from "./stays-right.ts";

const demo = shopOf(DEMO);
const units = { height: "m", temperature: "C" } as const;
const nowOf = (bike: string) => {
  const story = bikeCase(demo.shop, bike);
  if (!story.ok) throw new Error(story.detail);
  return story.value.now;
};
const rangeOf = (bike: string) => {
  const range = staysRight(nowOf(bike));
  if (!range.ok) throw new Error(range.detail);
  return range.value;
};

describe("how far the air may move", () => {
  test("the edges are 4 % lean and 6 % rich", () => {
    expect(Math.exp(LEAN_EDGE)).toBeCloseTo(0.96, 12);
    expect(Math.exp(RICH_EDGE)).toBeCloseTo(1.06, 12);
  });

  test("a carburetor goes rich with the inverse root of density, so 6 % is about 11 % less air", () => {
    // Heywood 1988, sec. 7.2 [from memory]: an uncompensated carburetor enriches as (density)^-1/2. At one
    // temperature density goes with pressure. Low openings answer a little differently, hence 2 %.
    for (const bike of ["sorrel", "juniper"]) {
      const ground = pressureAltitude(nowOf(bike).air.pressure);
      const thinner = standardPressure((ground + rangeOf(bike).up!) as Metre) / standardPressure(ground);
      expect(Math.abs(thinner - 1 / 1.06 ** 2)).toBeLessThan(0.02);
    }
  });

  test("a rule of thumb: about 1000 m up asks for another jet, as does some 25 °C of warmth", () => {
    // Common practice, no source: one main jet size per 500 to 1000 m, or per 10 to 15 °C, and two sizes are 6 %.
    const { up, warmest } = rangeOf("sorrel");
    expect(up).toBeGreaterThan(600);
    expect(up).toBeLessThan(1400);
    expect(warmest! - toCelsius(nowOf("sorrel").air.temperature)).toBeGreaterThan(15);
    expect(warmest! - toCelsius(nowOf("sorrel").air.temperature)).toBeLessThan(40);
  });

  test("just inside every opening is within the edges, just outside one is not", () => {
    const base = nowOf("sorrel");
    const { coldest, warmest, down, up, thickest, thinnest } = rangeOf("sorrel");
    const celsius = toCelsius(base.air.temperature);
    expect(coldest).toBeLessThan(celsius);
    expect(warmest).toBeGreaterThan(celsius);
    expect(down).toBeGreaterThan(0);
    expect(up).toBeGreaterThan(0);
    expect(thinnest).toBeLessThan(base.air.density);
    expect(thickest).toBeGreaterThan(base.air.density);
    const percent = 100 * relativeHumidity(base.air);
    const errors = (t: number): readonly number[] => {
      const air = airFrom({
        temperature: { value: t, unit: "C" },
        pressure: { kind: "station", value: toHectopascal(base.air.pressure), unit: "hPa" },
        humidity: { kind: "relative", percent },
      });
      const result = air.ok ? compare(base, { ...base, air: air.value }) : air;
      if (!result.ok) throw new Error(result.detail);
      return result.value.at.map(({ logRatio }) => logRatio);
    };
    expect(Math.max(...errors(warmest!))).toBeLessThanOrEqual(RICH_EDGE);
    expect(Math.max(...errors(warmest! + 0.2))).toBeGreaterThan(RICH_EDGE);
    expect(Math.min(...errors(coldest!))).toBeGreaterThanOrEqual(LEAN_EDGE);
    expect(Math.min(...errors(coldest! - 0.2))).toBeLessThan(LEAN_EDGE);
    expect(errors(celsius)).toHaveLength(OPENINGS.length);
  });
});

describe("the small chart", () => {
  const base = nowOf("sorrel");
  const chart = smallChart(base, shopDrawer(demo.shop), units);
  if (!chart.ok) throw new Error(chart.detail);
  const { heights, temperatures, cells } = chart.value;

  test("is headed in round figures of the person's units round where the bike is", () => {
    expect(heights).toEqual([0, 500, 1000, 1500, 2000, 2500]);
    expect(temperatures.every((t) => t % 8 === 0)).toBe(true);
    expect(temperatures[0]).toBeLessThan(12);
    expect(temperatures.at(-1)).toBeGreaterThan(12);
    const feet = smallChart(base, shopDrawer(demo.shop), { height: "ft", temperature: "F" });
    if (!feet.ok) throw new Error(feet.detail);
    expect(feet.value.heights).toEqual([0, 1500, 3000, 4500, 6000, 7500]);
    expect(feet.value.temperatures.every((t) => t % 15 === 0)).toBe(true);
  });

  test("the main jet falls with height and with warmth, and stays in the frame near home", () => {
    const main = (i: number, j: number) => cells[i]![j]!.main!;
    for (let i = 0; i < heights.length; i++) {
      for (let j = 0; j < temperatures.length; j++) {
        if (i > 0) expect(main(i, j)).toBeLessThanOrEqual(main(i - 1, j));
        if (j > 0) expect(main(i, j)).toBeLessThanOrEqual(main(i, j - 1));
        expect(cells[i]![j]!.asIs).toBe(
          cells[i]![j]!.furthest >= LEAN_EDGE * 100 && cells[i]![j]!.furthest <= RICH_EDGE * 100,
        );
      }
    }
    expect(cells[1]![1]).toMatchObject({ asIs: true, main: 170, clip: null });
    expect(cells[5]![5]!.asIs).toBe(false);
  });

  test("names no main jet where none can do it: with an untapered needle the main hardly counts", () => {
    const { needle } = base.setup;
    const straight = {
      ...needle.part!,
      profile: { straightDiameter: 0.00252 as Metre, tapers: [], diameterSd: 1e-6 as Metre },
    };
    const stuck = smallChart(
      { ...base, setup: { ...base.setup, needle: { ...needle, part: straight } } },
      shopDrawer(demo.shop),
      units,
    );
    if (!stuck.ok) throw new Error(stuck.detail);
    for (const cell of stuck.value.cells.flat()) {
      if (cell.main !== null) expect(cell.main).toBeGreaterThanOrEqual(170 * 0.8);
    }
    expect(stuck.value.cells[5]![5]).toMatchObject({ asIs: false, main: null });
    expect(cells[5]![5]!.main).not.toBeNull();
  });

  test("offers jets that are sold or owned and no others", () => {
    const jet = { number: 170, numbering: "bore", maker: "" } as const;
    const empty = { mains: [], pilots: [], needles: [], needleJets: [], slides: [] };
    const sold = mainsToHad(jet, empty);
    expect(sold).toContain(167.5);
    expect(sold).not.toContain(168);
    const owned = mainsToHad(jet, {
      ...empty,
      mains: [
        { part: { ...jet, number: 168 }, count: 1 },
        { part: { ...jet, number: 169 }, count: 0 },
        { part: { number: 171, numbering: "flow", maker: "" }, count: 1 },
      ],
    });
    expect(owned).toContain(168);
    expect(owned).not.toContain(169);
    expect(owned).not.toContain(171);
  });
});

describe("the sheet", () => {
  const sheet = (bike: string, state = demo) => sheetOf(state, { bike, units, language: "en" });

  test("names every part with how it is known, unknown ones too", () => {
    const sorrel = sheet("sorrel");
    if (!sorrel.ok) throw new Error(sorrel.detail);
    const parts = new Map(sorrel.value.parts.map((part) => [part.part, part]));
    expect(parts.size).toBe(10);
    expect(parts.get("main")).toMatchObject({ value: "170 (bore, 1/100 mm)", how: "read by eye" });
    expect(parts.get("screw")).toMatchObject({ value: "1½ turns out", how: "measured" });
    expect(parts.get("clip")!.value).toBe("3 of 5 from the top");
    expect(parts.get("needleJet")).toMatchObject({ value: null, how: "unknown" });
  });

  test("says when it was marked as right, and not when only an earlier setup was", () => {
    const sorrel = sheet("sorrel");
    expect(sorrel.ok && sorrel.value.markedAt).toBe(demo.shop.bikes.get("sorrel")!.knownGood[0]!.entry.at);
    const changed = shopOf([
      ...DEMO,
      {
        id: "later",
        kind: "setup-fitted",
        v: 1,
        at: "2026-10-01T00:00:00Z",
        bike: "sorrel",
        body: { main: { number: 165 } },
      },
    ]);
    const after = sheet("sorrel", changed);
    expect(after.ok && after.value.markedAt).toBeNull();
  });

  test("is right in the air it was marked in, not in the air of today", () => {
    const moved = shopOf([
      ...DEMO,
      {
        id: "later",
        kind: "air-measured",
        v: 1,
        at: "2026-10-01T00:00:00Z",
        bike: "sorrel",
        body: { temperatureC: 30, stationPressureHpa: 800 },
      },
    ]);
    const after = sheet("sorrel", moved);
    if (!after.ok) throw new Error(after.detail);
    expect(after.value.air.celsius).toBeCloseTo(12, 6);
    expect(after.value.air.hectopascal).toBeCloseTo(967, 6);
  });

  test("names what ends a ride, and nothing one only sees on the bench", () => {
    const sorrel = sheet("sorrel");
    if (!sorrel.ok) throw new Error(sorrel.detail);
    expect(sorrel.value.stops).toContain("Runs on or revs up by itself");
    expect(sorrel.value.stops).toContain("Seized, or nipped up and freed itself");
    expect(sorrel.value.stops.join()).not.toMatch(/specks|scuffed/);
  });

  test("works with next to nothing known, and refuses an unknown bike in words", () => {
    const bare = shopOf([
      {
        id: "d",
        kind: "bike-described",
        v: 1,
        at: "2026-01-01T00:00:00Z",
        bike: "b",
        body: { engine: { strokes: 4 } },
      },
    ]);
    const known = sheet("b", bare);
    if (!known.ok) throw new Error(known.detail);
    expect(known.value.fuel).toBeNull();
    expect(known.value.air.notedAt).toBeNull();
    expect(known.value.parts.every(({ value }) => value === null)).toBe(true);
    expect(sheet("nobody")).toMatchObject({ ok: false, reason: "no-such-bike" });
  });
});
