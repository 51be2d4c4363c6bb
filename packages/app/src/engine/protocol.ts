import type { AnswerOf, ArgumentsOf, Question } from "./answers/all.ts";
import type { Language } from "./catalogues.ts";

/** What the page says to the worker. */
export type ToEngine =
  | { readonly say: "records"; readonly lines: readonly string[]; readonly ticket: number }
  | { readonly say: "forget" }
  /** The language that will be spoken, so that its words can be fetched meanwhile. */
  | { readonly say: "speak"; readonly language: Language }
  | {
      readonly say: "ask";
      readonly ticket: number;
      readonly question: Question;
      readonly given: unknown;
      readonly language: Language;
    };

/** What the worker says back, by the ticket of what was asked. */
export type FromEngine =
  | { readonly ticket: number; readonly ok: true; readonly answer: unknown }
  | { readonly ticket: number; readonly ok: false; readonly bug: string };

export type { AnswerOf, ArgumentsOf, Question };
