import { log } from "@jetwright/core";
import type { UsedEntryOf } from "../entry.ts";

type Reading = UsedEntryOf<"mixture-measured">["body"]["readings"][number];

/**
 * Relative spread of a lambda reading where none is told: a wide-band probe in a two-stroke's exhaust sees
 * scavenged fresh mixture too. Estimate.
 */
const USUAL_SD = 0.05;

/** ln(fuel-air ratio over wanted) of a reading, and its standard deviation. Above zero is rich. */
export function mixtureError(reading: Reading): { readonly error: number; readonly sd: number } {
  const ratio =
    reading.errorPercent === undefined
      ? (reading.wantedLambda ?? Number.NaN) / (reading.lambda ?? Number.NaN)
      : 1 + reading.errorPercent / 100;
  if (!(ratio > 0)) throw new RangeError(`A reading without a usable figure passed the reader: ${ratio}`);
  return { error: log(ratio), sd: reading.sdPercent === undefined ? USUAL_SD : reading.sdPercent / 100 };
}
