import { expect, test } from "vitest";
import { typedJets, typedRow } from "./typed-numbers.ts";

test("numbers with a space between, x2 for two, comma or point, a hash before", () => {
  expect(typedJets("165 170 175x2")).toEqual([
    { number: 165, count: 1 },
    { number: 170, count: 1 },
    { number: 175, count: 2 },
  ]);
  expect(typedJets("17,5 17.5×3 #42")).toEqual([
    { number: 17.5, count: 1 },
    { number: 17.5, count: 3 },
    { number: 42, count: 1 },
  ]);
});

test("anything that is no jet number refuses the whole row, and so does nothing", () => {
  for (const typed of ["", "  ", "abc", "165 x", "0", "4000", "165 170x0", "-3"])
    expect(typedJets(typed)).toBeNull();
});

test("a row of figures is read one by one", () => {
  const metres = (word: string) => (/^\d+$/.test(word) ? Number(word) : null);
  expect(typedRow("0 500 1000", metres)).toEqual([0, 500, 1000]);
  expect(typedRow("0 hill", metres)).toBeNull();
  expect(typedRow(" ", metres)).toBeNull();
});
