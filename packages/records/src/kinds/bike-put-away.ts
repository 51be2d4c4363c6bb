import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { longText } from "./shapes.ts";

/** The bike leaves the list (sold, done), or with `away` false comes back to it. Its story stays. */
export const bikePutAway = defineKind({
  kind: "bike-put-away",
  v: 1,
  bike: "needed",
  personal: ["why"],
  upcasters: {},
  body: z.looseObject({ away: z.optional(z.boolean()), why: z.optional(longText) }),
});
