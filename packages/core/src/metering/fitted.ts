import { jetArea } from "../parts/jet.ts";
import { type NeedleProfile, needleDiameter } from "../parts/needle.ts";
import type { Setup } from "../parts/setup.ts";
import type { Metre } from "../units/quantity.ts";
import {
  BYPASS_SHARE,
  HALF_OPEN_TURNS,
  OUTLET_THROTTLING,
  USUAL_TURNS,
  WELL_SIGNAL,
} from "./coefficients.ts";
import type { Frame } from "./frame.ts";
import {
  middleGroove,
  TYPICAL_FUEL_LIFT,
  TYPICAL_GROOVE_PITCH,
  TYPICAL_GROOVES,
  TYPICAL_NEEDLE_JET,
  typicalClearance,
  typicalCutaway,
  typicalMainArea,
  typicalNeedle,
  typicalPilotNumber,
  typicalSeatToJet,
} from "./typical.ts";

/** The sizes a setup puts in the way of the fuel, with usual ones where nobody knows the part. */
export interface Fitted {
  readonly mainArea: number;
  /** Area between needle and needle jet at each opening, m²; not above 0 where the needle does not fit. */
  readonly annulus: readonly number[];
  /** Diameter of the needle in the top of the needle jet at each opening, m. */
  readonly needleAt: readonly number[];
  readonly needleJet: number;
  readonly profile: NeedleProfile;
  /** Pilot jet area over that of the usual pilot for this bore. */
  readonly pilot: number;
  /** Turns out of the screw. */
  readonly turns: number;
  readonly cutaway: number;
  readonly fuelLift: number;
  readonly grooves: number;
  readonly groovePitch: number;
  readonly clip: number;
  /** From the clip's seat in the slide to the top of the needle jet, throttle closed, m. */
  readonly seatToJet: number;
}

/** Resolves a setup whose parts have been checked. */
export function fittedIn(setup: Setup, frame: Frame): Fitted {
  const needle = setup.needle.part;
  const grooves = needle?.grooves ?? TYPICAL_GROOVES;
  const pitch = needle?.groovePitch ?? TYPICAL_GROOVE_PITCH;
  const clip = setup.clip.part ?? middleGroove(grooves);
  const known = needle?.profile ?? null;
  const needleJet =
    setup.needleJet.part ??
    (known === null ? TYPICAL_NEEDLE_JET : known.straightDiameter + typicalClearance(frame.bore));
  const seat = setup.body.seatToJet ?? typicalSeatToJet(known, frame.height, grooves, pitch);
  const profile =
    known ?? typicalNeedle(needleJet, frame.bore, frame.height, seat, (middleGroove(grooves) - 1) * pitch);
  const needleAt = frame.lift.map((lift) =>
    needleDiameter(profile, (seat + lift + (clip - 1) * pitch) as Metre),
  );
  const pilot = setup.pilot.part;
  return {
    mainArea: setup.main.part === null ? typicalMainArea(frame.bore) : jetArea(setup.main.part),
    annulus: needleAt.map((diameter) => annulusArea(needleJet, diameter)),
    needleAt,
    needleJet,
    profile,
    pilot:
      pilot === null
        ? 1
        : jetArea(pilot) / jetArea({ number: typicalPilotNumber(frame.bore), numbering: pilot.numbering }),
    turns: setup.screw.part?.turnsOut ?? USUAL_TURNS,
    cutaway: setup.cutaway.part ?? typicalCutaway(frame.bore),
    fuelLift: setup.fuelLift.part ?? TYPICAL_FUEL_LIFT,
    grooves,
    groovePitch: pitch,
    clip,
    seatToJet: seat,
  };
}

/** Free area of a round needle in the jet around it, m²; below 0 when it does not fit. */
export const annulusArea = (needleJet: number, needle: number): number =>
  (Math.PI / 4) * (needleJet - needle) * (needleJet + needle);

const openedBy = (turns: number): number => turns / (turns + HALF_OPEN_TURNS);

/**
 * Air screw: depression in the pilot well over that at the outlet. The air that the screw lets in and the outlet
 * share the pressure drop like two holes in a row.
 */
export function wellSignal(turns: number): number {
  const usual = openedBy(USUAL_TURNS);
  const strength = (1 / WELL_SIGNAL - 1) / (usual * usual);
  const opened = openedBy(turns);
  return 1 / (1 + strength * opened * opened);
}

/** Fuel screw: (pilot jet over outlet)², by pilot area over the usual one and turns out. */
export function outletThrottling(pilot: number, turns: number): number {
  const outlet = BYPASS_SHARE + ((1 - BYPASS_SHARE) * openedBy(turns)) / openedBy(USUAL_TURNS);
  const ratio = pilot / outlet;
  return OUTLET_THROTTLING * ratio * ratio;
}
