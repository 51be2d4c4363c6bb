import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { longText, shortText } from "./shapes.ts";

/** A needle under the micrometer. With a bike it is that bike's needle; without, every needle of its marks. */
export const needleMeasured = defineKind({
  kind: "needle-measured",
  v: 1,
  bike: "allowed",
  personal: ["words"],
  upcasters: {},
  body: z.looseObject({
    marks: shortText.check(
      z.minLength(1),
      z.describe('Whatever is stamped on it; a name of your own, such as "bare 1", if nothing'),
    ),
    grooves: z.optional(z.int().check(z.gte(1), z.lte(12))),
    groovePitchMm: z.optional(z.number().check(z.gt(0), z.lte(5))),
    points: z
      .array(
        z.looseObject({
          belowTopGrooveMm: z.number().check(z.gte(0), z.lte(100)),
          diameterMm: z.number().check(z.gte(0.1), z.lte(6)),
        }),
      )
      .check(z.minLength(2), z.maxLength(200)),
    diameterSdMm: z
      .optional(z.number().check(z.gt(0), z.lte(0.5)))
      .check(z.describe("One standard deviation of one reading")),
    distanceSdMm: z
      .optional(z.number().check(z.gte(0), z.lte(5)))
      .check(z.describe("One standard deviation of one distance")),
    words: z.optional(longText),
  }),
});
