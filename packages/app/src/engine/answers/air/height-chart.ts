import { accept, altitudeChart, fromCelsius, fromMetre, type Outcome } from "@jetwright/core";
import type { EngineState } from "../../state.ts";
import { type JetSource, sizesFor } from "./mains-at-hand.ts";
import { type RightAir, ranRight } from "./ran-right.ts";

export interface HeightChart {
  /** The air everything is counted from. */
  readonly from: RightAir;
  readonly heights: readonly number[];
  readonly celsius: readonly number[];
  /** By height, then temperature; null where nothing at hand is rich enough or the part is not known. */
  readonly cells: readonly (readonly { readonly main: number | null; readonly clip: number | null }[])[];
  /** The cell nearest to the air counted from. */
  readonly base: { readonly row: number; readonly column: number };
  readonly fitted: { readonly main: number | null; readonly clip: number | null };
}

/** Main jet and clip by height and temperature, for a setup that is right in the air it is counted from. */
export function heightChart(
  { shop }: EngineState,
  {
    bike,
    heights,
    celsius,
    source,
  }: {
    readonly bike: string;
    readonly heights: readonly number[];
    readonly celsius: readonly number[];
    readonly source: JetSource;
  },
): Outcome<HeightChart> {
  const base = ranRight(shop, bike);
  if (!base.ok) return base;
  const { situation, bikeCase, air } = base.value;
  const { main, clip } = situation.setup;
  const chart = altitudeChart(
    situation,
    heights.map(fromMetre),
    celsius.map(fromCelsius),
    main.part === null ? {} : { mains: sizesFor(main.part, "main", bikeCase.drawer, source) },
  );
  if (!chart.ok) return chart;
  return accept({
    from: air,
    heights,
    celsius,
    cells: chart.value.cells.map((row) => row.map(({ main, clip }) => ({ main, clip }))),
    base: { row: nearest(heights, air.heightM), column: nearest(celsius, air.celsius) },
    fitted: { main: main.part?.number ?? null, clip: clip.part },
  });
}

const nearest = (values: readonly number[], wanted: number): number =>
  values.reduce(
    (best, value, i) => (Math.abs(value - wanted) < Math.abs(values[best]! - wanted) ? i : best),
    0,
  );
