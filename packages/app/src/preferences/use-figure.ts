import { turnsText, withComma, withPoint } from "@jetwright/core";
import { figure } from "../words/figures.ts";
import { usePreferences } from "./use-preferences.ts";

/** How a number with so many decimals is written in the language chosen. */
export function useFigure(): (x: number, decimals: number) => string {
  const [{ language }] = usePreferences();
  return (x, decimals) => figure(x, decimals, language);
}

/** How turns of a screw are said in the language chosen: quarters as fractions. */
export function useTurns(): (turns: number) => string {
  const [{ language }] = usePreferences();
  return (turns) => turnsText(turns, language === "en" ? withPoint : withComma);
}
