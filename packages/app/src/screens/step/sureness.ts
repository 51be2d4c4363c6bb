import type { Step } from "@jetwright/core";
import type { Words } from "../../words/en.ts";

/**
 * How sure, and of what: that a look is for the right thing, that a change goes the right way, that a confirming ride finds
 * all well. Null where nothing is claimed: a stop leaves no doubt, and a test, a looking over, a reading or a ride only learns
 * more.
 */
export function surenessText({ kind, id, sure }: Step, words: Words["step"]): string | null {
  const degree = words.sureness[sure.words];
  switch (kind) {
    case "check":
    case "mend":
      return words.sureItIsThis(degree);
    case "change":
      return words.sureItHelps(degree);
    case "ride":
      return id === "confirm" ? words.sureRight(degree) : null;
    default:
      return null;
  }
}
