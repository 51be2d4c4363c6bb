import type { Vocabulary } from "./vocabulary.ts";

/** The words of the core's own catalogues. */
export const coreVocabulary = (): Vocabulary => ({ signs: null, tests: null, checks: null, faults: null });
