import fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Bore } from "../parts/bore.ts";
import { known, UNKNOWN } from "../parts/known.ts";
import type { Body, Setup } from "../parts/setup.ts";
import { CIRCUITS, type Shift } from "../units/circuit.ts";
import { fromDegree } from "../units/convert.ts";
import { OPENINGS } from "../units/opening.ts";
import type { KgPerCubicMetre, Metre } from "../units/quantity.ts";
import { compare, totalAt } from "./compare.ts";
import { shiftBetween } from "./shift.ts";
import type { Situation } from "./situation.ts";
import { dryAir, mm } from "./test-situations.ts";

const SEED = 20260301;
const run = { seed: SEED, numRuns: 150 };

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const bores: fc.Arbitrary<Bore> = fc.oneof(
  between(14, 42).map((d): Bore => ({ shape: "round", diameter: mm(d) })),
  fc
    .tuple(between(20, 34), between(20, 44))
    .map(([w, h]): Bore => ({ shape: "oval", width: mm(w), height: mm(h) })),
  fc
    .tuple(between(20, 34), between(1.02, 1.6))
    .map(([w, k]): Bore => ({ shape: "D", width: mm(w), height: mm(w * k) })),
);
const bodies = (seats: boolean): fc.Arbitrary<Body> =>
  fc.record({
    bore: bores,
    screwKind: fc.constantFrom("air", "fuel"),
    nozzle: fc.constantFrom("primary", "bleed"),
    seatToJet: seats ? between(20, 35).map(mm) : fc.constant(null),
    idleLift: fc.option(between(0.8, 2.2).map(mm)),
    bowlVent: fc.constantFrom("free air", "airbox"),
  });

/** Any three situations on one body: every part known on all or on none, one numbering for each jet. */
const triples = fc
  .tuple(
    bodies(true),
    fc.record({ flow: fc.boolean(), mains: fc.boolean(), pilots: fc.boolean(), cut: fc.boolean() }),
  )
  .chain(([body, has]) => {
    const numbering = has.flow ? "flow" : "bore";
    const jets = (low: number, high: number) =>
      between(low, high).map((number) => known({ number, numbering, maker: "" } as const));
    const setups: fc.Arbitrary<Setup> = fc.record({
      body: fc.constant(body),
      main: has.mains ? jets(80, 220) : fc.constant(UNKNOWN),
      pilot: has.pilots ? jets(20, 60) : fc.constant(UNKNOWN),
      needle: fc
        .record({
          d: between(2.3, 2.6),
          first: between(20, 50),
          second: between(2, 20),
          angle: between(0.5, 2),
        })
        .map(({ d, first, second, angle }) =>
          known({
            marks: "any",
            grooves: 5,
            groovePitch: mm(0.9),
            profile: {
              straightDiameter: mm(d),
              tapers: [
                { start: mm(first), includedAngle: fromDegree(angle) },
                { start: mm(first + second), includedAngle: fromDegree(angle * 2) },
              ],
              diameterSd: mm(0.005),
            },
          }),
        ),
      clip: between(1, 5).map((x) => known(Math.round(x * 2) / 2)),
      needleJet: between(2.62, 2.8).map((x) => known(mm(x))),
      cutaway: has.cut ? between(0.5, 4.5).map((x) => known(mm(x))) : fc.constant(UNKNOWN),
      screw: between(0, 4).map((turnsOut) => known({ kind: body.screwKind, turnsOut })),
      fuelLift: between(3, 25).map((x) => known(mm(x))),
      mainAirJet: fc.constant(UNKNOWN),
      pilotAirJet: fc.constant(UNKNOWN),
    });
    const situations: fc.Arbitrary<Situation> = fc.record({
      setup: setups,
      air: fc.tuple(between(0.7, 1.45), between(0.95, 1)).map(([density, dry]) => ({
        ...dryAir(density, 0.01),
        dryDensity: (density * dry) as KgPerCubicMetre,
      })),
      fuel: fc.record({
        density: between(690, 790).map((x) => x as KgPerCubicMetre),
        stoichiometricRatio: between(9, 15.2),
        fuelShare: between(0.93, 1),
        viscosityRatio: between(0.8, 1.6),
      }),
    });
    return fc.tuple(situations, situations, situations);
  });

function shift(a: Situation, b: Situation): Shift {
  const result = shiftBetween(a, b);
  if (!result.ok) throw new Error(result.detail);
  return result.value;
}

describe("laws, over bores, screws, numberings and unknown parts", () => {
  test("a situation against a copy of itself is exactly nothing", () => {
    fc.assert(
      fc.property(triples, ([a]) => {
        const result = compare(a, structuredClone(a));
        if (!result.ok) throw new Error(result.detail);
        for (const at of result.value.at) {
          expect(at.logRatio).toBe(0);
          expect(at.sd).toBe(0);
          for (const circuit of CIRCUITS) expect(Math.abs(at.byCircuit[circuit])).toBe(0);
        }
      }),
      run,
    );
  });

  test("swapping changes the sign of every circuit", () => {
    fc.assert(
      fc.property(triples, ([a, b]) => {
        const there = shift(a, b);
        const back = shift(b, a);
        for (const circuit of CIRCUITS) {
          there[circuit].forEach((x, i) => {
            expect(Math.abs(x + back[circuit][i]!)).toBeLessThan(1e-12);
          });
        }
      }),
      run,
    );
  });

  test("a to b to c sums to a to c", () => {
    fc.assert(
      fc.property(triples, ([a, b, c]) => {
        const [one, two, both] = [shift(a, b), shift(b, c), shift(a, c)];
        OPENINGS.forEach((_, i) => {
          expect(Math.abs(totalAt(one, i) + totalAt(two, i) - totalAt(both, i))).toBeLessThan(1e-12);
          // air screws act on nothing else, so they chain by themselves too
          if (a.setup.body.screwKind === "air") {
            expect(Math.abs(one.screw[i]! + two.screw[i]! - both.screw[i]!)).toBeLessThan(1e-12);
          }
        });
      }),
      run,
    );
  });

  test("circuits sum to the whole, and the band is finite and not below 0", () => {
    fc.assert(
      fc.property(triples, ([a, b]) => {
        const result = compare(a, b);
        if (!result.ok) throw new Error(result.detail);
        for (const at of result.value.at) {
          expect(CIRCUITS.reduce((sum, circuit) => sum + at.byCircuit[circuit], 0)).toBe(at.logRatio);
          expect(Number.isFinite(at.logRatio)).toBe(true);
          expect(at.sd).toBeGreaterThan(0);
        }
      }),
      run,
    );
  });

  test("pilot with screw, needle with main, and the rest each add up by themselves", () => {
    fc.assert(
      fc.property(triples, ([a, b]) => {
        const pilotSide = { ...a, setup: { ...a.setup, pilot: b.setup.pilot, screw: b.setup.screw } };
        const needleSide = {
          ...a,
          setup: {
            ...a.setup,
            main: b.setup.main,
            needle: b.setup.needle,
            clip: b.setup.clip,
            needleJet: b.setup.needleJet,
          },
        };
        const rest = {
          ...b,
          setup: { ...a.setup, cutaway: b.setup.cutaway, fuelLift: b.setup.fuelLift },
        };
        const parts = [pilotSide, needleSide, rest].map((to) => shift(a, to));
        const whole = shift(a, b);
        for (const circuit of CIRCUITS) {
          whole[circuit].forEach((x, i) => {
            expect(Math.abs(parts.reduce((sum, part) => sum + part[circuit][i]!, 0) - x)).toBeLessThan(1e-12);
          });
        }
      }),
      run,
    );
  });

  test("each part moves the mixture its own way, whatever the rest", () => {
    fc.assert(
      fc.property(triples, ([a]) => {
        const { setup } = a;
        const richer = (parts: Partial<Setup>): number =>
          Math.min(...OPENINGS.map((_, i) => totalAt(shift(a, { ...a, setup: { ...setup, ...parts } }), i)));
        const bigger = <T extends number>(x: T | null, by: number) => known(((x ?? 0) + by) as T);
        const turns = setup.screw.part!.turnsOut;
        expect(richer({ needleJet: bigger<Metre>(setup.needleJet.part, 1e-5) })).toBeGreaterThan(0);
        expect(richer({ clip: known(Math.min(5, setup.clip.part! + 1)) })).toBeGreaterThanOrEqual(0);
        const turned = setup.body.screwKind === "fuel" ? turns + 0.5 : Math.max(0, turns - 0.5);
        expect(
          richer({ screw: known({ kind: setup.body.screwKind, turnsOut: turned }) }),
        ).toBeGreaterThanOrEqual(0);
        const { main, pilot, cutaway } = setup;
        if (main.part)
          expect(richer({ main: known({ ...main.part, number: main.part.number + 1 }) })).toBeGreaterThan(0);
        if (pilot.part)
          expect(richer({ pilot: known({ ...pilot.part, number: pilot.part.number + 1 }) })).toBeGreaterThan(
            0,
          );
        if (cutaway.part)
          expect(richer({ cutaway: bigger<Metre>(cutaway.part, -2e-4) })).toBeGreaterThanOrEqual(-1e-9);
      }),
      run,
    );
  });

  test("any numbers at all give an answer or a reason, never a throw", () => {
    const any = fc.oneof(fc.double(), fc.constantFrom(0, -1, Number.NaN, Infinity, 1e-300));
    fc.assert(
      fc.property(triples, any, fc.integer({ min: 0, max: 9 }), ([a, b], x, which) => {
        const n = x as never;
        const s = b.setup;
        const wrong: Situation[] = [
          { ...b, setup: { ...s, main: known({ number: n, numbering: "bore", maker: "" }) } },
          { ...b, setup: { ...s, pilot: known({ number: n, numbering: "bore", maker: "" }) } },
          { ...b, setup: { ...s, clip: known(n) } },
          { ...b, setup: { ...s, needleJet: known(n) } },
          { ...b, setup: { ...s, cutaway: known(n) } },
          { ...b, setup: { ...s, screw: known({ kind: s.body.screwKind, turnsOut: n }) } },
          { ...b, setup: { ...s, fuelLift: known(n) } },
          { ...b, setup: { ...s, body: { ...s.body, bore: { shape: "oval", width: n, height: n } } } },
          { ...b, air: { ...b.air, density: n } },
          { ...b, fuel: { ...b.fuel, density: n } },
        ];
        for (const result of [compare(a, wrong[which]!), compare(wrong[which]!, wrong[which]!)]) {
          if (result.ok) for (const at of result.value.at) expect(Number.isFinite(at.logRatio)).toBe(true);
          else expect(result.detail.length).toBeGreaterThan(20);
        }
      }),
      { seed: SEED, numRuns: 400 },
    );
  });
});
