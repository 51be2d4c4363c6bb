import type { FaultId } from "../belief/catalogue.ts";
import type { Step } from "./advice.ts";
import { isCalledFor } from "./called-for.ts";
import type { LabourPart } from "./case.ts";
import type { Check } from "./catalogue.ts";
import { changeStep } from "./change-steps.ts";
import { gainRate } from "./change-worth.ts";
import { checkSteps } from "./check-steps.ts";
import { CHECKS, looksFor } from "./checks.ts";
import { holding, leansMost } from "./held-by.ts";
import { TOP } from "./loss.ts";
import { FEEL_RICH } from "./rich-for-other-reasons.ts";
import { lastWarning } from "./stop-step.ts";
import { testSteps } from "./test-steps.ts";
import { TESTS } from "./tests-on-engine.ts";
import { type TopThrottle, topThrottle } from "./top-throttle.ts";
import type { HeldChange } from "./ways.ts";
import type { Weighing } from "./weighing.ts";

/** What makes an engine ping besides the mixture. */
const KNOCK_FAULTS: readonly FaultId[] = ["fuel-or-oil-wrong", "ignition", "cooling", "plug-heat-range"];

/**
 * The step that a waiting change waits for: a look for what else makes it ping or feel rich; else the test of full
 * throttle that tells most; where none is left or full throttle may not be tried, a bigger main jet. Null: none is known.
 * Rule A22.
 */
export function freeingStep(weighing: Weighing, checks: readonly Check[], held: HeldChange): Step | null {
  switch (held.by) {
    case "pinging":
      return knockCheck(weighing, checkSteps(weighing, checks, 0)) ?? null;
    case "other reasons":
      return looksForOtherReasons(weighing, checks)[0] ?? null;
    case "top": {
      const [proof] = testSteps(
        weighing,
        checks,
        TESTS.filter(({ wideOpen }) => wideOpen),
        0,
      );
      // What waits with a main jet of its own has nothing to gain from a bigger one.
      return proof ?? (held.candidate.changes.includes("main") ? null : biggerMain(weighing, held));
    }
  }
}

/** The looks for what else than the jets may feel rich on top, the best one first. Rule A20. */
export function looksForOtherReasons(weighing: Weighing, checks: readonly Check[]): readonly Step[] {
  const looks = checks.filter((check) => FEEL_RICH.some((fault) => looksFor(check, fault)));
  return checkSteps(weighing, looks, 0);
}

/** While pinging was the last word, the first look for another cause that was not made since. Rule A6. */
export function knockCheck({ story }: Weighing, steps: readonly Step[]): Step | undefined {
  const causes = CHECKS.filter(({ finds }) => KNOCK_FAULTS.some((fault) => finds[fault] !== undefined));
  const warned = lastWarning(story);
  const made = story.checks.some(({ check, at }) => at > warned && causes.some(({ id }) => id === check));
  return made ? undefined : steps.find(({ id }) => causes.some((cause) => cause.id === id));
}

const FREEDOM: readonly TopThrottle[] = ["stay below 3/4", "seconds only", "free"];

/** The held change with a bigger main jet that keeps the top where it is; else the bigger main jet that lets it be opened further. */
function biggerMain(weighing: Weighing, { candidate: held }: HeldChange): Step | null {
  const { story, belief, present, candidates } = weighing;
  const holds = holding(weighing);
  const freedom = FREEDOM.indexOf(topThrottle(belief, present.shift));
  const together = new Set<LabourPart>([...held.changes, "main"]);
  const found = candidates
    .filter(({ changes }) => changes.includes("main") && changes.every((part) => together.has(part)))
    .filter((candidate) => holds(candidate) === null);
  const pair = found.find(
    (candidate) =>
      candidate.changes.length === together.size &&
      candidate.trouble < present.trouble &&
      isCalledFor(weighing, candidate),
  );
  // Alone it helps by what it lets be done, so nothing has to call for it by itself.
  const alone = found.find(
    (candidate) =>
      candidate.changes.length === 1 &&
      leansMost(present, candidate, TOP) > 0 &&
      FREEDOM.indexOf(topThrottle(belief, candidate.shift)) > freedom,
  );
  const chosen = story.oneChangeAtATime ? alone : (pair ?? alone);
  if (chosen === undefined) return null;
  return changeStep(weighing, chosen, Math.max(0, gainRate(weighing, chosen)), []);
}
