import { accept, altitudeChart, fromCelsius, fromMetre, type Outcome, toCelsius } from "@jetwright/core";
import { bikeCase } from "@jetwright/records";
import type { EngineState } from "../../state.ts";

export interface HeightChart {
  readonly heights: readonly number[];
  readonly celsius: readonly number[];
  /** By height, then temperature. */
  readonly cells: readonly (readonly { readonly main: number | null; readonly clip: number | null }[])[];
  /** The air the setup was last ridden in, as the nearest cell. */
  readonly base: { readonly row: number; readonly column: number } | null;
  readonly fitted: { readonly main: number | null; readonly clip: number | null };
}

/** Main jet and clip by height and temperature, for a setup that is right in the air last noted. */
export function heightChart(
  { shop }: EngineState,
  {
    bike,
    heights,
    celsius,
  }: { readonly bike: string; readonly heights: readonly number[]; readonly celsius: readonly number[] },
): Outcome<HeightChart> {
  const made = bikeCase(shop, bike);
  if (!made.ok) return made;
  const { now } = made.value;
  const chart = altitudeChart(now, heights.map(fromMetre), celsius.map(fromCelsius));
  if (!chart.ok) return chart;
  const noted = shop.bikes.get(bike)?.now.air?.body.heightM;
  return accept({
    heights,
    celsius,
    cells: chart.value.cells.map((row) => row.map(({ main, clip }) => ({ main, clip }))),
    base:
      noted === undefined
        ? null
        : { row: nearest(heights, noted), column: nearest(celsius, toCelsius(now.air.temperature)) },
    fitted: { main: now.setup.main.part?.number ?? null, clip: now.setup.clip.part },
  });
}

const nearest = (values: readonly number[], wanted: number): number =>
  values.reduce(
    (best, value, i) => (Math.abs(value - wanted) < Math.abs(values[best]! - wanted) ? i : best),
    0,
  );
