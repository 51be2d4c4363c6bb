import { impossible } from "../units/impossible.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { CubicMetre } from "../units/quantity.ts";
import { OIL_LIMIT } from "./fuel-use.ts";

/** The ways people give the oil in premix. */
export type OilMeasure =
  | { readonly by: "none" }
  /** 50 to 1 or 1 to 50: the larger is the fuel. */
  | { readonly by: "ratio"; readonly numbers: readonly [number, number] }
  | { readonly by: "percent of fuel"; readonly percent: number }
  | { readonly by: "percent of mix"; readonly percent: number }
  /** Oil to each litre of fuel. */
  | { readonly by: "millilitres a litre"; readonly millilitres: number }
  | {
      readonly by: "ounces a gallon";
      readonly ounces: number;
      readonly ounce: Gallon;
      readonly gallon: Gallon;
    };

export type Gallon = "US" | "imperial";

// ml. US gallon 231 cubic inches, 128 fluid ounces; imperial gallon 4.54609 l, 160 fluid ounces: exact by
// definition. NIST SP 811 (2008), appendix B, from memory.
const GALLON = { US: 3785.411784, imperial: 4546.09 } as const;
const OUNCE = { US: GALLON.US / 128, imperial: GALLON.imperial / 160 } as const;

/**
 * Volumes of oil to one volume of fuel. Refuses a ratio that says as much oil as fuel, and more than 5:1,
 * with what to look for.
 */
export function oilPerFuel(measure: OilMeasure): Outcome<number, "oil"> {
  const oil = plainOil(measure);
  if (oil >= 0 && oil <= OIL_LIMIT) return accept(oil);
  return refuse(
    "oil",
    `That would be ${oil > 0 && oil < Infinity ? `${tidy(oil * 1000)} ml of oil to a litre of fuel` : "no possible share of oil"}; premix runs from 10:1 to 100:1. Read the ratio again and check the unit.`,
  );
}

function plainOil(measure: OilMeasure): number {
  switch (measure.by) {
    case "none":
      return 0;
    case "ratio": {
      const [a, b] = measure.numbers;
      return Math.min(a, b) / Math.max(a, b);
    }
    case "percent of fuel":
      return measure.percent / 100;
    case "percent of mix":
      return measure.percent / (100 - measure.percent);
    case "millilitres a litre":
      return measure.millilitres / 1000;
    case "ounces a gallon":
      return (measure.ounces * OUNCE[measure.ounce]) / GALLON[measure.gallon];
    default:
      return impossible(measure);
  }
}

/** Share of the mix by volume that is oil, 0 to 1. */
export const oilShareOfMix = (oilPerFuel: number): number => oilPerFuel / (1 + oilPerFuel);

/**
 * How much oil goes with a volume. The volume is either the fuel poured in, to which the oil comes on top, or
 * the whole mix wanted in the can. Throws RangeError for a negative volume or oil outside 0 to 0.2.
 */
export function oilToMeasure(
  oilPerFuel: number,
  volume: CubicMetre,
  volumeIs: "added fuel" | "total mix",
): { readonly oil: CubicMetre; readonly fuel: CubicMetre } {
  if (!(volume >= 0 && volume < Infinity))
    throw new RangeError(`A volume must be at least 0 m³, got ${volume}`);
  if (!(oilPerFuel >= 0 && oilPerFuel <= OIL_LIMIT)) {
    throw new RangeError(`Oil to fuel must be 0 to ${OIL_LIMIT}, got ${oilPerFuel}`);
  }
  const fuel = volumeIs === "added fuel" ? volume : volume / (1 + oilPerFuel);
  return { oil: (oilPerFuel * fuel) as CubicMetre, fuel: fuel as CubicMetre };
}

/** The oil in words: "50:1 (20 ml of oil to a litre of fuel)". */
export function oilText(oilPerFuel: number): string {
  if (oilPerFuel === 0) return "no oil";
  return `${tidy(1 / oilPerFuel)}:1 (${tidy(oilPerFuel * 1000)} ml of oil to a litre of fuel)`;
}

/** What goes wrong with this measure if the other gallon or the other ounce was meant. Empty: nothing. */
export function oilTraps(measure: OilMeasure): readonly string[] {
  if (measure.by !== "ounces a gallon") return [];
  const other: Gallon = measure.gallon === "US" ? "imperial" : "US";
  const ratio = (ounce: Gallon, gallon: Gallon): string =>
    `${tidy(1 / plainOil({ ...measure, ounce, gallon }))}:1`;
  const said = ratio(measure.ounce, measure.gallon);
  const traps = [
    `An imperial gallon is 1.20 times a US gallon: the same ounces in ${other === "US" ? "a US" : "an imperial"} gallon make ${ratio(measure.ounce, other)} and not ${said}.`,
    `A US fluid ounce is 1.04 times an imperial one: a cup marked in ${measure.ounce === "US" ? "imperial" : "US"} ounces makes ${ratio(measure.ounce === "US" ? "imperial" : "US", measure.gallon)} and not ${said}.`,
  ];
  if (measure.ounce !== measure.gallon) {
    traps.unshift(
      `${measure.ounce} ounces with ${measure.gallon} gallons are mixed units: make sure both are meant.`,
    );
  }
  return traps;
}

const tidy = (x: number): string => `${x >= 10 ? Math.round(x * 10) / 10 : Math.round(x * 100) / 100}`;
