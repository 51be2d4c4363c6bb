import { exp, log } from "../numerics/elementary.ts";

/**
 * How a figure read from sound scatters among engines that have what it stands for, and among those that have not.
 * The engines' own scatter is trade practice, never held against real ones, and wide for that. What the reading itself
 * adds is small beside it: on made sounds a hang is off by 0.01 s and a dip by 1.5 points in nine of ten, of 39 stalls 38
 * were found and none was made up (docs/sound.md, on takes never used for building).
 */
export interface HeardFigure {
  readonly figure: string;
  readonly sign: string;
  /** Spread of the figure where there is nothing, its own unit. Estimate. */
  readonly nothing: number;
  /** Middle of the figure where there is something, and by what factor it scatters. Estimate. */
  readonly something: number;
  readonly factor: number;
  /** The figure may be anything up to this when the reading went wrong. */
  readonly most: number;
  /** A clear figure is what it stands for so often, while no limit was held against a real engine. Estimate. */
  readonly surest: number;
  /** The sign is the healthy one: the figure speaks against it. */
  readonly against?: boolean;
}

/**
 * What of a sound counts at all. Left out on purpose: skipping, which is normal at idle, on a closing throttle and at
 * full throttle without load; the sag before a rise and hunting, for which no scatter can be given.
 */
export const HEARD_FIGURES: readonly HeardFigure[] = [
  {
    figure: "hangSeconds",
    sign: "hangs-after-closing",
    nothing: 0.3,
    something: 1.6,
    factor: 2,
    most: 6,
    surest: 0.9,
  },
  {
    figure: "undershootPercent",
    sign: "dives-below-idle",
    nothing: 4,
    something: 16,
    factor: 1.7,
    most: 60,
    surest: 0.9,
  },
  {
    // Which way it is off a slow answer cannot say: too rich and too lean both give it. The opening itself is heard by
    // its loudness alone, and how late a sound engine is nobody has measured.
    figure: "delaySeconds",
    sign: "answers-crisply",
    nothing: 0.12,
    something: 0.35,
    factor: 1.5,
    most: 1.5,
    surest: 0.75,
    against: true,
  },
];

/** How often a stall is heard as one, and one heard that was none: nearly all found and none made up so far, in few takes. */
const STALL_FOUND = 0.85;
const STALL_MADE_UP = 0.08;
const STALL_SUREST = 0.9;

/** A single try may be a slip of the hand; from three on they speak for the engine. Part of what is known. Estimate. */
const BY_TRIES = [0.5, 0.65, 0.85, 1] as const;

/**
 * Chance that the engine has what the figure stands for, when before it was even: 0.5 says nothing.
 * @param confidence of the reading, 0 to 1 (docs/sound.md)
 * @param tries times it was measured; not known: as if once
 */
export function chanceOf(heard: HeardFigure, value: number, confidence: number, tries = 1): number {
  // A figure of nothing lies to either side of 0 and is read as 0 or more.
  const without = (2 * bell(value / heard.nothing)) / heard.nothing;
  const width = log(heard.factor);
  const held = Math.max(0.02 * heard.something, value);
  const within = bell(log(held / heard.something) / width) / (held * width);
  return weighed(within, without, confidence, 1 / heard.most, knownAfter(tries), heard.surest);
}

/** The same for a stall, which is there or not. */
export function chanceOfStall(died: boolean, confidence: number): number {
  return died
    ? weighed(STALL_FOUND, STALL_MADE_UP, confidence, 0.5, 1, STALL_SUREST)
    : weighed(1 - STALL_FOUND, 1 - STALL_MADE_UP, confidence, 0.5, 1, STALL_SUREST);
}

/** @param wrong how likely the figure is when the reading went wrong */
function weighed(
  within: number,
  without: number,
  confidence: number,
  wrong: number,
  known: number,
  surest: number,
): number {
  const floor = (1 - confidence) * wrong;
  const [a, b] = [confidence * within + floor, confidence * without + floor];
  return 0.5 + known * Math.max(0.5 - surest, Math.min(surest - 0.5, a / (a + b) - 0.5));
}

const knownAfter = (tries: number): number =>
  BY_TRIES[Math.max(0, Math.min(BY_TRIES.length - 1, Math.round(tries)))]!;

/** The normal density. */
const bell = (x: number): number => 0.3989422804014327 * exp(-0.5 * x * x);
