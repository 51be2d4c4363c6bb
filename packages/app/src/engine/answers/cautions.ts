import { CAUTIONS } from "@jetwright/core";
import type { EngineState } from "../state.ts";

export interface CautionSaid {
  readonly id: string;
  readonly text: string;
}

/** The cautions of those ids, or all of them, in the order of the catalogue. */
export function cautionsSaid(
  { words }: EngineState,
  { ids }: { readonly ids: readonly string[] | "all" },
): readonly CautionSaid[] {
  return CAUTIONS.filter(({ id }) => ids === "all" || ids.includes(id)).map(({ id }) => ({
    id,
    text: words.cautions[id],
  }));
}
