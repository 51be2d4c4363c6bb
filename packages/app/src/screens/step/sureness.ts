import type { Step } from "@jetwright/core";
import type { Words } from "../../words/en.ts";

/**
 * How sure the step is, in words; null where there is nothing to be sure of: a stop leaves no doubt, and a ride that only
 * learns more, and a looking over, have none. A ride that confirms changes nothing, so it says of what it is sure.
 */
export function surenessText({ kind, id, sure }: Step, words: Words["step"]): string | null {
  if (kind === "stop" || kind === "look-over" || (kind === "ride" && id !== "confirm")) return null;
  const degree = words.sureness[sure.words];
  return id === "confirm" ? words.sureRight(degree) : words.sure(degree);
}
