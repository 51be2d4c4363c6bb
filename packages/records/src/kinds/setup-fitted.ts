import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { flaw } from "../problem.ts";
import { drawerPart } from "./drawer-parts.ts";
import {
  cutawayMm,
  grooveNumber,
  how,
  idText,
  jetFields,
  longText,
  needleFields,
  needleJetBoreMm,
  turnsOut,
} from "./shapes.ts";

const unknownWord = z.literal("unknown");
const part = <Fields extends z.core.$ZodLooseShape>(fields: Fields) =>
  z.optional(z.union([unknownWord, z.looseObject({ ...fields, how: z.optional(how) })]));

const moved = z.optional(z.array(drawerPart).check(z.maxLength(20)));

const body = z.looseObject({
  main: part(jetFields),
  pilot: part(jetFields),
  needle: part(needleFields),
  clip: part({ groove: grooveNumber }),
  needleJet: part({ boreMm: needleJetBoreMm }),
  slide: part({ cutawayMm }),
  screw: part({ turnsOut }),
  fuelLevel: part({
    liftMm: z
      .number()
      .check(z.gte(-10), z.lte(60), z.describe("From the fuel up to the top of the needle jet")),
  }),
  mainAirJet: part(jetFields),
  pilotAirJet: part(jetFields),
  asFound: z
    .optional(z.boolean())
    .check(
      z.describe(
        "True: nothing was changed, these parts were found fitted, so they were there before as well",
      ),
    ),
  drawer: z.optional(
    z.looseObject({
      took: moved.check(z.describe("What was fitted and came out of the drawer")),
      kept: moved.check(z.describe("What came off and went into the drawer")),
    }),
  ),
  why: z.optional(longText),
  replaces: z.optional(idText).check(z.describe("Id of the record of the setup it replaces")),
});

export const FITTED_PARTS = [
  "main",
  "pilot",
  "needle",
  "clip",
  "needleJet",
  "slide",
  "screw",
  "fuelLevel",
  "mainAirJet",
  "pilotAirJet",
] as const satisfies readonly (keyof z.infer<typeof body>)[];
export type FittedPart = (typeof FITTED_PARTS)[number];

/** Parts fitted or found. Only the parts named change; a part nobody knows is the word "unknown". */
export const setupFitted = defineKind({
  kind: "setup-fitted",
  v: 1,
  bike: "needed",
  personal: ["why"],
  upcasters: {},
  body,
  settle: (fitted) => {
    if (!FITTED_PARTS.some((name) => fitted[name] !== undefined)) {
      return { body: null, flaws: [flaw("body", "no-part", { parts: FITTED_PARTS })] };
    }
    if (fitted.asFound !== true || fitted.drawer === undefined) return { body: fitted, flaws: [] };
    const { drawer: _drawer, ...rest } = fitted;
    return { body: rest, flaws: [flaw("body.drawer", "found-and-taken", {})] };
  },
});
