import { OPENINGS } from "@jetwright/core";
import { describe, expect, test } from "vitest";
import { OPENING_WORDS, openingOf } from "./spoken-opening.ts";

describe("[R4] openings", () => {
  test("every word is its own opening", () => {
    expect(OPENING_WORDS).toEqual([
      "closed",
      "1/16",
      "1/8",
      "3/16",
      "1/4",
      "3/8",
      "1/2",
      "5/8",
      "3/4",
      "7/8",
      "full",
    ]);
    expect(OPENING_WORDS.map(openingOf)).toEqual([...OPENINGS]);
  });
  test("a fraction goes to the nearest opening", () => {
    expect([0, 0.03, 0.032, 0.33, 0.5, 0.93, 0.95, 1].map(openingOf)).toEqual([
      0,
      0,
      1 / 16,
      3 / 8,
      0.5,
      7 / 8,
      1,
      1,
    ]);
  });
  test("what is no opening is a bug of ours", () => {
    expect(() => openingOf("half")).toThrow("half");
    expect(() => openingOf(1.01)).toThrow("1.01");
    expect(() => openingOf(-0.01)).toThrow("-0.01");
    expect(() => openingOf(Number.NaN)).toThrow("NaN");
  });
});
