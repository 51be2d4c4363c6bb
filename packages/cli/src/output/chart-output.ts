import * as z from "zod";
import { airShape, openingShape, problemShape, setupShape, warningShape } from "./shapes.ts";

const feel = z.array(z.strictObject({ opening: openingShape, richerPercent: z.number() }));

export const chartOutput = z
  .strictObject({
    command: z.literal("chart"),
    v: z.literal(1),
    bike: z.string(),
    fitted: setupShape,
    ranIn: airShape.describe("The air the setup is taken to be right in"),
    cells: z
      .array(
        z.strictObject({
          heightM: z.number(),
          temperatureC: z.number(),
          leftAlone: feel,
          exactMain: z.number().nullable(),
          main: z.number().nullable().describe("The smallest size that is not leaner"),
          exactClip: z.number().nullable(),
          clip: z.number().nullable(),
          exactPilot: z.number().nullable(),
          screwTurnsOut: z.number().nullable().describe("In place of another pilot jet"),
        }),
      )
      .nullable(),
    trip: z
      .strictObject({
        decides: z.string().describe("The place with the densest air"),
        safeMain: z.number().nullable().describe("Lean nowhere on the ride"),
        exactSafeMain: z.number(),
        stops: z.array(
          z.strictObject({
            name: z.string(),
            heightM: z.number(),
            temperatureC: z.number(),
            withSafeMain: feel,
            exactMain: z.number().nullable(),
            main: z.number().nullable(),
            refitBelowM: z.number().nullable(),
            text: z.string(),
          }),
        ),
        warnings: z.array(z.string()),
      })
      .nullable(),
    warnings: z.array(warningShape),
    problems: z.array(problemShape),
  })
  .describe("Answer of jetwright chart");

export type ChartOutput = z.infer<typeof chartOutput>;
