import { log } from "../numerics/elementary.ts";
import { FAULTS, type FaultId } from "./catalogue.ts";
import type { Checked } from "./observation.ts";

/** A fault that was mended has this much of its prior left: repairs fail too. Estimate. */
const LEFT_AFTER_MENDING = 0.15;

export interface CheckedFaults {
  /** What the checks add to the log odds of each hypothesis, against a sound engine. */
  readonly logWeight: (fault: FaultId) => number;
  /** Faults known to have been there at a time, because they were mended later. */
  readonly presentAt: (at: number) => readonly FaultId[];
  /** Faults found and not mended yet. */
  readonly open: readonly FaultId[];
}

const byTime = (a: Checked, b: Checked): number => a.at - b.at || (a.record < b.record ? -1 : 1);

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
      for (const fault of FAULTS) if (check.finds[fault] !== undefined) open.delete(fault);
  }
  const weights = new Map<FaultId, number>();
  for (const fault of FAULTS) {
    let weight = mendedAt.has(fault) ? log(LEFT_AFTER_MENDING) : 0;
    for (const check of latest.values()) {
      if ((mendedAt.get(fault) ?? -Infinity) >= check.at) continue;
      weight += log(chanceOf(check, fault)) - log(chanceOf(check, null));
    }
    weights.set(fault, weight);
  }
  return {
    logWeight: (fault) => weights.get(fault) ?? 0,
    presentAt: (at) => FAULTS.filter((fault) => (mendedAt.get(fault) ?? -Infinity) > at),
    open: FAULTS.filter((fault) => open.has(fault)),
  };
}

function onlyFault(check: Checked): FaultId | null {
  const found = FAULTS.filter((fault) => check.finds[fault] !== undefined);
  return found.length === 1 ? found[0]! : null;
}

/** Chance of this check's result when that fault (or none) is present. */
function chanceOf(check: Checked, fault: FaultId | null): number {
  const finds = fault === null ? undefined : check.finds[fault];
  const named = check.fault === null || check.fault === fault;
  const faulty = finds !== undefined && named ? Math.max(finds, check.falseAlarm) : check.falseAlarm;
  const found = Math.min(0.999, Math.max(0.001, faulty));
  return check.found === "faulty"
    ? found
    : 1 - Math.min(0.999, Math.max(check.falseAlarm, finds ?? check.falseAlarm));
}
