import type { cards } from "../../words/en/cards.ts";

/** What a timer is called, in the catalogue of words. */
export type TimerWords = keyof (typeof cards)["timers"];

export interface Countdown {
  readonly kind: "countdown";
  readonly words: TimerWords;
  readonly seconds: number;
}

/** Times the revs from letting go to idle, several tries; the middle one is written down under `number`. */
export interface HangWatch {
  readonly kind: "hang";
  readonly words: TimerWords;
  readonly number: string;
}

export type Timer = Countdown | HangWatch;

const countdown = (words: TimerWords, seconds: number): Timer => ({ kind: "countdown", words, seconds });
const hang = (words: TimerWords, number: string): Timer => ({ kind: "hang", words, number });

const SETTLE = [countdown("settle", 20)];

/** The timers of tests made standing; nobody holds a phone while riding. */
const TEST_TIMERS: Readonly<Record<string, readonly Timer[]>> = {
  "idle-hold": [countdown("idle", 60)],
  "quick-opening": [countdown("beforeSnap", 20)],
  "chop-warm": [hang("hang", "hangSeconds")],
  "chop-hot": [hang("hangWarm", "hangSecondsWarm"), hang("hangHot", "hangSeconds")],
  "half-turn-for-the-hang": [hang("hangBefore", "hangSecondsBefore"), hang("hangAfter", "hangSeconds")],
  "screw-sweep-air": SETTLE,
  "screw-sweep-fuel": SETTLE,
};

/** The timers of checks. */
const CHECK_TIMERS: Readonly<Record<string, readonly Timer[]>> = {
  "pressure-test": [countdown("pressure", 360)],
  "overflow-drip": [countdown("drip", 120)],
  "fuel-flow": [countdown("flow", 120)],
};

export const testTimers = (test: string): readonly Timer[] => TEST_TIMERS[test] ?? [];
export const checkTimers = (check: string): readonly Timer[] => CHECK_TIMERS[check] ?? [];

/** "1:05" for 65 seconds, rounded up to the second that is still running. */
export function clockText(milliseconds: number): string {
  const seconds = Math.max(0, Math.ceil(milliseconds / 1000));
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, "0")}`;
}

/** The try in the middle: one odd try moves it little. Of an even number the longer of the two; null of none. */
export const middleTry = (tries: readonly number[]): number | null =>
  [...tries].sort((a, b) => a - b)[Math.floor(tries.length / 2)] ?? null;
