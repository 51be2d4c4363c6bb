import {
  airAt,
  type BikeCase,
  type CheckResult,
  type CubicMetre,
  type Drawer,
  type FuelState,
  fromCelsius,
  fromDegree,
  fromMetre,
  fromPascal,
  fuelState,
  type Jet,
  type Known,
  known,
  type Metre,
  type Needle,
  type Opening,
  type Ride,
  type Setup,
  type Situation,
  type TestResult,
  UNKNOWN,
} from "@jetwright/core";
import type { PartName, Parts } from "../truth/bike.ts";
import type { Report } from "../world/report-of.ts";
import type { World } from "../world/world.ts";
import type { Written } from "../world/written.ts";

const HOUR = 3_600_000;

/** The bike's story as somebody would have written it down: what the tool is told, and nothing else. */
export class ToldCase {
  readonly #world: World;
  readonly #rides: Ride[] = [];
  readonly #tests: TestResult[] = [];
  readonly #checks: CheckResult[] = [];
  readonly #oneAtATime: boolean;
  readonly #extra: { mains: Set<number>; pilots: Set<number> } = { mains: new Set(), pilots: new Set() };

  #situations: Situation[] = [];
  #clock = 0;

  constructor(world: World, oneAtATime: boolean) {
    this.#world = world;
    this.#oneAtATime = oneAtATime;
  }

  get checks(): readonly CheckResult[] {
    return this.#checks;
  }

  situation(): Situation {
    const { written, weather } = this.#world;
    const { read } = weather;
    const vapour = (read.humidity * magnus(read.celsius)) / read.pressure;
    // A thermometer good to a degree, a barometer to 3 hPa, humidity to a tenth.
    const air = airAt(fromCelsius(read.celsius), fromPascal(read.pressure), vapour, 0.007);
    const fuel = this.#fuel(read.celsius);
    return { setup: this.#setup(written), air, fuel };
  }

  #fuel(celsius: number): FuelState {
    const { tank } = this.#world.drawn.bike;
    // The pump's label: a tenth, a twentieth or none.
    const ethanol = Math.round(tank.ethanol * 20) / 20;
    const state = fuelState({
      ethanol,
      alkylate: 0,
      oilPerFuel: tank.oil,
      temperature: fromCelsius(celsius + 5),
    });
    if (!state.ok) throw new RangeError(state.detail);
    return state.value;
  }

  #setup(written: Written): Setup {
    const { body, needle } = this.#world.drawn.bike;
    const jet = (number: number | null): Known<Jet> =>
      number === null ? UNKNOWN : known({ number, numbering: body.numbering, maker: "one" });
    const profile = this.#world.bench.needleKnown
      ? {
          straightDiameter: fromMetre(Math.round(needle.straight * 2e5) / 2e5),
          tapers: needle.cones.map(({ from, angle }) => ({
            start: fromMetre(Math.round(from * 2000) / 2000),
            includedAngle: fromDegree(Math.round(((angle * 180) / Math.PI) * 4) / 4),
          })),
          diameterSd: fromMetre(5e-6),
        }
      : null;
    const told: Needle = {
      marks: "fitted",
      grooves: needle.grooves,
      groovePitch: fromMetre(Math.round(needle.pitch * 1e4) / 1e4),
      profile,
    };
    return {
      body: {
        bore: { shape: "round", diameter: fromMetre(body.bore) },
        screwKind: body.screw,
        nozzle: body.bleed > 0 ? "bleed" : "primary",
        seatToJet: profile === null ? null : fromMetre(Math.round(body.seatToJet * 1000) / 1000),
        idleLift: null,
        bowlVent: body.bowlVentsFree ? "free air" : "airbox",
      },
      pilot: jet(written.pilot),
      main: jet(written.main),
      needle: known(told),
      clip: written.groove === null ? UNKNOWN : known(written.groove),
      needleJet: written.needleJet === null ? UNKNOWN : known(fromMetre(written.needleJet)),
      cutaway: written.cutaway === null ? UNKNOWN : known(fromMetre(written.cutaway)),
      screw: written.turns === null ? UNKNOWN : known({ kind: body.screw, turnsOut: written.turns }),
      fuelLift: UNKNOWN,
      mainAirJet: UNKNOWN,
      pilotAirJet: UNKNOWN,
    };
  }

  /** Remembers a ride on what is fitted now. */
  rode(report: Report, againstLast: boolean): void {
    const situation = this.situation();
    const before = this.#situations[this.#situations.length - 1];
    this.#situations.push(situation);
    const record = `ride-${this.#rides.length}`;
    this.#rides.push({
      record,
      at: this.#tick(),
      situation,
      warm: true,
      reports: report.said.map(({ sign, at, seen }) => ({ sign, opening: at as Opening | null, seen })),
      against:
        againstLast && before !== undefined && report.felt.length > 0
          ? {
              situation: before,
              verdicts: report.felt.map(({ at, felt }) => ({ opening: at as Opening, felt })),
            }
          : null,
    });
  }

  tested(
    test: string,
    opening: number | null,
    outcome: string,
    numbers: Readonly<Record<string, number>>,
  ): void {
    const at = this.#tick();
    this.#tests.push({
      record: `test-${at}`,
      at,
      situation: this.situation(),
      test,
      opening: opening as Opening | null,
      outcome,
      numbers,
    });
  }

  checked(check: string, found: CheckResult["found"], fault: string | null): void {
    const at = this.#tick();
    this.#checks.push({ record: `check-${at}`, at, check, found, fault });
  }

  /** The jet that came out goes into the drawer. */
  keeps(name: PartName, number: number | null): void {
    if (number === null) return;
    if (name === "main") this.#extra.mains.add(number);
    if (name === "pilot") this.#extra.pilots.add(number);
  }

  /** Parts that nobody knew and that were read now were the same before: the older records are put right. */
  putRight(before: Written, now: Written): void {
    const names = (Object.keys(now) as PartName[]).filter(
      (name) => before[name] === null && now[name] !== null,
    );
    if (names.length === 0) return;
    const right = this.#setup(now);
    const mend = (situation: Situation): Situation => {
      const setup = { ...situation.setup };
      if (names.includes("main") && setup.main.part === null) setup.main = right.main;
      if (names.includes("pilot") && setup.pilot.part === null) setup.pilot = right.pilot;
      if (names.includes("groove") && setup.clip.part === null) setup.clip = right.clip;
      return { ...situation, setup };
    };
    this.#situations = this.#situations.map(mend);
    this.#rides.splice(
      0,
      this.#rides.length,
      ...this.#rides.map((ride, i) => ({
        ...ride,
        situation: this.#situations[i]!,
        against: ride.against === null ? null : { ...ride.against, situation: mend(ride.against.situation) },
      })),
    );
    this.#tests.splice(
      0,
      this.#tests.length,
      ...this.#tests.map((test) => ({ ...test, situation: mend(test.situation) })),
    );
  }

  #tick(): number {
    this.#clock += HOUR;
    return this.#clock;
  }

  case(): BikeCase {
    const { engine } = this.#world.drawn.bike;
    return {
      engine: {
        strokes: engine.strokes,
        displacement: engine.displacement as CubicMetre,
        acceleratorPump: engine.pump,
      },
      now: this.situation(),
      reference: this.#situations[0] ?? this.situation(),
      rides: this.#rides,
      tests: this.#tests,
      checks: this.#checks,
      measurements: [],
      drawer: this.#drawer(),
      minutes: {},
      oneChangeAtATime: this.#oneAtATime,
      freshStartAt: null,
    };
  }

  #drawer(): Drawer {
    const { bench, drawn } = this.#world;
    const { numbering } = drawn.bike.body;
    const jets = (numbers: readonly number[], extra: Set<number>): Drawer["mains"] =>
      [...new Set([...numbers, ...extra])].map((number) => ({
        part: { number, numbering, maker: "one" },
        count: 1,
      }));
    return {
      mains: jets(bench.mains, this.#extra.mains),
      pilots: jets(bench.pilots, this.#extra.pilots),
      needles: [],
      needleJets: bench.needleJets.map((each) => ({ part: fromMetre(each), count: 1 })),
      slides: bench.cutaways.map((each) => ({ part: fromMetre(each), count: 1 })),
    };
  }
}

const magnus = (celsius: number): number => 611.2 * Math.exp((17.62 * celsius) / (243.12 + celsius));

/** The parts of a setup the tool advises, as numbers; what it does not know it does not change. */
export function partsOf(setup: Setup): Partial<Parts> {
  const parts: { -readonly [name in PartName]?: number } = {};
  if (setup.main.part !== null) parts.main = setup.main.part.number;
  if (setup.pilot.part !== null) parts.pilot = setup.pilot.part.number;
  if (setup.clip.part !== null) parts.groove = setup.clip.part;
  if (setup.screw.part !== null) parts.turns = setup.screw.part.turnsOut;
  if (setup.cutaway.part !== null) parts.cutaway = setup.cutaway.part as Metre;
  if (setup.needleJet.part !== null) parts.needleJet = setup.needleJet.part as Metre;
  return parts;
}
