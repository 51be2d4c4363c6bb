import type { PartName } from "../truth/bike.ts";

export const RIDE_MINUTES = 15;

/** Minutes at the bench; the second part behind the same cover is quick. Estimates. */
const MINUTES: Readonly<Record<PartName, number>> = {
  turns: 2,
  groove: 15,
  main: 15,
  pilot: 25,
  cutaway: 30,
  needleJet: 40,
};

export function labour(changes: readonly PartName[]): number {
  const sorted = changes.map((name) => MINUTES[name]).sort((a, b) => b - a);
  return sorted.reduce((sum, minutes, i) => sum + (i === 0 ? minutes : Math.min(minutes, 6)), 0);
}
