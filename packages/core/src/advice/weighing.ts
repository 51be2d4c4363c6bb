import type { Belief } from "../belief/believe.ts";
import type { CoreWords } from "../words/core-words.ts";
import type { BikeCase } from "./case.ts";
import type { FaultChances } from "./fault-cost.ts";
import type { Candidate } from "./search.ts";

/** Everything the kinds of step are weighed from. */
export interface Weighing {
  readonly story: BikeCase;
  /** What the steps are said in; nothing is weighed by it. */
  readonly words: CoreWords;
  readonly belief: Belief;
  readonly chances: FaultChances;
  /** The setup as it is, as one of the candidates. */
  readonly present: Candidate;
  /** Every setup that could be fitted, best first. */
  readonly candidates: readonly Candidate[];
}
