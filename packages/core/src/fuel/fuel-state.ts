import type { KgPerCubicMetre } from "../units/quantity.ts";

/** The fuel as it runs through the jets. */
export interface FuelState {
  /** Density of the mix at its own temperature. */
  readonly density: KgPerCubicMetre;
  /** Mass of air for complete burning of a unit mass of the fuel without its oil. */
  readonly stoichiometricRatio: number;
  /** Mass share of the mix that is fuel and not two-stroke oil, 0 to 1. */
  readonly fuelShare: number;
  /** Kinematic viscosity over that of neat petrol at 20 °C. */
  readonly viscosityRatio: number;
}
