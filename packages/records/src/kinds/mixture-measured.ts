import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { flaw } from "../problem.ts";
import { longText, opening } from "./shapes.ts";

const lambda = z.number().check(z.gte(0.4), z.lte(2));

const body = z.looseObject({
  readings: z
    .array(
      z.looseObject({
        opening,
        errorPercent: z
          .optional(z.number().check(z.gte(-70), z.lte(200)))
          .check(z.describe("Above 0 rich, below 0 lean")),
        lambda: z.optional(lambda),
        wantedLambda: z.optional(lambda),
        sdPercent: z
          .optional(z.number().check(z.gt(0), z.lte(100)))
          .check(z.describe("One standard deviation; 5 when left out")),
      }),
    )
    .check(z.minLength(1), z.maxLength(1000)),
  instrument: z.optional(longText),
});

/** Mixture read by an instrument, such as a lambda probe, at known openings. */
export const mixtureMeasured = defineKind({
  kind: "mixture-measured",
  v: 1,
  bike: "needed",
  personal: [],
  upcasters: {},
  body,
  settle: (measured) => {
    const complete = (reading: (typeof measured.readings)[number]): boolean =>
      reading.errorPercent !== undefined ||
      (reading.lambda !== undefined && reading.wantedLambda !== undefined);
    const readings = measured.readings.filter(complete);
    const flaws = measured.readings.flatMap((reading, i) =>
      complete(reading) ? [] : [flaw(`body.readings.${i}`, "no-mixture", {})],
    );
    return { body: readings.length === 0 ? null : { ...measured, readings }, flaws };
  },
});
