import { describe, expect, test } from "vitest";
import { believe } from "../belief/believe.ts";
import type { FaultId, Sign } from "../belief/catalogue.ts";
import { factorValue } from "../belief/factor.ts";
import { priorGaussian } from "../belief/prior.ts";
import { signLikelihood } from "../belief/sign-likelihood.ts";
import { signById } from "../belief/signs/all.ts";
import { direction, NO_SHIFT, STATE_SIZE, stretchAt, stretchCentre, stretchOf } from "../belief/state.ts";
import { dot, quadraticForm } from "../numerics/matrix.ts";
import { normalDensity } from "../numerics/normal.ts";
import { OPENINGS } from "../units/opening.ts";
import { CHECKS } from "./checks.ts";
import { faultCost } from "./fault-cost.ts";
import { expectedTrouble, flatShift } from "./search.ts";
import { byFault, type PossibleOutcome, valueOfTest } from "./test-value.ts";

const sign = (id: string): Sign => signById(id)!;
const outcome = (id: string, opening = OPENINGS[4]!): PossibleOutcome => ({
  id,
  sign: sign(id),
  stretch: stretchAt(opening),
});
const shifted = (by: number) => ({ ...NO_SHIFT, needle: OPENINGS.map(() => by) });
const SETUPS = [-0.1, -0.05, 0, 0.05, 0.1].map((by) => ({
  flat: flatShift(shifted(by)),
  minutes: by === 0 ? 0 : 20,
}));
const nothingKnown = believe({ prior: priorGaussian(), faultPriors: {}, observations: [] });
const withFaults = believe({
  prior: priorGaussian(),
  faultPriors: { "air-leak": 0.2, ignition: 0.1 },
  observations: [],
});

describe("value of a test before it is made", () => {
  test("the chance of an outcome is its likelihood averaged over the belief, and all outcomes sum to one", () => {
    const outcomes = [
      outcome("four-strokes-under-load"),
      outcome("jerks-at-constant-grip"),
      outcome("pulls-smoothly"),
    ];
    const { outcomes: foreseen } = valueOfTest(byFault(nothingKnown), NO_SHIFT, outcomes, SETUPS, []);
    const along = direction(stretchAt(OPENINGS[4]!), NO_SHIFT);
    const sd = Math.sqrt(quadraticForm(nothingKnown.overall.covariance, STATE_SIZE, along));
    const mean = dot(along, nothingKnown.overall.mean);
    // Simpson-free check: a fine sum over the mixture error.
    const averages = outcomes.map(({ sign: each, stretch }) => {
      const { sound } = signLikelihood(each!, true, stretchCentre(stretch));
      let sum = 0;
      const steps = 4000;
      for (let i = 0; i <= steps; i++) {
        const x = -8 + (16 * i) / steps;
        sum += factorValue(sound, mean + sd * x) * normalDensity(x) * (16 / steps);
      }
      return sum;
    });
    const total = averages.reduce((a, b) => a + b, 0);
    foreseen.forEach(({ probability }, i) => {
      expect(probability).toBeCloseTo(averages[i]! / total, 5);
    });
    expect(foreseen.reduce((sum, { probability }) => sum + probability, 0)).toBeCloseTo(1, 9);
  });

  test("an outcome that counts for nothing takes what is left, and at least a little", () => {
    const quiet: PossibleOutcome = { id: "quiet", sign: null, stretch: [] };
    const { outcomes } = valueOfTest(
      byFault(nothingKnown),
      NO_SHIFT,
      [outcome("jerks-at-constant-grip"), quiet],
      SETUPS,
      [],
    );
    const [jerks, silent] = outcomes;
    expect(jerks!.probability + silent!.probability).toBeCloseTo(1, 9);
    expect(silent!.probability).toBeGreaterThan(0.5);
    const sure = valueOfTest(
      byFault(nothingKnown),
      NO_SHIFT,
      [
        outcome("four-strokes-under-load"),
        outcome("jerks-at-constant-grip"),
        outcome("pulls-smoothly"),
        quiet,
      ],
      SETUPS,
      [],
    );
    expect(sure.outcomes[3]!.probability).toBeGreaterThan(0.03);
  });

  test("a test that cannot tell is worth nothing, one that tells is worth minutes", () => {
    const blank: Sign = {
      ...sign("pulls-smoothly"),
      chance: { rich: 0.5, right: 0.5, lean: 0.5 },
      faults: {},
    };
    const blind = [0, 1].map((i) => ({ id: `${i}`, sign: blank, stretch: stretchAt(OPENINGS[4]!) }));
    expect(valueOfTest(byFault(nothingKnown), NO_SHIFT, blind, SETUPS, []).gain).toBeCloseTo(0, 6);
    const telling = [
      outcome("four-strokes-under-load"),
      outcome("jerks-at-constant-grip"),
      outcome("pulls-smoothly"),
    ];
    expect(valueOfTest(byFault(nothingKnown), NO_SHIFT, telling, SETUPS, []).gain).toBeGreaterThan(5);
  });

  test("knowing more changes nothing when there is nothing to choose", () => {
    const telling = [
      outcome("four-strokes-under-load"),
      outcome("jerks-at-constant-grip"),
      outcome("pulls-smoothly"),
    ];
    const only = SETUPS.filter(({ minutes }) => minutes === 0);
    // One setup and no checks: the average over the outcomes is the present figure, but for the curvature that
    // moment matching rounds off.
    const { gain } = valueOfTest(byFault(nothingKnown), NO_SHIFT, telling, only, []);
    const now = expectedTrouble(nothingKnown.overall, only[0]!.flat);
    expect(gain).toBeLessThan(0.15 * now);
  });

  test("the cost after an outcome counts the faults it leaves", () => {
    const telling = [
      outcome("hangs-after-closing", OPENINGS[0]!),
      outcome("drops-straight-to-idle", OPENINGS[0]!),
    ];
    const foreseen = valueOfTest(byFault(withFaults), NO_SHIFT, telling, SETUPS, CHECKS).outcomes;
    const without = valueOfTest(byFault(withFaults), NO_SHIFT, telling, SETUPS, []).outcomes;
    // With checks to find it, a leak costs less than its whole stake.
    expect(foreseen[0]!.costAfter).toBeLessThan(without[0]!.costAfter);
    expect(foreseen[0]!.costAfter).toBeGreaterThan(foreseen[1]!.costAfter);
  });

  test("the gain is what the best way costs now less what it costs on average afterwards", () => {
    const telling = [
      outcome("four-strokes-under-load"),
      outcome("jerks-at-constant-grip"),
      outcome("pulls-smoothly"),
    ];
    const faults = byFault(withFaults);
    const { gain, outcomes } = valueOfTest(faults, NO_SHIFT, telling, SETUPS, CHECKS);
    const after = outcomes.reduce((sum, { probability, costAfter }) => sum + probability * costAfter, 0);
    const chances = Object.fromEntries(
      withFaults.hypotheses.flatMap(({ fault, probability }) => (fault ? [[fault, probability]] : [])),
    ) as Partial<Record<FaultId, number>>;
    const best = Math.min(
      ...SETUPS.map(({ flat, minutes }) => expectedTrouble(withFaults.overall, flat) + minutes),
    );
    const now = best + faultCost(CHECKS, chances);
    expect(gain).toBeGreaterThan(0);
    expect(Math.abs(now - after - gain)).toBeLessThan(0.05 * now);
  });

  test("the belief by fault keeps each fault's weight, mean and spread", () => {
    const faults = byFault(withFaults);
    expect(faults.map(({ fault }) => fault)).toEqual([null, "air-leak", "ignition"]);
    expect(faults.map(({ probability }) => Math.round(probability * 100))).toEqual([70, 20, 10]);
    const along = direction(stretchOf([[OPENINGS[0]!, 1]]), NO_SHIFT);
    const prior = priorGaussian();
    for (const { gaussian } of faults) {
      expect(dot(along, gaussian.mean)).toBeCloseTo(0, 6);
      expect(quadraticForm(gaussian.covariance, STATE_SIZE, along)).toBeCloseTo(
        quadraticForm(prior.covariance, STATE_SIZE, along),
        5,
      );
    }
  });
});
