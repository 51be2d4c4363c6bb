import {
  accept,
  fromMillimetre,
  needleDiameter,
  needleFromMeasurements,
  type Outcome,
  toDegree,
  toMillimetre,
  warningText,
} from "@jetwright/core";
import type { EngineState } from "../../state.ts";

export interface NeedlePoint {
  readonly belowTopGrooveMm: number;
  readonly diameterMm: number;
}

export interface NeedleShape {
  readonly straightMm: number;
  readonly straightSdMm: number;
  readonly tapers: readonly {
    readonly startMm: number;
    readonly startSdMm: number;
    readonly degrees: number;
    readonly degreesSd: number;
  }[];
  /** Readings the others speak against. */
  readonly doubtful: readonly (NeedlePoint & { readonly expectedMm: number })[];
  readonly remarks: readonly string[];
  /** The shape as a line to draw: at its ends and at each bend. */
  readonly line: readonly NeedlePoint[];
}

/** One standard deviation of a micrometer in a careful hand, mm. Common practice, no source. */
const MICROMETER_SD = 0.003;

/** The shape found from diameters at distances below the top groove, or what to measure next. */
export function needleShape(
  { words }: EngineState,
  { points }: { readonly points: readonly NeedlePoint[] },
): Outcome<NeedleShape> {
  const found = needleFromMeasurements(
    points.map(({ belowTopGrooveMm, diameterMm }) => ({
      belowTopGroove: fromMillimetre(belowTopGrooveMm),
      diameter: fromMillimetre(diameterMm),
    })),
    fromMillimetre(MICROMETER_SD),
  );
  if (!found.ok) return found;
  const { profile, straightDiameterSd, tapers, leftOut, remarks } = found.value;
  const far = Math.max(...points.map(({ belowTopGrooveMm }) => belowTopGrooveMm));
  const bends = [0, ...profile.tapers.map(({ start }) => toMillimetre(start)), far].filter(
    (below) => below <= far,
  );
  return accept({
    straightMm: toMillimetre(profile.straightDiameter),
    straightSdMm: toMillimetre(straightDiameterSd),
    tapers: profile.tapers.map(({ start, includedAngle }, i) => ({
      startMm: toMillimetre(start),
      startSdMm: toMillimetre(tapers[i]!.startSd),
      degrees: toDegree(includedAngle),
      degreesSd: toDegree(tapers[i]!.includedAngleSd),
    })),
    doubtful: leftOut.map(({ reading, expected }) => ({
      ...points.find(
        ({ belowTopGrooveMm, diameterMm }) =>
          fromMillimetre(belowTopGrooveMm) === reading.belowTopGroove &&
          fromMillimetre(diameterMm) === reading.diameter,
      )!,
      expectedMm: toMillimetre(expected),
    })),
    remarks: remarks.map((remark) => warningText(remark, words)),
    line: bends.map((below) => ({
      belowTopGrooveMm: below,
      diameterMm: toMillimetre(needleDiameter(profile, fromMillimetre(below))),
    })),
  });
}
