/** Something in a log that a person should mend or know of. It never hides the rest of the log. */
export interface Problem {
  /** Line of the log, from 1; null when the record did not come from a file. */
  readonly line: number | null;
  /** Id of the record, where one could be read. */
  readonly record: string | null;
  /** Where in the record, such as "body.main.number"; empty for the whole line. */
  readonly path: string;
  /** What is wrong, one plain sentence. */
  readonly what: string;
  /** How to mend it, one plain sentence. */
  readonly mend: string;
}

/** A problem before it is known which line and record it belongs to. */
export type Flaw = Pick<Problem, "path" | "what" | "mend">;

export const flaw = (path: string, what: string, mend: string): Flaw => ({ path, what, mend });

/** "body", ["reports", 2, "sign"] gives "body.reports.2.sign". */
export const joinPath = (base: string, parts: readonly PropertyKey[]): string =>
  [base, ...parts.map(String)].filter((part) => part !== "").join(".");
