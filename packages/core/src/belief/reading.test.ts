import { describe, expect, test } from "vitest";
import { OPENINGS } from "../units/opening.ts";
import { believe } from "./believe.ts";
import { exampleMeasured, exampleSeen, exampleSign } from "./example-sign.ts";
import { priorGaussian } from "./prior.ts";
import { chanceBelow, mixtureAt } from "./reading.ts";
import { NO_SHIFT } from "./state.ts";

const prior = priorGaussian();
const quarter = OPENINGS[4]!;
const richer = { ...NO_SHIFT, main: OPENINGS.map(() => 0.05) };
const two = exampleSign({ chance: { rich: 0.6, right: 0.06, lean: 0.3 } });
const belief = believe({
  prior,
  faultPriors: { "air-leak": 0.05 },
  observations: [exampleMeasured(0.03), exampleSeen(two, { record: "r9", at: 9 })],
});

describe("reading a belief", () => {
  test("gives mean and spread at an opening, near what was measured there", () => {
    const { opening, mean, sd } = mixtureAt(belief, NO_SHIFT, quarter);
    expect(opening).toBe(quarter);
    expect(mean).toBeCloseTo(0.03, 1);
    expect(sd).toBeGreaterThan(0.01);
    expect(sd).toBeLessThan(0.04);
    expect(mean).toBe(belief.overall.mean[4]);
    expect(sd).toBe(Math.sqrt(belief.overall.covariance[4 * 18]!));
  });

  test("[B12] another situation is moved by its shift, times how the engine answers", () => {
    const here = mixtureAt(belief, NO_SHIFT, quarter);
    const there = mixtureAt(belief, richer, quarter);
    expect(there.mean - here.mean).toBeCloseTo(0.05 * belief.overall.mean[15]!, 12);
    expect(there.sd).toBeGreaterThan(here.sd);
  });

  test("the chance of being below a limit agrees with counting draws from the parts", () => {
    const limit = 0.02;
    const ours = chanceBelow(belief, NO_SHIFT, quarter, limit);
    // Midpoint rule over each part's own bell, apart from the cumulative function.
    let sum = 0;
    for (const { probability, gaussian } of belief.parts) {
      const mean = gaussian.mean[4]!;
      const sd = Math.sqrt(gaussian.covariance[4 * 18]!);
      const steps = 4000;
      for (let i = 0; i < steps; i++) {
        const x = mean + sd * (-8 + (16 * (i + 0.5)) / steps);
        if (x < limit)
          sum +=
            (probability * 16 * Math.exp(-0.5 * ((x - mean) / sd) ** 2)) / steps / Math.sqrt(2 * Math.PI);
      }
    }
    expect(ours).toBeCloseTo(sum, 2);
    expect(chanceBelow(belief, NO_SHIFT, quarter, -9)).toBeCloseTo(0, 12);
    expect(chanceBelow(belief, NO_SHIFT, quarter, 9)).toBeCloseTo(1, 12);
    expect(chanceBelow(belief, richer, quarter, limit)).toBeLessThan(ours);
  });
});
