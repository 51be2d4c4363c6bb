import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { FITTED_PARTS } from "./setup-fitted.ts";
import { longText, sha256 } from "./shapes.ts";

/** Words for people; the tool does not read them. */
export const note = defineKind({
  kind: "note",
  v: 1,
  bike: "allowed",
  personal: ["text"],
  upcasters: {},
  body: z.looseObject({ text: longText }),
});

/** A picture, kept elsewhere, by its hash. */
export const photo = defineKind({
  kind: "photo",
  v: 1,
  bike: "allowed",
  personal: ["of"],
  upcasters: {},
  body: z.looseObject({
    hash: sha256,
    of: z.optional(longText),
    part: z
      .optional(z.enum(FITTED_PARTS))
      .check(z.describe("The part that is in it, where it is one that can be fitted")),
  }),
});
