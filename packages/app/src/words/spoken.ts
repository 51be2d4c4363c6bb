import { useEffect, useState } from "preact/hooks";
import type { Words } from "./en.ts";
import type { Language } from "./figures.ts";
import { english, fetchWords, wordsAtHand } from "./languages.ts";

export interface Spoken {
  readonly language: Language;
  readonly words: Words;
}

const ENGLISH: Spoken = { language: "en", words: english };

const atHand = (language: Language): Spoken | null => {
  const words = wordsAtHand(language);
  return words === undefined ? null : { language, words };
};

/** The words of the language chosen; English while they are fetched, and where they cannot be had. */
export function useSpoken(language: Language): Spoken {
  const [, setFetched] = useState<Language | null>(null);
  useEffect(() => {
    let current = true;
    void fetchWords(language).then(() => current && setFetched(language));
    return () => {
      current = false;
    };
  }, [language]);
  return atHand(language) ?? ENGLISH;
}
