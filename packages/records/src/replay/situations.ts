import type { AirState, FuelState, Setup, Situation } from "@jetwright/core";
import type { UsedEntryOf } from "../entry.ts";
import type { CaseWarnings } from "./case-warning.ts";
import type { Description } from "./description.ts";
import type { FittedSetup } from "./setup-timeline.ts";
import type { BikeStory, Moment } from "./shop-state.ts";
import { siAir, stalenessSd } from "./si-air.ts";
import { type DescribedEngine, siBody } from "./si-engine.ts";
import { siFuel } from "./si-fuel.ts";
import type { MeasuredNeedles } from "./si-needle.ts";
import { type SetupContext, siSetup } from "./si-setup.ts";

/** Air noted within this time after the first ride is taken for it, when none was noted before. */
const AIR_AFTER_MS = 12 * 3_600_000;

/**
 * Turns moments of one bike's story into situations in SI. The same setup, air and fuel give the same objects,
 * so that whoever computes with them can know them again.
 */
export class Situations {
  readonly #story: BikeStory;
  readonly #engine: DescribedEngine;
  readonly #warnings: CaseWarnings;
  readonly #context: SetupContext;
  readonly #setups = new Map<FittedSetup, Setup>();
  readonly #airs = new Map<string, AirState>();
  readonly #fuels = new Map<string, FuelState>();
  readonly #made = new Map<Setup, Situation[]>();

  constructor(
    story: BikeStory,
    description: Description,
    engine: DescribedEngine,
    measured: MeasuredNeedles,
    warnings: CaseWarnings,
  ) {
    this.#story = story;
    this.#engine = engine;
    this.#warnings = warnings;
    const body = siBody(description, engine, warnings);
    this.#context = { bike: story.id, body, description, measured };
  }

  /** The situation of a moment, for something that happened at a time. */
  at(moment: Moment, at: number): Situation {
    return this.of(this.setup(moment.setup), this.air(moment, at), this.fuel(moment));
  }

  setup(fitted: FittedSetup): Setup {
    return remembered(this.#setups, fitted, () => siSetup(fitted.parts, this.#context, this.#warnings));
  }

  air(moment: Moment, at: number): AirState {
    const entry = moment.air ?? this.#airSoonAfter(at);
    const key = entry === null ? "" : `${entry.id} ${stalenessSd(Math.abs(at - entry.at))}`;
    const height = this.#context.description.place?.heightM;
    return remembered(this.#airs, key, () => siAir(entry, at, height, this.#warnings));
  }

  fuel(moment: Moment): FuelState {
    const entry = moment.fuel ?? this.#story.firstFuel;
    return remembered(this.#fuels, entry?.id ?? "", () =>
      siFuel(entry, this.#engine.strokes, this.#warnings),
    );
  }

  of(setup: Setup, air: AirState, fuel: FuelState): Situation {
    const made = remembered(this.#made, setup, () => [] as Situation[]);
    const found = made.find((one) => one.air === air && one.fuel === fuel);
    if (found !== undefined) return found;
    const situation: Situation = { setup, air, fuel };
    made.push(situation);
    return situation;
  }

  #airSoonAfter(at: number): UsedEntryOf<"air-measured"> | null {
    const first = this.#story.firstAir;
    return first !== null && first.at - at <= AIR_AFTER_MS ? first : null;
  }
}

function remembered<Key, Value>(map: Map<Key, Value>, key: Key, make: () => Value): Value {
  let value = map.get(key);
  if (value === undefined) {
    value = make();
    map.set(key, value);
  }
  return value;
}
