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
  const left = FAULTS.map((fault) => chances[fault] ?? 0);
  const finds = findsOf(checks);
  const done = checks.map(() => false);
  let cost = 0;
  let stillLooking = 1;
  for (;;) {
    let best = -1;
    let bestRate = stillLooking;
    for (let c = 0; c < checks.length; c++) {
      if (done[c]) continue;
      let gain = 0;
      for (const { fault, chance, stake } of finds[c]!) gain += left[fault]! * chance * stake;
      const rate = gain / checks[c]!.minutes;
      if (rate > bestRate) {
        best = c;
        bestRate = rate;
      }
    }
    if (best < 0) break;
    done[best] = true;
    cost += checks[best]!.minutes * stillLooking;
    for (const { fault, chance } of finds[best]!) {
      const found = left[fault]! * chance;
      left[fault] = left[fault]! - found;
      stillLooking -= found;
    }
  }
  for (let f = 0; f < FAULTS.length; f++) cost += left[f]! * stakeOf(FAULTS[f]!);
  return cost;
}

interface Find {
  /** Index among FAULTS. */
  readonly fault: number;
  readonly chance: number;
  readonly stake: number;
}

const knownFinds = new WeakMap<readonly Check[], readonly (readonly Find[])[]>();

/** What each check finds, as numbers ready to add up; remembered for a list of checks. */
function findsOf(checks: readonly Check[]): readonly (readonly Find[])[] {
  const remembered = knownFinds.get(checks);
  if (remembered !== undefined) return remembered;
  const made = checks.map(({ finds }) =>
    FAULTS.flatMap((id, fault): Find[] => {
      const chance = finds[id];
      return chance === undefined ? [] : [{ fault, chance, stake: stakeOf(id) }];
    }),
  );
  knownFinds.set(checks, made);
  return made;
}
