import { believe } from "../belief/believe.ts";
import { type MixtureReading, mixtureAt } from "../belief/reading.ts";
import { shiftBetween } from "../metering/shift.ts";
import type { Situation } from "../metering/situation.ts";
import type { Opening } from "../units/quantity.ts";
import type { BikeCase } from "./case.ts";
import { evidenceFrom } from "./evidence.ts";
import { faultPriorsFor, heldForNow } from "./next-step.ts";
import { priorFor } from "./prior-for.ts";

/**
 * The mixture of a bike under several situations, such as those of its rides, as everything told up to now lets it
 * be seen: one list for each situation, a reading for each opening. Null where a situation cannot be compared with
 * the setup the belief is held for. Errors are ln ratios, above 0 rich, with their spread.
 */
export function mixtureOver(
  told: BikeCase,
  situations: readonly Situation[],
  openings: readonly Opening[],
): readonly (readonly MixtureReading[] | null)[] {
  if (!shiftBetween(told.now, told.now).ok) return situations.map(() => null);
  const story = heldForNow(told);
  const { observations } = evidenceFrom(story);
  const belief = believe({
    prior: priorFor(story.reference),
    faultPriors: faultPriorsFor(story.engine.strokes),
    observations,
  });
  return situations.map((situation) => {
    const shift = shiftBetween(story.reference, situation);
    return shift.ok ? openings.map((opening) => mixtureAt(belief, shift.value, opening)) : null;
  });
}
