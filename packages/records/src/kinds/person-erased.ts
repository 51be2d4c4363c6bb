import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { idText } from "./shapes.ts";

const ids = (most: number) => z.optional(z.array(idText).check(z.maxLength(most)));

/**
 * A person asked for their data to be removed: names, contacts and words are gone from every record it covers, the
 * technical rest stays. It names nobody, and it cannot be struck.
 */
export const personErased = defineKind({
  kind: "person-erased",
  v: 1,
  bike: "never",
  personal: [],
  upcasters: {},
  body: z.looseObject({
    customer: z.optional(idText).check(z.describe("All that describes this customer, and their orders")),
    bikes: ids(1000).check(
      z.describe("All that was written about these bikes up to the time of this record"),
    ),
    records: ids(10_000).check(z.describe("These records")),
    people: ids(100).check(
      z.describe("Their names and those of their devices in the shop's list of people, by their ids there"),
    ),
  }),
});
