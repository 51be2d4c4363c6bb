import fc from "fast-check";
import { expect, test } from "vitest";
import { oilPerFuel } from "./oil-measure.ts";
import { readOil } from "./read-oil.ts";

test.each([
  ["50:1", 1 / 50],
  ["1:50", 1 / 50],
  [" 50 to 1 ", 1 / 50],
  ["1/32", 1 / 32],
  ["40-1", 1 / 40],
  ["33,3:1", 1 / 33.3],
  ["100:3", 0.03],
  ["3 % of fuel", 0.03],
  ["3% of the mix", 3 / 97],
  ["2,5 percent of petrol", 0.025],
  ["20 ml/l", 0.02],
  ["25 ml per litre", 0.025],
  ["20 cc per liter of fuel", 0.02],
  ["20 ml per litre of mix", 2 / 98],
  ["2.56 US oz per US gallon", 0.02],
  ["2.56 us oz/gal", 0.02],
  ["4 fl oz per us gal", 4 / 128],
  ["3,2 imp oz per imperial gallon", 0.02],
  ["3.2 uk oz per gal", 0.02],
  ["3.2 US oz per imp gallon", (3.2 * 3785.411784) / 128 / 4546.09],
  ["none", 0],
  ["0", 0],
  ["0%", 0],
])("%s", (typed, want) => {
  const measure = readOil(typed);
  if (!measure.ok) throw new Error(measure.detail);
  const oil = oilPerFuel(measure.value);
  expect(oil.ok && oil.value).toBeCloseTo(want, 12);
});

test("ambiguous words are asked about, naming both meanings", () => {
  const percent = readOil("2 %");
  expect(percent).toMatchObject({ ok: false, reason: "ambiguous" });
  if (!percent.ok) {
    expect(percent.detail).toMatch(/50:1/);
    expect(percent.detail).toMatch(/49:1/);
  }
  const ounces = readOil("4 oz/gal");
  expect(ounces).toMatchObject({ ok: false, reason: "ambiguous" });
  if (!ounces.ok) {
    expect(ounces.detail).toMatch(/US gallon" if it is 32:1/);
    expect(ounces.detail).toMatch(/imp gallon" if it is 40:1/);
  }
  expect(readOil("50")).toMatchObject({ reason: "ambiguous", detail: expect.stringMatching(/"50:1"/) });
  expect(readOil("10")).toMatchObject({ reason: "ambiguous", detail: expect.stringMatching(/10 % of fuel/) });
});

test.each(["1:1", "60:50", "2:1", "40 % of fuel", "500 ml/l", "30 %"])("%s is too much oil", (typed) => {
  expect(readOil(typed)).toMatchObject({ ok: false, reason: "oil" });
});

test.each(["", "fifty", "50:", ":1", "50:1:1", "20 ml", "-50:1", "50:1 maybe", "5O:1"])(
  "%j is not a ratio",
  (typed) => {
    expect(readOil(typed)).toMatchObject({ ok: false, reason: "not an oil ratio" });
  },
);

test("whatever is typed, it answers", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme", maxLength: 30 }), (typed) => {
      const outcome = readOil(typed);
      if (!outcome.ok) expect(outcome.detail.length).toBeGreaterThan(20);
    }),
    { seed: 5, numRuns: 500 },
  );
});
