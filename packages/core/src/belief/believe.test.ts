import { createHash } from "node:crypto";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { cholesky } from "../numerics/matrix.ts";
import { seededRandom } from "../numerics/random.ts";
import { type Belief, believe, collapse, faultProbability } from "./believe.ts";
import type { FaultId, Sign } from "./catalogue.ts";
import { exampleSeen, exampleSign } from "./example-sign.ts";
import { FAULT_CATALOGUE } from "./faults.ts";
import { inventedLog } from "./invented-log.ts";
import type { Observation } from "./observation.ts";
import { priorGaussian } from "./prior.ts";
import { signLikelihood } from "./sign-likelihood.ts";
import { SIGNS } from "./signs/all.ts";

const prior = priorGaussian();
const withLower = { gaussian: prior, lower: cholesky(prior.covariance, prior.mean.length) };
const faultPriors = Object.fromEntries(FAULT_CATALOGUE.map(({ id, prior }) => [id, prior.two])) as Partial<
  Record<FaultId, number>
>;
const signs = SIGNS.filter((sign) => sign.strokes !== "four");
const size = { situations: 4, rides: 6, signsEach: 3, checks: 2, measurements: 1, random: false };
const logOf = (seed: number): readonly Observation[] =>
  inventedLog(seed, withLower, signs, seed % 2 ? "air-leak" : null, size).observations;
const from = (observations: readonly Observation[]): Belief => believe({ prior, faultPriors, observations });

function shuffled<T>(values: readonly T[], seed: number): T[] {
  const random = seededRandom(seed);
  const out = [...values];
  for (let i = out.length - 1; i > 0; i--) {
    const j = Math.floor(random.uniform() * (i + 1));
    [out[i], out[j]] = [out[j]!, out[i]!];
  }
  return out;
}

/** Every number of a belief, to the last bit. */
function fingerprint({ parts, overall, hypotheses }: Belief): string {
  const hash = createHash("sha256");
  for (const { probability, gaussian, stands } of parts) {
    hash.update(new Uint8Array(gaussian.mean.buffer)).update(new Uint8Array(gaussian.covariance.buffer));
    hash.update(Float64Array.of(probability, ...stands.flatMap((stand) => [stand.precision, stand.shift])));
  }
  hash.update(new Uint8Array(overall.mean.buffer)).update(new Uint8Array(overall.covariance.buffer));
  return hash.update(JSON.stringify(hypotheses)).digest("hex");
}

describe("belief", () => {
  test("[B1] [B2] the same bytes on every run and in any order of the observations", () => {
    for (const seed of [1, 2]) {
      const observations = logOf(seed);
      const first = fingerprint(from(observations));
      expect(fingerprint(from(observations))).toBe(first);
      for (let k = 0; k < 3; k++)
        expect(fingerprint(from(shuffled(observations, 10 * seed + k)))).toBe(first);
    }
  });

  test("probabilities and parts sum to one, and the whole is what its parts come to", () => {
    const belief = from(logOf(5));
    const sum = (values: readonly { readonly probability: number }[]): number =>
      values.reduce((total, { probability }) => total + probability, 0);
    expect(sum(belief.hypotheses)).toBeCloseTo(1, 12);
    expect(sum(belief.parts)).toBeCloseTo(1, 12);
    expect(belief.overall).toEqual(collapse(belief.parts));
    expect(belief.hypotheses[0]!.fault).toBeNull();
    expect(belief.converged).toBe(true);
  });

  test("nothing observed leaves the prior, of mixture and of faults", () => {
    const { overall, hypotheses, sites, openFaults } = from([]);
    for (let i = 0; i < 17; i++) {
      expect(overall.mean[i]).toBeCloseTo(prior.mean[i]!, 9);
      // The far slices of rare faults are left out, which narrows the whole by about one part in a hundred.
      const widths = overall.covariance[18 * i]! / prior.covariance[18 * i]!;
      expect(widths).toBeGreaterThan(0.985);
      expect(widths).toBeLessThan(1 + 1e-9);
    }
    for (const { fault, probability } of hypotheses)
      expect(probability / (fault === null ? 0.67 : faultPriors[fault]!)).toBeCloseTo(1, 1);
    expect(sites).toEqual([]);
    expect(openFaults).toEqual([]);
  });

  test("[B15] a fault without a prior is not considered; priors that leave no sound engine are our mistake", () => {
    const leak = exampleSign({ faults: { "air-leak": 0.9 } });
    const belief = believe({
      prior,
      faultPriors: { reed: 0.1, "air-leak": 0 },
      observations: [exampleSeen(leak)],
    });
    expect(belief.hypotheses.map(({ fault }) => fault)).toEqual([null, "reed"]);
    expect(faultProbability(belief, "air-leak")).toBe(0);
    expect(faultProbability(belief, "reed") + faultProbability(belief, null)).toBeCloseTo(1, 12);
    expect(() => believe({ prior, faultPriors: { reed: 1 }, observations: [] })).toThrow(/less than 1/);
  });

  test("[B3] one more sign never moves the odds between two hypotheses by more than its cap", () => {
    const chance = fc.double({ min: 0, max: 1, noNaN: true });
    const made = fc
      .record({
        chance: fc.record({ rich: chance, right: chance, lean: chance }),
        faults: fc.record({ "air-leak": chance, ignition: chance, reed: chance }, { requiredKeys: [] }),
        healthy: fc.boolean(),
        reliability: fc.constantFrom("A" as const, "C" as const, "D" as const),
      })
      .map((what) => exampleSign({ id: "added", group: "added", ...(what as Partial<Sign>) }));
    fc.assert(
      fc.property(made, fc.boolean(), fc.integer({ min: 1, max: 6 }), (sign, seen, seed) => {
        const observations = logOf(seed);
        const before = from(observations);
        const after = from([...observations, exampleSeen(sign, { seen, record: "added", situation: "s0" })]);
        const { strength } = signLikelihood(sign, seen, 0.25);
        const shifts = before.hypotheses.map(
          ({ probability }, i) => Math.log(after.hypotheses[i]!.probability) - Math.log(probability),
        );
        const likely = shifts.filter((_, i) => before.hypotheses[i]!.probability > 0.01);
        // The inference is approximate: a twentieth on top.
        expect(Math.max(...likely) - Math.min(...likely)).toBeLessThanOrEqual(Math.log(strength) + 0.05);
      }),
      { seed: 20261125, numRuns: 25 },
    );
  });

  test("[B7] weaker signs of the same group, situation and opening change nothing, to the last bit", () => {
    const strong = exampleSign({ id: "strong", group: "g", chance: { rich: 0.8, right: 0.1, lean: 0.1 } });
    const weak = exampleSign({ id: "weak", group: "g", chance: { rich: 0.2, right: 0.4, lean: 0.3 } });
    const observations = [...logOf(2), exampleSeen(strong, { record: "x" })];
    const more = [
      ...observations,
      exampleSeen(weak, { record: "x" }),
      exampleSeen(weak, { record: "x", seen: false }),
    ];
    expect(fingerprint(from(more))).toBe(fingerprint(from(observations)));
    const alone = exampleSeen(weak, { record: "x", situation: "elsewhere" });
    expect(fingerprint(from([...observations, alone]))).not.toBe(fingerprint(from(observations)));
  });
});
