import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fromLitre, toCubicCentimetre } from "../units/convert.ts";
import {
  type OilMeasure,
  oilPerFuel,
  oilShareOfMix,
  oilText,
  oilToMeasure,
  oilTraps,
} from "./oil-measure.ts";

const oil = (measure: OilMeasure): number => {
  const outcome = oilPerFuel(measure);
  if (!outcome.ok) throw new Error(outcome.detail);
  return outcome.value;
};

test("every way of saying 50:1 is the same oil", () => {
  expect(oil({ by: "ratio", numbers: [50, 1] })).toBe(0.02);
  expect(oil({ by: "ratio", numbers: [1, 50] })).toBe(0.02);
  expect(oil({ by: "percent of fuel", percent: 2 })).toBe(0.02);
  expect(oil({ by: "percent of mix", percent: 100 / 51 })).toBeCloseTo(0.02, 14);
  expect(oil({ by: "millilitres a litre", millilitres: 20 })).toBe(0.02);
  expect(oil({ by: "ounces a gallon", ounces: 2.56, ounce: "US", gallon: "US" })).toBeCloseTo(0.02, 14);
  expect(oil({ by: "ounces a gallon", ounces: 3.2, ounce: "imperial", gallon: "imperial" })).toBeCloseTo(
    0.02,
    14,
  );
  expect(oil({ by: "none" })).toBe(0);
});

test("2 % of the mix is 49:1, not 50:1", () => {
  expect(oil({ by: "percent of mix", percent: 2 })).toBeCloseTo(1 / 49, 14);
});

test("shares of fuel and of mix are each other's inverse", () => {
  fc.assert(
    fc.property(fc.double({ min: 0, max: 0.19, noNaN: true }), (x) => {
      const back = oil({ by: "percent of mix", percent: 100 * oilShareOfMix(x) });
      expect(back).toBeCloseTo(x, 12);
    }),
    { seed: 41, examples: [[0.02]], numRuns: 200 },
  );
});

test("oil on top of the fuel, or within the can", () => {
  const onTop = oilToMeasure(0.02, fromLitre(5), "added fuel");
  expect(toCubicCentimetre(onTop.oil)).toBeCloseTo(100, 10);
  expect(onTop.fuel).toBe(fromLitre(5));
  const can = oilToMeasure(0.02, fromLitre(5), "total mix");
  expect(toCubicCentimetre(can.oil)).toBeCloseTo(5000 / 51, 10);
  expect(can.oil + can.fuel).toBeCloseTo(0.005, 15);
  expect(() => oilToMeasure(0.02, fromLitre(-1), "added fuel")).toThrow(RangeError);
  expect(() => oilToMeasure(0.3, fromLitre(1), "added fuel")).toThrow(RangeError);
});

test.each<[OilMeasure, RegExp]>([
  [{ by: "ratio", numbers: [1, 1] }, /1000 ml of oil/],
  [{ by: "ratio", numbers: [0, 0] }, /no possible share/],
  [{ by: "percent of fuel", percent: 21 }, /210 ml/],
  [{ by: "percent of mix", percent: 100 }, /no possible share/],
  [{ by: "percent of fuel", percent: -1 }, /no possible share/],
  [{ by: "millilitres a litre", millilitres: Number.NaN }, /no possible share/],
])("refused: %o", (measure, detail) => {
  const outcome = oilPerFuel(measure);
  expect(outcome).toMatchObject({ ok: false, reason: "oil" });
  if (!outcome.ok) expect(outcome.detail).toMatch(detail);
});

test("oil in words", () => {
  expect(oilText(0)).toBe("no oil");
  expect(oilText(0.02)).toBe("50:1 (20 ml of oil to a litre of fuel)");
  expect(oilText(0.03)).toBe("33.3:1 (30 ml of oil to a litre of fuel)");
  expect(oilText(1 / 150)).toBe("150:1 (6.67 ml of oil to a litre of fuel)");
});

describe("gallon and ounce traps", () => {
  test("both errors are told with the ratio they make", () => {
    const traps = oilTraps({ by: "ounces a gallon", ounces: 2.56, ounce: "US", gallon: "US" });
    expect(traps).toHaveLength(2);
    expect(traps[0]).toMatch(/an imperial gallon make 60:1 and not 50:1/);
    expect(traps[1]).toMatch(/imperial ounces makes 52:1 and not 50:1/);
  });

  test("from the imperial side they run the other way", () => {
    const traps = oilTraps({ by: "ounces a gallon", ounces: 3.2, ounce: "imperial", gallon: "imperial" });
    expect(traps[0]).toMatch(/a US gallon make 41.6:1 and not 50:1/);
    expect(traps[1]).toMatch(/US ounces makes 48:1 and not 50:1/);
  });

  test("mixed units are pointed out first, metric has no trap", () => {
    expect(oilTraps({ by: "ounces a gallon", ounces: 3, ounce: "US", gallon: "imperial" })[0]).toMatch(
      /mixed units/,
    );
    expect(oilTraps({ by: "ratio", numbers: [50, 1] })).toEqual([]);
  });
});
