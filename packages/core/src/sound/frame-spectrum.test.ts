import { describe, expect, test } from "vitest";
import { standOut } from "./frame-spectrum.ts";

/** The same by its definition: each value against the mean of those around it. */
const plain = (values: Float64Array, around: number, most: number): number[] =>
  [...values].map((value, k) => {
    const near = values.slice(Math.max(0, k - around), k + around + 1);
    const mean = near.reduce((sum, each) => sum + each, 0) / near.length;
    return Math.min(most, 3.57 * (value / mean - 1));
  });

describe("how far each frequency stands out", () => {
  const values = Float64Array.from(
    { length: 129 },
    (_, k) => 1 + ((k * 37) % 11) ** 1.5 + (k === 40 ? 500 : 0),
  );
  const sums = new Float64Array(130);
  values.forEach((value, k) => {
    sums[k + 1] = sums[k]! + value;
  });

  test.each([
    [4, 4, 129],
    [30, 12, 129],
    [30, 4, 101],
    [100, 12, 129],
    [200, 12, 60],
  ])("within %i to either side, cut at %i, up to %i", (around, most, end) => {
    const laid = values.slice();
    standOut(laid, sums, around, most, end);
    const wanted = plain(values, around, most);
    for (let k = 0; k < end; k++) expect(laid[k]).toBeCloseTo(wanted[k]!, 9);
    expect([...laid.slice(end)]).toEqual([...values.slice(end)]);
  });

  test("silence stands out nowhere", () => {
    const silence = new Float64Array(65);
    standOut(silence, new Float64Array(66), 8, 4, 65);
    expect(Math.max(...silence.map(Math.abs))).toBe(0);
  });
});
