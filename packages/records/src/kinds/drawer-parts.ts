import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { cutawayMm, jetFields, longText, needleFields, needleJetBoreMm } from "./shapes.ts";

const count = z.int().check(z.gte(0), z.lte(10_000));

/** A kind of part with how many of it. */
export const drawerPart = z.discriminatedUnion("part", [
  z.looseObject({ part: z.literal("main"), ...jetFields, count }),
  z.looseObject({ part: z.literal("pilot"), ...jetFields, count }),
  z.looseObject({ part: z.literal("needle"), ...needleFields, count }),
  z.looseObject({ part: z.literal("needleJet"), boreMm: needleJetBoreMm, count }),
  z.looseObject({ part: z.literal("slide"), cutawayMm, count }),
]);

const body = z.looseObject({
  parts: z.array(drawerPart).check(z.minLength(1), z.maxLength(1000)),
  words: z.optional(longText),
});

export type DrawerPart = z.infer<typeof drawerPart>;

/** The drawer was counted: these parts are there now. Parts not named keep their count. */
export const partsCounted = defineKind({
  kind: "parts-counted",
  v: 1,
  bike: "never",
  personal: ["words"],
  upcasters: {},
  body,
});

/** Parts came into the drawer. */
export const partsBought = defineKind({
  kind: "parts-bought",
  v: 1,
  bike: "never",
  personal: ["words"],
  upcasters: {},
  body,
});

/** Parts left the drawer. */
export const partsUsed = defineKind({
  kind: "parts-used",
  v: 1,
  bike: "allowed",
  personal: ["words"],
  upcasters: {},
  body,
});
