import { expect, test } from "vitest";
import { exp } from "../numerics/elementary.ts";
import { cholesky } from "../numerics/matrix.ts";
import { OPENINGS } from "../units/opening.ts";
import { believe } from "./believe.ts";
import type { FaultId } from "./catalogue.ts";
import { checkedFaults } from "./checked-faults.ts";
import { FAULT_CATALOGUE } from "./faults.ts";
import { sampleExactly } from "./importance-oracle.ts";
import { inventedLog, type LogSize } from "./invented-log.ts";
import type { Checked } from "./observation.ts";
import { priorGaussian } from "./prior.ts";
import { SIGNS } from "./signs/all.ts";
import { STATE_SIZE } from "./state.ts";

/**
 * Belief against brute force: importance sampling of the exact posterior, with the same likelihoods and none
 * of the inference. Prints what it finds; the figures of rule B9 in docs/rules/belief.md are from here.
 */

const LOGS = 36;
const DRAWS = 1_000_000;
const gaussian = priorGaussian();
const prior = { gaussian, lower: cholesky(gaussian.covariance, STATE_SIZE) };
const signs = SIGNS.filter((sign) => sign.strokes !== "four");
const considered = FAULT_CATALOGUE.filter((fault) => fault.prior.two > 0);
const faultPriors = Object.fromEntries(considered.map((fault) => [fault.id, fault.prior.two])) as Partial<
  Record<FaultId, number>
>;
const soundPrior = 1 - considered.reduce((sum, fault) => sum + fault.prior.two, 0);

/** Two to eight situations; a third with a fault, a third with checks, a quarter measured, a fifth at random. */
const sizeOf = (i: number): LogSize => ({
  situations: 2 + ((i * 3) % 7),
  rides: 2 + ((i * 3) % 7) + (i % 4),
  signsEach: 2 + (i % 3),
  checks: i % 3 === 0 ? 2 : 0,
  measurements: i % 4 === 1 ? 2 : 0,
  random: i % 5 === 4,
});

function compare(i: number) {
  const fault = i % 3 === 1 ? considered[(i * 7) % considered.length]!.id : null;
  const { observations } = inventedLog(i, prior, signs, fault, sizeOf(i));
  const belief = believe({ prior: gaussian, faultPriors, observations });
  const checked = checkedFaults(observations.filter((o): o is Checked => o.kind === "checked"));
  const hypotheses = belief.hypotheses.map(({ fault }) => ({
    fault,
    weight:
      fault === null
        ? soundPrior
        : soundPrior * exp(checked.logOdds(fault, faultPriors[fault]! / soundPrior)),
  }));
  const exact = sampleExactly(gaussian, belief.overall, belief.sites, hypotheses, DRAWS, i);
  const ours = OPENINGS.map((_, k) => ({
    mean: belief.overall.mean[k]!,
    sd: Math.sqrt(belief.overall.covariance[k * (STATE_SIZE + 1)]!),
  }));
  return {
    i,
    sites: belief.sites.length,
    converged: belief.converged,
    effective: exact.effective,
    // The worst of the eleven openings, in percentage points and as a ratio.
    mean: 100 * Math.max(...ours.map(({ mean }, k) => Math.abs(mean - exact.mean[k]!))),
    sd: Math.max(...ours.map(({ sd }, k) => Math.abs(sd / exact.sd[k]! - 1))),
    fault: Math.max(...belief.hypotheses.map((one, h) => Math.abs(one.probability - exact.probability[h]!))),
  };
}

const median = (values: readonly number[]): number => {
  const sorted = [...values].sort((a, b) => a - b);
  return (sorted[Math.floor((sorted.length - 1) / 2)]! + sorted[Math.ceil((sorted.length - 1) / 2)]!) / 2;
};

test(`[B9] ${LOGS} random logs against ${DRAWS} draws each`, () => {
  const found = Array.from({ length: LOGS }, (_, i) => compare(i));
  for (const { i, sites, effective, mean, sd, fault, converged } of found) {
    const figures = `mean ${mean.toFixed(2)} points, spread ${(100 * sd).toFixed(1)} %, fault ${fault.toFixed(4)}`;
    console.log(
      `log ${i}: ${sites} pieces of evidence, effective draws ${Math.round(effective)}; ${figures}${converged ? "" : ", not at rest"}`,
    );
  }
  const means = found.map(({ mean }) => mean);
  const spreads = found.map(({ sd }) => sd);
  const faults = found.map(({ fault }) => fault);
  const draws = found.map(({ effective }) => effective);
  console.log(
    `mean error: median ${median(means).toFixed(2)}, worst ${Math.max(...means).toFixed(2)} points; ` +
      `spread: median ${(100 * median(spreads)).toFixed(1)} %, worst ${(100 * Math.max(...spreads)).toFixed(1)} %; ` +
      `fault probability: worst ${Math.max(...faults).toFixed(4)}; effective draws at least ${Math.round(Math.min(...draws))}`,
  );
  expect(Math.min(...draws)).toBeGreaterThan(10_000);
  expect(median(means)).toBeLessThanOrEqual(0.5);
  expect(Math.max(...means)).toBeLessThanOrEqual(1.5);
  expect(median(spreads)).toBeLessThanOrEqual(0.1);
  expect(Math.max(...faults)).toBeLessThanOrEqual(0.03);
  expect(found.every(({ converged }) => converged)).toBe(true);
});
