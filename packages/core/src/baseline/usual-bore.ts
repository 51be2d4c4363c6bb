import { power } from "../numerics/elementary.ts";
import type { CubicMetre, Metre } from "../units/quantity.ts";
import { type Use, useRank } from "./use.ts";

/** K of the rule below for trail, enduro and race engines. G. Jennings 1973 gives 0.65 mild to 0.9 race [memory]. */
const BORE_FACTOR = [0.68, 0.78, 0.88] as const;
/** Revs at full power of a 250 cm³ single for those uses. Common practice, no source. */
const REVS_OF_250 = [7000, 7800, 8700] as const;
const REFERENCE = 250e-6;

/**
 * Bore, m, by D[mm] = K √(V[l] N[1/min]). Source: G. Jennings, Two-Stroke Tuner's Handbook, 1973 [memory]; K from
 * 0.65 for mild engines to 0.9 for race engines, so good to about 15 %.
 */
export const boreFor = (factor: number, displacement: CubicMetre, revsPerMinute: number): Metre =>
  (1e-3 * factor * Math.sqrt(displacement * 1000 * revsPerMinute)) as Metre;

/**
 * Revs at full power: engines of one kind built larger turn slower, by the third root of their volume, so that
 * the piston keeps its speed. Good to about 20 %.
 */
export const fullPowerRevs = (displacement: CubicMetre, use: Use | null): number =>
  REVS_OF_250[useRank(use)]! * power(displacement / REFERENCE, -1 / 3);

/** The carburetor bore usually found on such an engine, m; most lie within 20 % of it. */
export const usualBore = (displacement: CubicMetre, use: Use | null): Metre =>
  boreFor(BORE_FACTOR[useRank(use)]!, displacement, fullPowerRevs(displacement, use));

/** The displacement that this bore is usual for, m³: the other way round. */
export function usualDisplacement(bore: Metre, use: Use | null): CubicMetre {
  const ratio = bore / usualBore(REFERENCE as CubicMetre, use);
  return (REFERENCE * ratio * ratio * ratio) as CubicMetre;
}

/** Least and most, m, that the tool believes for a bore on this engine, whatever its use. */
export const believableBores = (displacement: CubicMetre): readonly [Metre, Metre] => [
  (0.62 * usualBore(displacement, "trail")) as Metre,
  (1.6 * usualBore(displacement, "race")) as Metre,
];

/** Whether one carburetor can feed this much: 20 to 1000 cm³. */
export const believableDisplacement = (displacement: CubicMetre): boolean =>
  displacement >= 20e-6 && displacement <= 1000e-6;
