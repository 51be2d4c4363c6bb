import { figure } from "../words/figures.ts";
import { usePreferences } from "./use-preferences.ts";

/** How a number with so many decimals is written in the language chosen. */
export function useFigure(): (x: number, decimals: number) => string {
  const [{ language }] = usePreferences();
  return (x, decimals) => figure(x, decimals, language);
}
