import type { AirState } from "../air/air-state.ts";
import type { FuelState } from "../fuel/fuel-state.ts";
import type { Setup } from "../parts/setup.ts";

/** Everything the mixture depends on: the parts fitted, the air and the fuel. */
export interface Situation {
  readonly setup: Setup;
  readonly air: AirState;
  readonly fuel: FuelState;
}
