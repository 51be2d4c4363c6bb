import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { longText } from "./shapes.ts";

/** The setup fitted at this time is right in the air and on the fuel of this time. */
export const knownGoodMarked = defineKind({
  kind: "known-good-marked",
  v: 1,
  bike: "needed",
  personal: ["words"],
  upcasters: {},
  body: z.looseObject({ words: z.optional(longText) }),
});
