import type { AirState } from "../../air/air-state.ts";
import { type Belief, believe } from "../../belief/believe.ts";
import { priorGaussian } from "../../belief/prior.ts";
import { type MixtureReading, mixtureAt } from "../../belief/reading.ts";
import type { MeteringRefusal } from "../../metering/comparable.ts";
import { shiftBetween } from "../../metering/shift.ts";
import type { Situation } from "../../metering/situation.ts";
import { SPOKEN_OPENINGS } from "../../units/opening.ts";
import { accept, type Outcome } from "../../units/outcome.ts";
import type { CoreWords } from "../../words/core-words.ts";
import type { PartChange } from "../advice.ts";
import type { BikeCase } from "../case.ts";
import { evidenceFrom } from "../evidence.ts";
import { LEAN_CHANCE } from "../loss.ts";
import { faultPriorsFor, heldForNow } from "../next-step.ts";
import { partChanges, partMoves } from "../part-stands.ts";
import { type TopThrottle, topThrottle } from "../top-throttle.ts";
import type { Found } from "./best-list.ts";
import { type DrawerSpace, drawerSpace } from "./drawer-space.ts";
import { foundAt } from "./found-at.ts";
import { expectedLoss } from "./loss-table.ts";
import { type PartsFrom, placesFrom } from "./places-from.ts";
import { shiftOfFound } from "./search-drawer.ts";

/** A bike's story with what is believed of it: worked out once, asked for many airs. */
export interface BikeBelief {
  readonly story: BikeCase;
  readonly belief: Belief;
}

export function bikeBelief(told: BikeCase): Outcome<BikeBelief, MeteringRefusal> {
  const usable = shiftBetween(told.now, told.now);
  if (!usable.ok) return usable;
  const story = heldForNow(told);
  const { observations } = evidenceFrom(story);
  const faultPriors = faultPriorsFor(story.engine.strokes);
  return accept({ story, belief: believe({ prior: priorGaussian(), faultPriors, observations }) });
}

export interface BestWanted {
  /** The air it will be ridden in. */
  readonly air: AirState;
  readonly from: PartsFrom;
  /** Only setups that keep full throttle safe. Rule A2. */
  readonly safe: boolean;
  /** Whether the minutes a change takes count beside the trouble. */
  readonly countMinutes: boolean;
}

/** All that could be fitted to a bike, ready to be searched with `searchDrawer`. */
export function drawerOfBike(
  { story, belief }: BikeBelief,
  { air, from, safe, countMinutes }: BestWanted,
): Outcome<DrawerSpace, MeteringRefusal> {
  const now = { ...story.now, air };
  return drawerSpace({
    belief: belief.parts,
    reference: story.reference,
    now,
    places: placesFrom(now, story.drawer, from),
    leanChance: safe ? LEAN_CHANCE : 1,
    countMinutes,
    minutes: story.minutes,
  });
}

/** A setup of the list, for people. */
export interface BestSetup {
  readonly situation: Situation;
  /** What to change, as a heading: "Main jet 175 to 180"; empty for what is fitted. */
  readonly title: string;
  readonly changes: readonly PartChange[];
  /** The mixture with it at the openings people speak of. */
  readonly mixture: readonly MixtureReading[];
  readonly top: TopThrottle;
  /** Minutes of trouble expected, and minutes to fit and prove it. */
  readonly trouble: number;
  readonly minutes: number;
}

export function bestSetupOf(
  { story, belief }: BikeBelief,
  space: DrawerSpace,
  found: Found,
  words: CoreWords,
): BestSetup {
  const { places, now } = space;
  const chosen = [
    places.needles[found.needle]!,
    places.mains[found.main]!,
    places.slides[found.slide]!,
    places.pilots[found.pilot]!,
    places.screws[found.screw]!,
  ];
  const situation = { ...now, setup: chosen.reduce((setup, option) => option.fit(setup), now.setup) };
  const shift = shiftBetween(story.reference, situation);
  if (!shift.ok) throw new RangeError(`A setup of the list cannot be compared: ${shift.detail}`);
  const change = {
    situation,
    changes: chosen.flatMap((option) => option.changes),
    toBuy: chosen.flatMap((option) => option.toBuy),
  };
  return {
    situation,
    title: words.parts.change(partMoves(now, change)),
    changes: partChanges(now, change, words),
    mixture: SPOKEN_OPENINGS.map((opening) => mixtureAt(belief, shift.value, opening)),
    top: topThrottle(belief, shift.value),
    trouble: found.trouble,
    minutes: found.minutes,
  };
}

/** What is fitted now, as an entry of the list: the first option of each place. */
export function presentIn(space: DrawerSpace): Found {
  const present = foundAt(space, 0, 0, 0, 0);
  const trouble = expectedLoss(space.loss, shiftOfFound(space, present));
  return foundAt(space, 0, 0, 0, trouble);
}
