import type { UsedEntry, UsedEntryOf } from "../entry.ts";
import type { Problem } from "../problem.ts";
import type { CountedPart, Shortage } from "./counted-drawer.ts";
import type { Description } from "./description.ts";
import type { Order } from "./orders.ts";
import type { FittedSetup } from "./setup-timeline.ts";
import type { MeasuredNeedles } from "./si-needle.ts";
import type { Struck } from "./strikes.ts";

/** What was in force at one time of a bike's story. */
export interface Moment {
  readonly setup: FittedSetup;
  /** The last air and fuel noted up to then; null when there was none. */
  readonly air: UsedEntryOf<"air-measured"> | null;
  readonly fuel: UsedEntryOf<"fuel-used"> | null;
}

/** A record with what was in force when it happened. */
export type Placed<Kind extends UsedEntry["kind"]> = {
  readonly entry: UsedEntryOf<Kind>;
  readonly moment: Moment;
};

export interface BikeStory {
  readonly id: string;
  /** Null when no record describes the bike. */
  readonly description: Description | null;
  readonly awayAt: number | null;
  /** In the order fitted; the first is what was there before anything was written. */
  readonly setups: readonly FittedSetup[];
  readonly now: Moment;
  /** The first air noted for this bike or the whole shop. */
  readonly firstAir: UsedEntryOf<"air-measured"> | null;
  readonly firstFuel: UsedEntryOf<"fuel-used"> | null;
  readonly rides: readonly Placed<"ride-reported">[];
  readonly tests: readonly Placed<"test-done">[];
  readonly measurements: readonly Placed<"mixture-measured">[];
  readonly sounds: readonly Placed<"sound-heard">[];
  readonly knownGood: readonly Placed<"known-good-marked">[];
  readonly checks: readonly UsedEntryOf<"check-done">[];
  /** The last time that made older evidence void. */
  readonly freshStart: UsedEntryOf<"engine-changed"> | null;
  readonly minutes: Minutes;
  readonly oneChangeAtATime: boolean | null;
  /** Everything that happened to it, in the order of the story. */
  readonly entries: readonly UsedEntry[];
}

export type Customer = UsedEntryOf<"customer-described">["body"];

export type Minutes = UsedEntryOf<"labour-noted">["body"]["minutes"];

/** All that a log says, after replay. */
export interface ShopState {
  readonly bikes: ReadonlyMap<string, BikeStory>;
  readonly drawer: readonly CountedPart[];
  /** What was taken out of the drawer that it did not hold, and was not counted since. */
  readonly shortages: readonly Shortage[];
  /** By their name in the log, each with all its descriptions laid over one another. */
  readonly customers: ReadonlyMap<string, Customer>;
  /** Oldest first. */
  readonly orders: readonly Order[];
  readonly needles: MeasuredNeedles;
  readonly minutes: Minutes;
  readonly oneChangeAtATime: boolean;
  readonly struck: readonly Struck[];
  /** What does not fit together between records. */
  readonly problems: readonly Problem[];
}
