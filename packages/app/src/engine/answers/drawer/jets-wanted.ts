import {
  accept,
  altitudeChart,
  fromCelsius,
  fromMetre,
  type Jet,
  jetsToBuy,
  type Metre,
  type Outcome,
  refuse,
  sizesOwned,
  typicalSteps,
  type Wanted,
} from "@jetwright/core";
import { bikeCase, shopDrawer } from "@jetwright/records";
import type { EngineState } from "../../state.ts";

export interface Corner {
  readonly heightM: number;
  readonly celsius: number;
}

export interface JetsWanted {
  readonly kinds: readonly {
    readonly numbering: "bore" | "flow";
    readonly maker: string;
    readonly owned: readonly number[];
    readonly buy: readonly {
      readonly number: number;
      readonly serves: readonly {
        readonly bike: string;
        readonly heightM: number;
        readonly celsius: number;
      }[];
    }[];
    /** Corners that the jets owned serve already. */
    readonly served: number;
    readonly outOfReach: number;
  }[];
  /** Bikes that could not be reckoned, and why. */
  readonly leftOut: readonly { readonly bike: string; readonly why: string }[];
}

/** A main jet one step richer than the least is still right: a jet serves a corner over this many steps. */
const STEPS_WIDE = 1;
/** Sizes looked at to either side of the fitted jet. */
const STEPS_AROUND = 12;

/** The fewest main jets to buy so that every bike has a right one at every corner of heights and temperatures. */
export function jetsWanted(
  { shop }: EngineState,
  { corners }: { readonly corners: readonly Corner[] },
): Outcome<JetsWanted> {
  if (corners.length === 0)
    return refuse("no-corners", "Give at least one height and temperature you ride in.");
  const kinds = new Map<string, { jet: Jet; wanted: Wanted[]; sizes: Set<number> }>();
  const leftOut: { bike: string; why: string }[] = [];
  for (const [bike, { description, awayAt }] of shop.bikes) {
    if (description === null || awayAt !== null) continue;
    const name = description.name ?? bike;
    const made = bikeCase(shop, bike);
    const jet = made.ok ? made.value.now.setup.main.part : null;
    if (!made.ok || jet === null) {
      leftOut.push({ bike: name, why: made.ok ? "Its main jet is not known." : made.detail });
      continue;
    }
    const step = typicalSteps(jet, "main")[0];
    const key = `${jet.numbering} ${jet.maker}`;
    const kind = kinds.get(key) ?? { jet, wanted: [], sizes: new Set<number>() };
    kinds.set(key, kind);
    for (let k = -STEPS_AROUND; k <= STEPS_AROUND; k++) kind.sizes.add(jet.number + k * step);
    for (const { heightM, celsius } of corners) {
      const chart = altitudeChart(made.value.now, [fromMetre(heightM)], [fromCelsius(celsius)]);
      if (!chart.ok) {
        leftOut.push({ bike: name, why: chart.detail });
        break;
      }
      const least = chart.value.cells[0]![0]!.exactMain;
      if (least === null) continue;
      kind.wanted.push({
        bike: name,
        height: heightM as Metre,
        celsius,
        least: least - 1e-6,
        most: least + (1 + STEPS_WIDE) * step,
      });
    }
  }
  const drawer = shopDrawer(shop);
  return accept({
    kinds: [...kinds.values()].map(({ jet, wanted, sizes }) => {
      const owned = sizesOwned(drawer, "mains", jet);
      const { buy, served, outOfReach } = jetsToBuy(
        wanted,
        owned,
        [...sizes].sort((a, b) => a - b),
      );
      return {
        numbering: jet.numbering,
        maker: jet.maker,
        owned,
        buy: buy.map(({ number, serves }) => ({
          number,
          serves: serves.map(({ bike, height, celsius }) => ({ bike, heightM: height, celsius })),
        })),
        served: served.length,
        outOfReach: outOfReach.length,
      };
    }),
    leftOut,
  });
}
