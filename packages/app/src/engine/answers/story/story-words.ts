import type { CoreWords } from "@jetwright/core";
import { type StoryWords, story } from "../../../words/en/story.ts";
import { sentencesIn } from "../../sentences.ts";

/** The sentences of a language, and what the core calls signs, tests, checks and faults in it. */
export interface Saying extends StoryWords {
  readonly core: CoreWords;
}

/** The sentences of a language that was learnt; English stands in where none was. */
export const storyWords = (language: string, core: CoreWords): Saying => ({
  ...(sentencesIn(language)?.story ?? story),
  core,
});
