import { expect, test } from "vitest";
import { readFuelName } from "./fuel-name.ts";

test.each([
  ["E10", 0.1, 0],
  [" e5 ", 0.05, 0],
  ["E 0", 0, 0],
  ["E30", 0.3, 0],
  ["Alkylate", 0, 1],
  ["ethanol  free", 0, 0],
])("%s is read", (typed, ethanol, alkylate) => {
  expect(readFuelName(typed)).toEqual({ ok: true, value: { ethanol, alkylate } });
});

test.each([
  ["E85", "outside the tool"],
  ["E31", "outside the tool"],
  ["methanol", "outside the tool"],
  ["M85", "outside the tool"],
  ["E120", "ethanol"],
  ["98", "ambiguous"],
  ["RON 95", "ambiguous"],
  ["petrol", "ambiguous"],
  ["diesel", "not a fuel"],
  ["", "not a fuel"],
  ["E10 x", "not a fuel"],
])("%s is refused: %s", (typed, reason) => {
  expect(readFuelName(typed)).toMatchObject({ ok: false, reason });
});
