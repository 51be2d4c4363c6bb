import type { Air } from "./air.ts";
import type { Body } from "./bike.ts";
import type { Breath } from "./breathing.ts";
import { shortTube } from "./discharge.ts";
import type { Fuel } from "./fuel.ts";

const G = 9.81;

/** Two holes in a row pass as much as one of this area. */
const inRow = (a: number, b: number): number => (a * b) / Math.sqrt(a * a + b * b);

/** Suction at the pilot's outlet behind the slide, Pa: what the slide loses, and the stream over the hole. */
export function outletSuction(body: Body, air: Air, breath: Breath): Float64Array {
  const suction = new Float64Array(breath.flow.length);
  for (let i = 0; i < suction.length; i++) {
    const speed = breath.flow[i]! / (air.density * breath.open);
    suction[i] =
      breath.slideDrop[i]! +
      0.4 * 0.5 * air.density * speed * speed +
      (body.bowlVentsFree ? breath.filterDrop[i]! : 0);
  }
  return suction;
}

/**
 * How much of the outlet's suction reaches the pilot well: air that the air jet or air screw lets in holds it up, and
 * so do the bypass holes while the slide still covers them; once uncovered they draw too. An air screw opens its own
 * way for air; a fuel screw opens the outlet.
 */
export function wellShare(body: Body, turns: number, lift: number): number {
  const uncovered = 1 / (1 + Math.exp(-(lift - body.bypassAt) / (0.25 * body.bypassAt)));
  const screw = body.screwPerTurn * Math.max(0.05, turns);
  const air = body.screw === "air" ? inRow(body.pilotAir, screw) : body.pilotAir;
  const outlet = body.screw === "air" ? body.pilotOutlet : inRow(body.pilotOutlet, screw);
  const letsIn = air + (1 - uncovered) * body.pilotBypass;
  const draws = outlet + uncovered * body.pilotBypass;
  const ratio = letsIn / draws;
  return 1 / (1 + ratio * ratio);
}

/** Fuel through the pilot jet over one intake, kg. */
export function pilotFuel(
  body: Body,
  fuel: Fuel,
  jet: number,
  share: number,
  suction: Float64Array,
  seconds: number,
  level: number,
): number {
  const head = fuel.density * G * (body.pilotLift - level);
  const diameter = Math.sqrt((4 * jet) / Math.PI);
  let coefficient = 0.7;
  let mass = 0;
  for (let i = 0; i < suction.length; i++) {
    const pull = suction[i]! * share - head;
    if (pull <= 0) continue;
    const speed = Math.sqrt((2 * pull) / fuel.density);
    mass += coefficient * jet * fuel.density * speed * seconds;
    coefficient = shortTube((speed * diameter) / fuel.viscosity, body.jetSlenderness);
  }
  return mass;
}
