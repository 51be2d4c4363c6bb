import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { FAULTS } from "./catalogue.ts";
import { factorValue } from "./factor.ts";
import { reaches } from "./reach.ts";
import { responseLikelihood } from "./response-likelihood.ts";
import { clearEdge } from "./sign-likelihood.ts";

const seed = 20261125;
const felts = ["better", "same", "worse"] as const;
const RICH = 0.5;
const LEAN = -0.5;

describe("likelihood of an answer to a change", () => {
  test("[B6] better after a step richer speaks for lean half-way, worse for rich", () => {
    const better = responseLikelihood("better", 0.06, 0.25).sound;
    expect(factorValue(better, LEAN)).toBeGreaterThan(5 * factorValue(better, RICH));
    const worse = responseLikelihood("worse", 0.06, 0.25).sound;
    expect(factorValue(worse, RICH)).toBeGreaterThan(5 * factorValue(worse, LEAN));
  });

  test("[B6] a step leaner is the mirror image of a step richer", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...felts),
        fc.double({ min: 0.003, max: 0.3, noNaN: true }),
        fc.double({ min: -0.3, max: 0.3, noNaN: true }),
        (felt, change, s) => {
          const richer = responseLikelihood(felt, change, 0.25);
          const leaner = responseLikelihood(felt, -change, 0.25);
          expect(factorValue(leaner.sound, s)).toBeCloseTo(factorValue(richer.sound, -s), 12);
        },
      ),
      { seed },
    );
  });

  test("[B6] a change of half a jet step is felt by half the riders, and a tiny one tells next to nothing", () => {
    const tells = (change: number): number => {
      const { sound } = responseLikelihood("better", change, 0.25);
      return factorValue(sound, LEAN) - factorValue(sound, RICH);
    };
    expect(tells(0.02) / tells(1000)).toBeCloseTo(0.5, 5);
    expect(tells(0.003)).toBeLessThan(0.03 * tells(1000));
    expect(tells(0.04)).toBeGreaterThan(tells(0.02));
  });

  test("[B6] the chances of better, same and worse sum to 1 wherever the mixture is, but for the small lapse", () => {
    for (const s of [RICH, 0, LEAN]) {
      const sum = felts.reduce(
        (total, felt) => total + factorValue(responseLikelihood(felt, 0.05, 0.5).sound, s),
        0,
      );
      expect(sum).toBeCloseTo(1, 1);
    }
  });

  test("[B6] a fault that reaches the opening hides three quarters of the answer", () => {
    const { sound, faults } = responseLikelihood("better", 0.05, 0.25);
    const tells = (factor: typeof sound): number => factorValue(factor, LEAN) - factorValue(factor, RICH);
    expect(tells(faults.get("air-leak")!) / tells(sound)).toBeCloseTo(0.25, 10);
    expect([...faults.keys()]).toEqual(FAULTS.filter((fault) => reaches(fault, 0.25)));
    expect(faults.has("exhaust-blocked")).toBe(false);
  });

  test("[B3] no answer makes one state more than ten times likelier than another, with or without a fault", () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...felts),
        fc.double({ min: 0.003, max: 5, noNaN: true }),
        fc.constantFrom(0, 0.25, 0.5, 1),
        (felt, change, opening) => {
          const { sound, faults } = responseLikelihood(felt, change, opening);
          const values = [sound, ...faults.values()].flatMap((factor) =>
            [RICH, 0.03, 0, -0.03, LEAN].map((s) => factorValue(factor, s)),
          );
          expect(Math.max(...values) / Math.min(...values)).toBeLessThanOrEqual(10 * (1 + 1e-9));
        },
      ),
      { seed },
    );
  });

  test("[B6] the answer turns half a clear edge from the middle", () => {
    const { sound } = responseLikelihood("worse", 1000, 0);
    const half = (factorValue(sound, RICH) + factorValue(sound, 0)) / 2;
    expect(factorValue(sound, clearEdge(0) / 2)).toBeCloseTo(half, 1);
  });
});
