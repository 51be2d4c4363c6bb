import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { idText, longText, shortText } from "./shapes.ts";

/** Who a bike belongs to. Later descriptions add to earlier ones, field by field. */
export const customerDescribed = defineKind({
  kind: "customer-described",
  v: 1,
  bike: "never",
  personal: ["name", "reach", "notes"],
  upcasters: {},
  body: z.looseObject({
    customer: idText.check(z.describe("Name of the customer in this log, never shown to people")),
    name: z.optional(shortText),
    reach: z.optional(shortText).check(z.describe("A telephone number or another way to reach them")),
    notes: z.optional(longText),
  }),
});
