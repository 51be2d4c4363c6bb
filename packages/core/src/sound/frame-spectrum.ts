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
  /** Hz from one value to the next; the values reach one beyond `top`. */
  readonly step: number;
  readonly wave: Float64Array;
  readonly envelope: Float64Array;
  /** Takes the frame whose middle is that place of the streams. */
  readonly take: (streams: EngineStreams, middle: number, reading: FrameReading) => void;
}

/**
 * @param top highest frequency that is asked for, Hz
 * @param fold the transform is this many times longer than the frame needs, for a finer step
 */
export function frameSpectrum(samples: number, rate: number, top: number, fold: 1 | 2): FrameSpectrum {
  const length = lengthFor(samples) * fold;
  const turn = fourier(length);
  const size = length / 2;
  const step = rate / length;
  const wave = new Float64Array(size + 1);
  const envelope = new Float64Array(size + 1);
  const re = new Float64Array(length);
  const im = new Float64Array(length);
  const around = Math.max(4, Math.round(LOCAL_MEAN / step));
  const waveSums = new Float64Array(size + 2);
  const envelopeSums = new Float64Array(size + 2);
  const end = Math.min(size + 1, Math.ceil(top / step) + 2);
  return {
    step,
    wave,
    envelope,
    take(streams, middle, reading) {
      read(streams, middle, reading, re, im);
      transformPair(turn, re, im, { wave, envelope, waveSums, envelopeSums });
      standOut(wave, waveSums, around, MOST[fold], end);
      standOut(envelope, envelopeSums, around, MOST[fold], end);
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

/** What a transform of both streams gives: the fourth root of their power, and the sum of all values before each. */
interface PairSpectrum {
  readonly wave: Float64Array;
  readonly envelope: Float64Array;
  readonly waveSums: Float64Array;
  readonly envelopeSums: Float64Array;
}

/** Both real streams in one complex transform, told apart by symmetry. */
function transformPair(
  { length, transform }: Fourier,
  re: Float64Array,
  im: Float64Array,
  { wave, envelope, waveSums, envelopeSums }: PairSpectrum,
): void {
  transform(re, im);
  const mask = length - 1;
  let waveSum = 0;
  let envelopeSum = 0;
  for (let k = 0; k <= length / 2; k++) {
    const m = (length - k) & mask;
    const sumRe = re[k]! + re[m]!;
    const lessRe = re[k]! - re[m]!;
    const sumIm = im[k]! + im[m]!;
    const lessIm = im[k]! - im[m]!;
    const x = Math.sqrt(Math.sqrt(sumRe * sumRe + lessIm * lessIm));
    const y = Math.sqrt(Math.sqrt(sumIm * sumIm + lessRe * lessRe));
    wave[k] = x;
    envelope[k] = y;
    waveSums[k] = waveSum;
    envelopeSums[k] = envelopeSum;
    waveSum += x;
    envelopeSum += y;
  }
  waveSums[length / 2 + 1] = waveSum;
  envelopeSums[length / 2 + 1] = envelopeSum;
}

/**
 * Lays each value up to `end` against the mean of those within `around` of it, of which there are fewer at the ends.
 * @param sums sum of all values before each, one more than there are values
 */
export function standOut(
  values: Float64Array,
  sums: Float64Array,
  around: number,
  most: number,
  end: number,
): void {
  const size = values.length;
  const inner = Math.min(end, size - around);
  const first = Math.min(around, end);
  for (let k = 0; k < first; k++) layOne(values, sums, k, 0, Math.min(k + around + 1, size), most);
  const scale = SPREAD * (2 * around + 1);
  for (let k = first; k < inner; k++) {
    const local = sums[k + around + 1]! - sums[k - around]!;
    values[k] = local > 1e-12 ? Math.min(most, (scale * values[k]!) / local - SPREAD) : 0;
  }
  for (let k = Math.max(first, inner); k < end; k++) layOne(values, sums, k, k - around, size, most);
}

function layOne(
  values: Float64Array,
  sums: Float64Array,
  k: number,
  from: number,
  to: number,
  most: number,
): void {
  const local = sums[to]! - sums[from]!;
  values[k] = local > 1e-12 ? Math.min(most, SPREAD * ((values[k]! * (to - from)) / local - 1)) : 0;
}
