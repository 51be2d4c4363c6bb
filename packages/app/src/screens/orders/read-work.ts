import { accept, type Outcome, refuse } from "@jetwright/core";
import type { JsonObject } from "@jetwright/records";
import { typedNumber } from "../../ui/number-field.tsx";

export interface WorkTyped {
  readonly minutes: string;
  readonly words: string;
  /** Names with a comma between; "2 x plug" or "plug x2" for two. */
  readonly parts: string;
}

const MOST_MINUTES = 10_000;

/** One part as typed, with how many of it. */
function readPart(text: string): { readonly name: string; readonly count: number } {
  const [, before, after] = /^(\d{1,4})\s*[x×]\s*(.+)$/i.exec(text) ?? [];
  if (before !== undefined && Number(before) > 0)
    return { name: after!.slice(0, 200), count: Number(before) };
  const [, name, count] = /^(.+?)\s*[x×]\s*(\d{1,4})$/i.exec(text) ?? [];
  if (count !== undefined && Number(count) > 0) return { name: name!.slice(0, 200), count: Number(count) };
  return { name: text.slice(0, 200), count: 1 };
}

/** What was typed of work done, as a record's body; refuses minutes that are no number, and nothing at all. */
export function readWork(
  typed: WorkTyped,
  words: { readonly minutesWrong: string; readonly nothingTyped: string },
): Outcome<JsonObject, "minutes" | "nothing"> {
  const text = typed.minutes.trim().replace(/\s*min$/i, "");
  const minutes = text === "" ? null : typedNumber(text);
  if (text !== "" && (minutes === null || minutes <= 0 || minutes > MOST_MINUTES)) {
    return refuse("minutes", words.minutesWrong);
  }
  const parts = typed.parts
    .split(/[,;\n]/)
    .map((one) => one.trim())
    .filter((one) => one !== "")
    .slice(0, 200)
    .map(readPart);
  const done = typed.words.trim();
  if (minutes === null && parts.length === 0 && done === "") return refuse("nothing", words.nothingTyped);
  return accept({
    ...(minutes !== null && { minutes }),
    ...(done !== "" && { words: done }),
    ...(parts.length > 0 && { parts }),
  });
}
