import { useEffect, useState } from "preact/hooks";
import { usePreferences } from "../preferences/use-preferences.ts";
import type { Language } from "./figures.ts";

/** Reasons in words; English is what each refusal says itself, with its figures. */
type Refused = Readonly<Record<string, string>>;

const ENGLISH: Refused = {};
const LOADERS: Readonly<Record<Exclude<Language, "en">, () => Promise<Refused>>> = {
  de: () => import("./de/refused.ts").then(({ refused }) => refused),
  es: () => import("./es/refused.ts").then(({ refused }) => refused),
};

/** Why something was refused: its reason, and its English. */
export interface Why {
  readonly reason: string;
  readonly detail: string;
}

/** Says why something was refused in the language in use; its own English where that has no words for the reason. */
export function useRefusal(): (why: Why) => string {
  const [{ language }] = usePreferences();
  const [refused, setRefused] = useState(ENGLISH);
  useEffect(() => {
    let current = true;
    const words = language === "en" ? Promise.resolve(ENGLISH) : LOADERS[language]();
    words.catch(() => ENGLISH).then((table) => current && setRefused(table));
    return () => {
      current = false;
    };
  }, [language]);
  return ({ reason, detail }) => refused[reason] ?? detail;
}
