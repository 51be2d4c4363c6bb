import { flaws as english } from "./words/en/flaws.ts";
import { type FlawGiven, type FlawTold, flawText } from "./words/flaw-told.ts";

/** Something in a log that a person should mend or know of. It never hides the rest of the log. */
export interface Problem {
  /** Line of the log, from 1; null when the record did not come from a file. */
  readonly line: number | null;
  /** Id of the record, where one could be read. */
  readonly record: string | null;
  /** Where in the record, such as "body.main.number"; empty for the whole line. */
  readonly path: string;
  /** What is wrong, one plain sentence in English. */
  readonly what: string;
  /** How to mend it, one plain sentence in English. */
  readonly mend: string;
}

/** A problem of one record as it stands, with what another language needs to say it. */
export interface RecordProblem extends Problem {
  readonly told: FlawTold;
}

/** A problem before it is known which line and record it belongs to. */
export type Flaw = Pick<RecordProblem, "path" | "told" | "what" | "mend">;

/** A flaw by its code and what it names, with its English. */
export function flaw<Code extends FlawTold["code"]>(path: string, code: Code, given: FlawGiven[Code]): Flaw {
  const told = { code, given } as FlawTold;
  return { path, told, ...flawText(told, english) };
}

/** "body", ["reports", 2, "sign"] gives "body.reports.2.sign". */
export const joinPath = (base: string, parts: readonly PropertyKey[]): string =>
  [base, ...parts.map(String)].filter((part) => part !== "").join(".");
