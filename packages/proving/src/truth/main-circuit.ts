import type { Air } from "./air.ts";
import type { Body, NeedleShape } from "./bike.ts";
import type { Breath, Intake } from "./breathing.ts";
import { ringCoefficient, shortTube } from "./discharge.ts";
import type { Fuel } from "./fuel.ts";
import { slideArea } from "./slide-area.ts";

const G = 9.81;

/** Diameter of the needle that far below its top groove, m. */
export function needleAt({ straight, cones }: NeedleShape, below: number): number {
  let diameter = straight;
  for (const [i, { from, angle }] of cones.entries()) {
    const end = Math.min(below, cones[i + 1]?.from ?? Infinity);
    if (end > from) diameter -= 2 * Math.tan(angle / 2) * (end - from);
  }
  return Math.max(2e-4, diameter);
}

/** Suction at the nozzle at each step of one intake, Pa, before head and skin. */
export function nozzleSuction(
  body: Body,
  air: Air,
  lift: number,
  cutaway: number,
  intake: Intake,
  breath: Breath,
): Float64Array {
  const gap = lift * body.bore + body.idleLift * (1 - lift) + intake.heldUp;
  const relief = (body.nozzlePlace * cutaway) / (1 + (lift / body.reliefFades) ** 3);
  const area = slideArea(body.bore, gap + relief);
  const gain = body.suction * (1 + body.suctionLow * Math.exp(-lift / 0.2));
  const suction = new Float64Array(breath.flow.length);
  for (let i = 0; i < suction.length; i++) {
    const rate = breath.flow[i]!;
    const speed = rate / (air.density * area);
    const stream = (1 + intake.blowBack) * gain * 0.5 * air.density * speed * speed;
    suction[i] = stream + (body.bowlVentsFree ? breath.filterDrop[i]! : 0);
  }
  return suction;
}

/** What the main circuit is made of just now. */
export interface MainHoles {
  /** Hole of the main jet, m². */
  readonly jet: number;
  /** Ring between needle and needle jet, m². */
  readonly ring: number;
  /** Its width on the radius, m. */
  readonly gap: number;
}

/** Fuel through main jet and ring in a row over one intake, kg. */
export function mainFuel(
  body: Body,
  fuel: Fuel,
  { jet, ring, gap }: MainHoles,
  suction: Float64Array,
  seconds: number,
  level: number,
): number {
  const head = fuel.density * G * (body.fuelLift - level) + body.skin * Math.min(3, 9e-5 / gap);
  const jetDiameter = Math.sqrt((4 * jet) / Math.PI);
  // The bled well passes on less of the suction, the less the smaller its ring stands against the bleed.
  const passed = 1 / (1 + body.bleed * (jet / ring));
  let throughJet = 0.78;
  let throughRing = 0.65;
  let mass = 0;
  for (let i = 0; i < suction.length; i++) {
    const pull = suction[i]! * passed - head;
    if (pull <= 0) continue;
    const root = Math.sqrt(2 * fuel.density * pull);
    const a = throughJet * jet;
    const b = throughRing * ring;
    const rate = root / Math.sqrt(1 / (a * a) + 1 / (b * b));
    throughJet = shortTube((rate * jetDiameter) / (jet * fuel.density * fuel.viscosity), body.jetSlenderness);
    throughRing = ringCoefficient((rate * 2 * gap) / (ring * fuel.density * fuel.viscosity));
    mass += rate * seconds;
  }
  return mass;
}
