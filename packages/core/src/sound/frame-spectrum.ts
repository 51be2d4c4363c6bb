import { type Fourier, fourier, lengthFor } from "../numerics/fourier.ts";
import type { EngineStreams } from "./engine-streams.ts";
import type { FrameReading } from "./slews.ts";

/** Loudness and slow tone colour drop out against the mean over this many Hz to either side. */
const LOCAL_MEAN = 250;
/** Brings plain noise to about unit spread. */
const SPREAD = 3.57;
/** One tone, such as mains hum or a ringing pipe, must not win alone; near a speed already chosen its peak must stay one. */
const MOST = { 1: 4, 2: 12 } as const;

/** How far each frequency stands out of its surroundings, in both streams; 0 is not at all, noise has spread 1. */
export interface FrameSpectrum {
  /** Hz from one value to the next. */
  readonly step: number;
  readonly wave: Float64Array;
  readonly envelope: Float64Array;
  /** Takes the frame whose middle is that place of the streams. */
  readonly take: (streams: EngineStreams, middle: number, reading: FrameReading) => void;
}

/** @param fold the transform is this many times longer than the frame needs, for a finer step */
export function frameSpectrum(samples: number, rate: number, fold: 1 | 2): FrameSpectrum {
  const length = lengthFor(samples) * fold;
  const turn = fourier(length);
  const size = length / 2;
  const step = rate / length;
  const wave = new Float64Array(size + 1);
  const envelope = new Float64Array(size + 1);
  const re = new Float64Array(length);
  const im = new Float64Array(length);
  const around = Math.max(4, Math.round(LOCAL_MEAN / step));
  const sums = new Float64Array(size + 2);
  return {
    step,
    wave,
    envelope,
    take(streams, middle, reading) {
      read(streams, middle, reading, re, im);
      transformPair(turn, re, im, wave, envelope);
      standOut(wave, sums, around, MOST[fold]);
      standOut(envelope, sums, around, MOST[fold]);
    },
  };
}

function read(
  { wave, envelope }: EngineStreams,
  middle: number,
  { length, at, weights, plain }: FrameReading,
  re: Float64Array,
  im: Float64Array,
): void {
  const x = wave.kept;
  const y = envelope.kept;
  const toX = middle - wave.first;
  const toY = middle - envelope.first;
  if (plain !== null) {
    for (let n = 0; n < length; n++) {
      re[n] = plain[n]! * x[toX + at[n]!]!;
      im[n] = plain[n]! * y[toY + at[n]!]!;
    }
  } else {
    for (let n = 0; n < length; n++) {
      const i = toX + at[n]!;
      const j = toY + at[n]!;
      const a = weights[4 * n]!;
      const b = weights[4 * n + 1]!;
      const c = weights[4 * n + 2]!;
      const d = weights[4 * n + 3]!;
      re[n] = a * x[i]! + b * x[i + 1]! + c * x[i + 2]! + d * x[i + 3]!;
      im[n] = a * y[j]! + b * y[j + 1]! + c * y[j + 2]! + d * y[j + 3]!;
    }
  }
  re.fill(0, length);
  im.fill(0, length);
}

/** Both real streams in one complex transform, told apart by symmetry; gives the fourth root of their power. */
function transformPair(
  { length, transform }: Fourier,
  re: Float64Array,
  im: Float64Array,
  wave: Float64Array,
  envelope: Float64Array,
): void {
  transform(re, im);
  const mask = length - 1;
  for (let k = 0; k <= length / 2; k++) {
    const m = (length - k) & mask;
    const sumRe = re[k]! + re[m]!;
    const lessRe = re[k]! - re[m]!;
    const sumIm = im[k]! + im[m]!;
    const lessIm = im[k]! - im[m]!;
    wave[k] = Math.sqrt(Math.sqrt(sumRe * sumRe + lessIm * lessIm));
    envelope[k] = Math.sqrt(Math.sqrt(sumIm * sumIm + lessRe * lessRe));
  }
}

function standOut(values: Float64Array, sums: Float64Array, around: number, most: number): void {
  const size = values.length;
  let sum = 0;
  for (let k = 0; k < size; k++) {
    sums[k] = sum;
    sum += values[k]!;
  }
  sums[size] = sum;
  for (let k = 0; k < size; k++) {
    const from = k > around ? k - around : 0;
    const to = Math.min(k + around + 1, size);
    const local = sums[to]! - sums[from]!;
    const value = local > 1e-12 ? SPREAD * ((values[k]! * (to - from)) / local - 1) : 0;
    values[k] = Math.min(most, value);
  }
}
