import * as z from "zod/mini";
import { defineKind } from "../kind.ts";

/** How the person wants to work. Without a bike it holds for all that have none of their own. */
export const preferenceSet = defineKind({
  kind: "preference-set",
  v: 1,
  bike: "allowed",
  personal: [],
  upcasters: {},
  body: z.looseObject({ oneChangeAtATime: z.optional(z.boolean()) }),
});
