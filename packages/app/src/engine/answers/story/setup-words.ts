import { FITTED_PARTS, type FittedParts } from "@jetwright/records";
import type { StoryWords } from "../../../words/en/story.ts";
import { partWords } from "./part-words.ts";

/** The parts that a rider names, from closed to full. */
const SHORT = ["pilot", "screw", "needle", "clip", "main"] as const;

/** A setup in a few words, for a list to pick from: "pilot jet 42, needle N2K, main jet 175". */
export function setupWords(parts: FittedParts, words: StoryWords): string {
  const short = SHORT.filter((name) => parts[name] !== undefined && parts[name] !== "unknown");
  const named = short.length > 0 ? short : FITTED_PARTS.filter((name) => parts[name] !== undefined);
  return named.map((name) => partWords(name, parts[name], words)).join(", ");
}
