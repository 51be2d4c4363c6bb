import { accept, type Outcome, refuse } from "@jetwright/core";
import type { Entry } from "./entry.ts";
import { readLine } from "./read-line.ts";

const NO_KNOWLEDGE = {
  kinds: new Map(),
  words: { signs: null, tests: null, checks: null, faults: null },
};

/**
 * One line of a log as far as its id, kind and time, without a look into the body: for who carries records
 * that may be of kinds it does not know. What cannot be kept at all (no JSON, no id, too deep, too long) is refused.
 */
export function readBareRecord(text: string): Outcome<Entry, "not-a-record"> {
  const read = readLine(text, null, NO_KNOWLEDGE);
  if (read === null) return refuse("not-a-record", "The line is empty: leave it out.");
  if (read.entry !== null) return accept(read.entry);
  const [flaw] = read.flaws;
  return refuse(
    "not-a-record",
    flaw === undefined
      ? "is not a record"
      : `${flaw.path === "" ? "The line" : flaw.path} ${flaw.what}. ${flaw.mend}`,
  );
}
