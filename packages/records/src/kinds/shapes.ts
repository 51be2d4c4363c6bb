import * as z from "zod";
import { OPENING_WORDS } from "../spoken-opening.ts";

// Shapes that several kinds share. Numbers are in the unit that the field's name ends in.

export const SAFE_ID = /^[A-Za-z0-9._:-]{1,64}$/;

/** Name of a record, bike or device: 1 to 64 letters, digits and . _ : - */
export const idText = z.string().regex(SAFE_ID);
export const shortText = z.string().max(200);
export const longText = z.string().max(20_000);

export const opening = z
  .union([z.number().min(0).max(1), z.enum(OPENING_WORDS)])
  .describe("Throttle opening: a fraction of full, or closed, 1/16, 1/8, 3/16, 1/4, 3/8, 1/2 ... full");

/** How a part came to be known. "Nobody knows" is said by the word "unknown" in place of the part. */
export const how = z.enum(["measured", "read by eye", "told"]);

export const numbering = z
  .enum(["bore", "flow"])
  .describe("What the number on a jet means: its bore in 1/100 mm, or its flow under its maker's own test");

export const jetFields = {
  number: z.number().gt(0).lt(2000),
  numbering: numbering.optional(),
  maker: shortText.optional(),
};

export const needleFields = {
  marks: shortText.describe("Whatever is stamped on the needle"),
  grooves: z.int().min(1).max(12).optional(),
  groovePitchMm: z.number().gt(0).max(5).optional(),
  straightDiameterMm: z.number().min(0.5).max(6).optional(),
  tapers: z
    .array(
      z.looseObject({
        startMm: z.number().min(0).max(100).describe("Below the top groove"),
        includedAngleDeg: z.number().gt(0).max(30).describe("Between the two flanks"),
      }),
    )
    .max(3)
    .optional(),
  diameterSdMm: z.number().gt(0).max(1).optional(),
};

/** Turns out from lightly seated. */
export const turnsOut = z.number().min(0).max(12);
export const grooveNumber = z
  .number()
  .min(0.5)
  .max(12.5)
  .describe("Groove 1 is the top one, at the blunt end; halves mean a shim");
export const cutawayMm = z.number().min(0).max(12);
export const needleJetBoreMm = z.number().min(0.5).max(6);

export const heightM = z
  .number()
  .min(-500)
  .max(6000)
  .describe("Above sea level, of the place that is ridden");
export const temperatureC = z.number().min(-60).max(60);
export const sha256 = z
  .string()
  .regex(/^[0-9a-f]{64}$/)
  .describe("SHA-256 of the file, 64 hex digits");
