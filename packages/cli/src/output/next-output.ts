import * as z from "zod";
import { airShape, mixtureShape, openingShape, problemShape, setupShape, warningShape } from "./shapes.ts";

const chance = z.number().min(0).max(1);

const partChangeShape = z.strictObject({
  part: z.enum(["main", "pilot", "needle", "clip", "slide", "screw", "needleJet"]),
  from: z.string(),
  to: z.string(),
  inDrawer: z.boolean(),
});

export const stepShape = z.strictObject({
  kind: z.enum(["stop", "mend", "look-over", "check", "test", "change", "read-parts", "ride"]),
  id: z.string().describe("Id of the check or test, or the parts changed joined by +"),
  title: z.string(),
  how: z.array(z.string()),
  tools: z.array(z.string()),
  why: z.array(
    z.strictObject({
      record: z.string(),
      at: z.string().nullable().describe("When, as the record says it"),
      text: z.string(),
    }),
  ),
  expect: z.string(),
  wrongIf: z.string(),
  undo: z.string(),
  sure: z.strictObject({
    chance,
    words: z.enum(["very likely", "likely", "more likely than not", "not sure"]),
  }),
  minutes: z.number(),
  worth: z
    .number()
    .nullable()
    .describe("Minutes saved for each minute it takes; null: before everything else"),
  cautions: z.array(z.strictObject({ id: z.string(), text: z.string() })),
  changes: z.array(partChangeShape),
  looks: z.array(z.string()).describe("Ids of the checks a looking over holds, in working order; else none"),
  setupAfter: setupShape.nullable().describe("What would be fitted after it; null unless it is a change"),
  opening: z.number().nullable().describe("Where a test is made, as a fraction of full lift"),
  topThrottle: z.enum(["free", "seconds only", "stay below 3/4"]),
  notes: z.array(z.string()),
});

const waitingShape = z.strictObject({
  id: z.string().describe("The parts changed joined by +"),
  title: z.string(),
  changes: z.array(partChangeShape),
  opening: openingShape.describe("Where it acts most"),
  minutes: z.number(),
  by: z.enum(["pinging", "other reasons", "top"]),
  why: z.string(),
  frees: z.string(),
  step: stepShape.pick({ kind: true, id: true }).nullable().describe("The step among these that frees it"),
});

export const nextOutput = z
  .strictObject({
    command: z.literal("next"),
    v: z.literal(1),
    bike: z.string(),
    name: z.string().nullable(),
    air: airShape,
    fitted: setupShape,
    step: stepShape,
    others: z.array(stepShape).describe("Other ways, best first"),
    waiting: z.array(waitingShape).describe("Changes that would help and wait, best first"),
    mixture: z.array(mixtureShape).describe("Now, in the air it will be ridden in"),
    mixtureAfter: z.array(mixtureShape).nullable().describe("After the step; null unless it changes parts"),
    suspects: z.array(z.strictObject({ fault: z.string(), words: z.string(), chance })),
    soundChance: chance.describe("Chance that no mechanical fault is behind it"),
    twoSided: z.array(
      z.strictObject({
        opening: openingShape,
        richChance: chance,
        richPercent: z.number(),
        leanPercent: z.number(),
      }),
    ),
    leftOut: z.array(z.strictObject({ record: z.string(), why: z.string() })),
    settled: z.boolean().describe("False: the reckoning stopped early and is rougher than usual"),
    warnings: z.array(warningShape),
    problems: z.array(problemShape),
  })
  .describe("Answer of jetwright next");

export type NextOutput = z.infer<typeof nextOutput>;
