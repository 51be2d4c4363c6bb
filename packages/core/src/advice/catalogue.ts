import type { FaultId } from "../belief/catalogue.ts";
import type { Opening } from "../units/quantity.ts";
import type { CautionId, CheckId, TestId } from "../words/core-words.ts";

// Figures and ids alone: what these are called stands in the words of a language (words/core-words.ts).

/** A look or measurement that finds a mechanical fault. */
export interface Check {
  readonly id: CheckId;
  readonly minutes: number;
  /** Chance that the check finds the fault when it is there. */
  readonly finds: Partial<Readonly<Record<FaultId, number>>>;
  /** Chance that it cries fault on a sound bike. */
  readonly falseAlarm: number;
  /** Ids of cautions to show at that moment. */
  readonly cautions: readonly CautionId[];
  readonly strokes: "two" | "four" | "both";
  readonly source: string;
}

/** Something done to the running engine that tells rich from lean. Each outcome is a sign of the catalogue. */
export interface Test {
  readonly id: TestId;
  readonly minutes: number;
  /** Openings it can be done at; empty: the test has its own place. */
  readonly openings: readonly Opening[];
  readonly outcomes: readonly { readonly id: string; readonly sign: string | null }[];
  readonly cautions: readonly CautionId[];
  readonly strokes: "two" | "four" | "both";
  /** Which screw it needs, where it works on one. */
  readonly screw: "air" | "fuel" | null;
  /** True when it holds the engine at 3/4 or more: never before the top is known to be safe. */
  readonly wideOpen: boolean;
  readonly source: string;
}

export interface Caution {
  readonly id: CautionId;
  readonly source: string;
}
