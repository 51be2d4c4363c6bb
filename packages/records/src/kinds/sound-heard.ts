import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { longText, sha256 } from "./shapes.ts";

/** Figures taken from the sound of the engine; the clip itself is kept elsewhere, by its hash. */
export const soundHeard = defineKind({
  kind: "sound-heard",
  v: 1,
  bike: "needed",
  personal: ["words", "clip"],
  upcasters: {},
  body: z.looseObject({
    figures: z.record(z.string().check(z.maxLength(100)), z.number()),
    clip: z.optional(sha256),
    good: z
      .optional(z.boolean())
      .check(z.describe("The bike ran right: later takes are held against this one")),
    speed: z
      .optional(
        z.looseObject({
          everySeconds: z.number().check(z.gt(0), z.lte(10)),
          rpm: z.array(z.number().check(z.gte(0), z.lte(30_000))).check(z.maxLength(3000)),
        }),
      )
      .check(z.describe("Engine speed against time, revolutions a minute; 0: not heard")),
    events: z
      .optional(
        z
          .array(
            z.looseObject({
              kind: z.string().check(z.maxLength(100)),
              atSeconds: z.number().check(z.gte(0)),
            }),
          )
          .check(z.maxLength(300)),
      )
      .check(z.describe("What the engine did and when, for the picture")),
    words: z.optional(longText),
  }),
});
