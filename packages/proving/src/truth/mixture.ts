import type { Air } from "./air.ts";
import { type Bike, LIFTS, type Parts } from "./bike.ts";
import { type Breath, breath } from "./breathing.ts";
import type { Fuel } from "./fuel.ts";
import { type MainHoles, mainFuel, needleAt, nozzleSuction } from "./main-circuit.ts";
import { holeOf } from "./part-scatter.ts";
import { outletSuction, pilotFuel, wellShare } from "./pilot-circuit.ts";
import type { Upset } from "./upset.ts";

/**
 * One bike in one air with one fuel and one fault: gives the mixture for any parts. What the parts do not change
 * (the breath at each opening) is worked out once.
 */
export class Mixture {
  readonly #bike: Bike;
  readonly #fuel: Fuel;
  readonly #upset: Upset;
  readonly #air: Air;
  readonly #breaths: readonly Breath[];
  readonly #outlets: readonly Float64Array[];
  readonly #nozzles = new Map<number, readonly Float64Array[]>();
  readonly #mains = new Map<string, readonly number[]>();
  readonly #pilots = new Map<string, readonly number[]>();

  constructor(bike: Bike, air: Air, fuel: Fuel, upset: Upset) {
    this.#bike = bike;
    this.#fuel = fuel;
    this.#upset = upset;
    this.#air = air;
    this.#breaths = LIFTS.map((lift) => breath(bike.engine, bike.body, air, lift, upset.intake));
    this.#outlets = this.#breaths.map((each) => outletSuction(bike.body, air, each));
  }

  /** Error at each of LIFTS: ln of fuel-air ratio over the wanted one. */
  error(parts: Parts): readonly number[] {
    return this.logRatio(parts).map((value, i) => value - this.#bike.wanted[i]!);
  }

  /** ln of the ratio of burning fuel, by the air it wants, to dry air, at each of LIFTS. */
  logRatio(parts: Parts): readonly number[] {
    const main = this.#main(parts);
    const pilot = this.#pilot(parts);
    const dryShare = this.#air.dryDensity / this.#air.density;
    return this.#breaths.map((each, i) => {
      const fuel = (main[i]! + pilot[i]!) * this.#fuel.burns * this.#fuel.airWanted;
      return Math.log(Math.max(1e-12, fuel) / ((each.air + each.leaked) * dryShare));
    });
  }

  /** Share of the fuel that comes through the pilot at each of LIFTS. */
  pilotShare(parts: Parts): readonly number[] {
    const main = this.#main(parts);
    return this.#pilot(parts).map((fuel, i) => fuel / (fuel + main[i]!));
  }

  #main({ main, groove, cutaway, needleJet }: Parts): readonly number[] {
    const key = `${main}|${groove}|${cutaway}|${needleJet}`;
    const before = this.#mains.get(key);
    if (before !== undefined) return before;
    const { body, needle } = this.#bike;
    const upset = this.#upset;
    let suctions = this.#nozzles.get(cutaway);
    if (suctions === undefined) {
      suctions = LIFTS.map((lift, i) =>
        nozzleSuction(body, this.#air, lift, cutaway, upset.intake, this.#breaths[i]!),
      );
      this.#nozzles.set(cutaway, suctions);
    }
    const jet = holeOf(this.#bike, "main", main);
    const bore = needleJet + upset.jetWear;
    const made = LIFTS.map((lift, i) => {
      const raised = lift * body.bore + body.idleLift * (1 - lift);
      const thick =
        needleAt(needle, body.seatToJet + (groove - 1) * needle.pitch + raised) - upset.needleWear;
      const gap = Math.max(5e-6, (bore - thick) / 2);
      const holes: MainHoles = { jet, ring: Math.PI * gap * (bore - gap), gap };
      return mainFuel(body, this.#fuel, holes, suctions[i]!, this.#breaths[i]!.seconds, upset.level);
    });
    this.#mains.set(key, made);
    return made;
  }

  #pilot({ pilot, turns }: Parts): readonly number[] {
    const key = `${pilot}|${turns}`;
    const before = this.#pilots.get(key);
    if (before !== undefined) return before;
    const { body } = this.#bike;
    const jet = holeOf(this.#bike, "pilot", pilot) * this.#upset.pilotFree;
    const made = LIFTS.map((lift, i) => {
      const { seconds, slideDrop } = this.#breaths[i]!;
      const share = wellShare(body, turns, lift);
      const own = pilotFuel(body, this.#fuel, jet, share, this.#outlets[i]!, seconds, this.#upset.level);
      return own + this.#chokeFuel(slideDrop, seconds);
    });
    this.#pilots.set(key, made);
    return made;
  }

  #chokeFuel(drop: Float64Array, seconds: number): number {
    if (this.#upset.choke === 0) return 0;
    const { density } = this.#fuel;
    let fuel = 0;
    for (const each of drop)
      fuel += 0.6 * this.#upset.choke * Math.sqrt(2 * density * Math.max(0, each - 200)) * seconds;
    return fuel;
  }
}
