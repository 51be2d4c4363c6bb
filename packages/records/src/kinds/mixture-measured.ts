import * as z from "zod";
import { defineKind } from "../kind.ts";
import { flaw } from "../problem.ts";
import { longText, opening } from "./shapes.ts";

const lambda = z.number().min(0.4).max(2);

const body = z.looseObject({
  readings: z
    .array(
      z.looseObject({
        opening,
        errorPercent: z.number().min(-70).max(200).optional().describe("Above 0 rich, below 0 lean"),
        lambda: lambda.optional(),
        wantedLambda: lambda.optional(),
        sdPercent: z.number().gt(0).max(100).optional().describe("One standard deviation; 5 when left out"),
      }),
    )
    .min(1)
    .max(1000),
  instrument: longText.optional(),
});

/** Mixture read by an instrument, such as a lambda probe, at known openings. */
export const mixtureMeasured = defineKind({
  kind: "mixture-measured",
  v: 1,
  bike: "needed",
  upcasters: {},
  body,
  settle: (measured) => {
    const complete = (reading: (typeof measured.readings)[number]): boolean =>
      reading.errorPercent !== undefined ||
      (reading.lambda !== undefined && reading.wantedLambda !== undefined);
    const readings = measured.readings.filter(complete);
    const flaws = measured.readings.flatMap((reading, i) =>
      complete(reading)
        ? []
        : [
            flaw(
              `body.readings.${i}`,
              "the reading has no errorPercent and no pair of lambda and wantedLambda, so it is left out",
              'Give "errorPercent": 4 for 4 % rich, or "lambda": 0.84, "wantedLambda": 0.88.',
            ),
          ],
    );
    return { body: readings.length === 0 ? null : { ...measured, readings }, flaws };
  },
});
