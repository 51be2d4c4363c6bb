import type { Kelvin, KgPerCubicMetre, Pascal } from "../units/quantity.ts";
import type { Warning } from "../words/warning.ts";

/** The air an engine breathes, at the place it is ridden. */
export interface AirState {
  readonly temperature: Kelvin;
  /** Station pressure: what a barometer reads there, never reduced to sea level. */
  readonly pressure: Pascal;
  /** Mole fraction of water vapour. */
  readonly vapourFraction: number;
  /** Moist air: it drives the depression at the nozzle. */
  readonly density: KgPerCubicMetre;
  /** The dry air in a cubic metre of it: it carries the oxygen. */
  readonly dryDensity: KgPerCubicMetre;
  /** One standard deviation of dryDensity, relative: everything about the inputs that is not exact. */
  readonly relativeSd: number;
  readonly warnings: readonly Warning[];
}
