import { comb, combAt, waveAt } from "./comb.ts";
import type { EngineStreams } from "./engine-streams.ts";
import { type FiringGrid, octaves } from "./firing-grid.ts";
import { type FrameSpectrum, frameSpectrum } from "./frame-spectrum.ts";
import { type FrameReading, frameReading, SLEWS, STEADY } from "./slews.ts";

/** Windows, in seconds, and the firing frequencies each is for: low ones need longer to be told apart. */
const WINDOWS = [
  { seconds: 0.38, from: 0, to: 29 },
  { seconds: 0.19, from: 24, to: 66 },
  { seconds: 0.09, from: 52, to: Infinity },
] as const;

/** A window in which the speed moves is that much shorter, for no speed changes evenly for long. */
const MOVING = 0.75;

interface Band {
  /** Places of the grid it serves. */
  readonly from: number;
  readonly to: number;
  /** Its share of the answer there; neighbours fade into each other. */
  readonly share: Float64Array;
  readonly readings: readonly FrameReading[];
  readonly spectrum: FrameSpectrum;
  readonly fine: FrameSpectrum;
  /** Where each frequency of the grid lies in the spectrum. */
  readonly index: Int32Array;
  readonly part: Float64Array;
}

/** A firing frequency read finely. */
export interface Refined {
  /** Hz. */
  readonly frequency: number;
  /** Part of the evidence that lies in the sound itself, not in its beat alone: an engine has 0.2 and more. */
  readonly toneShare: number;
}

/** How well each firing frequency of the grid explains the sound at a moment. */
export interface Salience {
  /** Fills `row` (grid.size values) for the frame at that place of the streams, changing at that slew. */
  readonly row: (streams: EngineStreams, middle: number, slew: number, row: Float64Array) => void;
  /** The firing frequency near a guess that explains the frame best, to a fraction of a grid step. */
  readonly refine: (streams: EngineStreams, middle: number, slew: number, guess: number) => Refined;
  /** How far each frequency of the grid's reach stood out in the last steady row: what a picture shows. */
  readonly picture: Float64Array;
}

/** @param pictures whether `picture` is filled */
export function salience(grid: FiringGrid, rate: number, top: number, pictures: boolean): Salience {
  const teeth = comb(grid, top);
  const bands = WINDOWS.filter(({ to }) => to > grid.lowest).map((window, i, all) =>
    makeBand(window, all[i - 1]?.to ?? 0, all[i + 1]?.from ?? Infinity, grid, rate, top),
  );
  const onGridWave = new Float64Array(grid.reach);
  const onGridEnvelope = new Float64Array(grid.reach);
  const part = new Float64Array(grid.size);
  const picture = new Float64Array(grid.reach);

  const row: Salience["row"] = (streams, middle, slew, out) => {
    const drawn = pictures && slew === STEADY;
    out.fill(0);
    if (drawn) picture.fill(0);
    for (const band of bands) {
      band.spectrum.take(streams, middle, band.readings[slew]!);
      layOnGrid(band, drawn ? grid.reach : Math.min(grid.reach, band.to + teeth.reach));
      teeth.sum(onGridWave, onGridEnvelope, band.from, band.to, part);
      for (let i = band.from; i < band.to; i++) out[i]! += band.share[i]! * part[i]!;
      if (drawn) draw(band);
    }
  };

  const layOnGrid = ({ spectrum, index, part: parts, from }: Band, to: number): void => {
    const { wave, envelope } = spectrum;
    for (let i = from; i < to; i++) {
      const k = index[i]!;
      const f = parts[i]!;
      onGridWave[i] = wave[k]! + f * (wave[k + 1]! - wave[k]!);
      onGridEnvelope[i] = envelope[k]! + f * (envelope[k + 1]! - envelope[k]!);
    }
  };

  const draw = (band: Band): void => {
    for (let i = band.from; i < grid.reach; i++) {
      // Each part of the picture from the window that serves it; the shortest one serves all above.
      const share = i < grid.size ? band.share[i]! : band.to === grid.size ? 1 : 0;
      picture[i]! += share * Math.max(onGridWave[i]!, onGridEnvelope[i]!);
    }
  };

  const refine: Salience["refine"] = (streams, middle, slew, guess) => {
    const place = Math.max(0, Math.min(grid.size - 1, Math.round(grid.place(guess))));
    let band = bands[0]!;
    for (const each of bands) if (each.share[place]! > band.share[place]!) band = each;
    band.fine.take(streams, middle, band.readings[slew]!);
    const { wave, envelope, step } = band.fine;
    for (let k = 0; k < TRIES.length; k++) {
      scores[k] = combAt(guess * TRIES[k]!, wave, envelope, step, top);
    }
    let best = 1;
    for (let k = 2; k < TRIES.length - 1; k++) if (scores[k]! > scores[best]!) best = k;
    const [left, mid, right] = [scores[best - 1]!, scores[best]!, scores[best + 1]!];
    const bend = left - 2 * mid + right;
    const offset = bend < 0 ? Math.max(-1, Math.min(1, (0.5 * (left - right)) / bend)) : 0;
    const frequency = guess * (TRIES[best]! + offset * TRY_STEP);
    return { frequency, toneShare: waveAt(frequency, wave, step, top) / Math.max(1, mid) };
  };
  return { row, refine, picture };
}

const TRY_STEP = 0.006;
const TRIES = Array.from({ length: 11 }, (_, k) => 1 + (k - 5) * TRY_STEP);
const scores = new Float64Array(TRIES.length);

function makeBand(
  window: { readonly seconds: number; readonly from: number; readonly to: number },
  fadeInTo: number,
  fadeOutFrom: number,
  grid: FiringGrid,
  rate: number,
  top: number,
): Band {
  const share = new Float64Array(grid.size);
  let from = grid.size;
  let to = 0;
  for (let i = 0; i < grid.size; i++) {
    const f = grid.frequency(i);
    const fadeIn = fadeInTo > window.from ? octaves(f / window.from) / octaves(fadeInTo / window.from) : 1;
    const fadeOut = fadeOutFrom < window.to ? octaves(window.to / f) / octaves(window.to / fadeOutFrom) : 1;
    share[i] = Math.max(0, Math.min(1, fadeIn, fadeOut));
    if (share[i]! > 0) {
      from = Math.min(from, i);
      to = i + 1;
    }
  }
  const samples = 2 * Math.floor((window.seconds / 2) * rate) + 1;
  const spectrum = frameSpectrum(samples, rate, top, 1);
  const index = new Int32Array(grid.reach);
  const part = new Float64Array(grid.reach);
  for (let i = 0; i < grid.reach; i++) {
    const at = Math.min(grid.frequency(i) / spectrum.step, spectrum.wave.length - 1.001);
    index[i] = Math.floor(at);
    part[i] = at - Math.floor(at);
  }
  return {
    from,
    to,
    share,
    readings: SLEWS.map((slew) => frameReading(window.seconds * (slew === 0 ? 1 : MOVING), slew, rate)),
    spectrum,
    fine: frameSpectrum(samples, rate, top, 2),
    index,
    part,
  };
}
