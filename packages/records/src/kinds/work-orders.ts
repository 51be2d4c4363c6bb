import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { flaw } from "../problem.ts";
import { idText, longText, shortText } from "./shapes.ts";

/** A bike came in with a complaint. What is written about it until the order is closed belongs to the order. */
export const orderOpened = defineKind({
  kind: "order-opened",
  v: 1,
  bike: "needed",
  personal: ["complaint"],
  upcasters: {},
  body: z.looseObject({
    complaint: z.optional(longText).check(z.describe("In the customer's own words")),
    customer: z.optional(idText).check(z.describe("Whose order it is; the bike's customer when left out")),
  }),
});

/** The bike went back. */
export const orderClosed = defineKind({
  kind: "order-closed",
  v: 1,
  bike: "needed",
  personal: ["handedOver"],
  upcasters: {},
  body: z.looseObject({
    order: idText.check(z.describe("Id of the record that opened the order")),
    handedOver: z.optional(longText).check(z.describe("What was handed over, and what was said with it")),
  }),
});

/** Time spent on a bike, and parts used up that are in no drawer of the tool. */
export const workNoted = defineKind({
  kind: "work-noted",
  v: 1,
  bike: "needed",
  personal: ["words"],
  upcasters: {},
  body: z.looseObject({
    minutes: z.optional(z.number().check(z.gt(0), z.lte(10_000))),
    words: z.optional(longText).check(z.describe("What was done")),
    parts: z.optional(
      z
        .array(z.looseObject({ name: shortText, count: z.int().check(z.gte(1), z.lte(10_000)) }))
        .check(z.maxLength(200)),
    ),
  }),
  settle: (work) => {
    const says = work.minutes !== undefined || (work.parts ?? []).length > 0 || (work.words ?? "") !== "";
    return says ? { body: work, flaws: [] } : { body: null, flaws: [flaw("body", "no-work", {})] };
  },
});
