import { type StoryWords, story } from "../../../words/en/story.ts";

/** The sentences of a language; English stands in where a language has none of its own. */
const BY_LANGUAGE: Readonly<Record<string, StoryWords>> = { en: story };

export const storyWords = (language: string): StoryWords => BY_LANGUAGE[language] ?? story;
