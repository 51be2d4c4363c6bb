import { type Comparison, type Situation, warningText } from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import * as z from "zod";
import { percentOf } from "../print/mixture-words.ts";
import {
  airJson,
  airShape,
  openingJson,
  openingShape,
  problemShape,
  setupJson,
  setupShape,
  warningShape,
} from "./shapes.ts";

const side = z.strictObject({
  name: z.string(),
  setup: setupShape,
  air: airShape,
});

const byCircuit = z.strictObject({
  pilot: z.number(),
  screw: z.number(),
  slide: z.number(),
  needle: z.number(),
  main: z.number(),
  air: z.number().describe("Air and fuel"),
});

const firmness = z.strictObject({
  word: z.enum(["unchanged", "firm", "fair", "soft"]),
  text: z.string(),
});

export const comparisonShape = z.strictObject({
  at: z.array(
    z.strictObject({
      opening: openingShape,
      richerPercent: z.number().describe("How much richer the second is; below 0 leaner"),
      sdPercent: z.number(),
      byCircuitPercent: byCircuit.describe(
        "What each circuit adds, as 100 times the ln ratio; they sum to it",
      ),
    }),
  ),
  firmness: z.strictObject({
    pilot: firmness,
    screw: firmness,
    slide: firmness,
    needle: firmness,
    main: firmness,
    air: firmness,
  }),
  notes: z.array(z.strictObject({ code: z.string(), text: z.string() })),
});

export const comparisonJson = ({
  at,
  firmness: firm,
  notes,
}: Comparison): z.infer<typeof comparisonShape> => ({
  at: at.map(({ opening, logRatio, sd, byCircuit: by }) => ({
    opening: openingJson(opening),
    richerPercent: percentOf(logRatio),
    sdPercent: 100 * sd,
    byCircuitPercent: {
      pilot: 100 * by.pilot,
      screw: 100 * by.screw,
      slide: 100 * by.slide,
      needle: 100 * by.needle,
      main: 100 * by.main,
      air: 100 * by.air,
    },
  })),
  firmness: { ...firm },
  notes: notes.map((note) => ({ code: note.code, text: warningText(note, english) })),
});

export const sideJson = (name: string, { setup, air }: Situation): z.infer<typeof side> => ({
  name,
  setup: setupJson(setup),
  air: airJson(air),
});

export const compareOutput = z
  .strictObject({
    command: z.literal("compare"),
    v: z.literal(1),
    from: side,
    to: side,
    comparison: comparisonShape,
    warnings: z.array(warningShape),
    problems: z.array(problemShape),
  })
  .describe("Answer of jetwright compare");

export type CompareOutput = z.infer<typeof compareOutput>;
