import type { CoreWords } from "./core-words.ts";
import type { warnings } from "./en/warnings.ts";
import { type MessageOf, worded } from "./message.ts";

/** Something about an input or a result that a person should know or settle: which, and the figures it names. */
export type Warning = MessageOf<typeof warnings>;

/** A warning in one or two plain sentences, with what to do. */
export const warningText = (warning: Warning, words: CoreWords): string => worded(words.warnings, warning);
