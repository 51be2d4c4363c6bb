import { openingName, type Sign, SPOKEN_OPENINGS, signById } from "@jetwright/core";
import { describe, expect, test } from "vitest";
import {
  ASKED_OPENINGS,
  CHOKE_ANSWERS,
  REPORT_OPENINGS,
  signChoices,
  WARNING_SIGNS,
} from "./sign-choices.ts";

const SIGN_OF = (id: string): Sign => {
  const sign = signById(id);
  if (sign === undefined) throw new RangeError(`"${id}" is not in the catalogue`);
  return sign;
};

// Clearly likelier on one side than with the mixture right or on the other side.
const speaksForLean = ({ healthy, chance }: Sign) =>
  !healthy && chance.lean >= 2 * chance.rich && chance.lean >= 1.5 * chance.right;
const speaksForRich = ({ healthy, chance }: Sign) =>
  !healthy && chance.rich >= 2 * chance.lean && chance.rich >= 1.5 * chance.right;

describe("the openings asked about", () => {
  test("are the spoken ones, three quarters being the one that may be left out", () => {
    expect(REPORT_OPENINGS).toEqual(SPOKEN_OPENINGS.map(openingName));
    expect(ASKED_OPENINGS).toEqual(["closed", "1/8", "1/4", "1/2", "full"]);
  });
});

describe.each([2, 4] as const)("the choices of a %i-stroke", (strokes) => {
  test.each(REPORT_OPENINGS)("at %s exist, once each, and fit the engine", (opening) => {
    const ids = signChoices(opening, strokes);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids.length).toBeGreaterThanOrEqual(4);
    expect(ids.length).toBeLessThanOrEqual(5);
    for (const id of ids) expect(["both", strokes === 2 ? "two" : "four"]).toContain(SIGN_OF(id).strokes);
  });

  test.each(REPORT_OPENINGS)("at %s hold health first, then too much and too little fuel", (opening) => {
    const signs = signChoices(opening, strokes).map(SIGN_OF);
    expect(signs[0]!.healthy).toBe(true);
    expect(signs.slice(1).some(({ healthy }) => healthy)).toBe(false);
    expect(signs.some(speaksForLean)).toBe(true);
    expect(signs.some(speaksForRich)).toBe(true);
  });

  test.each(REPORT_OPENINGS)("at %s come from at least two groups", (opening) => {
    const groups = signChoices(opening, strokes).map((id) => SIGN_OF(id).group);
    expect(new Set(groups).size).toBeGreaterThanOrEqual(2);
  });
});

test("an engine nobody described is asked nothing that only one kind of engine does", () => {
  for (const opening of REPORT_OPENINGS) {
    const ids = signChoices(opening, null);
    expect(ids.length).toBeGreaterThanOrEqual(3);
    for (const id of ids) expect(SIGN_OF(id).strokes).toBe("both");
  }
});

test("a touch of choke that helps speaks for too little fuel, one that harms does not", () => {
  expect(speaksForLean(SIGN_OF(CHOKE_ANSWERS.better))).toBe(true);
  const worse = SIGN_OF(CHOKE_ANSWERS.worse).chance;
  expect(worse.rich).toBeGreaterThan(5 * worse.lean);
  expect(SIGN_OF(CHOKE_ANSWERS.same).group).toBe(SIGN_OF(CHOKE_ANSWERS.worse).group);
});

test("the warning signs exist and are no stop signs", () => {
  for (const id of WARNING_SIGNS) expect(SIGN_OF(id).stop).toBe(false);
});
