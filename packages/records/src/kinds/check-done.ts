import * as z from "zod/mini";
import { didYouMean } from "../closest-words.ts";
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
      const mend = didYouMean(done.check, words.checks, "List the checks to find its name.");
      return { body: null, flaws: [flaw("body.check", `"${done.check}" is not a check we know`, mend)] };
    }
    if (words.faults !== null && done.fault !== undefined && !words.faults.has(done.fault)) {
      const mend = didYouMean(done.fault, words.faults, `The faults are ${[...words.faults].join(", ")}.`);
      return { body: null, flaws: [flaw("body.fault", `"${done.fault}" is not a fault we know`, mend)] };
    }
    return { body: done, flaws: [] };
  },
});
