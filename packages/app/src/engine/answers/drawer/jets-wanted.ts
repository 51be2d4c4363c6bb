import {
  accept,
  fromCelsius,
  fromMetre,
  type Jet,
  type JetNumbering,
  type JetPlace,
  jetsToBuy,
  jetsWanted as jetsWantedBy,
  type Outcome,
  type RidingRange,
  refuse,
  sizesOwned,
  sizesSold,
  toCelsius,
  type Wanted,
} from "@jetwright/core";
import { shopDrawer } from "@jetwright/records";
import { whyRefused } from "../../sentences.ts";
import type { EngineState } from "../../state.ts";
import { ranRight } from "../air/ran-right.ts";
import type { RangeGiven } from "./riding-range.ts";

/** What a jet is bought for: one bike, and the heights and temperatures where nothing else at hand serves it. */
export interface BoughtFor {
  readonly bike: string;
  readonly fields: number;
  readonly heightM: { readonly from: number; readonly to: number };
  readonly celsius: { readonly from: number; readonly to: number };
}

export interface KindToBuy {
  readonly place: JetPlace;
  readonly numbering: JetNumbering;
  readonly maker: string;
  readonly bikes: readonly string[];
  readonly owned: readonly number[];
  readonly buy: readonly { readonly number: number; readonly for: readonly BoughtFor[] }[];
  /** Fields looked at, and of these: served by what is owned and fitted; served by no size sold. */
  readonly fields: number;
  readonly served: number;
  readonly outOfReach: readonly BoughtFor[];
}

export interface JetsWanted {
  readonly kinds: readonly KindToBuy[];
  /** Bikes or jets that could not be reckoned, and why. */
  readonly leftOut: readonly { readonly bike: string; readonly why: string }[];
}

const PLACES = ["main", "pilot"] as const;
const UNKNOWN = {
  main: refuse("main jet not known", "Its main jet is not known: take it out and read its number."),
  pilot: refuse("pilot jet not known", "Its pilot jet is not known: take it out and read its number."),
} as const;
const SIDE = { main: "mains", pilot: "pilots" } as const;

/** The fewest jets to buy so that every bike on the list has a right one everywhere in the range. */
export function jetsWanted(
  { shop, words }: EngineState,
  { range }: { readonly range: RangeGiven },
): Outcome<JetsWanted> {
  const { lowestM, highestM, coldestC, hottestC } = range;
  if (lowestM > highestM || coldestC > hottestC) {
    return refuse("upside-down", "The lowest height and the coldest day come first: swap the two figures.");
  }
  const asked: RidingRange = {
    lowest: fromMetre(lowestM),
    highest: fromMetre(highestM),
    coldest: fromCelsius(coldestC),
    hottest: fromCelsius(hottestC),
  };
  const kinds = new Map<string, { place: JetPlace; jet: Jet; bikes: Set<string>; wanted: Wanted[] }>();
  const leftOut: { bike: string; why: string }[] = [];
  for (const [bike, { description, awayAt }] of shop.bikes) {
    if (description === null || awayAt !== null) continue;
    const name = description.name ?? bike;
    const base = ranRight(shop, bike);
    const wanted = base.ok ? jetsWantedBy(name, base.value.situation, asked) : base;
    if (!base.ok || !wanted.ok) {
      leftOut.push({ bike: name, why: wanted.ok ? "" : whyRefused(words.language, wanted) });
      continue;
    }
    for (const place of PLACES) {
      const jet = base.value.situation.setup[place].part;
      if (jet === null) {
        leftOut.push({ bike: name, why: whyRefused(words.language, UNKNOWN[place]) });
        continue;
      }
      const key = `${place} ${jet.numbering} ${jet.maker.trim().toLowerCase()}`;
      const kind = kinds.get(key) ?? { place, jet, bikes: new Set(), wanted: [] };
      kinds.set(key, kind);
      kind.bikes.add(name);
      kind.wanted.push(...wanted.value[place]);
    }
  }
  const drawer = shopDrawer(shop);
  return accept({
    kinds: [...kinds.values()]
      .sort((a, b) => PLACES.indexOf(a.place) - PLACES.indexOf(b.place))
      .map(({ place, jet, bikes, wanted }) => {
        const owned = sizesOwned(drawer, SIDE[place], jet);
        const { buy, served, outOfReach } = jetsToBuy(wanted, owned, sizesSold(place, jet.numbering));
        return {
          place,
          numbering: jet.numbering,
          maker: jet.maker.trim(),
          bikes: [...bikes],
          owned,
          buy: buy.map(({ number, serves }) => ({ number, for: byBike(serves) })),
          fields: wanted.length,
          served: served.length,
          outOfReach: byBike(outOfReach),
        };
      }),
    leftOut,
  });
}

function byBike(wanted: readonly Wanted[]): BoughtFor[] {
  return [...new Set(wanted.map(({ bike }) => bike))].map((name) => {
    const of = wanted.filter(({ bike }) => bike === name);
    return {
      bike: name,
      fields: of.length,
      heightM: ends(of.map(({ height }) => height)),
      celsius: ends(of.map(({ temperature }) => toCelsius(temperature))),
    };
  });
}

const ends = (values: readonly number[]): { readonly from: number; readonly to: number } => ({
  from: Math.min(...values),
  to: Math.max(...values),
});
