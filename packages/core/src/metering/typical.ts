import type { NeedleProfile } from "../parts/needle.ts";
import { fromDegree } from "../units/convert.ts";
import type { Metre } from "../units/quantity.ts";

// What is usually fitted to a body of a given bore: stands in for a part nobody knows on either side, so that the
// other parts get a fair share of the say. Estimates from published settings of 26 to 38 mm two-stroke bodies.

/** Main jet bore over bore of the body: 175 on 36 mm. Published settings lie between 4.3 and 5.0 % . */
const MAIN_OVER_BORE = 1.75 / 36;
/** Number of the pilot jet, in either numbering, for each metre of bore: 42 on 36 mm. */
const PILOT_NUMBER_PER_METRE = 42 / 0.036;
const CUTAWAY_OVER_BORE = 3.5 / 36;
/** Needle jet bore less needle diameter on its straight part: 0.18 mm on 36 mm. */
const CLEARANCE_OVER_BORE = 0.18 / 36;
/** Openings at which the first and second taper come up to the top of the needle jet, middle groove. */
const TAPERS_ARRIVE = [8 / 36, 23 / 36] as const;
const TAPER_ANGLES = [fromDegree(1.5), fromDegree(3)] as const;

export const TYPICAL_NEEDLE_JET = 2.7e-3 as Metre;
export const TYPICAL_FUEL_LIFT = 12e-3 as Metre;
export const TYPICAL_GROOVES = 5;
export const TYPICAL_GROOVE_PITCH = 0.9e-3 as Metre;
const TYPICAL_SEAT_TO_JET = 30e-3;

export const typicalMainArea = (bore: number): number =>
  (Math.PI / 4) * MAIN_OVER_BORE * bore * MAIN_OVER_BORE * bore;
export const typicalPilotNumber = (bore: number): number => PILOT_NUMBER_PER_METRE * bore;
export const typicalCutaway = (bore: number): Metre => (CUTAWAY_OVER_BORE * bore) as Metre;
export const typicalClearance = (bore: number): number => CLEARANCE_OVER_BORE * bore;
export const middleGroove = (grooves: number): number => (grooves + 1) / 2;

/** Distance from the clip's seat to the needle jet that makes this needle's taper arrive where it usually does. */
export function typicalSeatToJet(
  profile: NeedleProfile | null,
  height: number,
  grooves: number,
  pitch: number,
): number {
  const start = profile?.tapers[0]?.start;
  if (start === undefined) return TYPICAL_SEAT_TO_JET;
  return start - TAPERS_ARRIVE[0] * height - (middleGroove(grooves) - 1) * pitch;
}

/** A usual needle for this needle jet, its tapers placed for this body. */
export function typicalNeedle(
  needleJet: number,
  bore: number,
  height: number,
  seatToJet: number,
  clipToTop: number,
): NeedleProfile {
  return {
    straightDiameter: (needleJet - typicalClearance(bore)) as Metre,
    tapers: TAPERS_ARRIVE.map((opening, i) => ({
      start: (seatToJet + clipToTop + opening * height) as Metre,
      includedAngle: TAPER_ANGLES[i]!,
    })),
    diameterSd: 0.02e-3 as Metre,
  };
}
