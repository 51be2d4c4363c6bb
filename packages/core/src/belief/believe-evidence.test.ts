import { describe, expect, test } from "vitest";
import { OPENINGS } from "../units/opening.ts";
import { type Belief, believe, faultProbability } from "./believe.ts";
import type { FaultId } from "./catalogue.ts";
import { exampleCheck, exampleMeasured, exampleSeen, exampleSign } from "./example-sign.ts";
import { FAULT_CATALOGUE } from "./faults.ts";
import { sampleExactly } from "./importance-oracle.ts";
import type { Observation } from "./observation.ts";
import { priorGaussian } from "./prior.ts";
import { mixtureAt } from "./reading.ts";
import { NO_SHIFT, stretchAt } from "./state.ts";

const prior = priorGaussian();
const faultPriors = Object.fromEntries(FAULT_CATALOGUE.map(({ id, prior }) => [id, prior.two])) as Partial<
  Record<FaultId, number>
>;
const from = (observations: readonly Observation[]): Belief => believe({ prior, faultPriors, observations });

describe("what evidence does to a belief", () => {
  test("[B10] a sign looked for and not there moves the other way than one that is", () => {
    const sign = exampleSign({ chance: { rich: 0.8, right: 0.2, lean: 0.1 } });
    const at = (seen: boolean): number =>
      mixtureAt(
        believe({ prior, faultPriors: {}, observations: [exampleSeen(sign, { seen })] }),
        NO_SHIFT,
        OPENINGS[4]!,
      ).mean;
    expect(at(true)).toBeGreaterThan(0.02);
    expect(at(false)).toBeLessThan(-0.01);
  });

  test("[B16] a stop sign weighs like any other", () => {
    const plain = exampleSign({ chance: { rich: 0.1, right: 0.1, lean: 0.7 } });
    const one = from([exampleSeen(plain)]);
    expect(from([exampleSeen({ ...plain, stop: true })]).overall).toEqual(one.overall);
  });

  test("[B8] a check weighs by its figures alone, on top of the rest", () => {
    const odds = (belief: Belief): number =>
      faultProbability(belief, "air-leak") / faultProbability(belief, null);
    const seen = exampleSeen(exampleSign({ faults: { "air-leak": 0.5 } }));
    const before = odds(from([seen]));
    const after = from([seen, exampleCheck({ fault: "air-leak" })]);
    expect(odds(after) / before).toBeCloseTo(0.9 / 0.05, 0);
    expect(after.openFaults).toEqual(["air-leak"]);
  });

  test("[B8] signs from before a mend no longer accuse the fault that was mended, nor the mixture", () => {
    const leaky = exampleSign({
      chance: { rich: 0.05, right: 0.05, lean: 0.6 },
      faults: { "air-leak": 0.9, reed: 0.6 },
    });
    const seen = exampleSeen(leaky, { at: 1 });
    const mended = exampleCheck({ at: 2, found: "mended", fault: "air-leak" });
    const accused = from([seen]);
    const cleared = from([seen, mended]);
    expect(faultProbability(accused, "air-leak")).toBeGreaterThan(2 * faultPriors["air-leak"]!);
    expect(faultProbability(cleared, "air-leak")).toBeLessThan(faultPriors["air-leak"]!);
    expect(faultProbability(cleared, "reed")).toBeLessThan(faultProbability(accused, "reed"));
    const at = (belief: Belief): number => mixtureAt(belief, NO_SHIFT, OPENINGS[4]!).mean;
    expect(at(accused)).toBeLessThan(at(cleared) - 0.01);
    expect(Math.abs(at(cleared))).toBeLessThan(0.01);
  });

  test("[B11] a reading far from everything else is doubted: twice as far off, it moves the mixture less", () => {
    const others = [0.01, -0.01, 0, 0.005].map((error, i) =>
      exampleMeasured(error, { record: `m${i}`, sd: 0.01 }),
    );
    const moves = (error: number): number =>
      mixtureAt(
        from([...others, exampleMeasured(error, { record: "odd", sd: 0.01 })]),
        NO_SHIFT,
        OPENINGS[4]!,
      ).mean;
    expect(moves(0.02)).toBeGreaterThan(0.003);
    expect(moves(0.2)).toBeLessThan(moves(0.02));
    expect(moves(0.2)).toBeGreaterThan(-0.01);
  });

  test("[B9] a fault that explains a heap of lean signs leaves the mixture where the exact answer has it", () => {
    const leans = Array.from({ length: 10 }, (_, i) =>
      exampleSeen(
        exampleSign({
          id: `lean${i}`,
          group: `g${i}`,
          chance: { rich: 0.04, right: 0.06, lean: 0.6 },
          faults: { "air-leak": 0.75 },
        }),
        { record: `r${i}`, stretch: stretchAt(OPENINGS[i % 8]!) },
      ),
    );
    const { overall, sites, hypotheses } = believe({
      prior,
      faultPriors: { "air-leak": 0.06 },
      observations: leans,
    });
    const weighted = hypotheses.map(({ fault }) => ({ fault, weight: fault === null ? 0.94 : 0.06 }));
    const exact = sampleExactly(prior, overall, sites, weighted, 40_000, 1);
    for (const k of [0, 4, 10]) {
      expect(Math.abs(overall.mean[k]! - exact.mean[k]!)).toBeLessThan(0.003);
      expect(Math.sqrt(overall.covariance[18 * k]!) / exact.sd[k]!).toBeCloseTo(1, 1);
    }
    expect(hypotheses[1]!.probability).toBeCloseTo(exact.probability[1]!, 1);
  });

  test("[B12] an answer of the engine is learnt from two measurements either side of a change", () => {
    const shift = { ...NO_SHIFT, pilot: OPENINGS.map(() => 0.2) };
    const stretch = stretchAt(OPENINGS[1]!);
    const { overall } = from([
      exampleMeasured(0, { record: "a", stretch, sd: 0.01 }),
      exampleMeasured(0.12, { record: "b", stretch, sd: 0.01, shift }),
    ]);
    // The pilot jet did 0.12 where 0.2 was reckoned: the answer is near 0.6 and surer than its prior 1 ± 0.35.
    expect(overall.mean[11]).toBeGreaterThan(0.55);
    expect(overall.mean[11]).toBeLessThan(0.75);
    expect(Math.sqrt(overall.covariance[11 * 18]!)).toBeLessThan(0.13);
  });
});
