import { tangent } from "../numerics/elementary.ts";
import type { Metre, Radian } from "../units/quantity.ts";

/** A conical stretch of the needle: from `start` (distance below the top groove) down to the next one or the tip. */
export interface Taper {
  readonly start: Metre;
  /** Angle between the two flanks (the included angle, not the half angle). */
  readonly includedAngle: Radian;
}

/** Diameter against distance below the top groove: a straight part, then up to three tapers. */
export interface NeedleProfile {
  readonly straightDiameter: Metre;
  /** In order of `start`; none to three. */
  readonly tapers: readonly Taper[];
  /** One standard deviation of a diameter read from this profile. */
  readonly diameterSd: Metre;
}

export interface Needle {
  /** Whatever is stamped on it, free text. */
  readonly marks: string;
  readonly grooves: number;
  /** Distance from one groove to the next. */
  readonly groovePitch: Metre;
  /** Null when nobody has measured it or found its data: then only its own clip can be compared. */
  readonly profile: NeedleProfile | null;
}

/** The clip: groove 1 is the top one, at the blunt end. A lower groove lifts the needle. Halves mean a shim. */
export type Groove = number;

/** Diameter of the needle at a distance below its top groove; stops at 0.1 mm where the taper would end. */
export function needleDiameter(profile: NeedleProfile, belowTopGroove: Metre): Metre {
  let diameter: number = profile.straightDiameter;
  for (let i = 0; i < profile.tapers.length; i++) {
    const taper = profile.tapers[i]!;
    const end = profile.tapers[i + 1]?.start ?? Infinity;
    const length = Math.min(belowTopGroove, end) - taper.start;
    if (length > 0) diameter -= 2 * tangent(taper.includedAngle / 2) * length;
  }
  return Math.max(diameter, 1e-4) as Metre;
}
