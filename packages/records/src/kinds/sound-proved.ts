import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { longText, shortText } from "./shapes.ts";

const percent = z.number().check(z.gte(0), z.lte(100_000));

/** Engine speed read from sound, held against the sparks of the same recording. */
export const soundProved = defineKind({
  kind: "sound-proved",
  v: 1,
  bike: "needed",
  personal: ["device", "words"],
  upcasters: {},
  body: z.looseObject({
    sparksPerTurn: z.union([z.literal(1), z.literal(0.5)]),
    seconds: z.number().check(z.gte(0), z.lte(3600), z.describe("With sparks to hold against")),
    middlePercent: percent.check(z.describe("Size of the error in the middle, percent of the true speed")),
    most95Percent: percent.check(z.describe("Size that 95 of 100 errors stay below")),
    grossPercent: percent.check(z.describe("Part of the readings that is off by more than 15 %")),
    unansweredPercent: percent.check(z.describe("Part of the time without a reading")),
    bySecond: z
      .optional(
        z
          .array(
            z.looseObject({
              second: z.number().check(z.gte(0)),
              rpm: z.number().check(z.gte(0), z.lte(30_000)),
              errorPercent: z.optional(z.number()),
            }),
          )
          .check(z.maxLength(600)),
      )
      .check(z.describe("Speed by the sparks and error in the middle; no error: not answered")),
    doubts: z
      .optional(z.array(z.string().check(z.regex(/^[a-z-]{1,40}$/))).check(z.maxLength(20)))
      .check(z.describe("Why the reading would have been refused, by name")),
    metresAway: z.optional(z.number().check(z.gt(0), z.lte(100))),
    device: z.optional(shortText),
    words: z.optional(longText),
  }),
});
