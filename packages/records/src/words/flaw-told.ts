/** What each flaw names, by its code. */
export interface FlawGiven {
  // a line that is no record
  readonly "line-too-long": { readonly limit: number };
  readonly "too-deep": { readonly limit: number };
  readonly "number-too-large": Nothing;
  readonly "half-character": Nothing;
  readonly "no-record": { readonly shown: string | null };
  readonly "half-written": { readonly end: string };
  readonly "not-json": { readonly shown: string };
  // what stands around the body
  readonly id: Missing;
  readonly kind: Missing;
  readonly version: Nothing;
  readonly time: Missing & { readonly reason: string; readonly detail: string };
  readonly "written-by": Nothing;
  readonly "extra-field": { readonly near: readonly string[]; readonly outside: boolean };
  readonly "unknown-kind": Word;
  readonly "newer-version": { readonly version: number; readonly kind: string; readonly known: number };
  readonly bike: Missing;
  readonly "bike-needless": { readonly kind: string };
  readonly body: Missing;
  readonly "old-body": { readonly version: number; readonly kind: string };
  readonly "same-id": { readonly id: string; readonly keptLine: number | null };
  readonly "id-here-already": { readonly id: string };
  readonly more: { readonly count: number; readonly of: "problems" | "notes" };
  // a field's form
  readonly missing: { readonly type: string };
  readonly "missing-word": { readonly words: readonly string[] };
  readonly "wrong-type": { readonly type: string; readonly seen: Seen; readonly meant: string | null };
  readonly "wrong-word": {
    readonly words: readonly string[];
    readonly seen: Seen;
    readonly near: readonly string[];
  };
  readonly "out-of-limit": { readonly limit: Limit; readonly seen: Seen };
  readonly "wrong-form": { readonly seen: Seen; readonly hash: boolean };
  readonly "not-to-be-used": { readonly message: string };
  readonly "none-of-these": { readonly seen: Seen | null; readonly ways: readonly Way[] };
  // what a body says
  readonly "no-air": Nothing;
  readonly "weather-report": { readonly reason: string; readonly detail: string };
  readonly oil: { readonly reason: string; readonly detail: string };
  readonly "no-mixture": Nothing;
  readonly sign: Word;
  readonly test: Word;
  readonly outcome: { readonly word: string; readonly test: string; readonly outcomes: readonly string[] };
  readonly check: Word;
  readonly fault: Word & { readonly faults: readonly string[] };
  readonly "no-part": { readonly parts: readonly string[] };
  readonly "found-and-taken": Nothing;
  readonly "no-work": Nothing;
}

type Nothing = Readonly<Record<never, never>>;
/** Is nothing there at all, or something of the wrong form? */
interface Missing {
  readonly missing: boolean;
}
/** A word of no catalogue, and the known ones most like it. */
interface Word {
  readonly word: string;
  readonly near: readonly string[];
}

/** A value as a person would point at it: as it is written, or by what it is where that would be long. */
export type Seen = { readonly text: string } | "nothing" | "list" | "object";

/** A limit of a number, of a text's letters or of a list's entries. */
export interface Limit {
  readonly of: "value" | "letters" | "entries";
  readonly edge: "at least" | "more than" | "at most" | "less than";
  readonly limit: string;
}

/** One way in which a value could have been written. */
export type Way =
  | { readonly type: string }
  | { readonly words: readonly string[] }
  | { readonly limit: Limit };

/** A flaw in a record: which one, and what its sentences name. */
export type FlawTold = {
  [Code in keyof FlawGiven]: { readonly code: Code; readonly given: FlawGiven[Code] };
}[keyof FlawGiven];

/** What is wrong and how to mend it, by the flaw's code, in one language. */
export type FlawWords = {
  readonly [Code in keyof FlawGiven]: (given: FlawGiven[Code]) => readonly [what: string, mend: string];
};

/** A flaw said to a person: what is wrong and how to mend it, a plain sentence each. */
export interface FlawText {
  readonly what: string;
  readonly mend: string;
}

/** What is wrong with a record and how to mend it, in the language of the table. */
export function flawText({ code, given }: FlawTold, table: FlawWords): FlawText {
  const [what, mend] = (table[code] as (given: unknown) => readonly [string, string])(given);
  return { what, mend };
}
