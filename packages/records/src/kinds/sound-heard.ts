import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { longText, sha256 } from "./shapes.ts";

/** Figures taken from the sound of the engine; the clip itself is kept elsewhere, by its hash. */
export const soundHeard = defineKind({
  kind: "sound-heard",
  v: 1,
  bike: "needed",
  upcasters: {},
  body: z.looseObject({
    figures: z.record(z.string().check(z.maxLength(100)), z.number()),
    clip: z.optional(sha256),
    words: z.optional(longText),
  }),
});
