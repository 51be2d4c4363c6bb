import * as z from "zod/mini";
import { closestWords } from "../closest-words.ts";
import { defineKind } from "../kind.ts";
import { flaw } from "../problem.ts";
import { idText, longText, opening } from "./shapes.ts";

const body = z.looseObject({
  warm: z
    .optional(z.boolean())
    .check(z.describe("False: the engine was not fully warm. Taken as true when left out")),
  reports: z.optional(
    z
      .array(
        z.looseObject({
          sign: z.string().check(z.maxLength(100), z.describe("Id of a sign of the catalogue")),
          opening: z.optional(opening),
          seen: z
            .optional(z.boolean())
            .check(z.describe("False: looked for and not there. Taken as true when left out")),
        }),
      )
      .check(z.maxLength(500)),
  ),
  against: z.optional(
    z.looseObject({
      record: z
        .optional(idText)
        .check(z.describe("Id of the setup or ride it is compared with; the previous setup when left out")),
      felt: z
        .array(z.looseObject({ opening, felt: z.enum(["better", "same", "worse"]) }))
        .check(z.minLength(1), z.maxLength(100)),
    }),
  ),
  words: z.optional(longText).check(z.describe("The rider's own words")),
});

/** How the bike ran: signs seen, signs looked for and not seen, and how it felt against another setup. */
export const rideReported = defineKind({
  kind: "ride-reported",
  v: 1,
  bike: "needed",
  personal: ["words"],
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
            flaw(`body.reports.${i}.sign`, "sign", {
              word: report.sign,
              near: closestWords(report.sign, signs),
            }),
          ],
    );
    return { body: { ...ride, reports: kept }, flaws };
  },
});
