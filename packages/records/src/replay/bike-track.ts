import type { UsedEntry, UsedEntryOf } from "../entry.ts";
import type { FittedPart } from "../kinds/setup-fitted.ts";
import { type Description, describe } from "./description.ts";
import { type FittedParts, SetupTimeline } from "./setup-timeline.ts";
import type { BikeStory, Minutes, Moment, Placed } from "./shop-state.ts";

type Air = UsedEntryOf<"air-measured"> | null;
type Fuel = UsedEntryOf<"fuel-used"> | null;

/** One bike while its story is being replayed, entry by entry in order. */
export class BikeTrack {
  readonly #id: string;
  readonly #timeline = new SetupTimeline();
  readonly #entries: UsedEntry[] = [];
  readonly #rides: Placed<"ride-reported">[] = [];
  readonly #tests: Placed<"test-done">[] = [];
  readonly #measurements: Placed<"mixture-measured">[] = [];
  readonly #sounds: Placed<"sound-heard">[] = [];
  readonly #knownGood: Placed<"known-good-marked">[] = [];
  readonly #checks: UsedEntryOf<"check-done">[] = [];
  #description: Description | null = null;
  #awayAt: number | null = null;
  #air: Air = null;
  #fuel: Fuel = null;
  #firstAir: Air = null;
  #firstFuel: Fuel = null;
  #freshStart: UsedEntryOf<"engine-changed"> | null = null;
  #minutes: Minutes = {};
  #oneChangeAtATime: boolean | null = null;

  constructor(id: string, shopAir: Air, shopFuel: Fuel, firstAir: Air, firstFuel: Fuel) {
    this.#id = id;
    this.#air = shopAir;
    this.#fuel = shopFuel;
    this.#firstAir = firstAir;
    this.#firstFuel = firstFuel;
  }

  /** What is fitted now, by the records so far. */
  get fitted(): FittedParts {
    return this.#timeline.current.parts;
  }

  #moment(): Moment {
    return { setup: this.#timeline.current, air: this.#air, fuel: this.#fuel };
  }

  air(entry: UsedEntryOf<"air-measured">): void {
    this.#air = entry;
    this.#firstAir ??= entry;
  }

  fuel(entry: UsedEntryOf<"fuel-used">): void {
    this.#fuel = entry;
    this.#firstFuel ??= entry;
  }

  /** Takes an entry of this bike; gives the parts found that are not what the records say. */
  take(entry: UsedEntry): readonly FittedPart[] {
    this.#entries.push(entry);
    switch (entry.kind) {
      case "bike-described":
        this.#description = describe(this.#description, entry.body);
        break;
      case "bike-put-away":
        this.#awayAt = entry.body.away === false ? null : entry.at;
        break;
      case "setup-fitted":
        return this.#timeline.take(entry.id, entry.at, entry.body);
      case "air-measured":
        this.air(entry);
        break;
      case "fuel-used":
        this.fuel(entry);
        break;
      case "ride-reported":
        this.#rides.push({ entry, moment: this.#moment() });
        break;
      case "test-done":
        this.#tests.push({ entry, moment: this.#moment() });
        break;
      case "mixture-measured":
        this.#measurements.push({ entry, moment: this.#moment() });
        break;
      case "sound-heard":
        this.#sounds.push({ entry, moment: this.#moment() });
        break;
      case "known-good-marked":
        this.#knownGood.push({ entry, moment: this.#moment() });
        break;
      case "check-done":
        this.#checks.push(entry);
        break;
      case "engine-changed":
        this.#freshStart = entry;
        break;
      case "labour-noted":
        this.#minutes = { ...this.#minutes, ...entry.body.minutes };
        break;
      case "preference-set":
        this.#oneChangeAtATime = entry.body.oneChangeAtATime ?? this.#oneChangeAtATime;
        break;
      // Kept in the story for people; nothing is reckoned from them.
      case "needle-measured":
      case "parts-counted":
      case "parts-bought":
      case "parts-used":
      case "customer-described":
      case "person-erased":
      case "order-opened":
      case "work-noted":
      case "order-closed":
      case "sound-proved":
      case "note":
      case "photo":
      case "advice-given":
      case "record-struck":
        break;
      default:
        entry satisfies never;
    }
    return [];
  }

  story(): BikeStory {
    return {
      id: this.#id,
      description: this.#description,
      awayAt: this.#awayAt,
      setups: this.#timeline.setups,
      now: this.#moment(),
      firstAir: this.#firstAir,
      firstFuel: this.#firstFuel,
      rides: this.#rides,
      tests: this.#tests,
      measurements: this.#measurements,
      sounds: this.#sounds,
      knownGood: this.#knownGood,
      checks: this.#checks,
      freshStart: this.#freshStart,
      minutes: this.#minutes,
      oneChangeAtATime: this.#oneChangeAtATime,
      entries: this.#entries,
    };
  }
}
