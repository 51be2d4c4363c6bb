import { describe, expect, test } from "vitest";
import { shopOf } from "../test-shop.ts";
import { ranRight } from "./ran-right.ts";

const line = (n: number, kind: string, body: object) => ({
  id: `r${n}`,
  kind,
  v: 1,
  at: `2026-05-01T10:${String(n).padStart(2, "0")}:00Z`,
  bike: "fern",
  body,
});
const BIKE = line(1, "bike-described", {
  name: "Fern",
  engine: { strokes: 2 },
  carburetor: { bore: { shape: "round", diameterMm: 36 } },
});
const SETUP = line(2, "setup-fitted", { main: { number: 170 }, asFound: true });
const COOL = line(3, "air-measured", { temperatureC: 5, stationPressureHpa: 965, heightM: 420 });
const MARK = line(4, "known-good-marked", {});
const HOT = line(5, "air-measured", { temperatureC: 30, stationPressureHpa: 960 });
const airOf = (...lines: object[]) => {
  const base = ranRight(shopOf([BIKE, SETUP, ...lines]).shop, "fern");
  if (!base.ok) throw new Error(base.detail);
  return base.value.air;
};

describe("the air a setup is counted from", () => {
  test("where it was marked as right, not where it is now", () => {
    expect(airOf(COOL, MARK, HOT)).toEqual({
      celsius: expect.closeTo(5, 9),
      heightM: 420,
      markedAt: Date.parse(MARK.at),
    });
  });

  test("without a mark the air last noted, its height from the barometer where none is told", () => {
    const air = airOf(COOL, HOT);
    expect(air.markedAt).toBeNull();
    expect(air.celsius).toBeCloseTo(30, 9);
    // ISO 2533:1975 [from memory]: 954.6 hPa at 500 m, 1013.25 at 0.
    expect(air.heightM).toBeGreaterThan(400);
    expect(air.heightM).toBeLessThan(500);
  });

  test.each([
    ["other parts", line(6, "setup-fitted", { main: { number: 165 } })],
    ["another fuel", line(6, "fuel-used", { ethanolPercent: 10 })],
    ["another engine", line(6, "engine-changed", { what: "pipe" })],
  ])("a mark made before %s no longer counts", (_, later) => {
    expect(airOf(COOL, MARK, HOT, later).markedAt).toBeNull();
  });

  test("a mark with no air noted cannot be counted from", () => {
    expect(airOf(MARK, HOT).markedAt).toBeNull();
  });

  test("a bike that is not there is refused", () => {
    expect(ranRight(shopOf([BIKE]).shop, "moss").ok).toBe(false);
  });
});
