import {
  accept,
  CHECKS,
  checkById,
  FAULTS,
  type FaultId,
  lookOverMinutes,
  type Outcome,
  refuse,
} from "@jetwright/core";
import type { ShopInWords } from "../state.ts";
import { adviceFor } from "./advice.ts";

/** One look of a looking over, with what it found. */
export interface Look {
  readonly id: string;
  readonly words: string;
  readonly steps: readonly string[];
  readonly mend: string;
  /** Ids of what to mind at this look, what the whole card says already left out. */
  readonly cautions: readonly string[];
  /** The faults it can find, likeliest first. */
  readonly faults: readonly { readonly id: FaultId; readonly words: string }[];
  /** What it found in this looking over; null: not looked at yet. */
  readonly found: {
    readonly record: string;
    readonly what: "sound" | "faulty" | "mended";
    /** The fault in words, where one was named. */
    readonly fault: string | null;
  } | null;
}

export interface LookOverCard {
  readonly looks: readonly Look[];
  readonly minutes: number;
  readonly tools: readonly string[];
  readonly cautions: readonly string[];
}

/** Said before the first look: what petrol, heat and the spark can do goes for all of them. */
const FOR_ALL: readonly string[] = ["petrol-vapour", "battery", "hot-parts"];

/**
 * The looks of one looking over as a card to work from.
 * @param given.looks the looks it was begun with; none: those advised now
 * @param given.from when it was begun, milliseconds since 1970: answers from before are not its own
 */
export function lookOverCard(
  state: ShopInWords,
  given: { readonly bike: string; readonly looks: readonly string[]; readonly from: number },
): Outcome<LookOverCard, "nothing-to-look-over"> {
  const { shop, words } = state;
  const begun = CHECKS.filter(({ id }) => given.looks.includes(id)).length === given.looks.length;
  const ids = given.looks.length > 0 && begun ? given.looks : advised(state, given.bike);
  if (ids.length === 0) {
    return refuse(
      "nothing-to-look-over",
      "There is nothing to look over now: the next step says what to do.",
    );
  }
  const checks = ids.map((id) => checkById(id)!);
  const cautions = new Set<string>(checks.flatMap((check) => check.cautions));
  const done = shop.bikes.get(given.bike)?.checks ?? [];
  return accept({
    looks: checks.map((check): Look => {
      const { words: name, steps, mend } = words.checks[check.id];
      const last = done.findLast(({ body, at }) => body.check === check.id && at >= given.from);
      const fault = FAULTS.find((each) => each === last?.body.fault);
      return {
        id: check.id,
        words: name,
        steps,
        mend,
        cautions: check.cautions.filter((id) => !FOR_ALL.includes(id)),
        faults: FAULTS.filter((each) => check.finds[each] !== undefined)
          .sort((a, b) => check.finds[b]! - check.finds[a]!)
          .map((id) => ({ id, words: words.faults[id].words })),
        found:
          last === undefined
            ? null
            : {
                record: last.id,
                what: last.body.found,
                fault: fault === undefined ? null : words.faults[fault].words,
              },
      };
    }),
    minutes: lookOverMinutes(ids),
    tools: [...new Set(checks.flatMap(({ id }) => words.checks[id].tools))],
    cautions: FOR_ALL.filter((id) => cautions.has(id)),
  });
}

/** The looks advised for the bike now. */
function advised(state: ShopInWords, bike: string): readonly string[] {
  const advice = adviceFor(state, { bike });
  if (!advice.ok) return [];
  return [advice.value.step, ...advice.value.others].find(({ looks }) => looks !== undefined)?.looks ?? [];
}
