import { createContext } from "preact";
import { useContext } from "preact/hooks";
import type { Words } from "./en.ts";
import { english } from "./languages.ts";

export const WordsContext = createContext<Words>(english);

export const useWords = (): Words => useContext(WordsContext);
