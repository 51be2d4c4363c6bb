import type { EngineState } from "../state.ts";

export interface FuelFlow {
  /** ml a minute in each minute; null where the can was not read. */
  readonly perMinute: readonly (number | null)[];
  /** The can held less later than before: one of the readings is wrong. */
  readonly fell: boolean;
}

/** The flow in each minute, from what the can held after each. */
export function fuelFlow(
  _state: EngineState,
  { can }: { readonly can: readonly (number | null)[] },
): FuelFlow {
  const perMinute = can.map((held, i) => {
    const before = i === 0 ? 0 : can[i - 1]!;
    return held === null || before === null || held < before ? null : held - before;
  });
  const fell = can.some((held, i) => i > 0 && held !== null && can[i - 1] !== null && held < can[i - 1]!);
  return { perMinute, fell };
}
