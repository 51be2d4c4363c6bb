import { CHECKS, FAULTS, SIGNS, TESTS } from "@jetwright/core";
import type { Vocabulary } from "./vocabulary.ts";

/** The words of the core's own catalogues. */
export const CORE_VOCABULARY: Vocabulary = {
  signs: new Set(SIGNS.map((sign) => sign.id)),
  tests: new Map(TESTS.map((test) => [test.id, new Set(test.outcomes.map((outcome) => outcome.id))])),
  checks: new Set(CHECKS.map((check) => check.id)),
  faults: new Set<string>(FAULTS),
};
