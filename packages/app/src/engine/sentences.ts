import { type Refusal, refusalText } from "@jetwright/core";
import type { AskWords } from "../words/en/ask.ts";
import type { StoryWords } from "../words/en/story.ts";
import { type ValueWords, values } from "../words/en/values.ts";
import type { Language } from "../words/figures.ts";

/** What the worker itself puts into words of the app: records told, a text for a friend, parts as fitted, refusals. */
export interface Sentences {
  readonly story: StoryWords;
  readonly ask: AskWords;
  readonly values: ValueWords;
  /** By the reason of a refusal. */
  readonly refused: Readonly<Record<string, string>>;
}

const LOADERS: Readonly<Record<Exclude<Language, "en">, () => Promise<Sentences>>> = {
  de: async () => ({
    story: (await import("../words/de/story.ts")).story,
    ask: (await import("../words/de/ask.ts")).ask,
    values: (await import("../words/de/values.ts")).values,
    refused: (await import("../words/de/refused.ts")).refused,
  }),
  es: async () => ({
    story: (await import("../words/es/story.ts")).story,
    ask: (await import("../words/es/ask.ts")).ask,
    values: (await import("../words/es/values.ts")).values,
    refused: (await import("../words/es/refused.ts")).refused,
  }),
};

const learned = new Map<string, Sentences>();

/** Fetches the sentences of a language, once; where they cannot be had the English ones stand in until the next time. */
export async function learnSentences(language: Language): Promise<void> {
  if (language === "en" || learned.has(language)) return;
  const sentences = await LOADERS[language]().catch(() => null);
  if (sentences !== null) learned.set(language, sentences);
}

/** The sentences of a language that were fetched; undefined where English stands in. */
export const sentencesIn = (language: string): Sentences | undefined => learned.get(language);

/** How parts as fitted are said in a language. */
export const valueWords = (language: string): ValueWords => learned.get(language)?.values ?? values;

/** Why something was refused, in a language; its own English where that has no words for the reason. */
export const whyRefused = (language: string, why: Refusal): string =>
  refusalText(why, { refusals: learned.get(language)?.refused ?? {} });
