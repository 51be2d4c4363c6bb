import type { FaultId } from "../belief/catalogue.ts";
import type { MixtureReading } from "../belief/reading.ts";
import type { TwoSided } from "../belief/two-sided.ts";
import type { Situation } from "../metering/situation.ts";
import type { Opening } from "../units/quantity.ts";
import type { CautionId, CheckId } from "../words/core-words.ts";
import type { LabourPart } from "./case.ts";
import type { TopThrottle } from "./top-throttle.ts";

/** What to do next, and everything a technician needs to judge it. */
export interface Step {
  readonly kind: "stop" | "mend" | "look-over" | "check" | "test" | "change" | "read-parts" | "ride";
  /** Id of the check or test, or the parts changed joined by "+". */
  readonly id: string;
  /** What to do, as a heading. */
  readonly title: string;
  /** How to do it, in order; empty where the title says it all. */
  readonly how: readonly string[];
  readonly tools: readonly string[];
  /** The records that weighed most, in trade words. */
  readonly why: readonly Reason[];
  /** What you will notice if it is right. */
  readonly expect: string;
  /** What would prove it wrong. */
  readonly wrongIf: string;
  readonly undo: string;
  readonly sure: Sureness;
  /** Minutes it takes, the ride that proves it included. */
  readonly minutes: number;
  /** Minutes it saves on average for each minute it takes. */
  readonly worth: number;
  /** Ids of cautions to show with it. */
  readonly cautions: readonly CautionId[];
  readonly changes: readonly PartChange[];
  /** The checks that a looking over holds, in working order; every other step has none. */
  readonly looks?: readonly CheckId[];
  /** What would be fitted after it; null unless it is a change. */
  readonly situation: Situation | null;
  /** Where a test is made; null where it has its own place, and for every other step. */
  readonly opening: Opening | null;
  /** How far the throttle may be opened on the next ride. Rule A3. */
  readonly topThrottle: TopThrottle;
  /** Anything else worth a sentence, such as what one change at a time costs. */
  readonly notes: readonly string[];
}

export interface Reason {
  readonly record: string;
  readonly text: string;
}

export interface PartChange {
  readonly part: LabourPart;
  readonly from: string;
  readonly to: string;
  readonly inDrawer: boolean;
}

/** What a change waits for: the cause of pinging (A6), what else may feel rich on top (A20), or the top to be proved (A2). */
export type HeldBy = "pinging" | "other reasons" | "top";

/** A change that would help and waits, with what would free it. Rule A22. */
export interface WaitingChange {
  /** The parts changed joined by "+". */
  readonly id: string;
  readonly title: string;
  readonly changes: readonly PartChange[];
  /** Where it acts most. */
  readonly opening: Opening;
  readonly minutes: number;
  readonly by: HeldBy;
  /** Why it waits, a sentence. */
  readonly why: string;
  /** What would free it, in a sentence or two. */
  readonly frees: string;
  /** The step of this advice that would free it; null: none is known. */
  readonly step: Pick<Step, "kind" | "id"> | null;
}

export interface Sureness {
  /** Chance that the step is the right way to go, 0 to 1. */
  readonly chance: number;
  readonly words: "very likely" | "likely" | "more likely than not" | "not sure";
}

export interface Suspect {
  readonly fault: FaultId;
  readonly words: string;
  readonly chance: number;
}

export interface Advice {
  readonly step: Step;
  /** Other ways, best first. */
  readonly others: readonly Step[];
  /** Changes that would help and wait, the best first. */
  readonly waiting: readonly WaitingChange[];
  /** The mixture now, at the six spoken openings, in the air it will be ridden in. */
  readonly picture: readonly MixtureReading[];
  /** The same after the step, where it changes parts. */
  readonly pictureAfter: readonly MixtureReading[] | null;
  /** Mechanical suspects worth naming, likeliest first. */
  readonly suspects: readonly Suspect[];
  /** Chance that no mechanical fault is behind it. */
  readonly soundChance: number;
  /** Openings that read as two things at once. */
  readonly twoSided: readonly TwoSided[];
  /** Records whose evidence could not be used, each with why in a sentence. */
  readonly leftOut: readonly { readonly record: string; readonly why: string }[];
  /** False: the reckoning stopped early and is rougher than usual. */
  readonly settled: boolean;
}

export function surenessOf(chance: number): Sureness {
  const words =
    chance >= 0.9
      ? "very likely"
      : chance >= 0.75
        ? "likely"
        : chance >= 0.6
          ? "more likely than not"
          : "not sure";
  return { chance, words };
}
