import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { EngineState } from "./state.ts";

test("the example shop is read without a problem, and every bike in it is there", () => {
  const lines = readFileSync(join(import.meta.dirname, "../../../../demo/shop.jsonl"), "utf8")
    .trimEnd()
    .split("\n");
  const state = new EngineState();
  state.add(lines.slice(0, 50));
  state.add(lines.slice(50));
  expect(state.log.problems).toEqual([]);
  expect(state.shop.problems).toEqual([]);
  expect(state.log.counts.used).toBe(lines.length);
  expect(state.shop.bikes.size).toBe(8);
});
