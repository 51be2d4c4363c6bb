import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { heightM, idText, longText, numbering, shortText } from "./shapes.ts";

const sideMm = z.number().check(z.gte(5), z.lte(70));

const bore = z.discriminatedUnion("shape", [
  z.looseObject({ shape: z.literal("round"), diameterMm: sideMm }),
  z.looseObject({ shape: z.literal("oval"), widthMm: sideMm, heightMm: sideMm }),
  z.looseObject({ shape: z.literal("D"), widthMm: sideMm, heightMm: sideMm }),
]);

/** What a bike is. Later descriptions add to earlier ones, field by field, and hold for the whole story. */
export const bikeDescribed = defineKind({
  kind: "bike-described",
  v: 1,
  bike: "needed",
  personal: ["name", "notes", "place.name"],
  upcasters: {},
  body: z.looseObject({
    name: z.optional(shortText),
    engine: z.optional(
      z.looseObject({
        strokes: z.union([z.literal(2), z.literal(4)]),
        displacementCc: z.optional(z.number().check(z.gt(0), z.lte(3000))),
        boreMm: z.optional(z.number().check(z.gt(0), z.lte(200))),
        acceleratorPump: z.optional(z.boolean()),
        cylinders: z
          .optional(z.union([z.literal(1), z.literal(2)]))
          .check(z.describe("Cylinders that fire evenly one after the other; not said: one")),
      }),
    ),
    carburetor: z.optional(
      z.looseObject({
        maker: z.optional(shortText),
        bore: z.optional(bore),
        screw: z
          .optional(z.enum(["air", "fuel", "unknown"]))
          .check(
            z.describe(
              "Air screw: on the filter side, out is leaner. Fuel screw: engine side, out is richer",
            ),
          ),
        nozzle: z.optional(z.enum(["primary", "bleed", "unknown"])),
        seatToJetMm: z
          .optional(z.number().check(z.gte(0), z.lte(120)))
          .check(
            z.describe("From the clip's seat in the slide to the top of the needle jet, throttle closed"),
          ),
        idleLiftMm: z.optional(z.number().check(z.gte(0), z.lte(20))),
        bowlVent: z.optional(z.enum(["free air", "airbox"])),
        jetNumbering: z.optional(numbering),
      }),
    ),
    use: z.optional(shortText),
    place: z.optional(z.looseObject({ name: z.optional(shortText), heightM: z.optional(heightM) })),
    notes: z.optional(longText),
    customer: z
      .optional(z.nullable(idText))
      .check(z.describe("Whose bike it is, as customer-described names them; null: nobody's any more")),
  }),
});
