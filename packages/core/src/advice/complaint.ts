import { stretchCentre } from "../belief/state.ts";
import { OPENINGS } from "../units/opening.ts";
import type { Opening } from "../units/quantity.ts";
import type { BikeCase } from "./case.ts";
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

/** Evidence from before this counts for no complaint: a fresh start, or the last mend. */
export const since = ({ freshStartAt, checks }: BikeCase): number =>
  Math.max(
    freshStartAt ?? -Infinity,
    ...checks.filter(({ found }) => found === "mended").map(({ at }) => at),
  );

/** What was noticed with the setup and air of now, since the last mend: by band, trouble and signs of health. */
export interface Noticed {
  readonly trouble: ReadonlySet<Band>;
  readonly health: ReadonlySet<Band>;
}

export function noticedNow({ story, belief }: Pick<Weighing, "story" | "belief">): Noticed {
  const here = situationKey(story.now);
  const from = since(story);
  const trouble = new Set<Band>();
  const health = new Set<Band>();
  for (const { observation } of belief.sites) {
    if (observation.kind !== "sign" || observation.situation !== here || observation.at <= from) continue;
    const band = bandOfStretch(observation.stretch);
    if (observation.seen !== observation.sign.healthy) trouble.add(band);
    else health.add(band);
  }
  return { trouble, health };
}

/** Nothing to complain of, and health noticed at the bottom, in the middle and at the top. */
export const allIsWell = ({ trouble, health }: Noticed): boolean =>
  trouble.size === 0 && health.size === BANDS;
const BANDS = 3;
