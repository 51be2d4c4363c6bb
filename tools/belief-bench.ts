import { type BeliefInput, believe } from "../packages/core/src/belief/believe.ts";
import type { FaultId } from "../packages/core/src/belief/catalogue.ts";
import { FAULT_CATALOGUE } from "../packages/core/src/belief/faults.ts";
import { sampleExactly } from "../packages/core/src/belief/importance-oracle.ts";
import { inventedLog, type LogSize } from "../packages/core/src/belief/invented-log.ts";
import { priorGaussian } from "../packages/core/src/belief/prior.ts";
import { SIGNS } from "../packages/core/src/belief/signs/all.ts";
import { cholesky } from "../packages/core/src/numerics/matrix.ts";
import type { Bench } from "./bench-shape.ts";

const prior = priorGaussian();
const size = prior.mean.length;
const withLower = { gaussian: prior, lower: cholesky(prior.covariance, size) };
const faultPriors = Object.fromEntries(FAULT_CATALOGUE.map(({ id, prior }) => [id, prior.two])) as Partial<
  Record<FaultId, number>
>;

/** A case of that many rides, with an air leak or none by turns. */
export function beliefCase(log: LogSize, fault: FaultId | null): BeliefInput {
  const signs = SIGNS.filter((sign) => sign.strokes !== "four");
  return { prior, faultPriors, observations: inventedLog(1, withLower, signs, fault, log).observations };
}

const LONG = { situations: 40, rides: 120, signsEach: 4, checks: 10, measurements: 6, random: false };
const SHORT = { situations: 5, rides: 6, signsEach: 3, checks: 1, measurements: 1, random: false };

const YARDSTICK = "2000 triangles of a 17 by 17 matrix";
const SHORT_ROW = "belief from about 20 observations";
const LONG_ROW = "belief from about 500 observations, nothing broken";
const LEAK_ROW = "belief from about 500 observations, an air leak";
const DRAWS_ROW = "100 000 draws of importance sampling, about 20 observations";

const believing = (log: LogSize, fault: FaultId | null) => () => {
  const input = beliefCase(log, fault);
  return () => void believe(input);
};

export const beliefBench: Bench = {
  topic: "belief",
  rows: [
    {
      name: YARDSTICK,
      make: () => () => {
        for (let i = 0; i < 2000; i++) cholesky(prior.covariance, size);
      },
    },
    { name: SHORT_ROW, make: believing(SHORT, null) },
    { name: LONG_ROW, make: believing(LONG, null) },
    { name: LEAK_ROW, make: believing(LONG, "air-leak") },
    {
      name: DRAWS_ROW,
      make: () => {
        const input = beliefCase(SHORT, null);
        const { overall, sites, hypotheses } = believe(input);
        const weighted = hypotheses.map(({ fault }) => ({
          fault,
          weight: fault === null ? 0.67 : faultPriors[fault]!,
        }));
        return () => void sampleExactly(prior, overall, sites, weighted, 100_000, 1);
      },
    },
  ],
  ratios: [
    [SHORT_ROW, YARDSTICK],
    [LONG_ROW, YARDSTICK],
    [LEAK_ROW, YARDSTICK],
    [LONG_ROW, SHORT_ROW],
    [DRAWS_ROW, SHORT_ROW],
  ],
};
