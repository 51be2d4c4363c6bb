import type { MixtureMeasurement, Ride, Situation, TestResult } from "@jetwright/core";
import { openingOf } from "../spoken-opening.ts";
import type { CaseWarnings } from "./case-warning.ts";
import { mixtureError } from "./mixture-error.ts";
import type { FittedSetup } from "./setup-timeline.ts";
import type { BikeStory, Placed } from "./shop-state.ts";
import type { Situations } from "./situations.ts";

type PlacedRide = Placed<"ride-reported">;

/** The last ride before a place in the story that fits. */
function lastRide(
  rides: readonly PlacedRide[],
  before: number,
  fits: (ride: PlacedRide) => boolean,
): PlacedRide | null {
  for (let i = before - 1; i >= 0; i--) if (fits(rides[i]!)) return rides[i]!;
  return null;
}

/** The situation a ride is compared with: the named record's, or that of the last setup ridden before. */
function comparedWith(
  index: number,
  story: BikeStory,
  situations: Situations,
  warnings: CaseWarnings,
): Situation | null {
  const { entry, moment } = story.rides[index]!;
  const named = entry.body.against?.record;
  const ridden = (fits: (ride: PlacedRide) => boolean): Situation | null => {
    const ride = lastRide(story.rides, index, fits);
    return ride === null ? null : situations.at(ride.moment, ride.entry.at);
  };
  const notRidden = (setup: FittedSetup): Situation =>
    situations.of(situations.setup(setup), situations.air(moment, entry.at), situations.fuel(moment));

  if (named === undefined) {
    const before = ridden((ride) => ride.moment.setup !== moment.setup);
    if (before !== null) return before;
    const previous = story.setups[story.setups.indexOf(moment.setup) - 1];
    if (previous?.record != null) return notRidden(previous);
    warnings.add({ code: "nothing-to-compare" }, entry.id);
    return null;
  }
  const placed = [...story.rides, ...story.tests].find((one) => one.entry.id === named);
  if (placed !== undefined) return situations.at(placed.moment, placed.entry.at);
  const setup = story.setups.find((one) => one.record === named);
  if (setup !== undefined) return ridden((ride) => ride.moment.setup === setup) ?? notRidden(setup);
  warnings.add({ code: "unknown-comparison", given: { record: named } }, entry.id);
  return null;
}

/** The rides of a story, each in its situation. */
export function caseRides(story: BikeStory, situations: Situations, warnings: CaseWarnings): Ride[] {
  return story.rides.map(({ entry, moment }, index) => {
    const { body } = entry;
    const compared = body.against === undefined ? null : comparedWith(index, story, situations, warnings);
    return {
      record: entry.id,
      at: entry.at,
      situation: situations.at(moment, entry.at),
      warm: body.warm ?? true,
      reports: (body.reports ?? []).map((report) => ({
        sign: report.sign,
        opening: report.opening === undefined ? null : openingOf(report.opening),
        seen: report.seen ?? true,
      })),
      against:
        compared === null || body.against === undefined
          ? null
          : {
              situation: compared,
              verdicts: body.against.felt.map(({ opening, felt }) => ({ opening: openingOf(opening), felt })),
            },
    };
  });
}

/** The tests of a story, each in its situation. */
export const caseTests = (story: BikeStory, situations: Situations): TestResult[] =>
  story.tests.map(({ entry, moment }) => ({
    record: entry.id,
    at: entry.at,
    situation: situations.at(moment, entry.at),
    test: entry.body.test,
    opening: entry.body.opening === undefined ? null : openingOf(entry.body.opening),
    outcome: entry.body.outcome,
    numbers: entry.body.numbers ?? {},
  }));

/** The readings of a story, each in its situation. */
export const caseMeasurements = (story: BikeStory, situations: Situations): MixtureMeasurement[] =>
  story.measurements.flatMap(({ entry, moment }) =>
    entry.body.readings.map((reading) => ({
      record: entry.id,
      at: entry.at,
      situation: situations.at(moment, entry.at),
      opening: openingOf(reading.opening),
      ...mixtureError(reading),
    })),
  );
