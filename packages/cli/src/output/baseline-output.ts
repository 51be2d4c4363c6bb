import * as z from "zod";
import { airShape, problemShape } from "./shapes.ts";

export const baselineOutput = z
  .strictObject({
    command: z.literal("baseline"),
    v: z.literal(1),
    engine: z.strictObject({
      strokes: z.union([z.literal(2), z.literal(4)]),
      displacementCc: z.number().nullable(),
      use: z.enum(["trail", "enduro", "race"]).nullable(),
      boreMm: z.number().describe("Reckoned with: its own, or the usual one"),
    }),
    air: airShape,
    figures: z.array(
      z.strictObject({
        part: z.enum(["main", "pilot", "clip", "screw", "cutaway"]),
        numbering: z.enum(["bore", "flow"]).nullable().describe("For jets"),
        start: z
          .number()
          .describe("Fit this first: a jet number; groove of 5 from the top; turns out; cutaway in mm"),
        low: z.number(),
        high: z.number().describe("Nine of ten such bikes end up from low to high"),
        restsOn: z.array(z.string()),
      }),
    ),
    needle: z.string(),
    firstRide: z.array(z.string()),
    afterwards: z.array(z.string()),
    leftOut: z.array(z.string()),
    warnings: z.array(z.string()),
    problems: z.array(problemShape),
  })
  .describe("Answer of jetwright baseline");

export type BaselineOutput = z.infer<typeof baselineOutput>;
