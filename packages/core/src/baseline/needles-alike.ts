import type { SizedBike } from "./bike-check.ts";
import type { StandardSetup } from "./known-good.ts";
import { likeness } from "./likeness.ts";

/** A bike must be at least this much alike for its needle to be named. */
const ALIKE = 0.6;

/** Marks of the needles that bikes nearly alike run, each once. */
export function needlesAlike(target: SizedBike, setups: readonly StandardSetup[]): readonly string[] {
  const marks = setups
    .filter(({ features }) => likeness(target, features) >= ALIKE)
    .map(({ good }) => good.situation.setup.needle.part?.marks.trim() ?? "");
  return [...new Set(marks.filter((mark) => mark !== ""))].sort();
}
