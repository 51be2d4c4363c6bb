import { expect, test } from "vitest";
import { surenessOf } from "./advice.ts";

test("[A11] how sure, in words: each word from its own chance up", () => {
  const words = (chance: number) => surenessOf(chance).words;
  expect([1, 0.9].map(words)).toEqual(["very likely", "very likely"]);
  expect([0.8999, 0.75].map(words)).toEqual(["likely", "likely"]);
  expect([0.7499, 0.6].map(words)).toEqual(["more likely than not", "more likely than not"]);
  expect([0.5999, 0].map(words)).toEqual(["not sure", "not sure"]);
  expect(surenessOf(0.42).chance).toBe(0.42);
});
