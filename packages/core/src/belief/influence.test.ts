import { describe, expect, test } from "vitest";
import { cholesky } from "../numerics/matrix.ts";
import { OPENINGS } from "../units/opening.ts";
import { type Belief, believe, faultProbability } from "./believe.ts";
import type { FaultId } from "./catalogue.ts";
import { exampleMeasured, exampleSeen, exampleSign } from "./example-sign.ts";
import { influenceOnFault, influenceOnMixture } from "./influence.ts";
import { inventedLog } from "./invented-log.ts";
import type { Observation } from "./observation.ts";
import { priorGaussian } from "./prior.ts";
import { SIGNS } from "./signs/all.ts";
import { direction, NO_SHIFT, stretchAt } from "./state.ts";

const prior = priorGaussian();
const quarter = OPENINGS[4]!;
const along = direction(stretchAt(quarter), NO_SHIFT);
const faultPriors: Partial<Record<FaultId, number>> = { "air-leak": 0.08, reed: 0.04, ignition: 0.03 };
const from = (observations: readonly Observation[]): Belief => believe({ prior, faultPriors, observations });
const meanOf = (belief: Belief): number => along.reduce((sum, a, i) => sum + a * belief.overall.mean[i]!, 0);
const oddsOf = (belief: Belief, fault: FaultId): number =>
  Math.log(faultProbability(belief, fault)) - Math.log(faultProbability(belief, null));

const observations = inventedLog(
  3,
  { gaussian: prior, lower: cholesky(prior.covariance, 17) },
  SIGNS.filter((sign) => sign.strokes !== "four"),
  "air-leak",
  { situations: 3, rides: 6, signsEach: 3, checks: 0, measurements: 0, random: false },
).observations;

describe("what moved a conclusion", () => {
  const belief = from(observations);
  const without = (site: number): Belief =>
    from(observations.filter((observation) => observation !== belief.sites[site]!.observation));

  test("[B18] on the mixture: the sign and rough size of really leaving each piece out", () => {
    const influences = influenceOnMixture(belief, along);
    expect(influences).toHaveLength(belief.sites.length);
    for (const { site, weight } of influences) {
      const really = meanOf(belief) - meanOf(without(site));
      expect(Math.abs(weight - really)).toBeLessThan(0.35 * Math.abs(really) + 0.003);
    }
    const top = influences[0]!;
    expect(top.record).toBe(belief.sites[top.site]!.observation.record);
  });

  test("[B18] on the mixture: within a third for plain measurements", () => {
    const readings = [0.03, 0.05].map((error, i) => exampleMeasured(error, { record: `m${i}`, sd: 0.05 }));
    const lone = believe({ prior, faultPriors: {}, observations: readings });
    for (const { site, weight } of influenceOnMixture(lone, along)) {
      const rest = readings.filter((reading) => reading !== lone.sites[site]!.observation);
      const really = meanOf(lone) - meanOf(believe({ prior, faultPriors: {}, observations: rest }));
      expect(weight / really).toBeGreaterThan(0.7);
      expect(weight / really).toBeLessThan(1.4);
    }
  });

  test("[B18] on a fault: the sign and rough size of what its log odds really change by", () => {
    const influences = influenceOnFault(belief, "air-leak");
    let close = 0;
    for (const { site, weight } of influences) {
      const really = oddsOf(belief, "air-leak") - oddsOf(without(site), "air-leak");
      if (Math.abs(weight - really) < 0.15 * Math.abs(really) + 0.05) close++;
      if (Math.abs(really) > 0.5) expect(Math.sign(weight)).toBe(Math.sign(really));
    }
    expect(close / influences.length).toBeGreaterThan(0.8);
  });

  test("[B18] largest first, and in the order of the sites when equal", () => {
    for (const influences of [influenceOnMixture(belief, along), influenceOnFault(belief, "air-leak")]) {
      for (let i = 1; i < influences.length; i++) {
        const [a, b] = [influences[i - 1]!, influences[i]!];
        expect(a.weight > b.weight || (a.weight === b.weight && a.site < b.site)).toBe(true);
      }
    }
  });

  test("[B18] a sign that a fault does not alter neither accuses nor clears it against a sound engine", () => {
    const plain = exampleSign({ faults: { reed: 0.9 } });
    const leak = exampleSign({
      id: "leak",
      group: "leak",
      faults: { "air-leak": 0.9 },
      chance: { rich: 0.1, right: 0.1, lean: 0.4 },
    });
    const both = from([exampleSeen(plain, { record: "plain" }), exampleSeen(leak, { record: "leak" })]);
    const [first, second] = influenceOnFault(both, "air-leak");
    expect(first!.record).toBe("leak");
    expect(first!.weight).toBeGreaterThan(1);
    expect(second!.record).toBe("plain");
    expect(second!.weight).toBeLessThan(first!.weight);
    const [cleared] = influenceOnFault(both, null);
    expect(cleared!.weight).toBeLessThan(1);
  });

  test("[B18] a sound engine that has no rival has nothing to weigh against", () => {
    const lone = believe({ prior, faultPriors: {}, observations: [exampleSeen(exampleSign())] });
    expect(influenceOnFault(lone, null)).toEqual([]);
  });
});
