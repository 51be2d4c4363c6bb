import { highPass, lowPass } from "./low-pass.ts";
import { SampleTape } from "./sample-tape.ts";

/** Rate, a second, that the sound is first brought down to, about. */
const MIDDLE_RATE = 8000;
/** How much further down the streams go. */
const THIN = 4;
/** Takes the weight off wind and rumble. */
const PRE_EMPHASIS = 0.93;
/** The envelope is that of the sound above this, Hz: firing is heard there even when a phone cuts the low end. */
const ENVELOPE_ABOVE = 350;
/** The envelope is held against its own mean over this many seconds to either side. */
const ENVELOPE_MEAN = 0.15;
/** Samples taken at a time. */
const PIECE = 4096;
/** How far, in seconds, a frame may look to either side of its middle. */
export const REACH = 0.25;
/** Frames a second, about. */
const FRAMES_A_SECOND = 62.5;

/** The two streams a frame is made from, and how loud it was. Places are samples at `rate`. */
export interface EngineStreams {
  /** Samples a second of the streams: about 2000. */
  readonly rate: number;
  /** Samples between frames: about 16 ms. */
  readonly hop: number;
  /** The sound itself, flattened. */
  readonly wave: SampleTape;
  /** Its loudness against its own recent mean: keeps the firing rate when the sound has lost it. */
  readonly envelope: SampleTape;
  /** Mean square of the high-passed sound, one value every half hop. */
  readonly level: SampleTape;
  readonly push: (samples: Float32Array) => void;
  /** Goes on with the last moments backwards, so that the last frames can look ahead: silence would sound like a beat. */
  readonly finish: () => void;
  /** Seconds of sound taken in. */
  readonly seconds: () => number;
  /** Fraction of samples within 1.5 % of the loudest one: clipping flattens the peaks. */
  readonly flattened: () => number;
}

/** @param rate samples a second, at least 6000 */
export function engineStreams(rate: number): EngineStreams {
  if (!(rate >= 6000)) throw new RangeError(`Engine sound needs at least 6000 samples a second, got ${rate}`);
  const down = Math.max(1, Math.round(rate / MIDDLE_RATE));
  const middle = rate / down;
  const thin = middle / THIN;
  const hop = Math.round(thin / FRAMES_A_SECOND);
  const lead = Math.ceil(REACH * thin) + 8;

  const input = new SampleTape(6 * down);
  const first = decimator(input, lowPass(0.44 / down, 6 * down), down);
  const flat = new SampleTape(48);
  const rectified = new SampleTape(48);
  const toWave = decimator(flat, lowPass(0.44 / THIN, 24), THIN);
  const toEnvelope = decimator(rectified, lowPass(0.33 / THIN, 24), THIN);
  const wave = new SampleTape(lead);
  const loudness = new SampleTape(lead);
  const envelope = new SampleTape(lead);
  const level = new SampleTape(8);
  const high = highPass(ENVELOPE_ABOVE / middle);
  const past = { x1: 0, x2: 0, y1: 0, y2: 0, last: 0 };
  const halfHop = (hop * THIN) / 2;
  let power = 0;
  let inBlock = 0;

  const takeMiddle = (x: number): void => {
    flat.push(x - PRE_EMPHASIS * past.last);
    past.last = x;
    const y = high.b0 * x + high.b1 * past.x1 + high.b2 * past.x2 - high.a1 * past.y1 - high.a2 * past.y2;
    past.x2 = past.x1;
    past.x1 = x;
    past.y2 = past.y1;
    // A value this small is silence; letting it run on would only cost time.
    past.y1 = Math.abs(y) < 1e-30 ? 0 : y;
    rectified.push(Math.abs(y));
    power += y * y;
    inBlock += 1;
    if (inBlock >= halfHop) {
      level.push(power / inBlock);
      power = 0;
      inBlock = 0;
    }
    toWave(takeWave);
    toEnvelope(takeLoudness);
  };
  const takeWave = (x: number): void => wave.push(x);

  const spread = Math.round(ENVELOPE_MEAN * thin);
  let windowSum = 0;
  const takeLoudness = (value: number): void => {
    loudness.push(Math.sqrt(Math.max(0, value)));
    const end = loudness.end - 1;
    const from = end - 2 * spread;
    windowSum += loudness.kept[end - loudness.first]!;
    if (from > 0) windowSum -= loudness.kept[from - 1 - loudness.first]!;
    const at = end - spread;
    if (at < 0) return;
    const mean = windowSum / (end - Math.max(0, from) + 1);
    const relative = mean > 1e-9 ? loudness.kept[at - loudness.first]! / mean - 1 : 0;
    envelope.push(Math.max(-2, Math.min(2.5, relative)));
    loudness.forgetBefore(from - 1);
  };

  const peaks = new Uint32Array(512);
  let taken = 0;
  /** The last sound, as much as the last frames look ahead. */
  const tail = new Float32Array(Math.ceil((REACH + ENVELOPE_MEAN + 0.1) * rate));
  const keepTail = (samples: Float32Array): void => {
    const kept = Math.max(0, tail.length - samples.length);
    tail.copyWithin(0, tail.length - kept);
    tail.set(samples.subarray(Math.max(0, samples.length - tail.length)), kept);
  };
  /** In pieces, so that the row of input never grows long. */
  const take = (samples: Float32Array): void => {
    for (let from = 0; from < samples.length; from += PIECE) {
      input.pushAll(samples.subarray(from, from + PIECE));
      first(takeMiddle);
    }
  };
  return {
    rate: thin,
    hop,
    wave,
    envelope,
    level,
    push(samples) {
      for (let i = 0; i < samples.length; i++) {
        const size = Math.abs(samples[i]!) * 400;
        peaks[size < 511 ? Math.floor(size) : 511]! += 1;
      }
      take(samples);
      taken += samples.length;
      keepTail(samples);
    },
    finish() {
      take(tail.slice().reverse());
    },
    seconds: () => taken / rate,
    flattened() {
      let top = 511;
      while (top > 0 && peaks[top] === 0) top -= 1;
      if (top < 8) return 0;
      let near = 0;
      for (let bin = Math.ceil(top * 0.985); bin <= top; bin++) near += peaks[bin]!;
      return taken === 0 ? 0 : near / taken;
    },
  };
}

/** Gives a function that passes on every output that has become due, filter in the middle of its taps. */
function decimator(tape: SampleTape, taps: Float64Array, by: number): (out: (value: number) => void) => void {
  const half = (taps.length - 1) / 2;
  let next = 0;
  return (out) => {
    while (next + half < tape.end) {
      const { kept } = tape;
      const at = next - tape.first;
      // The taps are the same on either side.
      let sum = taps[half]! * kept[at]!;
      for (let i = 1; i <= half; i++) sum += taps[half + i]! * (kept[at - i]! + kept[at + i]!);
      out(sum);
      next += by;
      tape.forgetBefore(next - half);
    }
  };
}
