import { exp } from "../numerics/elementary.ts";
import type { Jet } from "../parts/jet.ts";
import { numberForArea, richSideSize } from "../parts/jet-steps.ts";
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
  const number = numberForArea(jet, factor);
  return number >= 5 && number < 2000 ? number : null;
}

/**
 * The smallest of the sizes that is not below the exact number, so never leaner; without a list, the next whole
 * number. Null when all are smaller.
 */
export function richSize(exact: number, sizes: readonly number[] | undefined): number | null {
  if (sizes === undefined) return Math.min(Math.ceil(exact - 1e-9), 1999);
  const size = richSideSize(
    exact,
    sizes.filter((x) => x < 2000),
  );
  return size.ok ? size.value : null;
}
