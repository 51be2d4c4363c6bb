import type { CoreWords, StartingWords } from "@jetwright/core";
import type { Preferences } from "../preferences/preferences.ts";

export type Language = Preferences["language"];

/** What the core says in each language, loaded when first spoken. */
const CATALOGUES: Readonly<Record<Language, () => Promise<CoreWords>>> = {
  en: () => import("@jetwright/core/words/en").then(({ english }) => english),
  de: () => import("@jetwright/core/words/de").then(({ german }) => german),
  es: () => import("@jetwright/core/words/es").then(({ spanish }) => spanish),
};

/** What the core says of a starting point in each language: asked for seldom, so apart from the rest. */
const STARTING: Readonly<Record<Language, () => Promise<StartingWords>>> = {
  en: () => import("@jetwright/core/words/en/starting").then(({ starting }) => starting),
  de: () => import("@jetwright/core/words/de/starting").then(({ starting }) => starting),
  es: () => import("@jetwright/core/words/es/starting").then(({ starting }) => starting),
};

/** The core's words of a starting point in a language. */
export const startingWords = (language: Language): Promise<StartingWords> => STARTING[language]();

const loaded = new Map<Language, Promise<CoreWords>>();

/** The core's words in a language. */
export function coreWords(language: Language): Promise<CoreWords> {
  let words = loaded.get(language);
  if (words === undefined) {
    words = CATALOGUES[language]();
    loaded.set(language, words);
    // A catalogue that did not arrive is asked for again.
    words.catch(() => loaded.delete(language));
  }
  return words;
}
