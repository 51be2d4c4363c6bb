import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { FAULTS, type FaultId, type Sign } from "./catalogue.ts";
import { exampleSign } from "./example-sign.ts";
import { factorValue } from "./factor.ts";
import { chanceWithFaults, clearEdge, edgeWidth, SIGN_CAP, signLikelihood } from "./sign-likelihood.ts";

const seed = 20261125;
const chance = fc.double({ min: 0, max: 1, noNaN: true });
const signs: fc.Arbitrary<Sign> = fc
  .record({
    chance: fc.record({ rich: chance, right: chance, lean: chance }),
    faults: fc.dictionary(fc.constantFrom(...FAULTS), chance, { maxKeys: 5, noNullPrototype: true }),
    healthy: fc.boolean(),
    reliability: fc.constantFrom("A" as const, "B" as const, "C" as const, "D" as const),
  })
  .map((what) => exampleSign(what as Partial<Sign>));
const present = fc.constantFrom<readonly FaultId[]>([], ["air-leak"], ["reed", "ignition"]);
const state = fc.double({ min: -0.5, max: 0.5, noNaN: true });

describe("likelihood of a sign", () => {
  test("[B3] [B4] no state or fault is more likely than another by more than the sign's cap", () => {
    fc.assert(
      fc.property(
        signs,
        fc.boolean(),
        state,
        state,
        chance,
        present,
        (sign, seen, one, other, opening, there) => {
          const { sound, faults, strength } = signLikelihood(sign, seen, opening, there);
          const factors = [sound, ...faults.values()];
          const cap = SIGN_CAP[sign.reliability];
          expect(strength).toBeLessThanOrEqual(cap * (1 + 1e-9));
          expect(strength).toBeGreaterThanOrEqual(1);
          for (const a of factors) {
            for (const b of factors) {
              const ratio = factorValue(a, one) / factorValue(b, other);
              expect(ratio).toBeLessThanOrEqual(cap * (1 + 1e-9));
              expect(ratio).toBeGreaterThanOrEqual((1 / cap) * (1 - 1e-9));
            }
          }
        },
      ),
      { seed, numRuns: 300 },
    );
  });

  test("[B3] [B4] the caps are ten, five for a C sign and two for a D sign, and a strong sign reaches them", () => {
    expect(SIGN_CAP).toEqual({ A: 10, B: 10, C: 5, D: 2 });
    for (const reliability of ["A", "B", "C", "D"] as const) {
      const sign = exampleSign({ reliability, chance: { rich: 0.9, right: 0.01, lean: 0.01 } });
      const { sound, strength } = signLikelihood(sign, true, 0.25);
      expect(strength).toBeCloseTo(SIGN_CAP[reliability], 9);
      expect(factorValue(sound, 0.5) / factorValue(sound, -0.5)).toBeCloseTo(SIGN_CAP[reliability], 6);
    }
  });

  test("[B3] a sign weaker than its cap keeps the catalogue's own ratios", () => {
    const sign = exampleSign({ chance: { rich: 0.6, right: 0.2, lean: 0.1 } });
    const { sound, strength } = signLikelihood(sign, true, 0.25);
    expect(factorValue(sound, 0.5)).toBeCloseTo(0.6, 10);
    // In the middle each edge is 1/0.45 widths away, where 1.313 % of a normal step is still to come.
    expect(factorValue(sound, 0)).toBeCloseTo(0.2 + 0.01313 * (0.4 - 0.1), 5);
    expect(factorValue(sound, -0.5)).toBeCloseTo(0.1, 10);
    expect(strength).toBeCloseTo(6, 10);
  });

  test("[B10] looked for and not there is one less the chance of seeing it", () => {
    const sign = exampleSign({ chance: { rich: 0.6, right: 0.2, lean: 0.1 } });
    const { sound } = signLikelihood(sign, false, 0.25);
    expect(factorValue(sound, 0.5)).toBeCloseTo(0.4, 10);
    expect(factorValue(sound, -0.5)).toBeCloseTo(0.9, 10);
  });

  test("[B5] a fault adds to a sign of trouble as noisy-or; its figure is the chance with the jets right", () => {
    const sign = exampleSign({
      chance: { rich: 0.5, right: 0.2, lean: 0 },
      faults: { "air-leak": 0.4, reed: 0.6 },
    });
    // 0.4 = 1 - (1 - 0.25)(1 - 0.2): the leak alone shows in a quarter of cases; the reed in half.
    const leak = chanceWithFaults(sign, ["air-leak"]);
    expect(leak.right).toBeCloseTo(0.4, 12);
    expect(leak.lean).toBeCloseTo(0.25, 12);
    expect(leak.rich).toBeCloseTo(1 - 0.75 * 0.5, 12);
    const both = chanceWithFaults(sign, ["air-leak", "reed"]);
    expect(both.lean).toBeCloseTo(1 - 0.75 * 0.5, 12);
    expect(both.rich).toBeCloseTo(1 - 0.75 * 0.5 * 0.5, 12);
    expect(chanceWithFaults(sign, ["ignition"])).toEqual(sign.chance);
  });

  test("[B5] a sign always there with the jets right gains nothing from a fault", () => {
    const sign = exampleSign({ chance: { rich: 0.5, right: 1, lean: 0.2 }, faults: { reed: 1 } });
    expect(chanceWithFaults(sign, ["reed"])).toEqual(sign.chance);
  });

  test("[B5] a fault only ever makes a sign of trouble likelier", () => {
    fc.assert(
      fc.property(signs, fc.constantFrom(...FAULTS), (sign, fault) => {
        const trouble = { ...sign, healthy: false };
        const changed = chanceWithFaults(trouble, [fault]);
        for (const side of ["rich", "right", "lean"] as const)
          expect(changed[side]).toBeGreaterThanOrEqual(sign.chance[side] - 1e-12);
      }),
      { seed },
    );
  });

  test("[B5] a fault spoils a sign of health: the figure is what is left with the jets right", () => {
    const sign = exampleSign({
      healthy: true,
      chance: { rich: 0.1, right: 0.8, lean: 0.2 },
      faults: { "air-leak": 0.2 },
    });
    const left = chanceWithFaults(sign, ["air-leak"]);
    expect(left.right).toBeCloseTo(0.2, 12);
    expect(left.rich).toBeCloseTo(0.025, 12);
    expect(left.lean).toBeCloseTo(0.05, 12);
  });

  test("[B5] a fault never makes a sign of health likelier, and a healthy sign never seen when right is left alone", () => {
    const odd = exampleSign({
      healthy: true,
      chance: { rich: 0.1, right: 0.3, lean: 0.2 },
      faults: { reed: 0.6 },
    });
    expect(chanceWithFaults(odd, ["reed"])).toEqual(odd.chance);
    const never = exampleSign({
      healthy: true,
      chance: { rich: 0.1, right: 0, lean: 0.2 },
      faults: { reed: 0.6 },
    });
    expect(chanceWithFaults(never, ["reed"])).toEqual(never.chance);
  });

  test("only the faults that alter a sign have a likelihood of their own", () => {
    const sign = exampleSign({ faults: { reed: 0.6, "air-leak": 0.3 } });
    expect([...signLikelihood(sign, true, 0.25).faults.keys()]).toEqual(["air-leak", "reed"]);
  });

  test("[B8] a fault known to have been there explains the sign, and is no suspect for it", () => {
    const sign = exampleSign({
      chance: { rich: 0.6, right: 0.1, lean: 0.1 },
      faults: { "air-leak": 0.9, reed: 0.5 },
    });
    const present: FaultId[] = ["air-leak"];
    const { sound, faults } = signLikelihood(sign, true, 0.25, present);
    const leak = (0.9 - 0.1) / 0.9;
    expect(factorValue(sound, 0.5)).toBeCloseTo(leak + (1 - leak) * 0.6, 10);
    expect(factorValue(sound, -0.5)).toBeCloseTo(0.9, 10);
    expect([...faults.keys()]).toEqual(["reed"]);
    const reed = (0.5 - 0.1) / 0.9;
    expect(factorValue(faults.get("reed")!, -0.5)).toBeCloseTo(1 - (1 - leak) * (1 - reed) * 0.9, 10);
  });

  test("[B8] a fault that was there, acts there and has no figure for the sign hides three quarters of what it tells", () => {
    const sign = exampleSign({ chance: { rich: 0.8, right: 0.2, lean: 0.2 } });
    const hidden = signLikelihood(sign, true, 0.25, ["air-leak"]).sound;
    // Chances drawn together towards their mean, 0.4.
    expect(factorValue(hidden, 0.5)).toBeCloseTo(0.5, 10);
    expect(factorValue(hidden, -0.5)).toBeCloseTo(0.35, 10);
    const elsewhere = signLikelihood(sign, true, 1, ["air-leak"]).sound;
    expect(factorValue(elsewhere, 0.5)).toBeCloseTo(0.8, 10);
  });

  test("a sign that cannot be, and was seen, says nothing", () => {
    const { sound, strength } = signLikelihood(
      exampleSign({ chance: { rich: 0, right: 0, lean: 0 } }),
      true,
      0.25,
    );
    expect(strength).toBe(1);
    expect(factorValue(sound, 0.5)).toBe(factorValue(sound, -0.5));
    expect(factorValue(sound, 0)).toBeGreaterThan(0);
  });

  test("the clear edge is wider at the bottom than at the top, and stays sane outside 0 to 1", () => {
    expect(clearEdge(0)).toBeCloseTo(0.065, 12);
    expect(clearEdge(0.25)).toBeCloseTo(0.05, 12);
    expect(clearEdge(1)).toBeCloseTo(0.035, 12);
    expect(clearEdge(-1)).toBe(clearEdge(0));
    expect(clearEdge(2)).toBe(clearEdge(1));
    expect(edgeWidth(0.25)).toBeCloseTo(0.0225, 12);
  });

  test("the blend turns at the clear edge of the opening", () => {
    const sign = exampleSign({ chance: { rich: 0.6, right: 0.2, lean: 0.2 } });
    for (const opening of [0, 0.25, 1])
      expect(factorValue(signLikelihood(sign, true, opening).sound, clearEdge(opening))).toBeCloseTo(0.4, 5);
  });
});
