import { accept, type Outcome, refuse, type Situation } from "@jetwright/core";
import { closestWords } from "../closest-words.ts";
import { CaseWarnings } from "./case-warning.ts";
import type { FittedSetup } from "./setup-timeline.ts";
import type { BikeStory, ShopState } from "./shop-state.ts";
import { Situations } from "./situations.ts";

/** Stands for the setup that was there before anything was changed. */
export const AS_FOUND = "as-found";

export type SituationRefusal = "no-such-bike" | "bike-not-described" | "no-such-record";

/**
 * What was fitted, in which air and on which fuel, at a setup, ride, test, reading or known-good mark of a bike. A
 * setup stands in the air and on the fuel of its last ride, or of now where it was never ridden.
 */
export function situationOfRecord(
  state: ShopState,
  bike: string,
  record: string,
): Outcome<Situation, SituationRefusal> {
  const story = state.bikes.get(bike);
  if (story === undefined) return refuse("no-such-bike", `No record of this log is about a bike "${bike}".`);
  const { description } = story;
  const engine = description?.engine;
  if (description === null || engine === undefined) {
    return refuse("bike-not-described", `Nobody has said what engine "${bike}" has.`);
  }
  const situations = new Situations(story, description, engine, state.needles, new CaseWarnings());
  const placed = [...story.rides, ...story.tests, ...story.measurements, ...story.knownGood];
  const happened = placed.find(({ entry }) => entry.id === record);
  if (happened !== undefined) return accept(situations.at(happened.moment, happened.entry.at));
  const setup = setupOf(story, record);
  if (setup !== undefined) {
    const ride = [...story.rides].reverse().find(({ moment }) => moment.setup === setup);
    if (ride !== undefined) return accept(situations.at(ride.moment, ride.entry.at));
    const { now } = story;
    const at = setup.record === null ? (now.air?.at ?? 0) : setup.at;
    return accept(situations.of(situations.setup(setup), situations.air(now, at), situations.fuel(now)));
  }
  const ids = [...placed.map(({ entry }) => entry.id), ...story.setups.flatMap((one) => one.record ?? [])];
  const near = closestWords(record, ids);
  const hint =
    near.length > 0 ? `Did you mean ${near.join(" or ")}?` : `It has ${ids.slice(-8).join(", ") || "none"}.`;
  return refuse("no-such-record", `"${record}" is no setup, ride or test of "${bike}". ${hint}`);
}

/** The setup a record made; for parts that were found fitted, the one in force at that time. */
function setupOf({ setups, entries }: BikeStory, record: string): FittedSetup | undefined {
  if (record === AS_FOUND) return setups[0];
  const made = setups.find((one) => one.record === record);
  if (made !== undefined) return made;
  const found = entries.find(({ id, kind }) => id === record && kind === "setup-fitted");
  return found && setups.filter(({ at }) => at <= found.at).at(-1);
}
