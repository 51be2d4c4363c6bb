import { type Advice, nextStep } from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import { bikeCase, type ReplayedCase, readLogText, replay } from "@jetwright/records";

/** A log's case for one bike. Throws when a line of it cannot be used, so that no scenario passes on half its log. */
export function caseFrom(log: string, bike: string): ReplayedCase {
  const { entries, problems } = readLogText(log);
  if (problems.length > 0) throw new Error(problems.map(({ what, mend }) => `${what}: ${mend}`).join("\n"));
  const replayed = bikeCase(replay(entries), bike);
  if (!replayed.ok) throw new Error(replayed.detail);
  return replayed.value;
}

const given = new Map<string, Advice>();

/** The whole way from a log as text to the advice. The same log is worked out once. */
export function adviceFor(log: string, bike: string): Advice {
  const key = `${bike} ${log}`;
  let advice = given.get(key);
  if (advice === undefined) {
    const outcome = nextStep(caseFrom(log, bike), english);
    if (!outcome.ok) throw new Error(outcome.detail);
    advice = outcome.value;
    given.set(key, advice);
  }
  return advice;
}
