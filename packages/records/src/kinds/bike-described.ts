import * as z from "zod";
import { defineKind } from "../kind.ts";
import { heightM, longText, numbering, shortText } from "./shapes.ts";

const sideMm = z.number().min(5).max(70);

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
  upcasters: {},
  body: z.looseObject({
    name: shortText.optional(),
    engine: z
      .looseObject({
        strokes: z.union([z.literal(2), z.literal(4)]),
        displacementCc: z.number().gt(0).max(3000).optional(),
        boreMm: z.number().gt(0).max(200).optional(),
        acceleratorPump: z.boolean().optional(),
      })
      .optional(),
    carburetor: z
      .looseObject({
        maker: shortText.optional(),
        bore: bore.optional(),
        screw: z
          .enum(["air", "fuel", "unknown"])
          .optional()
          .describe("Air screw: on the filter side, out is leaner. Fuel screw: engine side, out is richer"),
        nozzle: z.enum(["primary", "bleed", "unknown"]).optional(),
        seatToJetMm: z
          .number()
          .min(0)
          .max(120)
          .optional()
          .describe("From the clip's seat in the slide to the top of the needle jet, throttle closed"),
        idleLiftMm: z.number().min(0).max(20).optional(),
        bowlVent: z.enum(["free air", "airbox"]).optional(),
        jetNumbering: numbering.optional(),
      })
      .optional(),
    use: shortText.optional(),
    place: z.looseObject({ name: shortText.optional(), heightM: heightM.optional() }).optional(),
    notes: longText.optional(),
  }),
});
