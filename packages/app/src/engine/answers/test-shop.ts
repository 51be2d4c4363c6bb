import { english } from "@jetwright/core/words/en";
import demo from "../../../../../demo/shop.jsonl?raw";
import { EngineState } from "../state.ts";

// For tests: shops made from lines, and the example shop.

export function shopOf(lines: readonly (string | object)[]): EngineState {
  const state = new EngineState();
  state.speak(english);
  state.add(lines.map((line) => (typeof line === "string" ? line : JSON.stringify(line))));
  return state;
}

export const linesOf = (text: string): readonly string[] => text.trim().split("\n");

export const DEMO: readonly string[] = linesOf(demo);
