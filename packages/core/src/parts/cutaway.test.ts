import { expect, test } from "vitest";
import { toMillimetre } from "../units/convert.ts";
import { CUTAWAY_RULE, cutawayText, readCutaway } from "./cutaway.ts";

test.each([
  ["3.5", 3.5],
  ["3,5 mm", 3.5],
  ["#3", 3],
  ["35", 3.5],
  ["70", 7],
  ["10", 1],
  ["9", 9],
  ["0.5", 0.5],
])("%s", (typed, want) => {
  const outcome = readCutaway(typed);
  expect(outcome.ok && toMillimetre(outcome.value)).toBeCloseTo(want, 12);
});

test.each(["", "x", "35 mm", "0", "0.4", "95", "-3", "350", "3.5.1"])("%j is refused", (typed) => {
  expect(readCutaway(typed)).toMatchObject({ ok: false, reason: "cutaway" });
});

test("in words", () => {
  const outcome = readCutaway("3.5");
  expect(outcome.ok && cutawayText(outcome.value)).toBe("slide with 3.5 mm cutaway");
  expect(CUTAWAY_RULE).toMatch(/higher one is leaner/);
});
