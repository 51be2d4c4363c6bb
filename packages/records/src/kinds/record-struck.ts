import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { idText, longText } from "./shapes.ts";

/** An earlier record was a mistake: it stays in the log and can be seen, but no longer counts. */
export const recordStruck = defineKind({
  kind: "record-struck",
  v: 1,
  bike: "allowed",
  personal: ["why"],
  upcasters: {},
  body: z.looseObject({
    record: idText.check(z.describe("Id of the record that no longer counts")),
    why: z.optional(longText),
  }),
});
