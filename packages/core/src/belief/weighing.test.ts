import { describe, expect, test } from "vitest";
import { exampleMeasured, exampleSeen, exampleSign } from "./example-sign.ts";
import { tilt } from "./factor.ts";
import { priorGaussian } from "./prior.ts";
import { sitesFrom } from "./sites.ts";
import { logSum, type Suspect, weigh } from "./weighing.ts";

const prior = priorGaussian();
const common = Float64Array.from({ length: 17 }, (_, i) => (i < 11 ? 1 / 11 : 0));
const nobody = () => [];
const suspects: readonly Suspect[] = [
  { fault: null, logPrior: Math.log(0.8) },
  { fault: "air-leak", logPrior: Math.log(0.15) },
  { fault: "reed", logPrior: Math.log(0.05) },
];
/** Total weight of each suspect, not scaled. */
const weights = (observations: Parameters<typeof sitesFrom>[0], who = suspects): Record<string, number> => {
  const sums: Record<string, number> = {};
  for (const { fault, logWeight } of weigh(prior, sitesFrom(observations, nobody), who, common))
    sums[fault ?? "none"] = (sums[fault ?? "none"] ?? 0) + Math.exp(logWeight);
  return sums;
};

describe("weighing faults", () => {
  test("[B9] with one sign every fault's weight is its prior times the sign's exact chance under it", () => {
    const sign = exampleSign({ chance: { rich: 0.5, right: 0.1, lean: 0.3 }, faults: { "air-leak": 0.7 } });
    const [site] = sitesFrom([exampleSeen(sign)], nobody);
    const variance = prior.covariance[4 * 18]!;
    const sums = weights([exampleSeen(sign)]);
    // Slices of the prior are left out where they weigh next to nothing: a few parts in a hundred.
    expect(sums.none! / (0.8 * tilt(site!.sound, 0, variance).mass)).toBeCloseTo(1, 1);
    expect(sums["air-leak"]! / (0.15 * tilt(site!.faults.get("air-leak")!, 0, variance).mass)).toBeCloseTo(
      1,
      1,
    );
    expect(sums.reed! / sums.none!).toBeCloseTo(0.05 / 0.8, 2);
  });

  test("[B9] with one plain reading the weight is the reading's own chance", () => {
    const sums = weights([exampleMeasured(0.03)], suspects.slice(0, 1));
    const spread = prior.covariance[4 * 18]! + 0.02 ** 2;
    const right = (0.95 * Math.exp(-0.5 * (0.03 ** 2 / spread))) / Math.sqrt(2 * Math.PI * spread);
    expect(sums.none! / (0.8 * (right + 0.05 / 0.6))).toBeCloseTo(1, 2);
  });

  test("sums in logs stay finite far below what a number holds", () => {
    expect(logSum([-2000, -2000])).toBeCloseTo(-2000 + Math.log(2), 12);
    expect(logSum([0, Math.log(3)])).toBeCloseTo(Math.log(4), 12);
    expect(logSum([5])).toBe(5);
  });
});
