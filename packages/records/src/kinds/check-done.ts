import * as z from "zod/mini";
import { closestWords } from "../closest-words.ts";
import { defineKind } from "../kind.ts";
import { flaw } from "../problem.ts";
import { longText } from "./shapes.ts";

/** A mechanical check and what it found. */
export const checkDone = defineKind({
  kind: "check-done",
  v: 1,
  bike: "needed",
  personal: ["words"],
  upcasters: {},
  body: z.looseObject({
    check: z.string().check(z.maxLength(100), z.describe("Id of a check of the catalogue")),
    found: z.enum(["sound", "faulty", "mended"]),
    fault: z
      .optional(z.string().check(z.maxLength(100)))
      .check(z.describe("The fault found or mended, where the check can find several")),
    words: z.optional(longText),
  }),
  settle: (done, words) => {
    if (words.checks !== null && !words.checks.has(done.check)) {
      const near = closestWords(done.check, words.checks);
      return { body: null, flaws: [flaw("body.check", "check", { word: done.check, near })] };
    }
    if (words.faults !== null && done.fault !== undefined && !words.faults.has(done.fault)) {
      const near = closestWords(done.fault, words.faults);
      const given = { word: done.fault, near, faults: [...words.faults] };
      return { body: null, flaws: [flaw("body.fault", "fault", given)] };
    }
    return { body: done, flaws: [] };
  },
});
