import type { CoreWords } from "@jetwright/core";
import { type StoryWords, story } from "../../../words/en/story.ts";

/** The sentences of a language, and what the core calls signs, tests, checks and faults in it. */
export interface Saying extends StoryWords {
  readonly core: CoreWords;
}

/** The sentences of each language; English stands in where a language has none of its own. */
const BY_LANGUAGE: Readonly<Record<string, StoryWords>> = { en: story };

export const storyWords = (language: string, core: CoreWords): Saying => ({
  ...(BY_LANGUAGE[language] ?? story),
  core,
});
