import { describe, expect, test } from "vitest";
import { OPENINGS } from "../units/opening.ts";
import { type Belief, believe } from "./believe.ts";
import { exampleMeasured, exampleSeen, exampleSign } from "./example-sign.ts";
import { influenceOnFault, influenceOnMixture } from "./influence.ts";
import { priorGaussian } from "./prior.ts";
import { direction, NO_SHIFT, stretchAt } from "./state.ts";
import { surroundingsOf } from "./surroundings.ts";
import { twoSidedOpenings } from "./two-sided.ts";

const prior = priorGaussian();
const along = direction(stretchAt(OPENINGS[4]!), NO_SHIFT);
const one = believe({ prior, faultPriors: { reed: 0.1 }, observations: [exampleSeen(exampleSign())] });

describe("what surrounds a piece of evidence", () => {
  test("with one piece alone it is the part's prior: the slices' means and widths", () => {
    const part = one.parts.find(({ fault }) => fault === null)!;
    const around = surroundingsOf(part, 0, along)!;
    expect(around.variance).toBeGreaterThan(0);
    expect(around.variance).toBeLessThan(prior.covariance[4 * 18]!);
    expect(around.meanWith).toBe(part.gaussian.mean[4]);
    expect(around.varianceWith).toBe(part.gaussian.covariance[4 * 18]);
  });

  test("taking a plain measurement out gives back what stood before it", () => {
    const measured = believe({
      prior,
      faultPriors: {},
      observations: [exampleMeasured(0.02, { sd: 0.03 }), exampleMeasured(0.03, { record: "m2", sd: 0.03 })],
    });
    const part = measured.parts.reduce((best, each) => (each.probability > best.probability ? each : best));
    const around = surroundingsOf(part, 0, along)!;
    const precision = 1 / around.variance + 1 / 0.03 ** 2;
    expect(precision * around.varianceWith).toBeCloseTo(1, 1);
  });

  test("[B14] where the rest is no proper Gaussian there is nothing to say, and nothing breaks", () => {
    const spoilt: Belief = {
      ...one,
      parts: one.parts.map((part) => ({
        ...part,
        stands: part.stands.map(() => ({ precision: 1e9, shift: 0 })),
      })),
    };
    expect(surroundingsOf(spoilt.parts[0]!, 0, along)).toBeNull();
    expect(influenceOnMixture(spoilt, along).map(({ weight }) => weight)).toEqual([0]);
    expect(influenceOnFault(spoilt, "reed").map(({ weight }) => weight)).toEqual([0]);
    expect(twoSidedOpenings(spoilt)).toEqual([]);
  });
});
