import { fromMillimetre, type MeasuredNeedle, needleFromMeasurements, type Outcome } from "@jetwright/core";
import type { UsedEntryOf } from "../entry.ts";

type Measured = UsedEntryOf<"needle-measured">["body"];

/** One standard deviation of a workshop micrometer and of a calliper along the needle, mm. Common practice, no source. */
const MICROMETER_SD_MM = 0.003;
const DISTANCE_SD_MM = 0.1;

const made = new WeakMap<Measured, Outcome<MeasuredNeedle>>();

/** The needle's shape from diameters taken along it. Fitted once a record, as many setups may carry the needle. */
export function measuredShape(body: Measured): Outcome<MeasuredNeedle> {
  let shape = made.get(body);
  if (shape === undefined) {
    shape = needleFromMeasurements(
      body.points.map((point) => ({
        belowTopGroove: fromMillimetre(point.belowTopGrooveMm),
        diameter: fromMillimetre(point.diameterMm),
      })),
      fromMillimetre(body.diameterSdMm ?? MICROMETER_SD_MM),
      fromMillimetre(body.distanceSdMm ?? DISTANCE_SD_MM),
    );
    made.set(body, shape);
  }
  return shape;
}
