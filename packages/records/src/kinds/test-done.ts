import * as z from "zod/mini";
import { closestWords } from "../closest-words.ts";
import { defineKind } from "../kind.ts";
import { flaw } from "../problem.ts";
import { longText, opening } from "./shapes.ts";

/** A test on the running engine, with its outcome and any numbers read. */
export const testDone = defineKind({
  kind: "test-done",
  v: 1,
  bike: "needed",
  personal: ["words"],
  upcasters: {},
  body: z.looseObject({
    test: z.string().check(z.maxLength(100), z.describe("Id of a test of the catalogue")),
    opening: z.optional(opening),
    outcome: z.string().check(z.maxLength(100), z.describe("Id of one of its outcomes")),
    numbers: z.optional(z.record(z.string().check(z.maxLength(100)), z.number())),
    words: z.optional(longText),
  }),
  settle: (done, words) => {
    if (words.tests === null) return { body: done, flaws: [] };
    const outcomes = words.tests.get(done.test);
    if (outcomes === undefined) {
      const near = closestWords(done.test, words.tests.keys());
      return { body: null, flaws: [flaw("body.test", "test", { word: done.test, near })] };
    }
    if (outcomes.has(done.outcome)) return { body: done, flaws: [] };
    const given = { word: done.outcome, test: done.test, outcomes: [...outcomes] };
    return { body: null, flaws: [flaw("body.outcome", "outcome", given)] };
  },
});
