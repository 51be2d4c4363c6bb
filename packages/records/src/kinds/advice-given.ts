import * as z from "zod";
import { defineKind } from "../kind.ts";
import { longText, opening } from "./shapes.ts";

/** What the tool said, with the belief it said it on, so that it can be judged later. */
export const adviceGiven = defineKind({
  kind: "advice-given",
  v: 1,
  bike: "needed",
  upcasters: {},
  body: z.looseObject({
    words: longText.describe("The advice as it was shown"),
    step: z.looseObject({ kind: z.string().max(100) }).optional(),
    belief: z
      .looseObject({
        mixture: z
          .array(z.looseObject({ opening, errorPercent: z.number(), sdPercent: z.number().min(0) }))
          .max(100)
          .optional(),
        faults: z.record(z.string().max(100), z.number().min(0).max(1)).optional(),
      })
      .optional(),
    followed: z.boolean().optional(),
  }),
});
