import { describe, expect, test } from "vitest";
import { fromMillimetre as mm } from "../units/convert.ts";
import { checkGroove, clipLift, clipText, GROOVE_RULE, readGroove } from "./clip.ts";

const five = { grooves: 5, groovePitch: mm(0.9) };
const four = { grooves: 4, groovePitch: mm(1) };

// Common practice, no source: grooves count 1 at the top to 5 at the bottom; a lower groove lifts the needle.
test("groove 1 is the lowest needle, each groove down lifts it a pitch", () => {
  expect(clipLift(five, 1)).toBe(0);
  expect(clipLift(five, 3)).toBeCloseTo(0.0018, 12);
  expect(clipLift(five, 2.5)).toBeCloseTo(0.00135, 12);
  expect(GROOVE_RULE).toMatch(/1 is the top one.*lower groove.*richer/);
});

describe("as typed", () => {
  test.each([
    ["3", 3],
    ["2.5", 2.5],
    ["2,5", 2.5],
    ["2 1/2", 2.5],
    ["2½", 2.5],
    ["3 of 5", 3],
    ["groove 4", 4],
    ["2nd from top", 2],
    ["second from the top", 2],
    ["2nd from bottom", 4],
    ["2 of 5 from the bottom", 4],
    ["second groove from bottom", 4],
    ["first", 1],
    ["middle", 3],
    ["top", 1],
    ["bottom", 5],
    ["1.5 from bottom", 4.5],
  ])("%s", (typed, want) => {
    expect(readGroove(typed, five)).toEqual({ ok: true, value: want });
  });

  test.each([
    ["0", "groove"],
    ["6", "groove"],
    ["5.5", "groove"],
    ["6 from bottom", "groove"],
    ["3 of 4", "other needle"],
    ["", "not a groove"],
    ["lots", "not a groove"],
    ["2.3", "not a groove"],
    ["-1", "not a groove"],
  ])("%j is refused: %s", (typed, reason) => {
    expect(readGroove(typed, five)).toMatchObject({ ok: false, reason });
  });

  test("no middle on an even needle", () => {
    expect(readGroove("middle", four)).toMatchObject({ ok: false, reason: "not a groove" });
    expect(readGroove("bottom", four)).toEqual({ ok: true, value: 4 });
  });
});

test("grooves in halves, from 1 to the last", () => {
  for (const groove of [1, 1.5, 4.5, 5])
    expect(checkGroove(five, groove)).toEqual({ ok: true, value: groove });
  for (const groove of [0, 0.5, 5.5, 2.25, Number.NaN]) {
    expect(checkGroove(five, groove)).toMatchObject({
      ok: false,
      detail: expect.stringContaining(GROOVE_RULE),
    });
  }
});

test("in words", () => {
  expect(clipText(five, 3)).toBe("clip in groove 3 of 5 from the top");
  expect(clipText(five, 2.5)).toBe("clip in groove 2 of 5 from the top with a half-step shim under it");
  expect(clipText(null, 2)).toBe("clip in groove 2 from the top");
});
