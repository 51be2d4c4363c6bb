import {
  type AirState,
  accept,
  type BikeCase,
  type FuelState,
  type Outcome,
  refuse,
  type Situation,
} from "@jetwright/core";
import { closestWords } from "../closest-words.ts";
import { caseMeasurements, caseRides, caseTests } from "./case-rides.ts";
import { type CaseWarning, CaseWarnings } from "./case-warning.ts";
import type { BikeStory, ShopState } from "./shop-state.ts";
import { siDrawer } from "./si-drawer.ts";
import { siEngine } from "./si-engine.ts";
import { Situations } from "./situations.ts";

export type CaseRefusal = "no-such-bike" | "bike-not-described";

/** A case for the core, with what had to be assumed to make it. */
export interface ReplayedCase extends BikeCase {
  readonly bike: string;
  readonly warnings: readonly CaseWarning[];
}

/** What the bike will be ridden in, where that is not the last noted. */
export interface CaseOptions {
  readonly now?: { readonly air?: AirState; readonly fuel?: FuelState };
}

/** Where a bike's mixture state is held: the first situation with evidence that still counts. */
function referenceOf(story: BikeStory, situations: Situations, now: Situation): Situation {
  const since = story.freshStart?.at ?? -Infinity;
  const evidence = [...story.rides, ...story.tests, ...story.measurements, ...story.sounds].filter(
    ({ entry }) => entry.at >= since,
  );
  if (evidence.length > 0) {
    const first = evidence.reduce((a, b) => (b.entry.at < a.entry.at ? b : a));
    return situations.at(first.moment, first.entry.at);
  }
  if (story.freshStart !== null) return now;
  const first = story.setups[1] ?? story.setups[0]!;
  return situations.of(situations.setup(first), now.air, now.fuel);
}

/**
 * One bike's story for the core, in SI: each ride and test with the setup, air and fuel in force at its time.
 * It works with little: parts never named are unknown, and air, fuel, bore and the like that nobody noted are
 * taken as usual, each with a warning that says what to add. Refuses only a bike that is not in the log or
 * whose engine nobody described.
 */
export function bikeCase(
  state: ShopState,
  bike: string,
  options: CaseOptions = {},
): Outcome<ReplayedCase, CaseRefusal> {
  const story = state.bikes.get(bike);
  if (story === undefined) {
    const near = closestWords(bike, state.bikes.keys());
    const hint = near.length > 0 ? `Did you mean ${near.join(" or ")}?` : bikesOf(state);
    return refuse("no-such-bike", `No record of this log is about a bike "${bike}". ${hint}`);
  }
  const { description } = story;
  const engine = description?.engine;
  if (description === null || engine === undefined) {
    return refuse(
      "bike-not-described",
      `Nobody has said what engine "${bike}" has. Add a bike-described record with "engine": {"strokes": 2} or {"strokes": 4}.`,
    );
  }
  const warnings = new CaseWarnings();
  const situations = new Situations(story, description, engine, state.needles, warnings);
  const nowAir = options.now?.air ?? situations.air(story.now, story.now.air?.at ?? Infinity);
  const nowFuel = options.now?.fuel ?? situations.fuel(story.now);
  const now = situations.of(situations.setup(story.now.setup), nowAir, nowFuel);
  if (Object.keys(story.now.setup.parts).length === 0) warnings.add({ code: "nothing-fitted" });
  const rides = caseRides(story, situations, warnings);
  const tests = caseTests(story, situations);
  const measurements = caseMeasurements(story, situations);
  const reference = referenceOf(story, situations, now);
  return accept({
    bike,
    engine: siEngine(engine),
    now,
    reference,
    rides,
    tests,
    checks: story.checks.map(({ id, at, body }) => ({
      record: id,
      at,
      check: body.check,
      found: body.found,
      fault: body.fault ?? null,
    })),
    measurements,
    sounds: story.sounds.map(({ entry, moment }) => ({
      record: entry.id,
      at: entry.at,
      situation: situations.at(moment, entry.at),
      figures: entry.body.figures,
    })),
    drawer: siDrawer(state.drawer, state.needles, warnings),
    minutes: definedMinutes({ ...state.minutes, ...story.minutes }),
    oneChangeAtATime: story.oneChangeAtATime ?? state.oneChangeAtATime,
    freshStartAt: story.freshStart?.at ?? null,
    warnings: warnings.all,
  });
}

function bikesOf(state: ShopState): string {
  const names = [...state.bikes.keys()].sort().slice(0, 12);
  return names.length === 0 ? "The log is about no bike at all." : `Its bikes are ${names.join(", ")}.`;
}

const LABOUR_PARTS = ["main", "pilot", "needle", "clip", "slide", "screw", "needleJet"] as const;

function definedMinutes(minutes: BikeStory["minutes"]): BikeCase["minutes"] {
  return Object.fromEntries(
    LABOUR_PARTS.flatMap((part) => {
      const figure = minutes[part];
      return figure === undefined ? [] : [[part, figure]];
    }),
  );
}
