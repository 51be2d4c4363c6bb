import type { Advice, Step, WaitingChange } from "./advice.ts";
import type { Check } from "./catalogue.ts";
import { freeingStep } from "./freeing.ts";
import { leansMost } from "./held-by.ts";
import { TOP } from "./loss.ts";
import { partChanges, partMoves } from "./part-stands.ts";
import { mainEffect } from "./reasons.ts";
import type { HeldChange } from "./ways.ts";
import type { Weighing } from "./weighing.ts";

/** Waiting changes that are told. */
const MOST = 4;

/** The step that frees the waiting change worth most. */
export interface Freeing {
  readonly step: Step;
  /** Minutes that change would save for each minute it takes. */
  readonly worth: number;
}

/**
 * The steps with those that free what waits among them, each saying what waits for it. Rule A22.
 * @param held the changes that wait, most worth first
 */
export function withWhatFrees(
  weighing: Weighing,
  checks: readonly Check[],
  held: readonly HeldChange[],
  plain: readonly Step[],
): { readonly steps: readonly Step[]; readonly freeing: Freeing | null } & Pick<Advice, "waiting"> {
  const steps = [...plain];
  const waiting: WaitingChange[] = [];
  let freeing: Freeing | null = null;
  for (const each of held.slice(0, MOST)) {
    const frees = freeingStep(weighing, checks, each);
    const told = waitingChange(weighing, each, frees);
    waiting.push(told);
    if (frees === null || waiting.some(({ step }, i) => i < waiting.length - 1 && isSame(step, frees)))
      continue;
    const at = steps.findIndex((step) => isSame(step, frees));
    const step = sayingWhatWaits(weighing, steps[at] ?? frees, told);
    steps.splice(at < 0 ? steps.length : at, 1, step);
    if (waiting.length === 1) freeing = { step, worth: each.worth };
  }
  return { steps, freeing, waiting };
}

const isSame = (a: Pick<Step, "kind" | "id"> | null, b: Step): boolean => a?.kind === b.kind && a.id === b.id;

/**
 * A change that waits, told: what it is, why it waits and what would free it. Rule A22.
 * @param freeing the step that would free it; null: none is known
 */
function waitingChange(
  { story, present, words }: Weighing,
  { candidate, by }: HeldChange,
  freeing: Step | null,
): WaitingChange {
  const say = words.steps.waiting;
  const first = by === "top" && freeing?.kind === "change" ? "bigger main" : by;
  return {
    id: candidate.changes.join("+"),
    title: words.parts.change(partMoves(story.now, candidate)),
    changes: partChanges(story.now, candidate, words),
    opening: mainEffect(present, candidate).opening,
    minutes: candidate.minutes,
    by,
    why: say.why[by](Math.max(1, Math.round(-100 * leansMost(present, candidate, TOP)))),
    frees: freeing === null ? say.frees[first] : `${say.frees[first]} ${say.by(freeing.title)}`,
    step: freeing === null ? null : { kind: freeing.kind, id: freeing.id },
  };
}

/** The step that frees a change, saying so. */
function sayingWhatWaits({ words }: Weighing, step: Step, { title, opening, by }: WaitingChange): Step {
  const { comesFirst } = words.steps.waiting;
  const said = comesFirst[by === "top" && step.kind === "test" ? "test" : "other"](title, opening);
  return { ...step, expect: `${said} ${step.expect}` };
}
