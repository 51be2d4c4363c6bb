import { exp } from "../numerics/elementary.ts";
import type { Jet } from "../parts/jet.ts";
import type { Side } from "./branches.ts";
import { ANNULUS_DISCHARGE, MAIN_DISCHARGE } from "./coefficients.ts";
import type { Frame } from "./frame.ts";

/**
 * Factor on the main jet's area that by itself makes the mixture at opening number `i` leaner by `richness` (log).
 * Null where no main jet can: the gap round the needle already lets through less than is wanted.
 */
export function mainAreaFactor(frame: Frame, side: Side, i: number, richness: number): number | null {
  const main = MAIN_DISCHARGE * side.fitted.mainArea;
  const needle = ANNULUS_DISCHARGE * side.fitted.annulus[i]!;
  const resistance = 1 / (main * main);
  const wanted = exp((2 * richness) / (1 - frame.pilotShare[i]!)) - 1;
  const left = resistance + (resistance + 1 / (needle * needle)) * wanted;
  return left > 0 ? Math.sqrt(resistance / left) : null;
}

/** The jet whose hole has `areaFactor` times the area, in the same numbering: the number need not exist. */
export const scaledJet = (jet: Jet, areaFactor: number): Jet => ({
  ...jet,
  number: jet.number * (jet.numbering === "flow" ? areaFactor : Math.sqrt(areaFactor)),
});

/** Number of the main jet that by itself makes opening number `i` leaner by `richness` (log); null: none can. */
export function mainNumberFor(
  frame: Frame,
  side: Side,
  jet: Jet,
  i: number,
  richness: number,
): number | null {
  const factor = mainAreaFactor(frame, side, i, richness);
  if (factor === null) return null;
  const { number } = scaledJet(jet, factor);
  return number >= 5 && number < 2000 ? number : null;
}

/**
 * The smallest of the sizes that is not below the exact number, so never leaner; without a list, the next whole
 * number. Null when all are smaller.
 */
export function richSize(exact: number, sizes: readonly number[] | undefined): number | null {
  if (sizes === undefined) return Math.min(Math.ceil(exact - 1e-9), 1999);
  let best: number | null = null;
  for (const size of sizes) {
    if (size >= exact * (1 - 1e-12) && size < 2000 && (best === null || size < best)) best = size;
  }
  return best;
}
