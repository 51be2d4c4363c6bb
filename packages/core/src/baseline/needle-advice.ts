import type { SizedBike } from "./bike-check.ts";
import type { StandardSetup } from "./known-good.ts";
import { likeness } from "./likeness.ts";

/** A bike must be at least this much alike for its needle to be named. */
const ALIKE = 0.6;

/** Which needle to start with: the one in the body, unless bikes nearly alike all run another. */
export function needleAdvice(target: SizedBike, setups: readonly StandardSetup[]): string {
  const keep =
    "Keep the needle and needle jet that are in it; write down their marks, and measure a worn one.";
  const marks = setups
    .filter(({ features }) => likeness(target, features) >= ALIKE)
    .map(({ good }) => good.situation.setup.needle.part?.marks.trim() ?? "")
    .filter((mark) => mark !== "");
  if (marks.length === 0) return keep;
  const different = [...new Set(marks)].sort();
  return `${keep} Bikes nearly alike in this shop run ${different.length === 1 ? "needle" : "needles"} ${different.join(", ")}.`;
}
