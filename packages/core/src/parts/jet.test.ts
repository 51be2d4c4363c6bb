import { expect, test } from "vitest";
import { jetArea } from "./jet.ts";

test("bore numbers are hundredths of a millimetre", () => {
  expect(jetArea({ number: 175, numbering: "bore" }) * 1e6).toBeCloseTo((Math.PI / 4) * 1.75 ** 2, 12);
});

test("flow numbers are on the scale d = √(n/100) mm", () => {
  expect(jetArea({ number: 300, numbering: "flow" }) * 1e6).toBeCloseTo((Math.PI / 4) * 3, 12);
});

test("a number no jet can have is a bug", () => {
  for (const number of [0, -5, 2000, Number.NaN]) {
    expect(() => jetArea({ number, numbering: "bore" })).toThrow(RangeError);
  }
});
