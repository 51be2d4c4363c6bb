import type { Refusal } from "../units/outcome.ts";
import type { CoreWords } from "./core-words.ts";
import { withComma } from "./figures.ts";

/**
 * Why something was refused, in a sentence: by its reason, or as the refusal says itself in English. What a sentence has
 * in [ ] is said only where the refusal gives the figures named in { } there: "too short[: {seconds} s]".
 */
export function refusalText(
  { reason, detail, given = {} }: Pick<Refusal, "reason" | "detail" | "given">,
  { refusals }: Pick<CoreWords, "refusals">,
): string {
  const sentence = refusals[reason];
  if (sentence === undefined) return detail;
  return sentence.replaceAll(/\[([^\]]*)\]/g, (_, part: string) => {
    const names = [...part.matchAll(/\{(\w+)\}/g)].map(([, name]) => name!);
    if (!names.every((name) => name in given)) return "";
    return part.replaceAll(/\{(\w+)\}/g, (_all, name: string) => withComma(given[name]!));
  });
}
