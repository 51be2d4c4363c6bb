import demo from "../../../../../demo/shop.jsonl?raw";
import everyKind from "../../../../records/fixtures/version-1/every-kind.jsonl?raw";
import { EngineState } from "../state.ts";

// For tests: shops made from lines, and the example shop.

export function shopOf(lines: readonly (string | object)[]): EngineState {
  const state = new EngineState();
  state.add(lines.map((line) => (typeof line === "string" ? line : JSON.stringify(line))));
  return state;
}

export const DEMO: readonly string[] = demo.trim().split("\n");
export const EVERY_KIND: readonly string[] = everyKind.trim().split("\n");
