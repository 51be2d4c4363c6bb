import * as z from "zod";
import { defineKind } from "../kind.ts";
import { longText, sha256 } from "./shapes.ts";

/** Figures taken from the sound of the engine; the clip itself is kept elsewhere, by its hash. */
export const soundHeard = defineKind({
  kind: "sound-heard",
  v: 1,
  bike: "needed",
  upcasters: {},
  body: z.looseObject({
    figures: z.record(z.string().max(100), z.number()),
    clip: sha256.optional(),
    words: longText.optional(),
  }),
});
