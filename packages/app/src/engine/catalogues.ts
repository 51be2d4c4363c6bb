import type { CoreWords } from "@jetwright/core";
import type { Preferences } from "../preferences/preferences.ts";

export type Language = Preferences["language"];

/** What the core says in each language, loaded when first spoken. A language without one is answered in English. */
const CATALOGUES: Readonly<Partial<Record<Language, () => Promise<CoreWords>>>> & {
  readonly en: () => Promise<CoreWords>;
} = {
  en: () => import("@jetwright/core/words/en").then(({ english }) => english),
  de: () => import("@jetwright/core/words/de").then(({ german }) => german),
};

const loaded = new Map<Language, Promise<CoreWords>>();

/** The core's words in a language. */
export function coreWords(language: Language): Promise<CoreWords> {
  let words = loaded.get(language);
  if (words === undefined) {
    words = (CATALOGUES[language] ?? CATALOGUES.en)();
    loaded.set(language, words);
    // A catalogue that did not arrive is asked for again.
    words.catch(() => loaded.delete(language));
  }
  return words;
}
