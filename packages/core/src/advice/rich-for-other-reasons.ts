import type { FaultId } from "../belief/catalogue.ts";
import { jetArea } from "../parts/jet.ts";
import type { BikeCase } from "./case.ts";
import { since } from "./complaint.ts";
import type { FaultChances } from "./fault-cost.ts";

/**
 * What makes full throttle feel like too much fuel though the jets are right: it misses, cannot breathe, or has lost its
 * squeeze. A smaller main jet cures none of it, and engines are lost that way. Common practice, no source.
 */
export const FEEL_RICH: readonly FaultId[] = [
  "ignition",
  "air-filter",
  "exhaust-blocked",
  "power-valve",
  "compression",
  "plug-heat-range",
];

/** With more than this chance of one of them the top is not made leaner: they are looked for first. */
const OTHER_REASONS = 0.12;

/**
 * True while something else than the jets may be what makes the top feel rich, too likely to make it leaner. The limit is
 * halved for each smaller main jet that was ridden since the last mend and did not cure it: sizes that cure nothing are a
 * sign of their own. Rule A20.
 */
export function mayBeRichForOtherReasons(story: BikeCase, chances: FaultChances): boolean {
  const chance = FEEL_RICH.reduce((sum, fault) => sum + (chances[fault] ?? 0), 0);
  let limit = OTHER_REASONS;
  for (let tried = smallerMainsRidden(story); tried > 0; tried--) limit /= 2;
  return chance > limit;
}

/** Sizes of main jet ridden since the last mend or fresh start that are smaller than the biggest of them. */
function smallerMainsRidden(story: BikeCase): number {
  const from = since(story);
  const areas = story.rides.flatMap(({ at, situation }) => {
    const main = situation.setup.main.part;
    return at > from && main !== null ? [jetArea(main)] : [];
  });
  const biggest = Math.max(...areas, -Infinity);
  return new Set(areas.filter((area) => area < biggest)).size;
}
