import type { EngineState } from "../state.ts";
import { adviceIn } from "./advice.ts";

/**
 * Works out the advice as it will be once this line is in the log, so that it is there when the line is kept.
 * Gives nothing: whoever keeps the line asks for the advice as always.
 */
export function foresee(
  state: EngineState,
  { bike, line }: { readonly bike: string; readonly line: string },
): null {
  adviceIn(state.ahead(line), bike, state.words);
  return null;
}
