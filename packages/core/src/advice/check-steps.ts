import type { FaultId } from "../belief/catalogue.ts";
import { FAULTS } from "../belief/catalogue.ts";
import { type Step, surenessOf } from "./advice.ts";
import type { BikeCase, CheckResult } from "./case.ts";
import type { Check } from "./catalogue.ts";
import { checkById } from "./checks.ts";
import { checkGain, checksByWorth } from "./fault-cost.ts";
import { faultFound } from "./fault-found.ts";
import { reasonsForFault } from "./reasons.ts";
import { topThrottle } from "./top-throttle.ts";
import type { Weighing } from "./weighing.ts";

/** Checks shown as other ways. */
const MOST = 4;
/** A check is not asked for while its likeliest find is less likely than this. */
const LEAST_SUSPICION = 0.02;

/**
 * The checks worth most per minute, as steps. Not one whose last answer was "sound", nor one for a fault that is found already.
 * @param least a check is left out whose likeliest find is less likely than this
 */
export function checkSteps(
  weighing: Weighing,
  checks: readonly Check[],
  least = LEAST_SUSPICION,
): readonly Step[] {
  const { chances, story, belief } = weighing;
  const open = checks.filter(
    (check) =>
      lastAnswer(story, check.id)?.found !== "sound" &&
      !belief.openFaults.includes(likeliest(check, chances)) &&
      suspicion(check, chances) >= least,
  );
  return checksByWorth(open, chances)
    .slice(0, MOST)
    .map((check) => checkStep(weighing, check));
}

/** The last result of a check; a mend or a fresh start after it makes it void. */
export function lastAnswer({ checks, freshStartAt }: BikeCase, id: string): CheckResult | undefined {
  const valid = checks.filter(({ check, at }) => check === id && at >= (freshStartAt ?? -Infinity));
  return valid.reduce<CheckResult | undefined>(
    (last, each) => (last === undefined || speaksAfter(each, last) ? each : last),
    undefined,
  );
}

/** By time; of one moment "sound" comes last, as in the belief. */
const speaksAfter = (a: CheckResult, b: CheckResult): boolean =>
  a.at > b.at || (a.at === b.at && a.found === "sound");

function checkStep(weighing: Weighing, check: Check): Step {
  const { chances, belief, present, words } = weighing;
  const { words: title, steps: how, tools, mend } = words.checks[check.id];
  const say = words.steps.check;
  const fault = likeliest(check, chances);
  const gain = checkGain(check, chances);
  const chance = chances[fault] ?? 0;
  const suspect = words.faults[fault].words;
  return {
    kind: "check",
    id: check.id,
    title,
    how,
    tools,
    why: reasonsForFault(weighing, fault),
    expect: say.expect(suspect, tenths(check.finds[fault] ?? 0), mend),
    wrongIf: say.wrongIf(suspect),
    undo: say.undo,
    sure: surenessOf(chance),
    minutes: check.minutes,
    worth: gain / check.minutes,
    cautions: check.cautions,
    changes: [],
    situation: null,
    opening: null,
    topThrottle: topThrottle(belief, present.shift),
    notes: [],
  };
}

const tenths = (chance: number): number => Math.min(9, Math.max(1, Math.round(chance * 10)));

const suspicion = (check: Check, chances: Weighing["chances"]): number => {
  const fault = likeliest(check, chances);
  return (chances[fault] ?? 0) * (check.finds[fault] ?? 0);
};

function likeliest(check: Check, chances: Weighing["chances"]): FaultId {
  const faults = FAULTS.filter((fault) => check.finds[fault] !== undefined);
  return faults.reduce((best, fault) =>
    (chances[fault] ?? 0) * check.finds[fault]! > (chances[best] ?? 0) * check.finds[best]! ? fault : best,
  );
}

/** A fault that was found and not mended comes before everything else but a stop. Rule A4. */
export function mendSteps(weighing: Weighing): readonly Step[] {
  const { words } = weighing;
  const say = words.steps.mend;
  return weighing.belief.openFaults.map((fault) => {
    // A fault is open because a check of the catalogue found it.
    const { record, check: id } = lastFinding(weighing.story, fault)!;
    const check = checkById(id)!;
    const { words: name, tools, mend } = words.checks[check.id];
    return {
      kind: "mend",
      id: fault,
      title: say.title(words.faults[fault].words),
      how: [mend],
      tools,
      why: [{ record, text: words.reasons.foundFaulty(name) }],
      expect: say.expect,
      wrongIf: say.wrongIf,
      undo: say.undo,
      sure: surenessOf(0.95),
      minutes: check.minutes,
      worth: Infinity,
      cautions: [...new Set([...check.cautions, "hand-over" as const])],
      changes: [],
      situation: null,
      opening: null,
      topThrottle: "stay below 3/4",
      notes: [say.note],
    };
  });
}

/** The last check that found that fault; of one moment the one with the last name. */
const lastFinding = ({ checks, freshStartAt }: BikeCase, fault: FaultId): CheckResult | undefined =>
  checks
    .filter((each) => each.found === "faulty" && each.at >= (freshStartAt ?? -Infinity))
    .filter((each) => faultFound(each) === fault)
    .sort((a, b) => b.at - a.at || (a.record < b.record ? 1 : -1))[0];
