import { log, power } from "../numerics/elementary.ts";
import { type EngineSound, firingsPerRpm, SPEED_RANGE } from "./engine-sound.ts";

/** Steps of the grid to an octave. */
export const STEPS = 40;

/**
 * Frequencies in equal steps of 1/40 octave. Place 0 is the lowest firing frequency looked for; two-strokes
 * get an octave more below, where an engine that fires every second turn is heard.
 */
export interface FiringGrid {
  readonly lowest: number;
  /** Number of firing frequencies. */
  readonly size: number;
  /** Number of frequencies up to the highest tooth. */
  readonly reach: number;
  /** Place of the lowest true speed: STEPS when an octave was added, else 0. */
  readonly speedsFrom: number;
  readonly frequency: (place: number) => number;
  readonly place: (frequency: number) => number;
}

const LOG_2 = log(2);

/** log to base 2. */
export const octaves = (ratio: number): number => log(ratio) / LOG_2;

/** @param top highest frequency the streams hold, Hz */
export function firingGrid(engine: EngineSound, top: number): FiringGrid {
  const perRpm = firingsPerRpm(engine);
  const speedsFrom = engine.strokes === 2 ? STEPS : 0;
  const lowest = (SPEED_RANGE.lowest * perRpm) / (speedsFrom > 0 ? 2 : 1);
  const highest = SPEED_RANGE.highest * perRpm;
  const place = (frequency: number): number => octaves(frequency / lowest) * STEPS;
  return {
    lowest,
    size: Math.floor(place(highest)) + 1,
    reach: Math.floor(place(top)) + 1,
    speedsFrom,
    frequency: (at) => lowest * power(2, at / STEPS),
    place,
  };
}
