import * as z from "zod/mini";
import { defineKind } from "../kind.ts";

const minutes = z.optional(z.number().check(z.gt(0), z.lte(600)));

/** Minutes a change takes here, by part. Without a bike it holds for all that have no figure of their own. */
export const labourNoted = defineKind({
  kind: "labour-noted",
  v: 1,
  bike: "allowed",
  personal: [],
  upcasters: {},
  body: z.looseObject({
    minutes: z.looseObject({
      main: minutes,
      pilot: minutes,
      needle: minutes,
      clip: minutes,
      slide: minutes,
      screw: minutes,
      needleJet: minutes,
    }),
  }),
});
