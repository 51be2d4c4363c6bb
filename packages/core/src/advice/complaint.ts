import { stretchCentre } from "../belief/state.ts";
import { OPENINGS } from "../units/opening.ts";
import type { Opening } from "../units/quantity.ts";
import { situationKey } from "./situation-key.ts";
import { type Band, bandOf } from "./stretch-words.ts";
import type { Weighing } from "./weighing.ts";

/** The band a stretch lies in, by its mean opening. */
export function bandOfStretch(stretch: readonly number[]): Band {
  const centre = stretchCentre(stretch);
  const nearest = OPENINGS.reduce((best, opening) =>
    Math.abs(opening - centre) < Math.abs(best - centre) ? opening : best,
  );
  return bandOf(nearest as Opening);
}

/** The bands where trouble was noticed with the setup and air of now. */
export function complaints({ story, belief }: Weighing): ReadonlySet<Band> {
  const here = situationKey(story.now);
  const bands = new Set<Band>();
  for (const { observation } of belief.sites) {
    if (observation.kind !== "sign" || observation.situation !== here) continue;
    if (observation.seen !== observation.sign.healthy) bands.add(bandOfStretch(observation.stretch));
  }
  return bands;
}
