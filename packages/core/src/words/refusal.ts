import type { Refusal } from "../units/outcome.ts";
import type { CoreWords } from "./core-words.ts";

/** Why something was refused, in a sentence: by its reason, or as the refusal says itself in English, with its figures. */
export const refusalText = (
  { reason, detail }: Pick<Refusal, "reason" | "detail">,
  { refusals }: Pick<CoreWords, "refusals">,
): string => refusals[reason] ?? detail;
