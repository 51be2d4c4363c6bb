import { log } from "../numerics/elementary.ts";
import { FAULTS, type FaultId } from "./catalogue.ts";
import type { Checked } from "./observation.ts";

/** Against a sound engine a fault that was found and mended stands at these odds, however rare it was: repairs fail. Estimate. */
const ODDS_AFTER_MENDING = 0.08;

/** Whoever looks may miss what the look is made for: of a fault that is there no look misses fewer. Estimate. */
const MISSED = 0.1;
/** Looks that came out sound make a fault at most so many times less likely, however many: what one misses the next may miss too. Estimate. */
const MOST_CLEARED = 25;

/** A check that finds a fault at least this often closes it again when it comes out sound. */
const CLEARS = 0.5;

export interface CheckedFaults {
  /** The log odds of a fault against a sound engine from its odds before any check, with what checks and mends say. */
  readonly logOdds: (fault: FaultId, before: number) => number;
  /** Faults known to have been there at a time, because they were mended later. */
  readonly presentAt: (at: number) => readonly FaultId[];
  /** Faults found and not mended yet. */
  readonly open: readonly FaultId[];
}

/** By time; within one record a fault is found before it is mended, and "sound" comes after. */
const byTime = (a: Checked, b: Checked): number => a.at - b.at || (wordsOf(a) < wordsOf(b) ? -1 : 1);

const wordsOf = ({ record, check, found, fault }: Checked): string => [record, check, found, fault].join("|");

/** What mechanical checks say, the latest of each kind counting, nothing from before a mend. Rule B8. */
export function checkedFaults(checks: readonly Checked[]): CheckedFaults {
  const sorted = [...checks].sort(byTime);
  const mendedAt = new Map<FaultId, number>();
  const open = new Set<FaultId>();
  const latest = new Map<string, Checked>();
  for (const check of sorted) {
    if (check.found === "mended") {
      const fault = check.fault ?? onlyFault(check);
      if (fault !== null) {
        mendedAt.set(fault, check.at);
        open.delete(fault);
      }
      latest.delete(check.check);
      continue;
    }
    latest.set(check.check, check);
    const named = check.fault ?? onlyFault(check);
    if (check.found === "faulty" && named !== null) open.add(named);
    if (check.found === "sound")
      for (const fault of FAULTS) if ((check.finds[fault] ?? 0) >= CLEARS) open.delete(fault);
  }
  const presentAt = (at: number): readonly FaultId[] =>
    FAULTS.filter((fault) => (mendedAt.get(fault) ?? -Infinity) > at);
  const weights = new Map<FaultId, number>();
  for (const fault of FAULTS) {
    let found = 0;
    let cleared = 0;
    for (const check of latest.values()) {
      // A fault mended in the very record of the check was there when it was made.
      const present = FAULTS.filter((one) => (mendedAt.get(one) ?? -Infinity) >= check.at);
      const says = log(chanceOf(check, [...present, fault])) - log(chanceOf(check, present));
      if (check.found === "faulty") found += says;
      else cleared += says;
    }
    weights.set(fault, found + Math.max(cleared, -log(MOST_CLEARED)));
  }
  return {
    logOdds: (fault, before) => log(mendedAt.has(fault) ? ODDS_AFTER_MENDING : before) + weights.get(fault)!,
    presentAt,
    open: FAULTS.filter((fault) => open.has(fault)),
  };
}

function onlyFault(check: Checked): FaultId | null {
  const found = FAULTS.filter((fault) => check.finds[fault] !== undefined);
  return found.length === 1 ? found[0]! : null;
}

/** Chance of this check's result with those faults present. */
function chanceOf(check: Checked, present: readonly FaultId[]): number {
  const named = check.found === "faulty" ? check.fault : null;
  let finds = check.falseAlarm;
  for (const fault of present) {
    if (named === null || named === fault) finds = Math.max(finds, check.finds[fault] ?? 0);
  }
  if (check.found === "sound") return Math.max(MISSED, 1 - finds);
  return Math.min(0.999, Math.max(0.001, finds));
}
