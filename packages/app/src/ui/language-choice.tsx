import { usePreferences } from "../preferences/use-preferences.ts";
import { LANGUAGES } from "../words/languages.ts";
import { useWords } from "../words/use-words.ts";
import { Choice } from "./choice.tsx";

/** The language of the app: each by its own name, with what is to be said of its words. */
export function LanguageChoice() {
  const words = useWords().settings;
  const [{ language: chosen }, set] = usePreferences();
  return (
    <Choice
      down
      label={words.language}
      value={chosen}
      options={LANGUAGES.map(({ language, name, unchecked }) => ({
        value: language,
        words: <span lang={language}>{name}</span>,
        ...(unchecked !== undefined && { hint: <span lang={language}>{unchecked}</span> }),
      }))}
      onChoose={(language) => set({ language })}
    />
  );
}
