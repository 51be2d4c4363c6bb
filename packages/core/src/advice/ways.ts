import type { HeldBy } from "./advice.ts";
import { isCalledFor } from "./called-for.ts";
import { worthOf } from "./change-worth.ts";
import { holding } from "./held-by.ts";
import type { Candidate } from "./search.ts";
import type { Weighing } from "./weighing.ts";

/** A change that would save minutes and is called for, but waits. */
export interface HeldChange {
  readonly candidate: Candidate;
  readonly by: HeldBy;
  /** Minutes it would save for each minute it takes. */
  readonly worth: number;
}

export interface Ways {
  /** The best change of each set of parts that may be made, best first by trouble and minutes. */
  readonly open: readonly Candidate[];
  /** The best change of each set of parts that only waits, most worth first. */
  readonly held: readonly HeldChange[];
}

/**
 * The changes that save minutes and are called for: those that may be made, and those that wait. A set of parts waits when
 * none of its changes may be made; one that holds another set, waiting or not, is left out: that one comes first. Rules A2, A6, A7, A20 and A22.
 * @param holds what holds a change back, from `holding`
 */
export function waysOf(weighing: Weighing, holds = holding(weighing)): Ways {
  const { story, candidates, present } = weighing;
  const open = new Map<string, Candidate>();
  const waiting = new Map<string, { readonly candidate: Candidate; readonly by: HeldBy }>();
  for (const candidate of candidates) {
    if (candidate.changes.length === 0 || candidate.total >= present.total) continue;
    const kind = candidate.changes.join("+");
    if (open.has(kind) || !isCalledFor(weighing, candidate)) continue;
    const by = holds(candidate);
    if (by === null) {
      open.set(kind, candidate);
      waiting.delete(kind);
    } else if (!waiting.has(kind)) waiting.set(kind, { candidate, by });
  }
  const sets = [...open.values(), ...[...waiting.values()].map(({ candidate }) => candidate)].map(
    ({ changes }) => changes,
  );
  const alone = [...waiting.values()].filter(
    ({ candidate: { changes } }) =>
      (!story.oneChangeAtATime || changes.length === 1) && !sets.some((set) => isPartOf(set, changes)),
  );
  const worth = worthOf(
    weighing,
    alone.map(({ candidate }) => candidate),
  );
  return {
    open: [...open.values()],
    held: alone
      .map((each) => ({ ...each, worth: worth.get(each.candidate)! }))
      .sort((a, b) => b.worth - a.worth),
  };
}

const isPartOf = (some: readonly string[], all: readonly string[]): boolean =>
  some.length < all.length && some.every((part) => all.includes(part));
