import {
  type AirState,
  accept,
  type BestSetup,
  type BikeBelief,
  bestSetupOf,
  bikeBelief,
  drawerOfBike,
  type Found,
  type Outcome,
  type PartsFrom,
  presentIn,
  searchDrawer,
  toCelsius,
} from "@jetwright/core";
import { airOf, bikeCase, type ShopState } from "@jetwright/records";
import type { EngineState } from "../../state.ts";

export interface BestGiven {
  readonly bike: string;
  /** Where it will be ridden; null for the air last noted. */
  readonly place: { readonly heightM: number; readonly celsius: number } | null;
  readonly from: PartsFrom;
  readonly safe: boolean;
  readonly countMinutes: boolean;
}

export interface BestSetups {
  readonly list: readonly BestSetup[];
  /** What is fitted, in that air. */
  readonly present: BestSetup;
  /** Where in the list that is, from 0; null where it is not in it. */
  readonly presentAt: number | null;
  /** How many combinations were searched. */
  readonly size: number;
  readonly air: { readonly celsius: number; readonly heightM: number | null };
}

const LISTED = 20;
/** Milliseconds of work before the worker looks whether something newer was asked. */
const AT_A_STRETCH = 8;

const beliefs = new WeakMap<ShopState, Map<string, Outcome<BikeBelief>>>();
let latest = 0;

/**
 * The best setups for a bike in an air. A later asking stops an earlier one that is still at work, which then answers
 * null.
 */
export async function bestSetups(state: EngineState, given: BestGiven): Promise<Outcome<BestSetups> | null> {
  const mine = ++latest;
  const { shop, words } = state;
  const believed = beliefIn(shop, given.bike);
  if (!believed.ok) return believed;
  const air = airFor(believed.value.story.now.air, given.place);
  if (!air.ok) return air;
  const space = drawerOfBike(believed.value, { ...given, air: air.value });
  if (!space.ok) return space;
  const search = searchDrawer(space.value, LISTED);
  let since = performance.now();
  let step = search.next();
  while (!step.done) {
    if (performance.now() - since > AT_A_STRETCH) {
      await new Promise((resolve) => setTimeout(resolve, 0));
      if (mine !== latest) return null;
      since = performance.now();
    }
    step = search.next();
  }
  const shown = (found: Found): BestSetup => bestSetupOf(believed.value, space.value, found, words);
  const presentAt = step.value.findIndex(({ changes }) => changes === 0);
  return accept({
    list: step.value.map(shown),
    present: shown(presentIn(space.value)),
    presentAt: presentAt < 0 ? null : presentAt,
    size: space.value.size,
    air: {
      celsius: toCelsius(air.value.temperature),
      heightM: given.place?.heightM ?? shop.bikes.get(given.bike)?.now.air?.body.heightM ?? null,
    },
  });
}

function airFor(noted: AirState, place: BestGiven["place"]): Outcome<AirState> {
  if (place === null) return accept(noted);
  return airOf({ heightM: place.heightM, temperatureC: place.celsius }, 0, undefined);
}

function beliefIn(shop: ShopState, bike: string): Outcome<BikeBelief> {
  const known = beliefs.get(shop) ?? new Map<string, Outcome<BikeBelief>>();
  beliefs.set(shop, known);
  let belief = known.get(bike);
  if (belief === undefined) {
    const told = bikeCase(shop, bike);
    belief = told.ok ? bikeBelief(told.value) : told;
    known.set(bike, belief);
  }
  return belief;
}
