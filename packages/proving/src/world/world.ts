import { Chance } from "../chance.ts";
import { type Broken, LIFTS, type PartName, type Parts } from "../truth/bike.ts";
import type { Drawn } from "../truth/draw-bike.ts";
import { fuelOf } from "../truth/fuel.ts";
import { Mixture } from "../truth/mixture.ts";
import { upsetBy } from "../truth/upset.ts";
import { type Bench, drawBench } from "./bench.ts";
import { labour } from "./labour.ts";
import { CLEAN, endsAnEngine, LEAN_RIDE } from "./limits.ts";
import { type Looked, look, minutesInOneGo } from "./looks.ts";
import { drawRider, type Rider } from "./rider.ts";
import type { Throttle } from "./throttle.ts";
import { drawInstruments, type Instruments, type Weather, weatherAt } from "./weather.ts";
import type { Written } from "./written.ts";

/** What happened on one ride, for the judge. */
export interface Ridden {
  readonly clean: boolean;
  /** The leanest error from 3/4 up, where the throttle went there; null where it did not. */
  readonly leanestTop: number | null;
  /** Minutes spent before it. */
  readonly before: number;
  /** False for a short test made on the spot, in the same air and on the same outing. */
  readonly outing: boolean;
}

/**
 * One bike, its rider and its weather: everything a policy may do to it and learn from it, and what the judge sees.
 * The same seed tells the same story to every policy: chance is drawn by what is done for the how-manieth time.
 */
export class World {
  readonly drawn: Drawn;
  readonly rider: Rider;
  readonly bench: Bench;
  readonly rides: Ridden[] = [];
  readonly looks: { readonly id: string; readonly looked: Looked; readonly broken: boolean }[] = [];
  readonly fits: {
    readonly changes: readonly PartName[];
    readonly bought: number;
    readonly broken: boolean;
  }[] = [];
  minutes = 0;
  bought = 0;
  engineLost = false;
  /** Steps before the fault was mended; null while it is there, or there was none. */
  mendedAfter: { readonly rides: number; readonly jets: number } | null = null;
  #parts: Parts;
  #written: Written;
  #broken: Broken | null;
  #weather: Weather;
  #mixture: Mixture | null = null;
  readonly #instruments: Instruments;
  readonly #shows: ReadonlySet<string>;
  #tried = 0;

  constructor(drawn: Drawn, kind?: Rider["kind"]) {
    const seed = drawn.bike.seed;
    this.drawn = drawn;
    this.rider = drawRider(new Chance(seed, "rider"), kind);
    this.bench = drawBench(new Chance(seed, "bench"), drawn);
    this.#parts = { ...drawn.found, turns: drawn.found.turns + this.bench.turnsOff };
    this.#written = this.bench.written;
    this.#broken = drawn.broken;
    this.#instruments = drawInstruments(new Chance(seed, "instruments"));
    this.#weather = weatherAt(seed, chanceOf, drawn.place, 0, this.#instruments);
    this.#shows = this.bench.shows;
  }

  get parts(): Parts {
    return this.#parts;
  }
  get written(): Written {
    return this.#written;
  }
  get broken(): Broken | null {
    return this.#broken;
  }
  get weather(): Weather {
    return this.#weather;
  }

  chance(...what: readonly (string | number)[]): Chance {
    return new Chance(this.drawn.bike.seed, ...what, this.rides.length, this.#tried);
  }

  /** The mixture's error at each of LIFTS now, the fault's own doing included. */
  error(parts: Parts = this.#parts): readonly number[] {
    return this.#now().error(parts);
  }

  /** The same with the fault thought away: what the jets alone do. */
  errorOfJets(parts: Parts = this.#parts): readonly number[] {
    return this.mixtureWith(null).error(parts);
  }

  mixtureWith(broken: Broken | null, heat = 0): Mixture {
    const { bike } = this.drawn;
    const { air, celsius } = this.#weather;
    return new Mixture(bike, air, fuelOf(bike.tank, celsius + 5), upsetBy(broken, bike.body.bore, heat));
  }

  #now(): Mixture {
    this.#mixture ??= this.mixtureWith(this.#broken);
    return this.#mixture;
  }

  /** What it seems to run at: misfires, wear and heat thrown in, and starving when the top is held for long. */
  seems(throttle: Throttle, parts: Parts = this.#parts): readonly number[] {
    const upset = upsetBy(this.#broken, this.drawn.bike.body.bore);
    return this.error(parts).map((error, i) => {
      const lift = LIFTS[i]!;
      const load = Math.max(0, Math.min(1, (lift - 0.1) / 0.6));
      const starved = lift >= 0.75 && throttle === "free" ? upset.starves : 0;
      return (
        error -
        starved +
        load * upset.seemsRichLoaded +
        (1 - load) * upset.seemsRichLight +
        this.bench.character[i]!
      );
    });
  }

  get shows(): ReadonlySet<string> {
    return this.#broken === null ? new Set() : this.#shows;
  }

  isClean(): boolean {
    return this.#broken === null && isClean(this.error());
  }

  /** Rides made, short tests on the spot not counted. */
  get outings(): number {
    return this.rides.filter(({ outing }) => outing).length;
  }

  /** Takes it out: the weather has moved since the last outing. A test on the spot is no outing of its own. */
  run(throttle: Throttle, minutes: number, outing = true): void {
    const { bike, place } = this.drawn;
    if (outing) this.#weather = weatherAt(bike.seed, chanceOf, place, this.outings, this.#instruments);
    this.#mixture = null;
    this.#tried = 0;
    const upset = upsetBy(this.#broken, bike.body.bore);
    const starved = throttle === "free" ? upset.starves : 0;
    const top = this.error()
      .filter((_, i) => LIFTS[i]! >= 0.75)
      .map((error) => error - starved);
    const leanestTop = throttle === "stay below 3/4" ? null : Math.min(...top);
    this.rides.push({ clean: this.isClean(), leanestTop, before: this.minutes, outing });
    this.minutes += minutes;
    // The first ride is the owner's own, before anybody advised anything.
    const advised = this.rides.length > 1;
    if (
      advised &&
      leanestTop !== null &&
      leanestTop < LEAN_RIDE &&
      endsAnEngine(bike.engine.strokes, leanestTop, throttle, this.chance("luck").uniform())
    ) {
      this.engineLost = true;
    }
  }

  /** Fits parts; a screw or clip lands where it was meant to, near enough. */
  fit(change: Partial<Parts>): void {
    const chance = this.chance("fit", this.fits.length);
    const changes = (Object.keys(change) as PartName[]).filter(
      (name) => change[name] !== this.#written[name],
    );
    if (changes.length === 0) return;
    let bought = 0;
    for (const name of changes) if (!this.bench.owns(name, change[name]!)) bought++;
    this.bought += bought;
    this.minutes += labour(changes) + 45 * Math.min(1, bought);
    const parts = {
      ...this.#parts,
      ...Object.fromEntries(changes.map((name) => [name, change[name]!])),
    } as Parts;
    this.#parts = changes.includes("turns")
      ? { ...parts, turns: Math.max(0.1, change.turns! + chance.normal(0, 0.05)) }
      : parts;
    this.#written = {
      ...this.#written,
      ...Object.fromEntries(changes.map((name) => [name, change[name]!])),
    } as Written;
    this.#mixture = null;
    this.fits.push({ changes, bought, broken: this.#broken !== null });
  }

  /** Reads what is fitted: afterwards the record is right. */
  readParts(): void {
    this.minutes += 25;
    this.#written = { ...this.#parts, turns: Math.round(this.#parts.turns * 8) / 8 };
  }

  check(id: string, minutes: number): Looked {
    this.minutes += minutes;
    const looked = look(this.chance("look", id), id, this.#broken);
    this.looks.push({ id, looked, broken: this.#broken !== null });
    return looked;
  }

  /** Makes several looks in one go. */
  lookOver(ids: readonly string[]): readonly (Looked & { readonly id: string })[] {
    this.minutes += minutesInOneGo(ids);
    return ids.map((id) => ({ id, ...this.check(id, 0) }));
  }

  /** Puts a fault right, if it is the one that is there. One mend in twenty fails. */
  mend(fault: string): void {
    this.minutes += 20;
    if (this.#broken?.fault !== fault || this.chance("mend").of(0.05)) return;
    this.#broken = null;
    this.#mixture = null;
    this.mendedAfter = { rides: this.outings, jets: this.jetChanges };
  }

  /** Times jets, needle or slide were changed; the screw does not count. */
  get jetChanges(): number {
    return this.fits.filter(({ changes }) => changes.some((name) => name !== "turns")).length;
  }

  spend(minutes: number): void {
    this.minutes += minutes;
    this.#tried++;
  }
}

export function isClean(error: readonly number[]): boolean {
  return CLEAN.at.every((lift) => {
    const here = error[LIFTS.indexOf(lift)]!;
    return here >= CLEAN.lean && here <= CLEAN.rich;
  });
}

const chanceOf = (...key: readonly (string | number)[]): Chance => new Chance(...key);
