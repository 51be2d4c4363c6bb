import * as z from "zod";
import { defineKind } from "../kind.ts";

const minutes = z.number().gt(0).max(600).optional();

/** Minutes a change takes here, by part. Without a bike it holds for all that have no figure of their own. */
export const labourNoted = defineKind({
  kind: "labour-noted",
  v: 1,
  bike: "allowed",
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
