import * as z from "zod/mini";
import { OPENING_WORDS } from "../spoken-opening.ts";

// Shapes that several kinds share. Numbers are in the unit that the field's name ends in.

export const SAFE_ID = /^[A-Za-z0-9._:-]{1,64}$/;

/** Name of a record, bike or device: 1 to 64 letters, digits and . _ : - */
export const idText = z.string().check(z.regex(SAFE_ID));
export const shortText = z.string().check(z.maxLength(200));
export const longText = z.string().check(z.maxLength(20_000));

export const opening = z
  .union([z.number().check(z.gte(0), z.lte(1)), z.enum(OPENING_WORDS)])
  .check(
    z.describe("Throttle opening: a fraction of full, or closed, 1/16, 1/8, 3/16, 1/4, 3/8, 1/2 ... full"),
  );

/** How a part came to be known. "Nobody knows" is said by the word "unknown" in place of the part. */
export const how = z.enum(["measured", "read by eye", "told"]);

export const numbering = z
  .enum(["bore", "flow"])
  .check(
    z.describe(
      "What the number on a jet means: its bore in 1/100 mm, or its flow under its maker's own test",
    ),
  );

export const jetFields = {
  number: z.number().check(z.gt(0), z.lt(2000)),
  numbering: z.optional(numbering),
  maker: z.optional(shortText),
};

export const needleFields = {
  marks: shortText.check(z.describe("Whatever is stamped on the needle")),
  grooves: z.optional(z.int().check(z.gte(1), z.lte(12))),
  groovePitchMm: z.optional(z.number().check(z.gt(0), z.lte(5))),
  straightDiameterMm: z.optional(z.number().check(z.gte(0.5), z.lte(6))),
  tapers: z.optional(
    z
      .array(
        z.looseObject({
          startMm: z.number().check(z.gte(0), z.lte(100), z.describe("Below the top groove")),
          includedAngleDeg: z.number().check(z.gt(0), z.lte(30), z.describe("Between the two flanks")),
        }),
      )
      .check(z.maxLength(3)),
  ),
  diameterSdMm: z.optional(z.number().check(z.gt(0), z.lte(1))),
};

/** Turns out from lightly seated. */
export const turnsOut = z.number().check(z.gte(0), z.lte(12));
export const grooveNumber = z
  .number()
  .check(
    z.gte(0.5),
    z.lte(12.5),
    z.describe("Groove 1 is the top one, at the blunt end; halves mean a shim"),
  );
export const cutawayMm = z.number().check(z.gte(0), z.lte(12));
export const needleJetBoreMm = z.number().check(z.gte(0.5), z.lte(6));

export const heightM = z
  .number()
  .check(z.gte(-500), z.lte(6000), z.describe("Above sea level, of the place that is ridden"));
export const temperatureC = z.number().check(z.gte(-60), z.lte(60));
export const sha256 = z
  .string()
  .check(z.regex(/^[0-9a-f]{64}$/), z.describe("SHA-256 of the file, 64 hex digits"));
