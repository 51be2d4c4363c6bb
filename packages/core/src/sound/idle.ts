import { exp } from "../numerics/elementary.ts";
import type { Idle } from "./sound-event.ts";
import { LINE_RATE, middle, type SpeedLine, share } from "./speed-line.ts";

/** The idle is looked for in so many seconds from the start. */
export const OPENING_SECONDS = 1.8;
/** Octaves to either side that still are idle. */
const IDLE_WIDTH = 0.12;
/** Least seconds of steady running an idle rests on. */
export const LEAST_IDLE = 0.6;

/** The idle of a sound, without its confidence; null when nothing steady was heard. */
export function findIdle(line: SpeedLine): Omit<Idle, "confidence"> | null {
  const steady: number[] = [];
  const opening: number[] = [];
  for (let i = 0; i < line.rpm.length; i++) {
    if (!line.steady(i)) continue;
    steady.push(i);
    if (i < OPENING_SECONDS * LINE_RATE) opening.push(line.rpm[i]!);
  }
  if (steady.length < LEAST_IDLE * LINE_RATE) return null;
  const speeds = steady.map((i) => line.rpm[i]!);
  const guess = opening.length >= 0.5 * LINE_RATE ? middle(opening) : share(speeds, 0.15);
  const width = exp(IDLE_WIDTH * Math.LN2);
  const own = steady.filter((i) => line.rpm[i]! < guess * width && line.rpm[i]! > guess / width);
  if (own.length < LEAST_IDLE * LINE_RATE) return null;
  const rpm = middle(own.map((i) => line.rpm[i]!));
  return {
    kind: "idle",
    at: own[0]! / LINE_RATE,
    until: own.at(-1)! / LINE_RATE,
    rpm,
    wanderPercent: 148.26 * middle(own.map((i) => Math.abs(line.rpm[i]! / rpm - 1))),
    seconds: own.length / LINE_RATE,
  };
}
