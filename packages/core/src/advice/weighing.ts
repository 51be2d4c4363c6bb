import type { Belief } from "../belief/believe.ts";
import type { BikeCase } from "./case.ts";
import type { FaultChances } from "./fault-cost.ts";
import type { Candidate } from "./search.ts";

/** Everything the kinds of step are weighed from. */
export interface Weighing {
  readonly story: BikeCase;
  readonly belief: Belief;
  readonly chances: FaultChances;
  /** The setup as it is, as one of the candidates. */
  readonly present: Candidate;
  /** Every setup that could be fitted, best first. */
  readonly candidates: readonly Candidate[];
}
