import { known } from "../parts/known.ts";
import type { Setup } from "../parts/setup.ts";
import { OPENINGS } from "../units/opening.ts";
import { accept, type Outcome } from "../units/outcome.ts";
import type { Kelvin, Metre } from "../units/quantity.ts";
import { type AirLookup, usualAir } from "./air-lookup.ts";
import type { MeteringRefusal } from "./comparable.ts";
import { totalAt } from "./compare.ts";
import { mainNumberFor, richSize } from "./main-alone.ts";
import { crossing } from "./search.ts";
import { type Baseline, baselineOf, otherSide, shiftOf } from "./shift.ts";
import type { Situation } from "./situation.ts";

/** What one height and temperature ask of the setup. */
export interface ChartCell {
  readonly height: Metre;
  readonly temperature: Kelvin;
  /** Log of the mixture of the setup left alone, at the eleven OPENINGS. */
  readonly unchanged: readonly number[];
  /** Main jet that by itself puts full throttle right; null where not known, or where no main jet can. */
  readonly exactMain: number | null;
  /** The smallest size of the list that is not leaner; null where the list has none. */
  readonly main: number | null;
  /** Clip groove that then puts 1/2 right, as a fraction; null where no groove on the needle can. */
  readonly exactClip: number | null;
  /** Whole groove to use: closest at 1/2, and never leaner than wanted from 3/4 up; null where not known. */
  readonly clip: number | null;
  /** Pilot jet that by itself puts closed right; null where not known. */
  readonly exactPilot: number | null;
  /** Screw setting, turns out, that puts closed right without another pilot jet; null beyond 0.5 to 3 turns. */
  readonly screwTurns: number | null;
}

export interface AltitudeChart {
  readonly heights: readonly Metre[];
  readonly temperatures: readonly Kelvin[];
  /** By height, then temperature. */
  readonly cells: readonly (readonly ChartCell[])[];
}

export interface ChartOptions {
  /** Main jet numbers that can be had; left out: every whole number. */
  readonly mains?: readonly number[];
  /** 0 to 1; left out: 0.5. */
  readonly relativeHumidity?: number;
  readonly air?: AirLookup;
}

const CLOSED = 0;
const HALF = 6;
const FULL = 10;
const WIDE = [8, 9, 10] as const;
const SCREW_RANGE = [0.5, 3] as const;

/** Main jet, clip, pilot jet and screw by height and temperature, for a setup that ran right in its own air. */
export function altitudeChart(
  situation: Situation,
  heights: readonly Metre[],
  temperatures: readonly Kelvin[],
  options: ChartOptions = {},
): Outcome<AltitudeChart, MeteringRefusal | "outside the tables"> {
  const baseline = baselineOf(situation);
  if (!baseline.ok) return baseline;
  const lookup = options.air ?? usualAir;
  const cells: ChartCell[][] = [];
  for (const height of heights) {
    const row: ChartCell[] = [];
    for (const temperature of temperatures) {
      const air = lookup(height, temperature, options.relativeHumidity ?? 0.5);
      if (!air.ok) return air;
      const error = errorIn(baseline.value, { ...situation, air: air.value });
      if (!error.ok) return error;
      row.push({
        height,
        temperature,
        ...adviceFor(baseline.value, situation.setup, error.value, options.mains),
      });
    }
    cells.push(row);
  }
  return accept({ heights, temperatures, cells });
}

/** Mixture error at every opening of other parts in that air; the parts are known to be comparable. */
type ErrorOf = (parts: Partial<Setup>) => readonly number[];

function errorIn(baseline: Baseline, there: Situation): Outcome<ErrorOf, MeteringRefusal> {
  const { frame, side } = baseline;
  const errors = (parts: Partial<Setup>): Outcome<readonly number[], MeteringRefusal> => {
    const other = otherSide(baseline, { ...there, setup: { ...there.setup, ...parts } });
    if (!other.ok) return other;
    const shift = shiftOf(frame, side, other.value);
    return accept(OPENINGS.map((_, i) => totalAt(shift, i)));
  };
  const unchanged = errors({});
  if (!unchanged.ok) return unchanged;
  return accept((parts) => {
    const result = errors(parts);
    if (!result.ok) throw new RangeError(result.detail);
    return result.value;
  });
}

function adviceFor(
  { frame, side }: Baseline,
  setup: Setup,
  errorOf: ErrorOf,
  mains: readonly number[] | undefined,
): Omit<ChartCell, "height" | "temperature"> {
  const unchanged = errorOf({});
  const { main, clip, needle, pilot, screw, body } = setup;
  const exactMain = main.part && mainNumberFor(frame, side, main.part, FULL, unchanged[FULL]!);
  const chosen = exactMain === null ? null : richSize(exactMain, mains);
  const withMain = (number: number | null): Partial<Setup> =>
    main.part === null || number === null ? {} : { main: known({ ...main.part, number }) };

  const grooves = needle.part?.grooves ?? null;
  const moves = grooves !== null && clip.part !== null;
  const exactClip = moves
    ? crossing(
        (groove) => errorOf({ ...withMain(exactMain), clip: known(groove) })[HALF]!,
        0.5,
        grooves + 0.5,
      )
    : null;
  const exactPilot =
    pilot.part === null
      ? null
      : crossing(
          (number) => errorOf({ pilot: known({ ...pilot.part!, number }) })[CLOSED]!,
          Math.max(5, pilot.part.number / 3),
          Math.min(1999, pilot.part.number * 3),
        );
  const screwTurns =
    screw.part === null
      ? null
      : crossing(
          (turnsOut) => errorOf({ screw: known({ kind: body.screwKind, turnsOut }) })[CLOSED]!,
          ...SCREW_RANGE,
        );
  return {
    unchanged,
    exactMain,
    main: chosen,
    exactClip,
    clip: moves
      ? wholeGroove((groove) => errorOf({ ...withMain(chosen), clip: known(groove) }), grooves, clip.part!)
      : null,
    exactPilot,
    screwTurns,
  };
}

/** A groove that comes closer by less than this, ln ratio, is not worth the move. */
const NOT_WORTH_MOVING = 0.003;

/** The whole groove closest at 1/2 that is not leaner than wanted from 3/4 up; the richest if none is. */
function wholeGroove(errorAt: (groove: number) => readonly number[], grooves: number, now: number): number {
  let best = grooves;
  let bestCost = Infinity;
  for (let groove = 1; groove <= grooves; groove++) {
    const error = errorAt(groove);
    if (WIDE.some((i) => error[i]! < -1e-9)) continue;
    const cost = Math.abs(error[HALF]!) + (groove === now ? 0 : NOT_WORTH_MOVING);
    if (cost < bestCost) [best, bestCost] = [groove, cost];
  }
  return best;
}
