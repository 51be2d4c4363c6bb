import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { LEAN_CHANCE, LEAN_LIMIT } from "../advice/loss.ts";
import { standardAir } from "../air/standard-atmosphere.ts";
import { BODY, boreJet, dryAir, flowJet, mm, SETUP } from "../metering/test-situations.ts";
import { normalCumulative } from "../numerics/normal.ts";
import type { Jet } from "../parts/jet.ts";
import { known, UNKNOWN } from "../parts/known.ts";
import type { Setup } from "../parts/setup.ts";
import type { CubicMetre, Metre } from "../units/quantity.ts";
import type { BikeToStart } from "./bike.ts";
import { type KnownGood, STANDARD_AIR, standardFuel } from "./known-good.ts";
import { sizesSold } from "./sizes-sold.ts";
import type { StartingFigure } from "./starting-figure.ts";
import { START_LEAN_LIMIT } from "./starting-jet.ts";
import { type StartingPoint, startingPoint } from "./starting-point.ts";

const cc = (x: number): CubicMetre => (x / 1e6) as CubicMetre;
const bike = (change: Partial<BikeToStart> = {}): BikeToStart => ({
  strokes: 2,
  displacement: cc(250),
  bore: mm(36),
  use: "enduro",
  screwKind: "air",
  mainNumbering: "bore",
  pilotNumbering: "bore",
  ...change,
});
const at = (height: number, strokes: 2 | 4 = 2) => ({
  air: standardAir(height as Metre),
  fuel: standardFuel(strokes),
});
const STANDARD = { air: STANDARD_AIR, fuel: standardFuel(2) };

interface GoodIn {
  readonly volume?: number;
  readonly bore?: number;
  readonly main?: Jet | null;
  readonly height?: number;
  readonly setup?: Partial<Setup>;
  readonly good?: Partial<KnownGood>;
}
function good({
  volume = 250,
  bore = 36,
  main = boreJet(160),
  height = 0,
  setup = {},
  good = {},
}: GoodIn = {}) {
  const made: KnownGood = {
    engine: { strokes: 2, displacement: cc(volume) },
    use: "enduro",
    situation: {
      ...at(height),
      setup: {
        ...SETUP,
        body: { ...BODY, bore: { shape: "round", diameter: mm(bore) } },
        main: main === null ? UNKNOWN : known(main),
        ...setup,
      },
    },
    ...good,
  };
  return made;
}

function point(
  of: BikeToStart,
  goods: readonly KnownGood[] = [],
  place: Parameters<typeof startingPoint>[2] = STANDARD,
): StartingPoint {
  const result = startingPoint(of, goods, place);
  if (!result.ok) throw new Error(result.detail);
  return result.value;
}
const figure = (of: StartingPoint, part: StartingFigure["part"], numbering: string | null = null) =>
  of.figures.find((f) => f.part === part && (numbering === null || f.numbering === numbering))!;
const main = (...args: Parameters<typeof point>) => figure(point(...args), "main");
const spread = ({ low, high }: StartingFigure): number => Math.log(high / low);

describe("theory alone", () => {
  test("a 250 with a 36 mm body: main 4.1 to 5.0 % of the bore, pilot 1.1 to 1.5 %, middle groove, 1 1/2 turns", () => {
    const start = point(bike());
    const jet = figure(start, "main");
    expect(jet.middle / 36).toBeGreaterThan(4.4);
    expect(jet.middle / 36).toBeLessThan(4.8);
    expect(jet.low).toBeLessThan(jet.middle);
    expect(jet.high).toBeGreaterThanOrEqual(jet.start);
    expect(spread(jet)).toBeCloseTo(2 * 1.645 * 0.07, 1);
    const pilot = figure(start, "pilot");
    expect(pilot.start).toBeGreaterThanOrEqual(1.2 * 36);
    expect(pilot.start).toBeLessThanOrEqual(1.4 * 36);
    expect(figure(start, "clip").start).toBe(3);
    expect(figure(start, "screw")).toMatchObject({ start: 1.5, low: 0.75, high: 2.25 });
    expect(figure(start, "cutaway")).toMatchObject({ start: 3.5, low: 2.5, high: 5 });
    expect(jet.restsOn).toEqual({ theory: expect.objectContaining({ flow: false }), shop: null });
    expect(start.warnings).toEqual([]);
  });

  test("the main jet starts where it is leaner than the limit with a chance of 2 %, then a size up", () => {
    const jet = main(bike());
    // By hand: 65 % of the main jet's area arrives at full throttle, and area goes as the number squared.
    const slope = 1.3;
    const sd = 0.07;
    const chance = normalCumulative((LEAN_LIMIT / slope - Math.log(jet.start / jet.middle)) / sd);
    expect(chance).toBeLessThan(LEAN_CHANCE);
    const sizeBelow = normalCumulative((LEAN_LIMIT / slope - Math.log((jet.start - 2.5) / jet.middle)) / sd);
    expect(sizeBelow).toBeGreaterThan(0.75 * LEAN_CHANCE);
    expect(START_LEAN_LIMIT).toBe(LEAN_LIMIT);
  });

  test("a bigger bore or displacement never gets a smaller main jet, and a bigger bore a bigger one", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 60, max: 500, noNaN: true }),
        fc.double({ min: 1.1, max: 1.5, noNaN: true }),
        fc.constantFrom("trail", "enduro", "race", null),
        fc.constantFrom("bore", "flow"),
        (volume, factor, use, mainNumbering) => {
          const of = (v: number, b: number | null) =>
            main(bike({ displacement: cc(v), bore: b === null ? null : mm(b), use, mainNumbering })).middle;
          const bore = 1000 * 0.0345 * Math.cbrt(volume / 250);
          expect(of(volume * factor, bore)).toBeGreaterThan(of(volume, bore));
          expect(of(volume, bore * 1.1)).toBeGreaterThan(of(volume, bore));
          expect(of(volume * factor, null)).toBeGreaterThan(of(volume, null));
        },
      ),
      { seed: 20261125, numRuns: 40 },
    );
  });

  test("lower or colder air never gets a smaller main jet, and the clip never a leaner groove", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.8, max: 1.3, noNaN: true }),
        fc.double({ min: 1.02, max: 1.15, noNaN: true }),
        fc.constantFrom<2 | 4>(2, 4),
        (density, factor, strokes) => {
          const inAir = (d: number) =>
            point(bike({ strokes, screwKind: strokes === 2 ? "air" : "fuel" }), [], {
              air: dryAir(d),
              fuel: standardFuel(strokes),
            });
          const [thin, dense] = [inAir(density), inAir(density * factor)];
          expect(figure(dense, "main").middle).toBeGreaterThan(figure(thin, "main").middle);
          expect(figure(dense, "main").start).toBeGreaterThanOrEqual(figure(thin, "main").start);
          expect(figure(dense, "pilot").middle).toBeGreaterThan(figure(thin, "pilot").middle);
          expect(figure(dense, "clip").start).toBeGreaterThanOrEqual(figure(thin, "clip").start);
        },
      ),
      { seed: 20261125, numRuns: 30 },
    );
  });

  test("at 2000 m: main alone by the 0.29 to 0.40 power of density, a groove or two leaner", () => {
    const power =
      Math.log(main(bike(), [], at(2000)).middle / main(bike()).middle) /
      Math.log(at(2000).air.density / STANDARD_AIR.density);
    expect(power).toBeGreaterThan(0.29);
    expect(power).toBeLessThan(0.4);
    expect(figure(point(bike(), [], at(2000)), "clip").start).toBeLessThan(3);
  });

  test("more oil and thirstier fuel ask for a bigger main jet", () => {
    const fuel = standardFuel(2);
    const oily = { air: STANDARD_AIR, fuel: { ...fuel, fuelShare: fuel.fuelShare - 0.02 } };
    const thirsty = {
      air: STANDARD_AIR,
      fuel: { ...fuel, stoichiometricRatio: fuel.stoichiometricRatio * 0.96 },
    };
    expect(main(bike(), [], oily).middle).toBeGreaterThan(main(bike()).middle);
    // 4 % of fuel over 65 % of area arriving, two of area for one of number: about 3 %.
    expect(main(bike(), [], thirsty).middle / main(bike()).middle).toBeCloseTo(1.031, 2);
  });

  test("both numberings only when the numbering is not known, each in its own list of sizes", () => {
    expect(point(bike()).figures.filter(({ part }) => part === "main")).toHaveLength(1);
    const both = point(bike({ mainNumbering: null, pilotNumbering: null }));
    const flow = figure(both, "main", "flow");
    const bore = figure(both, "main", "bore");
    expect(flow.middle).toBeCloseTo(bore.middle ** 2 / 100, 0);
    expect(spread(flow)).toBeGreaterThan(2 * spread(bore));
    expect(sizesSold("main", "flow")).toContain(flow.start);
    expect(sizesSold("main", "bore")).toContain(bore.start);
    // By hand: 1.27 % of 36 mm is 0.457 mm, which a flow number of 20.9 stands for.
    expect(figure(both, "pilot", "flow").start).toBe(20);
  });
});

describe("the shop's bikes", () => {
  test("one near twin dominates; its number is met within 2 %, and the spread shrinks", () => {
    const alone = main(bike());
    const twin = main(bike(), [good({ main: boreJet(150) })]);
    expect(Math.abs(twin.middle / 150 - 1)).toBeLessThan(0.02);
    expect(spread(twin)).toBeLessThan(0.6 * spread(alone));
    expect(twin.start).toBeGreaterThanOrEqual(150);
    expect(twin.restsOn).toEqual({
      theory: { of: "main", lowPercent: 4.1, highPercent: 5, flow: false },
      shop: { bikes: 1, lowCc: 250, highCc: 250, most: true },
    });
  });

  test("a far bike hardly counts and is not named", () => {
    const far = main(bike(), [good({ volume: 65, bore: 24, main: boreJet(140), good: { use: "race" } })]);
    expect(Math.abs(far.middle / main(bike()).middle - 1)).toBeLessThan(0.005);
    expect(far.restsOn.shop).toBeNull();
  });

  test("more bikes never widen the spread, whatever they are, and the order does not matter", () => {
    const any = fc.record({
      volume: fc.integer({ min: 100, max: 400 }),
      bore: fc.integer({ min: 28, max: 38 }),
      main: fc.integer({ min: 130, max: 190 }).map(boreJet),
    });
    fc.assert(
      fc.property(fc.array(any, { minLength: 1, maxLength: 6 }), (list) => {
        const goods = list.map((one) => good(one));
        const all = main(bike(), goods);
        const fewer = main(bike(), goods.slice(1));
        expect(Math.log(all.high / all.low)).toBeLessThanOrEqual(Math.log(fewer.high / fewer.low) + 0.05);
        expect(main(bike(), [...goods].reverse()).middle).toBeCloseTo(all.middle, 8);
      }),
      { seed: 20261125, numRuns: 25 },
    );
  });

  test("a set brought down from 2000 m is worth what the same bike wants at sea level", () => {
    const up = good({ height: 2000, main: boreJet(150) });
    const down = main(bike(), [up]).middle;
    expect(down).toBeGreaterThan(155);
    expect(down).toBeLessThan(167);
    // And for a caller at 2000 m the way down and up cancels.
    expect(Math.abs(main(bike(), [up], at(2000)).middle / 150 - 1)).toBeLessThan(0.02);
  });

  test("numberings are never mixed: a flow number says nothing of a bore number", () => {
    const flow = good({ main: flowJet(280) });
    expect(main(bike(), [flow]).middle).toBe(main(bike()).middle);
    const asked = main(bike({ mainNumbering: "flow" }), [flow]);
    expect(Math.abs(asked.middle / 280 - 1)).toBeLessThan(0.04);
  });

  test("pilot, clip, screw and cutaway follow the twin too, the screw only where it is of one kind", () => {
    const setup = {
      pilot: known(boreJet(40)),
      clip: known(2),
      screw: known({ kind: "air" as const, turnsOut: 2.25 }),
      cutaway: known(mm(3)),
    };
    const goods = [good({ setup }), good({ setup }), good({ setup })];
    const start = point(bike(), goods);
    expect(Math.abs(figure(start, "pilot").middle / 40 - 1)).toBeLessThan(0.04);
    expect(figure(start, "clip").start).toBe(2);
    // By hand: three twins weigh 3 (0.5² - 0.3²) against 0.3²: 84 % of 3/4 turn is 2.13 turns.
    expect(figure(start, "screw").middle).toBeCloseTo(2.132, 3);
    expect(figure(start, "screw").start).toBe(2.25);
    expect(figure(start, "cutaway").start).toBe(3);
    expect(figure(start, "clip").restsOn.shop).toMatchObject({ bikes: 3, most: true });
    expect(figure(point(bike({ screwKind: "fuel" }), goods), "screw").start).toBe(1.5);
    expect(start.needlesAlike).toEqual(["N1"]);
    expect(point(bike()).needlesAlike).toEqual([]);
  });

  test("says which bikes, between which sizes, and on whose jets", () => {
    const start = point(bike(), [
      good({ volume: 200 }),
      good({ volume: 300 }),
      good({ main: { ...boreJet(160), maker: "Theirs" } }),
    ]);
    expect(figure(start, "main").restsOn.shop).toEqual({ bikes: 3, lowCc: 200, highCc: 300, most: true });
    expect(start.warnings).toContainEqual({ code: "shop-makers", given: { makers: ["Ours", "Theirs"] } });
  });

  test("an unknown jet is passed over; an impossible setup is left out and said", () => {
    expect(main(bike(), [good({ main: null })]).middle).toBe(main(bike()).middle);
    const wrong = point(bike(), [good({ main: boreJet(3) })]);
    expect(wrong.leftOut).toHaveLength(1);
    expect(wrong.leftOut[0]!.detail).toContain("main jet");
    expect(figure(wrong, "main").middle).toBe(main(bike()).middle);
    for (const displacement of [0, Number.NaN, 9]) {
      const odd = good({ good: { engine: { strokes: 2, displacement: displacement as CubicMetre } } });
      expect(point(bike(), [odd]).leftOut[0]!.detail).toContain("mend its record");
    }
  });

  test("a shop's bike of unknown displacement goes by its bore", () => {
    const unknown = good({ main: boreJet(150), good: { engine: { strokes: 2, displacement: null } } });
    const met = main(bike({ displacement: cc(285) }), [unknown]).middle;
    expect(Math.abs(met / 150 - 1)).toBeLessThan(0.03);
  });

  test("a needle with seven grooves is counted from its middle, a bore of other shape by its area", () => {
    const seven = { ...SETUP.needle.part!, grooves: 7 };
    const setup = { needle: known(seven), clip: known(3) };
    const three = [good({ setup }), good({ setup }), good({ setup })];
    expect(figure(point(bike(), three), "clip").start).toBe(2);
    const area = (Math.PI / 4) * 36 * 36;
    const oval = { shape: "oval" as const, width: mm(30), height: mm((4 * area) / (Math.PI * 30)) };
    const flat = good({ main: boreJet(150), setup: { body: { ...BODY, bore: oval } } });
    expect(Math.abs(main(bike(), [flat]).middle / 150 - 1)).toBeLessThan(0.02);
  });

  test("two needles among bikes nearly alike are both named", () => {
    const other = { ...SETUP.needle.part!, marks: " K7 " };
    const start = point(bike(), [good(), good({ setup: { needle: known(other) } })]);
    expect(start.needlesAlike).toEqual(["K7", "N1"]);
    expect(point(bike(), [good({ setup: { needle: UNKNOWN, clip: UNKNOWN } })]).needlesAlike).toEqual([]);
  });

  test("a hundred bikes are read in one go", () => {
    const many = Array.from({ length: 100 }, (_, i) => good({ volume: 60 + 4 * i, main: boreJet(150) }));
    const start = main(bike(), many);
    expect(Math.abs(start.middle / 150 - 1)).toBeLessThan(0.03);
    expect(start.restsOn.shop).toMatchObject({ most: true });
  });
});

describe("what it refuses and asks", () => {
  const refused = (change: Partial<BikeToStart>) => {
    const result = startingPoint(bike(change), [], STANDARD);
    return result.ok ? null : result;
  };
  test("300 cm³ on a 16 mm bore: the bore looks wrong", () => {
    const no = refused({ displacement: cc(300), bore: mm(16) });
    expect(no?.reason).toBe("bore does not fit");
    expect(no?.detail).toContain("A 16 mm bore looks wrong for 300 cm³");
    expect(refused({ displacement: cc(50), bore: mm(40) })?.reason).toBe("bore does not fit");
  });
  test.each([
    [50, 14],
    [65, 24],
    [85, 28],
    [125, 38],
    [250, 26],
    [300, 38],
    [500, 40],
  ])("%i cm³ on %i mm is believed", (volume, bore) => {
    expect(refused({ displacement: cc(volume), bore: mm(bore) })).toBeNull();
  });
  test("sizes that cannot be, and nothing at all", () => {
    expect(refused({ displacement: cc(2500) })?.reason).toBe("displacement");
    expect(refused({ displacement: cc(19) })?.reason).toBe("displacement");
    expect(refused({ displacement: Number.NaN as CubicMetre })?.reason).toBe("displacement");
    expect(refused({ bore: 36 as Metre })?.reason).toBe("bore");
    expect(refused({ bore: mm(7.9) })?.reason).toBe("bore");
    expect(refused({ bore: null, displacement: null })?.reason).toBe("nothing to go by");
  });
  test("air that cannot be", () => {
    const result = startingPoint(bike(), [], { ...STANDARD, air: dryAir(12) });
    expect(result.ok ? "" : result.reason).toBe("impossible air or fuel");
  });
  test("where no main jet can answer, the figure is missing and said", () => {
    const start = point(bike(), [], {
      ...STANDARD,
      fuel: { ...STANDARD.fuel, stoichiometricRatio: 6.5 },
    });
    expect(figure(start, "main")).toBeUndefined();
    expect(start.warnings).toContainEqual({ code: "no-jet-answers", given: { part: "main" } });
  });
  test("without the bore a usual one stands in, with a wider spread and a word about it", () => {
    const start = point(bike({ bore: null }));
    expect(start.bore * 1000).toBeCloseTo(34.5, 0);
    expect(start.warnings[0]!.code).toBe("bore-unknown");
    expect(spread(figure(start, "main"))).toBeGreaterThan(1.5 * spread(main(bike())));
  });
  test("without the displacement the main jet goes by the bore; a bore off the usual is asked about", () => {
    const start = point(bike({ displacement: null }));
    expect(figure(start, "main").middle).toBeCloseTo(4.65 * 36, 1);
    expect(start.warnings).toEqual([{ code: "displacement-unknown" }]);
    expect(point(bike({ bore: mm(24) })).warnings[0]).toMatchObject({
      code: "bore-unusual",
      given: { mm: 24, small: true, cc: 250 },
    });
    expect(point(bike({ displacement: cc(80) })).warnings[0]).toMatchObject({
      code: "bore-unusual",
      given: { mm: 36, small: false, cc: 80 },
    });
  });
  test("a four-stroke gets no cutaway unless the shop has a two-stroke's reason for one", () => {
    const four = point(bike({ strokes: 4, screwKind: "fuel" }), [], at(0, 4));
    expect(figure(four, "cutaway")).toBeUndefined();
    expect(figure(four, "main").middle).toBeLessThan(main(bike()).middle);
  });
});
