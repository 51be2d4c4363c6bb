import {
  accept,
  CHECKS,
  type Check,
  type CoreWords,
  checkById,
  FAULTS,
  type FaultId,
  type Outcome,
  refuse,
} from "@jetwright/core";
import type { UsedEntryOf } from "@jetwright/records";
import type { EngineState } from "../state.ts";

export interface CheckCard {
  readonly id: string;
  readonly words: string;
  readonly minutes: number;
  readonly steps: readonly string[];
  readonly tools: readonly string[];
  readonly cautions: readonly string[];
  readonly mend: string;
  /** The faults it can find, likeliest first. */
  readonly faults: readonly { readonly id: FaultId; readonly words: string }[];
  /** What it found the last time it was made on this bike. */
  readonly last: {
    readonly found: "sound" | "faulty" | "mended";
    /** Null where nobody said which, or nothing was wrong. */
    readonly fault: FaultId | null;
    readonly words: string | null;
    readonly at: number;
  } | null;
}

/**
 * A check as a card to work from. A fault's name in place of a check's stands for the check that found it on this
 * bike, or else the first that can: so that a mend can be noted by the fault.
 */
export function checkCard(
  { shop, words: said }: EngineState,
  given: { readonly bike: string; readonly check: string },
): Outcome<CheckCard, "unknown-check"> {
  const done = shop.bikes.get(given.bike)?.checks ?? [];
  const check = checkById(given.check) ?? checkForFault(done, given.check);
  if (check === undefined) {
    return refuse(
      "unknown-check",
      `There is no check "${given.check}". The checks are: ${CHECKS.map(({ id }) => said.checks[id].words.toLowerCase()).join("; ")}.`,
    );
  }
  const { id, minutes, cautions } = check;
  const { words, steps, tools, mend } = said.checks[id];
  const faults = FAULTS.filter((fault) => check.finds[fault] !== undefined).sort(
    (a, b) => check.finds[b]! - check.finds[a]!,
  );
  return accept({
    id,
    words,
    minutes,
    steps,
    tools,
    cautions,
    mend,
    faults: faults.map((fault) => ({ id: fault, words: said.faults[fault].words })),
    last: lastOf(done, check, said),
  });
}

type Done = readonly UsedEntryOf<"check-done">[];

function checkForFault(done: Done, fault: string): Check | undefined {
  const known = FAULTS.find((each) => each === fault);
  if (known === undefined) return undefined;
  const finds = CHECKS.filter((check) => check.finds[known] !== undefined);
  const found = done.findLast(
    ({ body }) => body.found === "faulty" && finds.some(({ id }) => id === body.check),
  );
  return checkById(found?.body.check ?? "") ?? finds[0];
}

function lastOf(done: Done, { id }: Check, { faults }: CoreWords): CheckCard["last"] {
  const last = done.findLast(({ body }) => body.check === id);
  if (last === undefined) return null;
  const fault = FAULTS.find((each) => each === last.body.fault) ?? null;
  return {
    found: last.body.found,
    fault,
    words: fault === null ? null : faults[fault].words,
    at: last.at,
  };
}
