import * as z from "zod";
import { defineKind } from "../kind.ts";
import { longText, shortText } from "./shapes.ts";

/** A needle under the micrometer. With a bike it is that bike's needle; without, every needle of its marks. */
export const needleMeasured = defineKind({
  kind: "needle-measured",
  v: 1,
  bike: "allowed",
  upcasters: {},
  body: z.looseObject({
    marks: shortText
      .min(1)
      .describe('Whatever is stamped on it; a name of your own, such as "bare 1", if nothing'),
    grooves: z.int().min(1).max(12).optional(),
    groovePitchMm: z.number().gt(0).max(5).optional(),
    points: z
      .array(
        z.looseObject({
          belowTopGrooveMm: z.number().min(0).max(100),
          diameterMm: z.number().min(0.1).max(6),
        }),
      )
      .min(2)
      .max(200),
    diameterSdMm: z.number().gt(0).max(0.5).optional().describe("One standard deviation of one reading"),
    distanceSdMm: z.number().min(0).max(5).optional().describe("One standard deviation of one distance"),
    words: longText.optional(),
  }),
});
