import { fromDegree, fromMillimetre, type Needle, type NeedleProfile } from "@jetwright/core";
import type { UsedEntryOf } from "../entry.ts";
import type { CaseWarnings } from "./case-warning.ts";
import { measuredShape } from "./measured-profile.ts";

/** A needle as a record says it, fitted or in the drawer. */
export interface ToldNeedle {
  readonly marks: string;
  readonly grooves?: number | undefined;
  readonly groovePitchMm?: number | undefined;
  readonly straightDiameterMm?: number | undefined;
  readonly tapers?: readonly { readonly startMm: number; readonly includedAngleDeg: number }[] | undefined;
  readonly diameterSdMm?: number | undefined;
}

export type MeasuredNeedle = UsedEntryOf<"needle-measured">;

/** Grooves and pitch of most needles, where a needle's own are not told. Common practice, no source. */
const USUAL_GROOVES = 5;
const USUAL_PITCH_MM = 1;
/** One standard deviation of a diameter that was told and not measured, mm: estimate. */
const TOLD_DIAMETER_SD_MM = 0.01;

/** The latest measurement of each needle, by bike and marks. */
export type MeasuredNeedles = ReadonlyMap<string, MeasuredNeedle>;

/** Key of a needle in MeasuredNeedles; the bike is null for any needle of its marks. */
export const needleKey = (marks: string, bike: string | null): string =>
  `${bike ?? ""} ${marks.trim().toLowerCase()}`;

/** The measurement that speaks of this needle: the bike's own before the shop's. */
export const measurementFor = (
  marks: string,
  bike: string | null,
  measured: MeasuredNeedles,
): MeasuredNeedle | null =>
  (bike === null ? undefined : measured.get(needleKey(marks, bike))) ??
  measured.get(needleKey(marks, null)) ??
  null;

function toldProfile(told: ToldNeedle): NeedleProfile | null {
  if (told.straightDiameterMm === undefined) return null;
  const tapers = (told.tapers ?? []).map((taper) => ({
    start: fromMillimetre(taper.startMm),
    includedAngle: fromDegree(taper.includedAngleDeg),
  }));
  return {
    straightDiameter: fromMillimetre(told.straightDiameterMm),
    tapers: tapers.sort((a, b) => a.start - b.start),
    diameterSd: fromMillimetre(told.diameterSdMm ?? TOLD_DIAMETER_SD_MM),
  };
}

/** The needle in SI, its profile from the micrometer where it was measured, else as told, else unknown. */
export function siNeedle(
  told: ToldNeedle,
  bike: string | null,
  measured: MeasuredNeedles,
  warnings: CaseWarnings,
): Needle {
  const measurement = measurementFor(told.marks, bike, measured);
  const grooves = told.grooves ?? measurement?.body.grooves;
  const pitch = told.groovePitchMm ?? measurement?.body.groovePitchMm;
  if (grooves === undefined || pitch === undefined) {
    warnings.add({
      code: "needle-grooves-assumed",
      given: { marks: told.marks, grooves: USUAL_GROOVES, pitchMm: USUAL_PITCH_MM },
    });
  }
  let profile = toldProfile(told);
  if (measurement !== null) {
    const shape = measuredShape(measurement.body);
    if (shape.ok) {
      profile = shape.value.profile;
      for (const remark of shape.value.remarks) warnings.add(remark, measurement.id);
    } else warnings.add({ code: "needle-measurement-unusable", given: { why: shape } }, measurement.id);
  }
  return {
    marks: told.marks,
    grooves: grooves ?? USUAL_GROOVES,
    groovePitch: fromMillimetre(pitch ?? USUAL_PITCH_MM),
    profile,
  };
}
