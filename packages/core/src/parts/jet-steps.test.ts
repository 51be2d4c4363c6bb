import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { areaStep, numberForArea, richSideSize, stepsForArea, stepsText, typicalSteps } from "./jet-steps.ts";

const bore = (number: number) => ({ number, numbering: "bore" as const });
const flow = (number: number) => ({ number, numbering: "flow" as const });

test("the number for an area undoes the step in area", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 20, max: 400, noNaN: true }),
      fc.double({ min: 1, max: 20, noNaN: true }),
      fc.constantFrom(bore, flow),
      (number, step, jet) => {
        expect(numberForArea(jet(number), 1 + areaStep(jet(number), step))).toBeCloseTo(number + step, 8);
        expect(stepsForArea(jet(number), 1 + areaStep(jet(number), step), step)).toBeCloseTo(1, 8);
      },
    ),
    { seed: 12, numRuns: 200 },
  );
});

test("area is not number: 4 % more area is 2 % more bore number, 4 % more flow number", () => {
  expect(numberForArea(bore(100), 1.0404)).toBeCloseTo(102, 10);
  expect(numberForArea(flow(100), 1.04)).toBeCloseTo(104, 10);
  expect(stepsForArea(bore(175), 0.97, 2.5)).toBeLessThan(0);
});

test("no jet for an area that cannot be, no step of nothing", () => {
  expect(() => numberForArea(bore(100), 0)).toThrow(RangeError);
  expect(() => numberForArea(bore(100), Number.NaN)).toThrow(RangeError);
  expect(() => numberForArea(bore(100), Infinity)).toThrow(RangeError);
  expect(() => stepsForArea(bore(100), 1.1, 0)).toThrow(RangeError);
  expect(() => typicalSteps(bore(-1), "main")).toThrow(RangeError);
});

test.each([
  [bore(100), "main", 2],
  [bore(130), "main", 2.5],
  [bore(175), "main", 2.5],
  [bore(200), "main", 5],
  [flow(150), "main", 2.5],
  [flow(200), "main", 5],
  [flow(300), "main", 10],
  [bore(45), "pilot", 2],
  [flow(17.5), "pilot", 2.5],
  [flow(35), "pilot", 5],
] as const)("usual step of %o as a %s", (jet, place, step) => {
  expect(typicalSteps(jet, place)[0]).toBe(step);
});

test.each([
  [0, "no change of jet"],
  [0.04, "no change of jet"],
  [0.3, "under half a size up"],
  [-0.45, "under half a size down"],
  [0.6, "about 1/2 size up"],
  [-1.1, "about 1 size down"],
  [1.4, "about 1 1/2 sizes up"],
  [-2.9, "about 3 sizes down"],
])("%f steps: %s", (steps, words) => {
  expect(stepsText(steps)).toBe(words);
});

describe("the next size on the rich side", () => {
  test("never below what is wanted, and the smallest of those", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 90, max: 200, noNaN: true }),
        fc.array(fc.integer({ min: 90, max: 200 }), { maxLength: 12 }),
        (wanted, sizes) => {
          const outcome = richSideSize(wanted, sizes);
          const enough = sizes.filter((size) => size >= wanted - 1e-9);
          if (outcome.ok) expect(outcome.value).toBe(Math.min(...enough));
          else expect(enough).toEqual([]);
        },
      ),
      { seed: 9, numRuns: 300 },
    );
  });

  test("a size met but for rounding is taken", () => {
    expect(richSideSize(175 + 1e-12, [170, 175, 180])).toEqual({ ok: true, value: 175 });
  });

  test("none rich enough is refused with the largest there is", () => {
    expect(richSideSize(181.26, [170, 175, 180])).toMatchObject({
      reason: "none rich enough",
      detail: expect.stringMatching(/181.3 or larger.*largest is 180/),
    });
    expect(richSideSize(181, [])).toMatchObject({ detail: expect.stringMatching(/there is none/) });
  });
});
