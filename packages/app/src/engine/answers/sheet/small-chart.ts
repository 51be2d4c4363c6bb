import {
  accept,
  altitudeChart,
  type ChartCell,
  type Drawer,
  fromCelsius,
  fromFahrenheit,
  fromFoot,
  fromMetre,
  type Jet,
  type Outcome,
  pressureAltitude,
  type Situation,
  toCelsius,
  toFahrenheit,
  toFoot,
  typicalSteps,
} from "@jetwright/core";
import { LEAN_EDGE, RICH_EDGE } from "./stays-right.ts";

export interface SmallCell {
  /** Everything stays as it is. */
  readonly asIs: boolean;
  /** Main jet to fit there; null where not known. */
  readonly main: number | null;
  /** Groove to use, where it differs from the one fitted; null where it does not or is not known. */
  readonly clip: number | null;
  /** Percent at the opening that is furthest off with nothing changed; above zero rich. */
  readonly furthest: number;
}

/** Main jet and clip by height and temperature, headed in the person's own units. */
export interface SmallChart {
  readonly heights: readonly number[];
  readonly heightUnit: "m" | "ft";
  readonly temperatures: readonly number[];
  readonly temperatureUnit: "C" | "F";
  /** By height, then temperature. */
  readonly cells: readonly (readonly SmallCell[])[];
}

export interface ChartUnits {
  readonly height: "m" | "ft";
  readonly temperature: "C" | "F";
}

/** Rows and columns of the chart, and their steps: round figures that a rider in hill country meets. */
const ROWS = 6;
const COLUMNS = 6;
const HEIGHT_STEP = { m: 500, ft: 1500 };
const TEMPERATURE_STEP = { C: 8, F: 15 };

/** Round figures with the one in the middle nearest to where the bike is now. */
function around(here: number, step: number, count: number, least: number): readonly number[] {
  const first = Math.max(least, Math.round(here / step) * step - Math.floor((count - 1) / 2) * step);
  return Array.from({ length: count }, (_, i) => first + i * step);
}

/** The small chart for a setup, round the air it is right in. */
export function smallChart(base: Situation, drawer: Drawer, units: ChartUnits): Outcome<SmallChart> {
  const inMetres = units.height === "m" ? fromMetre : fromFoot;
  const inKelvin = units.temperature === "C" ? fromCelsius : fromFahrenheit;
  const ground = pressureAltitude(base.air.pressure);
  const height = units.height === "m" ? ground : toFoot(ground);
  const warmth =
    units.temperature === "C" ? toCelsius(base.air.temperature) : toFahrenheit(base.air.temperature);
  const heights = around(height, HEIGHT_STEP[units.height], ROWS, 0);
  const temperatures = around(warmth, TEMPERATURE_STEP[units.temperature], COLUMNS, -273);
  const { main, clip } = base.setup;
  const chart = altitudeChart(base, heights.map(inMetres), temperatures.map(inKelvin), {
    ...(main.part !== null && { mains: mainsToHad(main.part, drawer) }),
  });
  if (!chart.ok) return chart;
  return accept({
    heights,
    heightUnit: units.height,
    temperatures,
    temperatureUnit: units.temperature,
    cells: chart.value.cells.map((row) =>
      row.map((cell) => {
        const far = cell.unchanged.reduce((a, b) => (Math.abs(b) > Math.abs(a) ? b : a), 0);
        const asIs = cell.unchanged.every((x) => x >= LEAN_EDGE && x <= RICH_EDGE);
        return {
          asIs,
          main: asIs ? (main.part?.number ?? null) : believable(cell, main.part),
          clip: asIs || cell.clip === clip.part ? null : cell.clip,
          furthest: far * 100,
        };
      }),
    ),
  });
}

/** Another main jet is no answer where it would have to be a fifth smaller or a quarter larger: the needle is. */
const believable = ({ exactMain, main }: ChartCell, fitted: Jet | null): number | null =>
  fitted === null || exactMain === null || exactMain < fitted.number * 0.8 || exactMain > fitted.number * 1.25
    ? null
    : main;

/** Main jet numbers that can be had: those in the drawer of this numbering, and the usual steps round the one fitted. */
export function mainsToHad(fitted: Jet, drawer: Drawer): readonly number[] {
  const owned = drawer.mains
    .filter(({ part, count }) => count > 0 && part.numbering === fitted.numbering)
    .map(({ part }) => part.number);
  const [step] = typicalSteps(fitted, "main");
  const lowest = Math.ceil((fitted.number * 0.7) / step) * step;
  const sold: number[] = [];
  for (let number = lowest; number <= fitted.number * 1.3; number += step) sold.push(number);
  return [...new Set([...owned, ...sold, fitted.number])].sort((a, b) => a - b);
}
