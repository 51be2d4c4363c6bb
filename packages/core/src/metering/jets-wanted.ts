import type { Jet } from "../parts/jet.ts";
import { type JetPlace, typicalSteps } from "../parts/jet-steps.ts";
import { accept, type Outcome } from "../units/outcome.ts";
import type { Kelvin, Metre } from "../units/quantity.ts";
import { altitudeChart, type ChartCell } from "./altitude-chart.ts";
import type { MeteringRefusal } from "./comparable.ts";
import type { Wanted } from "./jets-to-buy.ts";
import type { Situation } from "./situation.ts";

/** Steps richer than the leanest safe number that a jet still serves. An estimate of what riders put up with. */
const STEPS_RICH = 2;
/** Steps leaner than it: less than one jet of a packet differs from the next of the same number. An estimate. */
const STEPS_LEAN = 0.25;
/** Metres and kelvin between neighbouring places looked at: about half a main jet size each. */
const HEIGHT_STEP = 500;
const TEMPERATURE_STEP = 10;

/** Numbers from `low` to `high`, both in, evenly spread and never more than `step` apart. */
export function spread(low: number, high: number, step: number): readonly number[] {
  if (!(low <= high && step > 0)) {
    throw new RangeError(`A spread runs from low to high in steps above 0, got ${low} to ${high} by ${step}`);
  }
  const pieces = Math.ceil((high - low) / step - 1e-9);
  return Array.from({ length: pieces + 1 }, (_, i) =>
    pieces === 0 ? low : low + ((high - low) * i) / pieces,
  );
}

/** The heights and temperatures ridden in. */
export interface RidingRange {
  readonly lowest: Metre;
  readonly highest: Metre;
  readonly coldest: Kelvin;
  readonly hottest: Kelvin;
}

/**
 * The ranges of main and pilot jet numbers that serve a bike at places spread over the heights and temperatures it is
 * ridden in, for a setup that is right in its own air. A main jet serves from the number that is right at full throttle up to
 * two usual steps richer, and down to a quarter step leaner, which no eye tells from right. A pilot jet is wanted only where the screw cannot put closed throttle right
 * from 1/2 to 3 turns with the one fitted. Nothing is wanted of a jet that is not known. Refuses what `altitudeChart`
 * refuses.
 */
export function jetsWanted(
  bike: string,
  situation: Situation,
  { lowest, highest, coldest, hottest }: RidingRange,
): Outcome<Readonly<Record<JetPlace, readonly Wanted[]>>, MeteringRefusal | "outside the tables"> {
  const chart = altitudeChart(
    situation,
    spread(lowest, highest, HEIGHT_STEP) as readonly Metre[],
    spread(coldest, hottest, TEMPERATURE_STEP) as readonly Kelvin[],
  );
  if (!chart.ok) return chart;
  const wantedOf = (place: JetPlace): readonly Wanted[] => {
    const jet = situation.setup[place].part;
    if (jet === null) return [];
    return chart.value.cells.flat().map((cell) => ({
      bike,
      height: cell.height,
      temperature: cell.temperature,
      ...rangeOf(cell, jet, place),
      fitted: jet.number,
    }));
  };
  return accept({ main: wantedOf("main"), pilot: wantedOf("pilot") });
}

function rangeOf(cell: ChartCell, jet: Jet, place: JetPlace): Pick<Wanted, "least" | "most"> {
  if (place === "pilot" && cell.screwTurns !== null) return { least: jet.number, most: jet.number };
  const exact = place === "main" ? cell.exactMain : cell.exactPilot;
  if (exact === null) return { least: Infinity, most: Infinity };
  const [step] = typicalSteps({ ...jet, number: exact }, place);
  return { least: exact - STEPS_LEAN * step, most: exact + STEPS_RICH * step };
}
