import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { longText, opening } from "./shapes.ts";

/** What the tool said, with the belief it said it on, so that it can be judged later. */
export const adviceGiven = defineKind({
  kind: "advice-given",
  v: 1,
  bike: "needed",
  personal: ["words"],
  upcasters: {},
  body: z.looseObject({
    words: longText.check(z.describe("The advice as it was shown")),
    step: z.optional(z.looseObject({ kind: z.string().check(z.maxLength(100)) })),
    belief: z.optional(
      z.looseObject({
        mixture: z.optional(
          z
            .array(
              z.looseObject({ opening, errorPercent: z.number(), sdPercent: z.number().check(z.gte(0)) }),
            )
            .check(z.maxLength(100)),
        ),
        faults: z.optional(
          z.record(z.string().check(z.maxLength(100)), z.number().check(z.gte(0), z.lte(1))),
        ),
      }),
    ),
    followed: z.optional(z.boolean()),
  }),
});
