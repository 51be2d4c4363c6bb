import { FAULTS, type FaultId } from "../belief/catalogue.ts";
import type { Check } from "./catalogue.ts";

/**
 * Minutes that a fault costs when nobody looks for it: jets changed for nothing, rides, and for some an
 * engine. Estimate.
 */
const STAKE = 180;
const HIGHER_STAKE: Partial<Readonly<Record<FaultId, number>>> = {
  "air-leak": 300,
  "slide-or-cable": 300,
  "fuel-supply": 260,
  cooling: 260,
  "loose-head": 240,
  "fuel-or-oil-wrong": 220,
};

export const stakeOf = (fault: FaultId): number => HIGHER_STAKE[fault] ?? STAKE;

export type FaultChances = Partial<Readonly<Record<FaultId, number>>>;

/** What a check is worth now, in minutes saved: the chance that it finds each fault times what that fault costs. */
export function checkGain(check: Check, chances: FaultChances): number {
  let gain = 0;
  for (const fault of FAULTS) gain += (chances[fault] ?? 0) * (check.finds[fault] ?? 0) * stakeOf(fault);
  return gain;
}

/** Checks in the order of what they are worth per minute. Kadane and Simon (1977) [memory]: probability over cost. */
export function checksByWorth(checks: readonly Check[], chances: FaultChances): readonly Check[] {
  const rate = (check: Check): number => checkGain(check, chances) / check.minutes;
  return [...checks].sort((a, b) => rate(b) - rate(a) || (a.id < b.id ? -1 : 1));
}

/**
 * Expected minutes that faults still cost: looking for them in the best order while that pays, stopping at the
 * find, and what is never found at its stake. For checks of different faults the order is the best there is
 * (Kadane and Simon 1977); where checks overlap it is near it.
 */
export function faultCost(checks: readonly Check[], chances: FaultChances): number {
  const left = new Map<FaultId, number>();
  for (const fault of FAULTS) if ((chances[fault] ?? 0) > 0) left.set(fault, chances[fault]!);
  const undone = new Set(checks);
  let cost = 0;
  let stillLooking = 1;
  for (;;) {
    let best: Check | null = null;
    let bestRate = stillLooking;
    for (const check of undone) {
      let gain = 0;
      for (const [fault, chance] of left) gain += chance * (check.finds[fault] ?? 0) * stakeOf(fault);
      const rate = gain / check.minutes;
      if (rate > bestRate) {
        best = check;
        bestRate = rate;
      }
    }
    if (best === null) break;
    undone.delete(best);
    cost += best.minutes * stillLooking;
    for (const [fault, chance] of left) {
      const found = chance * (best.finds[fault] ?? 0);
      left.set(fault, chance - found);
      stillLooking -= found;
    }
  }
  for (const [fault, chance] of left) cost += chance * stakeOf(fault);
  return cost;
}
