import { describe, expect, test } from "vitest";
import { closing, flatOut, idle, stretch } from "./stretch.ts";

describe("stretch", () => {
  test("turns sixteenths into weights", () => {
    expect(stretch([0, 12], [1 / 4, 4])).toEqual([
      [0, 0.75],
      [0.25, 0.25],
    ]);
  });
  test("refuses weights that do not sum to sixteen sixteenths", () => {
    expect(() => stretch([0, 15])).toThrow(/15 sixteenths/);
    expect(() => stretch([0, 9], [1, 8])).toThrow(RangeError);
  });
  test("refuses an opening that is not held", () => {
    expect(() => stretch([0.3, 16])).toThrow(/0.3 is not one of the openings/);
  });
  test("idle and closing weigh most at closed, flat out at full", () => {
    expect(idle[0]).toEqual([0, 0.625]);
    expect(closing[0]).toEqual([0, 0.5]);
    expect(flatOut.at(-1)).toEqual([1, 0.75]);
  });
});
