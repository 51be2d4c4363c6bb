import { expect, test } from "vitest";
import { compareNumbers } from "./compare-numbers.ts";

test("orders by the first difference, then by length", () => {
  expect(compareNumbers([1, 2], [1, 3])).toBe(-1);
  expect(compareNumbers([1, 3], [1, 2])).toBe(1);
  expect(compareNumbers([2, 1], [1, 9])).toBe(1);
  expect(compareNumbers([1], [1, 0])).toBeLessThan(0);
  expect(compareNumbers([1, 0], [1])).toBeGreaterThan(0);
  expect(compareNumbers([1, 2], [1, 2])).toBe(0);
});
