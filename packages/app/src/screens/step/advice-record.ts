import type { Advice, Step } from "@jetwright/core";
import type { JsonObject } from "@jetwright/records";
import type { Standing } from "../../engine/answers/standing.ts";

/** What was said, in one line. */
export const adviceWords = ({ title, why }: Step): string =>
  why.length === 0 ? `${title}.` : `${title}: ${why.map(({ text }) => text).join("; ")}.`;

const tenth = (x: number): number => Math.round(x * 10) / 10;

/** Body of the record of a piece of advice, with the belief it was given on and whether it was followed. */
export function adviceBody(
  step: Step,
  { suspects }: Pick<Advice, "suspects">,
  { at }: Pick<Standing, "at">,
  followed: boolean,
): JsonObject {
  return {
    words: adviceWords(step),
    step: {
      kind: step.kind,
      id: step.id,
      title: step.title,
      minutes: Math.round(step.minutes),
      ...(step.opening === null ? {} : { opening: step.opening }),
      ...(step.changes.length === 0
        ? {}
        : { changes: step.changes.map(({ part, from, to }) => ({ part, from, to })) }),
    },
    belief: {
      mixture: at.map(({ opening, percent, sdPercent }) => ({
        opening,
        errorPercent: tenth(percent),
        sdPercent: tenth(sdPercent),
      })),
      faults: Object.fromEntries(
        suspects.map(({ fault, chance }) => [fault, Math.round(chance * 1000) / 1000]),
      ),
    },
    followed,
  };
}

/** True when this is what was written about the bike last, so that a second tap writes nothing. */
export const isWritten = (
  step: Step,
  followed: boolean,
  { lastAdvice }: Pick<Standing, "lastAdvice">,
): boolean =>
  lastAdvice !== null && lastAdvice.words === adviceWords(step) && lastAdvice.followed === followed;
