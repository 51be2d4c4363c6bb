import type { Air } from "./air.ts";
import type { Body, Engine } from "./bike.ts";
import { slideCoefficient } from "./discharge.ts";
import { slideArea } from "./slide-area.ts";

/** Steps of crank angle over the intake. */
const STEPS = 60;
const AIR_VISCOSITY = 1.5e-5;

/** What besides the throttle lets air in or holds it back. */
export interface Intake {
  /** Area of a leak behind the slide, m². */
  readonly leak: number;
  /** Filter area over a clean one's. */
  readonly filter: number;
  /** Gate that does not shut: share of the drawn air blown back. */
  readonly blowBack: number;
  /** Slide held above its stop, m. */
  readonly heldUp: number;
}

/** One intake, step by step of crank angle: seconds in each, and what the carburetor sees. */
export interface Breath {
  /** Air through the carburetor, and past it, kg a cycle. */
  readonly air: number;
  readonly leaked: number;
  readonly seconds: number;
  /** Air flow at each step, kg/s. */
  readonly flow: Float64Array;
  /** Pressure lost at filter and at slide at each step, Pa. */
  readonly filterDrop: Float64Array;
  readonly slideDrop: Float64Array;
  /** Free area under the slide's engine side, m². */
  readonly open: number;
}

/** Part of the stroke the piston has gone down at a crank angle after top centre. */
function pistonDown(angle: number, rod: number): number {
  const side = Math.sin(angle) / rod;
  return (1 - Math.cos(angle) + rod * (1 - Math.sqrt(1 - side * side))) / 2;
}

/**
 * One intake, quasi-steady, by crank angle. A two-stroke's crankcase draws while the piston climbs, from the ports'
 * closing (240° after top centre) to their opening (120°), through reeds; a four-stroke's cylinder from 12° before
 * top centre to 50° after bottom, through a valve whose opening follows a half sine. Isothermal, an orifice law with
 * a choked limit; no waves.
 * @param lift fraction of full lift
 */
export function breath(engine: Engine, body: Body, air: Air, lift: number, intake: Intake): Breath {
  const rpm = engine.idleRpm + (engine.peakRpm - engine.idleRpm) * lift ** engine.revsFollow;
  const raised = Math.min(body.bore, lift * body.bore + body.idleLift * (1 - lift) + intake.heldUp);
  const open = slideArea(body.bore, raised);
  const two = engine.strokes === 2;
  const from = two ? (240 * Math.PI) / 180 : (-12 * Math.PI) / 180;
  const to = two ? (480 * Math.PI) / 180 : (230 * Math.PI) / 180;
  const step = (to - from) / STEPS;
  const seconds = step / ((rpm * 2 * Math.PI) / 60);
  const clearance = engine.displacement / (engine.squeeze - 1);
  const volume = (angle: number): number => {
    const down = pistonDown(angle, engine.rod);
    return clearance + engine.displacement * (two ? 1 - down : down);
  };
  const effort = rpm / engine.peakRpm;
  const outside = air.pressure;
  const gas = 287.05 * (two ? 315 : 330);
  let pressure = outside * (two ? 1 - engine.pipeDraws * effort * effort : 1.02);
  let mass = (pressure * volume(from)) / gas;
  const filter = body.filter * intake.filter;
  const flow = new Float64Array(STEPS);
  const filterDrop = new Float64Array(STEPS);
  const slideDrop = new Float64Array(STEPS);
  let drawn = 0;
  let leaked = 0;
  let coefficient = 0.7;
  for (let i = 0; i < STEPS; i++) {
    const angle = from + (i + 0.5) * step;
    const room = volume(angle);
    pressure = (mass * gas) / room;
    const drop = outside - pressure;
    if (drop <= 0) continue;
    const gate = two
      ? engine.gate * Math.min(1, 0.25 + drop / 4000)
      : engine.gate * Math.max(0.02, Math.sin((Math.PI * (i + 0.5)) / STEPS));
    const slide = coefficient * open;
    const resistance = 1 / (slide * slide) + 1 / (gate * gate) + 1 / (filter * filter);
    const through = 1 / Math.sqrt(resistance);
    // Beyond 0.45 of the outside pressure the stream is at the speed of sound and no more goes through.
    const felt = Math.min(drop, 0.45 * outside);
    let rate = through * Math.sqrt(2 * air.density * felt) * (1 - (0.45 * felt) / outside);
    // Never more than fills the room to the outside pressure within the step.
    rate = Math.min(rate, (outside * room) / gas / seconds - mass / seconds);
    if (rate <= 0) continue;
    const used = (rate * rate) / (2 * air.density);
    flow[i] = rate;
    filterDrop[i] = used / (filter * filter);
    slideDrop[i] = used / (slide * slide);
    const leak = intake.leak * 0.65 * Math.sqrt(2 * air.density * felt);
    drawn += rate * seconds;
    leaked += leak * seconds;
    mass += (rate + leak) * seconds;
    const speed = rate / (air.density * open);
    coefficient = slideCoefficient(raised / body.bore, (speed * Math.sqrt(open)) / AIR_VISCOSITY);
  }
  return { air: drawn, leaked, seconds, flow, filterDrop, slideDrop, open };
}
