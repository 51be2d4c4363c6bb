import type { Bore } from "../parts/bore.ts";
import { jetArea } from "../parts/jet.ts";
import type { Groove, NeedleProfile } from "../parts/needle.ts";
import type { SetupPart } from "../parts/setup-text.ts";
import { accept, type Outcome } from "../units/outcome.ts";
import type { Metre } from "../units/quantity.ts";
import type { MeteringRefusal } from "./comparable.ts";
import { baselineOf } from "./shift.ts";
import type { Situation } from "./situation.ts";
import { typicalPilotNumber } from "./typical.ts";

/** What a section of the carburetor can be drawn from, m. */
export interface Sizes {
  readonly bore: Bore;
  /** Full lift of the slide. */
  readonly height: Metre;
  readonly idleLift: Metre;
  readonly cutaway: Metre;
  readonly needle: NeedleProfile;
  readonly grooves: number;
  readonly groovePitch: Metre;
  readonly clip: Groove;
  /** From the clip's seat in the slide to the top of the needle jet, throttle closed. */
  readonly seatToJet: Metre;
  readonly needleJet: Metre;
  /** Bores of the holes that the jets' numbers stand for; a flow number gives the bore within 5 %. */
  readonly mainBore: Metre;
  readonly pilotBore: Metre;
  /** Turns out of the screw. */
  readonly turns: number;
  readonly fuelLift: Metre;
  /** Nobody knows these: a usual one for this bore stands in. */
  readonly usual: readonly (SetupPart | "seatToJet" | "idleLift" | "profile")[];
}

/**
 * The sizes the metering takes for a situation, a usual one where nobody knows the part, and which those are. Exact
 * for what is known; the usual ones are estimates. Refuses impossible parts.
 */
export function sizesOf(situation: Situation): Outcome<Sizes, MeteringRefusal> {
  const baseline = baselineOf(situation);
  if (!baseline.ok) return baseline;
  const { frame, side } = baseline.value;
  const { fitted } = side;
  const { setup } = situation;
  const pilot = setup.pilot.part ?? { number: typicalPilotNumber(frame.bore), numbering: "bore" as const };
  const absent = {
    pilot: setup.pilot.part,
    main: setup.main.part,
    needle: setup.needle.part,
    profile: setup.needle.part?.profile ?? null,
    clip: setup.clip.part,
    needleJet: setup.needleJet.part,
    cutaway: setup.cutaway.part,
    screw: setup.screw.part,
    fuelLift: setup.fuelLift.part,
    seatToJet: setup.body.seatToJet,
    idleLift: setup.body.idleLift,
  } as const;
  return accept({
    bore: setup.body.bore,
    height: frame.height as Metre,
    idleLift: frame.lift[0]! as Metre,
    cutaway: fitted.cutaway as Metre,
    needle: fitted.profile,
    grooves: fitted.grooves,
    groovePitch: fitted.groovePitch as Metre,
    clip: fitted.clip,
    seatToJet: fitted.seatToJet as Metre,
    needleJet: fitted.needleJet as Metre,
    mainBore: Math.sqrt((4 / Math.PI) * fitted.mainArea) as Metre,
    pilotBore: Math.sqrt((4 / Math.PI) * jetArea(pilot)) as Metre,
    turns: fitted.turns,
    fuelLift: fitted.fuelLift as Metre,
    usual: (Object.keys(absent) as (keyof typeof absent)[]).filter((name) => absent[name] === null),
  });
}
