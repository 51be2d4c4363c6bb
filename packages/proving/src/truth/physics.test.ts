import { describe, expect, test } from "vitest";
import { airOf, pressureAt } from "./air.ts";
import { LIFTS } from "./bike.ts";
import { breath } from "./breathing.ts";
import { shortTube, slideCoefficient } from "./discharge.ts";
import { drawBike } from "./draw-bike.ts";
import { fuelOf } from "./fuel.ts";
import { Mixture } from "./mixture.ts";
import { slideArea } from "./slide-area.ts";
import { NOTHING, upsetBy } from "./upset.ts";

// The truth against facts that are not ours.

const BIKES = Array.from({ length: 12 }, (_, i) => drawBike(`physics-${i}`));
const SEA = airOf(15, 101325, 0);
const at = (values: readonly number[], lift: number): number => values[LIFTS.indexOf(lift)]!;

describe("parts of the physics", () => {
  test("air: 1.225 kg/m³ at 15 °C and 1013.25 hPa dry (ISO 2533), 1.194 at 20 °C half saturated (CIPM-2007) [from memory]", () => {
    expect(SEA.density).toBeCloseTo(1.225, 3);
    expect(airOf(20, 101325, 0.5).density).toBeCloseTo(1.199, 2);
    expect(pressureAt(2000) / 100).toBeCloseTo(795, 0);
  });

  test("slide area: a circle when open, half of it at half lift, and a segment by its closed form between", () => {
    const whole = (Math.PI / 4) * 0.036 ** 2;
    expect(slideArea(0.036, 0.036) / whole).toBeCloseTo(1, 3);
    expect(slideArea(0.036, 0.018) / whole).toBeCloseTo(0.5, 3);
    const half = Math.acos(0.5);
    expect(slideArea(0.036, 0.009) / whole).toBeCloseTo((half - Math.sin(2 * half) / 2) / Math.PI, 3);
  });

  test("small round orifices pass 0.62 to 0.88 of the ideal (Joachim, NACA, abstract read), less the thicker the flow", () => {
    for (const re of [1000, 3000, 10_000, 20_000]) {
      expect(shortTube(re, 2)).toBeGreaterThan(0.62);
      expect(shortTube(re, 2)).toBeLessThan(0.88);
    }
    expect(shortTube(300, 2)).toBeLessThan(shortTube(3000, 2));
    expect(slideCoefficient(0.05, 20_000)).toBeLessThan(slideCoefficient(1, 20_000));
  });

  test("ethanol wants 9.0 of air where petrol wants 14.6, so E10 wants about 4 % less air a mass", () => {
    const tank = { ethanol: 0, oil: 0, petrolDensity: 745, oilBurns: 0 };
    expect(fuelOf(tank, 15).airWanted).toBe(1);
    expect(fuelOf({ ...tank, ethanol: 0.1 }, 15).airWanted).toBeCloseTo(14.011 / 14.604, 2);
    expect(fuelOf(tank, 40).density).toBeLessThan(fuelOf(tank, 0).density);
  });
});

describe("whole bikes", () => {
  const mixture = (i: number, air = SEA, broken = NOTHING) => {
    const { bike, suits } = BIKES[i]!;
    return new Mixture(bike, air, fuelOf({ ...bike.tank }, 20), broken).logRatio(suits);
  };
  const gain = (i: number, change: Partial<(typeof BIKES)[number]["suits"]>, lift: number): number => {
    const { bike, suits } = BIKES[i]!;
    const all = new Mixture(bike, SEA, fuelOf(bike.tank, 20), NOTHING);
    return at(all.logRatio({ ...suits, ...change }), lift) - at(all.logRatio(suits), lift);
  };

  test("thin air is richer by about the root of the density (Heywood 1988, 7.2 [from memory])", () => {
    const high = airOf(15, pressureAt(2000), 0);
    BIKES.forEach((_, i) => {
      const richer = at(mixture(i, high), 1) - at(mixture(i), 1);
      const exponent = richer / -Math.log(high.density / SEA.density);
      expect(exponent).toBeGreaterThan(0.36);
      expect(exponent).toBeLessThan(0.53);
    });
  });

  test("each part acts the way round and most where the trade says (workshop manuals, read)", () => {
    BIKES.forEach(({ bike, suits }, i) => {
      expect(gain(i, { main: suits.main * 1.05 }, 1)).toBeGreaterThan(
        3 * Math.abs(gain(i, { main: suits.main * 1.05 }, 1 / 8)),
      );
      expect(gain(i, { pilot: suits.pilot * 1.1 }, 0)).toBeGreaterThan(
        2 * gain(i, { pilot: suits.pilot * 1.1 }, 1 / 2),
      );
      expect(gain(i, { groove: suits.groove + 1 }, 3 / 8)).toBeGreaterThan(
        gain(i, { groove: suits.groove + 1 }, 1),
      );
      expect(gain(i, { cutaway: suits.cutaway - 5e-4 }, 1 / 8)).toBeGreaterThan(
        gain(i, { cutaway: suits.cutaway - 5e-4 }, 3 / 4),
      );
      const out = gain(i, { turns: suits.turns + 0.5 }, 0);
      expect(Math.sign(out)).toBe(bike.body.screw === "air" ? -1 : 1);
    });
  });

  test("the engine breathes a part of its own volume, more the wider it is opened", () => {
    for (const { bike } of BIKES) {
      const drawn = [0, 1 / 4, 1].map(
        (lift) =>
          breath(bike.engine, bike.body, SEA, lift, NOTHING.intake).air /
          SEA.density /
          bike.engine.displacement,
      );
      expect(drawn[0]).toBeLessThan(0.3);
      expect(drawn[1]).toBeGreaterThan(drawn[0]!);
      expect(drawn[2]).toBeGreaterThan(0.55);
      expect(drawn[2]).toBeLessThan(1.05);
    }
  });

  test("a leak leans the idle most, and more when hot; a choke left open richens the bottom", () => {
    BIKES.forEach(({ bike }, i) => {
      const fault = (name: string, heat = 0) =>
        mixture(i, SEA, upsetBy({ fault: name, severity: 0.6, way: 1 }, bike.body.bore, heat)).map(
          (value, k) => value - mixture(i)[k]!,
        );
      const leak = fault("air-leak");
      expect(at(leak, 0)).toBeLessThan(-0.02);
      expect(at(leak, 0)).toBeLessThan(at(leak, 1 / 8));
      expect(at(leak, 1 / 8)).toBeLessThan(at(leak, 1));
      expect(at(fault("air-leak", 1), 0)).toBeLessThan(at(leak, 0));
      const choke = fault("choke-not-seating");
      expect(at(choke, 0)).toBeGreaterThan(at(choke, 1 / 2));
      expect(at(choke, 1 / 2)).toBeGreaterThan(0);
      expect(at(fault("blocked-pilot"), 0)).toBeLessThan(at(fault("blocked-pilot"), 1 / 2));
    });
  });

  test("a clogged filter on a freely vented bowl richens with the flow", () => {
    BIKES.forEach(({ bike }, i) => {
      if (!bike.body.bowlVentsFree) return;
      const clogged = mixture(
        i,
        SEA,
        upsetBy({ fault: "air-filter", severity: 0.6, way: 1 }, bike.body.bore),
      );
      expect(at(clogged, 1) - at(mixture(i), 1)).toBeGreaterThan(at(clogged, 1 / 4) - at(mixture(i), 1 / 4));
    });
  });
});
