import { scaleLinear, scaleSqrt } from "d3-scale";
import { expect, test } from "vitest";
import { rootScale, straightScale } from "./scale.ts";

// Oracle: a plotting library's own scales.

test("a straight scale agrees with the library's, held at its ends", () => {
  const ours = straightScale([-8, 8], [200, 20]);
  const theirs = scaleLinear([-8, 8], [200, 20]).clamp(true);
  for (const value of [-20, -8, -3.3, 0, 5, 8, 99]) expect(ours(value)).toBeCloseTo(theirs(value), 9);
});

test("a root scale agrees with the library's", () => {
  const ours = rootScale(1, [40, 380]);
  const theirs = scaleSqrt([0, 1], [40, 380]);
  for (const value of [0, 0.0625, 0.25, 0.7, 1]) expect(ours(value)).toBeCloseTo(theirs(value), 9);
});

test("ends that meet are a bug of ours", () => {
  expect(() => straightScale([3, 3], [0, 1])).toThrow("3");
});
