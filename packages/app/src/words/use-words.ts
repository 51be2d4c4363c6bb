import { createContext } from "preact";
import { useContext } from "preact/hooks";
import { en, type Words } from "./en.ts";

export const WordsContext = createContext<Words>(en);

export const useWords = (): Words => useContext(WordsContext);
