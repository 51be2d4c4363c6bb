import { accept, type Outcome, refuse } from "../units/outcome.ts";
import { middle, share } from "./speed-line.ts";

/** Engine speed counted from its sparks: the reference that sound is held against. */
export interface SparkSpeed {
  /** Seconds of each spark from the start of the recording. */
  readonly sparks: Float64Array;
  /** Revolutions a minute at a moment, between the sparks around it; null where sparks are missing or odd. */
  readonly at: (seconds: number) => number | null;
  /** Part of the intervals that did not fit their neighbours and were left out. */
  readonly oddShare: number;
}

export type SparkRefusal = "no-pulses" | "uneven-pulses";

/** Every stretch of so many seconds holds a spark, down to 480 revolutions a minute with one every second turn. */
const STRETCH = 0.25;
/** A spark is at least this part of the usual highest step of a stretch. */
const PART = 0.45;
/** Sparks stand out of the rest of the channel by this factor at least. */
const STANDS_OUT = 8;
/** The ringing of one spark is over after this part of the shortest interval there can be. */
const RINGING = 0.7;
const FASTEST = 16000;
/** An interval further than this from the middle of its neighbours is a spark missed or one too many, ratio. */
const FITS = 1.35;
/** More odd intervals than this are no clean reference. */
const MOST_ODD = 0.05;
/** Without a spark for so long, seconds, the speed is not known. */
const LONGEST = 0.3;

/**
 * Counts the sparks of a single from the channel of an inductive pick-up round the plug lead: steep pulses of any
 * shape and either sign. Tested on made pulses only.
 * @param sparksPerTurn 1, or 0.5 where it sparks every second turn
 */
export function sparkSpeed(
  channel: Float32Array,
  rate: number,
  sparksPerTurn: 1 | 0.5,
): Outcome<SparkSpeed, SparkRefusal> {
  const steps = new Float32Array(channel.length);
  for (let i = 1; i < channel.length; i++) steps[i] = Math.abs(channel[i]! - channel[i - 1]!);
  const highest = highestByStretch(steps, Math.max(1, Math.round(STRETCH * rate)));
  const usual = highest.length === 0 ? 0 : middle(highest);
  const rest = middleOfSome(steps);
  if (!(usual > 0) || usual < STANDS_OUT * rest) {
    return refuse(
      "no-pulses",
      "The second channel holds no clear sparks. Check the clamp round the plug lead, its cable and the level, and that both channels were recorded.",
    );
  }
  const silent = (RINGING * 60) / (FASTEST * sparksPerTurn);
  const sparks: number[] = [];
  for (let i = 1; i < steps.length; i++) {
    if (steps[i]! < PART * usual || i / rate - (sparks.at(-1) ?? -1) < silent) continue;
    sparks.push(i / rate);
  }
  const { rpm, oddShare } = speeds(sparks, sparksPerTurn);
  if (sparks.length < 10 || oddShare > MOST_ODD) {
    return refuse(
      "uneven-pulses",
      `The sparks on the second channel are not even enough to count: ${Math.round(100 * oddShare)} of 100 intervals do not fit. Move the clamp along the lead, away from other leads, or say how often it sparks.`,
    );
  }
  const times = Float64Array.from(sparks);
  return accept({ sparks: times, oddShare, at: (seconds) => speedAt(times, rpm, seconds) });
}

function highestByStretch(steps: Float32Array, length: number): number[] {
  const highest: number[] = [];
  for (let from = 0; from + length <= steps.length; from += length) {
    let most = 0;
    for (let i = from; i < from + length; i++) most = Math.max(most, steps[i]!);
    highest.push(most);
  }
  return highest;
}

/** The middle of some ten thousand steps, evenly taken. */
function middleOfSome(steps: Float32Array): number {
  const every = Math.max(1, Math.floor(steps.length / 10_000));
  const some: number[] = [];
  for (let i = 0; i < steps.length; i += every) some.push(steps[i]!);
  return some.length === 0 ? 0 : middle(some);
}

/** Speed of each interval, 0 where it does not fit its neighbours. */
function speeds(sparks: readonly number[], sparksPerTurn: number): { rpm: Float64Array; oddShare: number } {
  const intervals = sparks.slice(1).map((at, i) => at - sparks[i]!);
  let odd = 0;
  const rpm = Float64Array.from(intervals, (interval, i) => {
    const near = intervals.slice(Math.max(0, i - 3), i + 4);
    const ratio = interval / middle(near);
    if (ratio > FITS || ratio < 1 / FITS) {
      odd += 1;
      return 0;
    }
    return 60 / (interval * sparksPerTurn);
  });
  return { rpm, oddShare: intervals.length === 0 ? 1 : odd / intervals.length };
}

function speedAt(times: Float64Array, rpm: Float64Array, seconds: number): number | null {
  let [low, high] = [0, times.length - 1];
  if (high < 1 || seconds < times[0]! || seconds >= times[high]!) return null;
  while (high - low > 1) {
    const between = (low + high) >> 1;
    if (times[between]! <= seconds) low = between;
    else high = between;
  }
  const own = rpm[low]!;
  return own === 0 || times[high]! - times[low]! > LONGEST ? null : own;
}

/** How a speed read from sound stands against the sparks. */
export interface SoundProof {
  /** Seconds with a reference. */
  readonly seconds: number;
  /** Size of the error, percent of the true speed, over the frames that were answered. */
  readonly middlePercent: number;
  readonly most95Percent: number;
  /** Part of those frames that is off by more than 15 %, percent. */
  readonly grossPercent: number;
  /** Part of the frames with a reference that were not answered, percent. */
  readonly unansweredPercent: number;
  /** By second of the recording: true speed and the middle error with its sign; null: not answered. */
  readonly bySecond: readonly {
    readonly second: number;
    readonly rpm: number;
    readonly errorPercent: number | null;
  }[];
}

const GROSS = 15;
/** The sparks are averaged over this many seconds to either side: sound is read over a window too, and single turns differ. */
const BESIDE = 0.03;

/** Holds a track of engine speed from sound against the sparks of the same recording. Null: they nowhere overlap. */
export function soundProof(
  track: { readonly hop: number; readonly rpm: Float64Array },
  sparks: Pick<SparkSpeed, "at">,
): SoundProof | null {
  const sizes: number[] = [];
  const seconds = new Map<number, { readonly rpm: number[]; readonly errors: number[] }>();
  let all = 0;
  track.rpm.forEach((rpm, i) => {
    const at = i * track.hop;
    const beside = [at - BESIDE, at, at + BESIDE].map(sparks.at).filter((speed) => speed !== null);
    if (beside.length === 0) return;
    const truth = middle(beside);
    all += 1;
    const second = Math.floor(at);
    const own = seconds.get(second) ?? { rpm: [], errors: [] };
    seconds.set(second, own);
    own.rpm.push(truth);
    if (rpm === 0) return;
    const error = 100 * (rpm / truth - 1);
    own.errors.push(error);
    sizes.push(Math.abs(error));
  });
  if (sizes.length === 0) return null;
  return {
    seconds: all * track.hop,
    middlePercent: middle(sizes),
    most95Percent: share(sizes, 0.95),
    grossPercent: (100 * sizes.filter((size) => size > GROSS).length) / sizes.length,
    unansweredPercent: (100 * (all - sizes.length)) / all,
    bySecond: [...seconds].map(([second, { rpm, errors }]) => ({
      second,
      rpm: middle(rpm),
      errorPercent: errors.length === 0 ? null : middle(errors),
    })),
  };
}
