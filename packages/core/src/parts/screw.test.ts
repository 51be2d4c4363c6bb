import { expect, test } from "vitest";
import { outIs, readTurns, screwText } from "./screw.ts";

test.each([
  ["1.5", 1.5],
  ["1,5", 1.5],
  ["1 1/2", 1.5],
  ["1½", 1.5],
  ["2 ¼ turns out", 2.25],
  ["3/4", 0.75],
  ["¾ turn", 0.75],
  ["1 3/8", 1.375],
  ["0", 0],
  ["6 turns", 6],
])("%s", (typed, want) => {
  expect(readTurns(typed)).toEqual({ ok: true, value: want });
});

test.each(["", "out", "turns", "-1", "1/3", "one", "1 2", "1 1/2 1/2"])(
  "%j is no number of turns",
  (typed) => {
    expect(readTurns(typed)).toMatchObject({ ok: false, reason: "not turns" });
  },
);

test("more turns than a screw has", () => {
  expect(readTurns("6.1")).toMatchObject({
    ok: false,
    reason: "turns",
    detail: expect.stringMatching(/6.1 turns/),
  });
  expect(readTurns("15")).toMatchObject({ ok: false, reason: "turns" });
});

// Common practice, no source: air screw out is leaner, fuel screw out is richer.
test("out is leaner on an air screw and richer on a fuel screw", () => {
  expect(outIs("air")).toBe(-1);
  expect(outIs("fuel")).toBe(1);
});

test.each([
  [1.5, "1 1/2 turns"],
  [0.75, "3/4 turn"],
  [2.25, "2 1/4 turns"],
  [0.125, "1/8 turn"],
  [1.375, "1 3/8 turns"],
  [1, "1 turn"],
  [2, "2 turns"],
  [1.3, "1.3 turns"],
  [0, "0 turns"],
])("%f turns", (turnsOut, words) => {
  expect(screwText({ kind: "air", turnsOut })).toBe(`air screw ${words} out`);
});
