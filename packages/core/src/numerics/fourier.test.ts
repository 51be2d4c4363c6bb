import { describe, expect, test } from "vitest";
import { fourier, lengthFor } from "./fourier.ts";
import { seededRandom } from "./random.ts";

/** The discrete Fourier transform by its definition. */
function byDefinition(re: Float64Array, im: Float64Array): { re: Float64Array; im: Float64Array } {
  const n = re.length;
  const out = { re: new Float64Array(n), im: new Float64Array(n) };
  for (let k = 0; k < n; k++) {
    for (let j = 0; j < n; j++) {
      const angle = (-2 * Math.PI * ((k * j) % n)) / n;
      out.re[k]! += re[j]! * Math.cos(angle) - im[j]! * Math.sin(angle);
      out.im[k]! += re[j]! * Math.sin(angle) + im[j]! * Math.cos(angle);
    }
  }
  return out;
}

describe("the Fourier transform", () => {
  test.each([2, 4, 8, 16, 32, 128, 256, 512, 1024])("agrees with its definition at length %i", (n) => {
    const random = seededRandom(n);
    const re = Float64Array.from({ length: n }, random.normal);
    const im = Float64Array.from({ length: n }, random.normal);
    const wanted = byDefinition(re, im);
    fourier(n).transform(re, im);
    for (let k = 0; k < n; k++) {
      expect(re[k]).toBeCloseTo(wanted.re[k]!, 9);
      expect(im[k]).toBeCloseTo(wanted.im[k]!, 9);
    }
  });

  test("gives one line for one turning wave", () => {
    const re = Float64Array.from({ length: 64 }, (_, i) => Math.cos((2 * Math.PI * 5 * i) / 64));
    const im = Float64Array.from({ length: 64 }, (_, i) => Math.sin((2 * Math.PI * 5 * i) / 64));
    fourier(64).transform(re, im);
    re.forEach((value, k) => {
      expect(value).toBeCloseTo(k === 5 ? 64 : 0, 10);
    });
    for (const value of im) expect(value).toBeCloseTo(0, 10);
  });

  test("refuses a length that is no power of two", () => {
    expect(() => fourier(12)).toThrow(RangeError);
    expect(() => fourier(1)).toThrow(RangeError);
    expect(() => fourier(131072)).toThrow(RangeError);
  });

  test("finds the least length that holds so many values", () => {
    expect([1, 2, 3, 180, 256, 257].map(lengthFor)).toEqual([2, 2, 4, 256, 256, 512]);
    expect(() => lengthFor(65537)).toThrow(RangeError);
  });
});
