import * as z from "zod";
import { openingShape } from "./shapes.ts";

const strokes = z.enum(["two", "four", "both"]);

export const signsOutput = z
  .strictObject({
    command: z.literal("signs"),
    v: z.literal(1),
    signs: z
      .array(
        z.strictObject({
          id: z.string(),
          section: z.string(),
          words: z.string(),
          description: z.string(),
          notToBeTakenFor: z.string(),
          when: z.string(),
          speaksOf: z.array(openingShape),
          strokes,
          warmOnly: z.boolean(),
          stop: z.boolean().describe("Stop riding and tuning now"),
        }),
      )
      .optional(),
    checks: z
      .array(
        z.strictObject({
          id: z.string(),
          words: z.string(),
          minutes: z.number(),
          steps: z.array(z.string()),
          tools: z.array(z.string()),
          finds: z.array(z.string()).describe("Ids of faults"),
          mend: z.string(),
          strokes,
        }),
      )
      .optional(),
    tests: z
      .array(
        z.strictObject({
          id: z.string(),
          words: z.string(),
          minutes: z.number(),
          openings: z.array(openingShape).describe("Where it can be done; empty: it has its own place"),
          steps: z.array(z.string()),
          tools: z.array(z.string()),
          outcomes: z.array(z.strictObject({ id: z.string(), words: z.string() })),
          strokes,
        }),
      )
      .optional(),
    faults: z
      .array(z.strictObject({ id: z.string(), words: z.string(), does: z.string(), touches: z.string() }))
      .optional(),
  })
  .describe("Answer of jetwright signs");

export type SignsOutput = z.infer<typeof signsOutput>;
