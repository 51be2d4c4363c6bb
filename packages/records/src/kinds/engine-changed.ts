import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { longText, shortText } from "./shapes.ts";

/** Pipe, reeds, cylinder, another carburetor, a rebuild: what was seen before tells nothing any more. */
export const engineChanged = defineKind({
  kind: "engine-changed",
  v: 1,
  bike: "needed",
  personal: ["words"],
  upcasters: {},
  body: z.looseObject({ what: shortText.check(z.minLength(1)), words: z.optional(longText) }),
});
