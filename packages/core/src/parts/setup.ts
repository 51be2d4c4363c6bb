import type { Metre } from "../units/quantity.ts";
import type { Bore } from "./bore.ts";
import type { Jet } from "./jet.ts";
import type { Known } from "./known.ts";
import type { Groove, Needle } from "./needle.ts";

/**
 * The small adjusting screw. An air screw sits on the filter side: out is leaner. A fuel screw sits on the
 * engine side: out is richer.
 */
export type ScrewKind = "air" | "fuel";

export interface Screw {
  readonly kind: ScrewKind;
  /** Turns out from lightly seated. */
  readonly turnsOut: number;
}

/** How fuel leaves the needle jet: into a shroud (most two-strokes) or as an emulsion from a bled well. */
export type NozzleKind = "primary" | "bleed";

/** The parts of the carburetor body that nobody changes while setting it up. */
export interface Body {
  readonly bore: Bore;
  readonly screwKind: ScrewKind;
  readonly nozzle: NozzleKind;
  /** Distance from the clip's seat in the slide to the top of the needle jet, throttle closed. */
  readonly seatToJet: Metre | null;
  /** Slide lift at idle. */
  readonly idleLift: Metre | null;
  /** Where the float bowl is vented: free air, or the clean side of the filter. */
  readonly bowlVent: "free air" | "airbox";
}

/** Every metering part as fitted, each with how it is known. */
export interface Setup {
  readonly body: Body;
  readonly pilot: Known<Jet>;
  readonly main: Known<Jet>;
  readonly needle: Known<Needle>;
  readonly clip: Known<Groove>;
  /** Bore of the needle jet. */
  readonly needleJet: Known<Metre>;
  /** Height of the relief on the filter side of the slide. */
  readonly cutaway: Known<Metre>;
  readonly screw: Known<Screw>;
  /** Fuel lift: from the fuel level up to the top of the needle jet. */
  readonly fuelLift: Known<Metre>;
  /** Recorded, never computed with: no trustworthy figure was found. */
  readonly mainAirJet: Known<Jet>;
  readonly pilotAirJet: Known<Jet>;
}
