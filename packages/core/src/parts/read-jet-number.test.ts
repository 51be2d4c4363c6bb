import fc from "fast-check";
import { expect, test } from "vitest";
import { readJetNumber } from "./read-jet-number.ts";

test.each([
  ["175", 175],
  ["17.5", 17.5],
  ["17,5", 17.5],
  ["#42", 42],
  ["No. 42", 42],
  ["nr 45", 45],
  [" 122.5 ", 122.5],
  ["8", 8],
  ["900", 900],
])("%s", (typed, want) => {
  expect(readJetNumber(typed)).toEqual({ ok: true, value: want });
});

test.each(["", "abc", "1O5", "175-178", "17.5.2", "-42", "MJ175", "175 mm", "1e2", "17.555"])(
  "%j is no number",
  (typed) => {
    expect(readJetNumber(typed)).toMatchObject({ ok: false, reason: "not a number" });
  },
);

test("a size no jet has is asked about", () => {
  expect(readJetNumber("1.75")).toMatchObject({
    reason: "not a jet size",
    detail: expect.stringMatching(/type 175/),
  });
  expect(readJetNumber("0")).toMatchObject({
    reason: "not a jet size",
    detail: expect.stringMatching(/lens/),
  });
  expect(readJetNumber("7.9")).toMatchObject({ reason: "not a jet size" });
  expect(readJetNumber("901")).toMatchObject({ reason: "not a jet size" });
});

test("whatever is typed, it answers", () => {
  fc.assert(
    fc.property(fc.string({ unit: "grapheme", maxLength: 12 }), (typed) => {
      const outcome = readJetNumber(typed);
      if (outcome.ok) expect(outcome.value).toBeGreaterThanOrEqual(8);
      else expect(outcome.detail).not.toBe("");
    }),
    { seed: 8, numRuns: 500 },
  );
});
