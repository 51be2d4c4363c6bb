import { Chance } from "../chance.ts";
import { airOf, pressureAt } from "./air.ts";
import {
  type Bike,
  type Body,
  type Broken,
  type Cone,
  type Engine,
  LIFTS,
  type NeedleShape,
  type Parts,
} from "./bike.ts";
import { drawFault } from "./draw-fault.ts";
import { fuelOf, type Tank } from "./fuel.ts";
import { Mixture } from "./mixture.ts";
import { nearestSize, stepped } from "./sizes.ts";
import { NOTHING } from "./upset.ts";

/** The place it is ridden: height, and the weather's middle. */
export interface Place {
  readonly height: number;
  readonly celsius: number;
  readonly humidity: number;
}

/** A bike with what its owner brings: parts as found, the place, and what is broken. */
export interface Drawn {
  readonly bike: Bike;
  readonly found: Parts;
  /** Parts that suit it well in its home air. */
  readonly suits: Parts;
  readonly place: Place;
  readonly broken: Broken | null;
}

function drawEngine(chance: Chance): Engine {
  const strokes = chance.of(0.65) ? 2 : 4;
  const cc =
    strokes === 2
      ? chance.weighted([
          [50, 1],
          [65, 1],
          [85, 1.5],
          [125, 3],
          [150, 1],
          [200, 1],
          [250, 3],
          [300, 2.5],
          [380, 0.5],
          [500, 0.5],
        ] as const)
      : chance.weighted([
          [50, 0.6],
          [110, 1],
          [125, 1],
          [200, 1],
          [250, 3],
          [350, 1.5],
          [400, 1],
          [450, 2.5],
          [500, 1],
        ] as const);
  const displacement = cc * chance.between(0.95, 1) * 1e-6;
  const bigness = cc / 250;
  return {
    strokes,
    displacement,
    rod: chance.between(3.4, 4.2),
    squeeze: strokes === 2 ? chance.between(1.3, 1.5) : chance.between(9, 12.5),
    gate: (strokes === 2 ? chance.between(7, 10) : chance.between(6.5, 9)) * 1e-4 * bigness ** 0.67,
    idleRpm: chance.between(1500, 1900),
    peakRpm: (strokes === 2 ? 8300 : 9000) * bigness ** -0.22 * chance.between(0.88, 1.1),
    revsFollow: chance.between(0.45, 0.65),
    pipeDraws: strokes === 2 ? chance.between(0.03, 0.12) : 0,
    pump: strokes === 4 && chance.of(0.5),
  };
}

function drawBody(chance: Chance, { strokes, displacement, peakRpm, gate }: Engine): Body {
  const wanted =
    chance.between(0.66, 0.82) * Math.sqrt(displacement * 1000 * peakRpm) * (strokes === 4 ? 0.85 : 1);
  const bore = Math.min(40, Math.max(16, Math.round(wanted))) * 1e-3;
  const mm2 = 1e-6 * (bore / 0.036) ** 2;
  const screw = chance.of(strokes === 2 ? 0.8 : 0.15) ? "air" : "fuel";
  return {
    bore,
    idleLift: bore * chance.between(0.03, 0.055),
    screw,
    bowlVentsFree: chance.of(0.75),
    // Flow numbers are not stamped on the smallest bodies: their pilots would be fives.
    numbering: bore < 0.026 || chance.of(0.5) ? "bore" : "flow",
    seatToJet: chance.between(25, 34) * 1e-3,
    nozzlePlace: chance.between(0.6, 0.95),
    reliefFades: chance.between(0.25, 0.45),
    suction: chance.between(1.7, 2.9),
    suctionLow: chance.between(-0.75, -0.2),
    skin: chance.between(30, 200),
    bleed: strokes === 4 || chance.of(0.15) ? chance.between(0.04, 0.16) : 0,
    fuelLift: chance.between(9, 16) * 1e-3,
    pilotLift: chance.between(10, 20) * 1e-3,
    pilotOutlet: chance.between(0.7, 1.1) * mm2,
    pilotBypass: chance.between(0.25, 0.5) * mm2,
    pilotAir: (screw === "air" ? chance.between(0.55, 0.95) : chance.between(0.35, 0.6)) * mm2,
    screwPerTurn: (screw === "air" ? chance.between(0.28, 0.6) : chance.between(0.5, 1.1)) * mm2,
    bypassAt: chance.between(0.06, 0.12),
    filter: gate * chance.between(3, 5),
    jetSlenderness: chance.between(1.5, 3.5),
  };
}

function drawNeedle(
  chance: Chance,
  body: Body,
  mainArea: number,
  groove: number,
): { readonly needle: NeedleShape; readonly needleJet: number } {
  const nominal =
    Math.round(Math.max(2.08, 1.62 + 0.03 * body.bore * 1000 + chance.normal(0, 0.05)) * 50) / 50;
  const needleJet = nominal * 1e-3;
  const grooves = chance.of(0.8) ? 5 : chance.pick([3, 4]);
  const pitch = chance.between(0.85, 1.05) * 1e-3;
  const thin = (share: number): number =>
    Math.sqrt(Math.max(3e-7, needleJet ** 2 - (4 * share * mainArea) / Math.PI));
  const straight = Math.round(thin(chance.between(0.26, 0.36)) * 2e5) / 2e5;
  const tip = thin(chance.between(1.7, 2.3));
  const reach = body.seatToJet + (groove - 1) * pitch;
  const start = body.bore * chance.between(0.17, 0.26);
  const count = chance.weighted([
    [1, 1],
    [2, 3],
    [3, 1],
  ] as const);
  // Breaks spread over what is left of the lift; each cone steeper than the one before.
  const breaks = Array.from({ length: count }, (_, i) => start + ((body.bore - start) * i) / count);
  const steepness = breaks.map((_, i) => 1 + i * chance.between(0.4, 1.1));
  const shares = steepness.map((each) => each / steepness.reduce((a, b) => a + b, 0));
  const cones: Cone[] = breaks.map((from, i) => {
    const length = (body.bore - start) / count;
    const angle = 2 * Math.atan(((straight - tip) * shares[i]!) / 2 / length);
    // Ground to the quarter degree.
    return {
      from: reach + from,
      angle: (Math.max(0.5, Math.round(((angle * 180) / Math.PI) * 4) / 4) * Math.PI) / 180,
    };
  });
  return { needle: { straight, cones, grooves, pitch }, needleJet };
}

function drawTank(chance: Chance, strokes: 2 | 4): Tank {
  return {
    ethanol: chance.pick([0, 0.05, 0.05, 0.1, 0.1]) * chance.between(0.9, 1),
    oil: strokes === 2 ? 1 / chance.pick([20, 25, 30, 32, 40, 50, 60]) : 0,
    petrolDensity: chance.normal(745, 8),
    oilBurns: chance.between(0.2, 0.8),
  };
}

/** ln of a fuel-air ratio that changes smoothly with the opening: what jets and needle cannot follow. */
function waviness(chance: Chance): readonly number[] {
  const waves = [1, 2, 3].map((n) => ({
    n,
    size: chance.normal(0, 0.012),
    at: chance.between(0, 2 * Math.PI),
  }));
  return LIFTS.map((lift) =>
    waves.reduce(
      (sum, { n, size, at }) => sum + (size / n) * Math.cos(n * Math.PI * Math.sqrt(lift) + at),
      0,
    ),
  );
}

/** The bike of that seed: always the same one. A third have a mechanical fault. */
export function drawBike(seed: string): Drawn {
  const chance = new Chance(seed, "bike");
  const engine = drawEngine(chance);
  const body = drawBody(chance, engine);
  const tank = drawTank(chance, engine.strokes);
  const scale = engine.strokes === 2 ? chance.between(4.2, 5) : chance.between(3.6, 4.3);
  const boreNumber = scale * body.bore * 1000;
  const asNumber = (bore: number): number => (body.numbering === "bore" ? bore : 100 * (bore / 100) ** 2);
  const main = nearestSize("main", body.numbering, asNumber(boreNumber));
  const pilot = nearestSize("pilot", body.numbering, asNumber(chance.between(1.1, 1.45) * body.bore * 1000));
  const groove = chance.pick([2, 3, 3, 4]);
  const mainBore = body.numbering === "bore" ? main * 1e-5 : Math.sqrt(main / 100) * 1e-3;
  const { needle, needleJet } = drawNeedle(chance, body, (Math.PI / 4) * mainBore ** 2, groove);
  const suits: Parts = {
    main,
    pilot,
    groove: Math.min(needle.grooves, groove),
    turns: Math.round(chance.between(1.2, 2.2) * 8) / 8,
    cutaway: (Math.round(chance.between(0.075, 0.11) * body.bore * 2000) / 2) * 1e-3,
    needleJet,
  };
  // As stamped and as made: needle and its jet within a few thousandths.
  const made: NeedleShape = {
    ...needle,
    straight: needle.straight + chance.normal(0, 2.5e-6),
    cones: needle.cones.map(({ from, angle }) => ({
      from: from + chance.normal(0, 2e-4),
      angle: angle * (1 + chance.normal(0, 0.015)),
    })),
  };
  const place = drawPlace(chance);
  // The parts suit the air of home, which is not always where it is brought in.
  const home = chance.of(0.5) ? place : drawPlace(chance);
  const homeAir = airOf(home.celsius, pressureAt(home.height), home.humidity);
  const bare: Bike = {
    seed,
    engine,
    body,
    needle: made,
    tank,
    wanted: LIFTS.map(() => 0),
    jetScatter: chance.between(0.005, 0.013),
  };
  const suited = new Mixture(bare, homeAir, fuelOf(tank, home.celsius + 5), NOTHING).logRatio(suits);
  const waves = waviness(chance);
  const bike: Bike = { ...bare, wanted: suited.map((ratio, i) => ratio + waves[i]!) };
  const broken = chance.of(1 / 3) ? drawFault(chance, engine) : null;
  return { bike, suits, place, broken, found: drawFound(chance, bike, suits, place, broken !== null) };
}

function drawPlace(chance: Chance): Place {
  const height = chance.of(0.6) ? chance.between(0, 600) : chance.between(0, 3000);
  const celsius = Math.max(-10, Math.min(40, chance.normal(18, 10) - 0.004 * height));
  return { height, celsius, humidity: chance.between(0.25, 0.95) };
}

/** What another owner, another pipe or another season left in it. A sound bike has a complaint, or it would not be here. */
function drawFound(chance: Chance, bike: Bike, suits: Parts, place: Place, broken: boolean): Parts {
  const air = airOf(place.celsius, pressureAt(place.height), place.humidity);
  const mixture = new Mixture(bike, air, fuelOf(bike.tank, place.celsius + 5), NOTHING);
  for (let tries = 0; ; tries++) {
    const { numbering } = bike.body;
    const steps = (sd: number): number => Math.round(chance.normal(0, sd));
    const found: Parts = {
      ...suits,
      main: stepped("main", numbering, suits.main, steps(broken ? 1.2 : 2)),
      pilot: stepped("pilot", numbering, suits.pilot, steps(broken ? 0.6 : 1)),
      groove: Math.max(1, Math.min(bike.needle.grooves, suits.groove + steps(0.7))),
      turns: Math.max(0.5, Math.min(3.25, suits.turns + Math.round(chance.normal(0, 0.5) * 8) / 8)),
    };
    const error = mixture.error(found);
    const worst = Math.max(...error.map(Math.abs));
    const complaint = error.some((each) => each < -0.04 || each > 0.06);
    if ((worst < 0.25 && (complaint || broken)) || tries > 60) return found;
  }
}
