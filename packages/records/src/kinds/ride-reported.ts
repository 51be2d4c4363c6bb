import * as z from "zod";
import { didYouMean } from "../closest-words.ts";
import { defineKind } from "../kind.ts";
import { flaw } from "../problem.ts";
import { idText, longText, opening } from "./shapes.ts";

const body = z.looseObject({
  warm: z.boolean().optional().describe("False: the engine was not fully warm. Taken as true when left out"),
  reports: z
    .array(
      z.looseObject({
        sign: z.string().max(100).describe("Id of a sign of the catalogue"),
        opening: opening.optional(),
        seen: z.boolean().optional().describe("False: looked for and not there. Taken as true when left out"),
      }),
    )
    .max(500)
    .optional(),
  against: z
    .looseObject({
      record: idText
        .optional()
        .describe("Id of the setup or ride it is compared with; the previous setup when left out"),
      felt: z
        .array(z.looseObject({ opening, felt: z.enum(["better", "same", "worse"]) }))
        .min(1)
        .max(100),
    })
    .optional(),
  words: longText.optional().describe("The rider's own words"),
});

/** How the bike ran: signs seen, signs looked for and not seen, and how it felt against another setup. */
export const rideReported = defineKind({
  kind: "ride-reported",
  v: 1,
  bike: "needed",
  upcasters: {},
  body,
  settle: (ride, words) => {
    if (words.signs === null || ride.reports === undefined) return { body: ride, flaws: [] };
    const { signs } = words;
    const kept = ride.reports.filter((report) => signs.has(report.sign));
    if (kept.length === ride.reports.length) return { body: ride, flaws: [] };
    const flaws = ride.reports.flatMap((report, i) =>
      signs.has(report.sign)
        ? []
        : [
            flaw(
              `body.reports.${i}.sign`,
              `"${report.sign}" is not a sign we know, so this one report is left out`,
              didYouMean(report.sign, signs, "List the signs to find its name."),
            ),
          ],
    );
    return { body: { ...ride, reports: kept }, flaws };
  },
});
