import type { Words } from "./en.ts";
import { atOnce } from "./en-at-once.ts";
import type { Language } from "./figures.ts";

/** Languages that have words of their own, each by its own name, and what is to be said of its words in it. */
export const LANGUAGES: readonly {
  readonly language: Language;
  readonly name: string;
  readonly unchecked?: string;
}[] = [
  { language: "en", name: "English" },
  { language: "de", name: "Deutsch", unchecked: "noch nicht von Muttersprachlern geprüft" },
  { language: "es", name: "Español", unchecked: "aún sin revisar por un hablante nativo" },
];

/** The first language asked for ("de-AT") that has words of its own; English when none has. */
export function languageWanted(asked: readonly string[]): Language {
  for (const tag of asked) {
    const primary = tag.toLowerCase().split("-")[0];
    const found = LANGUAGES.find(({ language }) => language === primary);
    if (found !== undefined) return found.language;
  }
  return "en";
}

/**
 * English, which stands in wherever another language is missing. At first only what the first screens say is in it; the
 * rest joins it before a screen that says it is drawn (`wholeEnglish`).
 */
export const english = { ...atOnce } as unknown as Words;

/** Resolves when every English text is there; rejects when it cannot be had, as without a network on a first visit. */
export async function wholeEnglish(): Promise<void> {
  const { en } = await import("./en.ts");
  Object.assign(english, en);
}

const LOADERS: Readonly<Record<Exclude<Language, "en">, () => Promise<Words>>> = {
  de: () => import("./de.ts").then(({ de }) => de),
  es: () => import("./es.ts").then(({ es }) => es),
};

const loaded = new Map<Language, Words>([["en", english]]);

/** The words of a language if they are here already. */
export const wordsAtHand = (language: Language): Words | undefined => loaded.get(language);

/** Fetches the words of a language, once; null when they cannot be had, as without a network on a first visit. */
export async function fetchWords(language: Language): Promise<Words | null> {
  const here = loaded.get(language);
  if (here !== undefined || language === "en") return here ?? english;
  const words = await LOADERS[language]().catch(() => null);
  if (words !== null) loaded.set(language, words);
  return words;
}
