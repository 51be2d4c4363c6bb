import { power } from "../numerics/elementary.ts";
import { type FiringGrid, octaves, STEPS } from "./firing-grid.ts";

interface Tooth {
  readonly multiple: number;
  readonly weight: number;
}

/** Weight of each multiple of the firing frequency in the sound itself and in its envelope. */
const WAVE_TEETH: readonly Tooth[] = Array.from({ length: 10 }, (_, i) => ({
  multiple: i + 1,
  weight: power(i + 1, -0.35),
}));
const ENVELOPE_TEETH: readonly Tooth[] = Array.from({ length: 6 }, (_, i) => ({
  multiple: i + 1,
  weight: 1.3 * power(i + 1, -0.5),
}));

/** Where teeth may lie, Hz. */
export const WAVE_FROM = 45;
export const ENVELOPE_TO = 480;

/**
 * Sums how far the multiples of each firing frequency stand out, over the root of the summed squared weights.
 * That scale is what puts a frequency above both its half and its double: a comb with half its teeth in the gaps, or
 * with only every second tooth, gets 1/√2 of the score.
 */
export interface Comb {
  /** Grid steps from a firing frequency to its highest tooth. */
  readonly reach: number;
  /** For grid places from…to−1, from spectra laid on the grid; writes into `out`. */
  readonly sum: (
    wave: Float64Array,
    envelope: Float64Array,
    from: number,
    to: number,
    out: Float64Array,
  ) => void;
}

interface PlacedTooth {
  readonly weight: number;
  readonly shift: number;
  readonly from: number;
  readonly to: number;
}

export function comb(grid: FiringGrid, top: number): Comb {
  const placed = (teeth: readonly Tooth[], low: number, high: number): PlacedTooth[] =>
    teeth.map(({ multiple, weight }) => {
      const shift = Math.round(STEPS * octaves(multiple));
      const from = Math.max(0, Math.ceil(grid.place(low)) - shift);
      const to = Math.min(grid.size, Math.floor(grid.place(high)) + 1 - shift, grid.reach - shift);
      return { weight, shift, from, to };
    });
  const wave = placed(WAVE_TEETH, WAVE_FROM, top);
  const envelope = placed(ENVELOPE_TEETH, 0.1, Math.min(ENVELOPE_TO, top));
  const scale = new Float64Array(grid.size);
  for (const { weight, from, to } of [...wave, ...envelope]) {
    for (let i = from; i < to; i++) scale[i]! += weight * weight;
  }
  for (let i = 0; i < grid.size; i++) scale[i] = scale[i]! > 0 ? 1 / Math.sqrt(scale[i]!) : 0;

  const add = (
    teeth: readonly PlacedTooth[],
    values: Float64Array,
    from: number,
    to: number,
    out: Float64Array,
  ): void => {
    for (const tooth of teeth) {
      const { weight, shift } = tooth;
      const end = Math.min(to, tooth.to);
      for (let i = Math.max(from, tooth.from); i < end; i++) out[i]! += weight * values[i + shift]!;
    }
  };
  return {
    reach: Math.max(...[...wave, ...envelope].map(({ shift }) => shift)) + 1,
    sum(waveValues, envelopeValues, from, to, out) {
      out.fill(0, from, to);
      add(wave, waveValues, from, to, out);
      add(envelope, envelopeValues, from, to, out);
      for (let i = from; i < to; i++) out[i]! *= scale[i]!;
    },
  };
}

/** The same sum at one frequency off the grid, from spectra by frequency with that step between values. */
export function combAt(
  frequency: number,
  wave: Float64Array,
  envelope: Float64Array,
  step: number,
  top: number,
): number {
  let { sum, squares } = waveTeethAt(frequency, wave, step, top);
  for (const { multiple, weight } of ENVELOPE_TEETH) {
    const f = multiple * frequency;
    if (f > ENVELOPE_TO || f > top) continue;
    sum += weight * between(envelope, f / step);
    squares += weight * weight;
  }
  return squares > 0 ? sum / Math.sqrt(squares) : 0;
}

/** What the sound itself, without its envelope, says for one frequency: a noise that is only switched on and off says nothing. */
export function waveAt(frequency: number, wave: Float64Array, step: number, top: number): number {
  const { sum, squares } = waveTeethAt(frequency, wave, step, top);
  return squares > 0 ? sum / Math.sqrt(squares) : 0;
}

function waveTeethAt(frequency: number, wave: Float64Array, step: number, top: number) {
  let sum = 0;
  let squares = 0;
  for (const { multiple, weight } of WAVE_TEETH) {
    const f = multiple * frequency;
    if (f < WAVE_FROM || f > top) continue;
    sum += weight * between(wave, f / step);
    squares += weight * weight;
  }
  return { sum, squares };
}

const between = (values: Float64Array, at: number): number => {
  const whole = Math.floor(at);
  const f = at - whole;
  return values[whole]! * (1 - f) + values[whole + 1]! * f;
};
