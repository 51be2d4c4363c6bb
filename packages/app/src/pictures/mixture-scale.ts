import type { MixtureReading } from "@jetwright/core";
import { LIKELY, percentRich } from "./percent.ts";

/** Percent rich at the ends of the picture, up and down alike, and where its lines are drawn. */
export interface MixtureScale {
  readonly most: number;
  readonly ticks: readonly number[];
}

const STEPS = [4, 5, 10, 20, 40] as const;
/** The least and the most the picture shows, percent either way; beyond the most the line runs out of it. */
const LEAST = 8;
const MOST = 80;

/** A scale that holds the lines and the band, the same up and down so that right stays in the middle. */
export function mixtureScale(
  readings: readonly MixtureReading[],
  after: readonly MixtureReading[] = [],
): MixtureScale {
  const reach = Math.max(
    LEAST,
    ...readings.flatMap(({ mean, sd }) => [
      Math.abs(percentRich(mean - LIKELY * sd)),
      Math.abs(percentRich(mean + LIKELY * sd)),
    ]),
    ...after.map(({ mean }) => Math.abs(percentRich(mean))),
  );
  const held = Math.min(reach, MOST);
  const step = STEPS.find((size) => held <= 2.5 * size) ?? STEPS[STEPS.length - 1]!;
  const lines = Math.floor(held / step + 1e-9);
  const ticks = Array.from({ length: 2 * lines + 1 }, (_, i) => (i - lines) * step);
  return { most: held * 1.04, ticks };
}

/** The reading that calls loudest: furthest from right beyond its own doubt. Null when all may well be right. */
export function loudest(readings: readonly MixtureReading[]): MixtureReading | null {
  let worst: MixtureReading | null = null;
  let most = 0;
  for (const reading of readings) {
    const beyond = Math.abs(reading.mean) - LIKELY * reading.sd;
    if (beyond > most) {
      worst = reading;
      most = beyond;
    }
  }
  return worst;
}
