import type { Anatomy, NeedlePoint } from "../../engine/answers/anatomy.ts";
import type { Governor } from "../../engine/answers/governs.ts";

/** How slide and needle stand at one opening, mm above the top of the needle jet. */
export interface Pose {
  readonly liftMm: number;
  /** The clip's seat in the slide. */
  readonly seatMm: number;
  /** The needle's top groove. */
  readonly topGrooveMm: number;
  /** Needle in the top of the jet, and the gap on each side. */
  readonly needleMm: number;
  readonly gapMm: number;
  readonly leads: Governor;
}

/** The pose at any opening from 0 to 1. */
export function poseAt(anatomy: Anatomy, opening: number): Pose {
  const idle = anatomy.at[0]?.liftMm ?? 0;
  const liftMm = Math.max(opening * anatomy.heightMm, idle);
  const seatMm = anatomy.seatToJetMm + liftMm;
  const topGrooveMm = seatMm + (anatomy.clip - 1) * anatomy.groovePitchMm;
  const needleMm = diameterAt(anatomy.needle, topGrooveMm);
  return {
    liftMm,
    seatMm,
    topGrooveMm,
    needleMm,
    gapMm: (anatomy.needleJetMm - needleMm) / 2,
    leads: anatomy.stretches.find(({ to }) => opening <= to)?.part ?? "main",
  };
}

/** Diameter on the straight line between the needle's bends. */
export function diameterAt(needle: readonly NeedlePoint[], belowMm: number): number {
  let above = needle[0]!;
  for (const point of needle) {
    if (belowMm <= point.belowTopGrooveMm) {
      const length = point.belowTopGrooveMm - above.belowTopGrooveMm;
      if (length <= 0) return point.diameterMm;
      const part = (belowMm - above.belowTopGrooveMm) / length;
      return above.diameterMm + part * (point.diameterMm - above.diameterMm);
    }
    above = point;
  }
  return above.diameterMm;
}
