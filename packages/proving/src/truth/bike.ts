import type { Tank } from "./fuel.ts";

/** Where the mixture is looked at, as fractions of full slide lift; our own list, closed to full. */
export const LIFTS = [0, 1 / 16, 1 / 8, 3 / 16, 1 / 4, 3 / 8, 1 / 2, 5 / 8, 3 / 4, 7 / 8, 1] as const;

/** The engine as a pump of air. SI. */
export interface Engine {
  readonly strokes: 2 | 4;
  readonly displacement: number;
  /** Connecting rod over crank radius. */
  readonly rod: number;
  /** Largest over smallest volume of the pumping space (crankcase or cylinder). */
  readonly squeeze: number;
  /** Open area of reeds or valve when fully open. */
  readonly gate: number;
  readonly idleRpm: number;
  readonly peakRpm: number;
  /** How the revs follow the throttle: rpm = idle + (peak − idle)·lift^k. */
  readonly revsFollow: number;
  /** How far the pipe draws the pressure down before intake at peak revs, as a part of the outside pressure. */
  readonly pipeDraws: number;
  readonly pump: boolean;
}

/** One conical part of a needle; angle between the flanks. */
export interface Cone {
  readonly from: number;
  readonly angle: number;
}

/** The carburetor's fixed geometry, as this one was made. */
export interface Body {
  readonly bore: number;
  readonly idleLift: number;
  readonly screw: "air" | "fuel";
  readonly bowlVentsFree: boolean;
  readonly numbering: "bore" | "flow";
  readonly seatToJet: number;
  /** Nozzle's place between the slide's two lips, and how fast the relief stops mattering. */
  readonly nozzlePlace: number;
  readonly reliefFades: number;
  /** Nozzle suction over the stream's dynamic pressure, wide open, and how much more just off idle. */
  readonly suction: number;
  readonly suctionLow: number;
  /** Pressure the fuel's skin holds back in the ring, Pa. */
  readonly skin: number;
  /** Air let into the well of a bled nozzle: 0 for a shrouded one. */
  readonly bleed: number;
  readonly fuelLift: number;
  readonly pilotLift: number;
  /** Areas of the pilot circuit's holes, m². */
  readonly pilotOutlet: number;
  readonly pilotBypass: number;
  readonly pilotAir: number;
  /** Screw: seat diameter times tangent of its cone times pitch times π gives m² a turn. */
  readonly screwPerTurn: number;
  readonly bypassAt: number;
  /** Area that passes the mouth: filter, box and boot, m². */
  readonly filter: number;
  readonly jetSlenderness: number;
}

export interface NeedleShape {
  readonly straight: number;
  readonly cones: readonly Cone[];
  readonly grooves: number;
  readonly pitch: number;
}

/** The parts that are changed when setting it up: numbers as stamped, lengths in metres. */
export interface Parts {
  readonly main: number;
  readonly pilot: number;
  readonly groove: number;
  readonly turns: number;
  readonly cutaway: number;
  readonly needleJet: number;
}

export type PartName = keyof Parts;

/** What is broken, with how badly (0 just, 1 very) and what it does to the bike's own physics. */
export interface Broken {
  readonly fault: string;
  readonly severity: number;
  /** For faults that go two ways: +1 rich or high, −1 lean or low. */
  readonly way: 1 | -1;
}

export interface Bike {
  readonly seed: string;
  readonly engine: Engine;
  readonly body: Body;
  readonly needle: NeedleShape;
  readonly tank: Tank;
  /** ln of the fuel-air ratio it wants at each of LIFTS, petrol to dry air. */
  readonly wanted: readonly number[];
  /** Parts of one make differ from one another by this, ln of area, one standard deviation. */
  readonly jetScatter: number;
}
