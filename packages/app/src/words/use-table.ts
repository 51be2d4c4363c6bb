import { useEffect, useState } from "preact/hooks";
import { usePreferences } from "../preferences/use-preferences.ts";
import type { Language } from "./figures.ts";

/** Fetches a table of words, by the language. */
type Loaders<Table> = Readonly<Record<Exclude<Language, "en">, () => Promise<Table>>>;

/** A table of words in the language in use; null for English, and until it is here or where it cannot be had. */
export function useTable<Table>(loaders: Loaders<Table>): Table | null {
  const [{ language }] = usePreferences();
  const [table, setTable] = useState<Table | null>(null);
  useEffect(() => {
    let current = true;
    const words: Promise<Table | null> = language === "en" ? Promise.resolve(null) : loaders[language]();
    words.catch(() => null).then((found) => current && setTable(() => found));
    return () => {
      current = false;
    };
  }, [language, loaders]);
  return table;
}
