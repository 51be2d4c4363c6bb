import { oilPerFuel, readOil } from "@jetwright/core";
import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { flaw } from "../problem.ts";
import { shortText, temperatureC } from "./shapes.ts";

const percent = z.number().check(z.gte(0), z.lte(100));

const oil = z.union([
  shortText.check(z.describe('As people write it: "40:1", "20 ml/l", "2 % of fuel", "none"')),
  z.looseObject({
    ratio: z
      .number()
      .check(z.gte(5), z.lte(500), z.describe("Parts of petrol to one part of oil: 40 for 40:1")),
  }),
  z.looseObject({
    percentOfFuel: z.number().check(z.gt(0), z.lte(20), z.describe("Oil over petrol: 2.5 is 40:1")),
  }),
  z.looseObject({ percentOfMix: z.number().check(z.gt(0), z.lte(20), z.describe("Oil over the whole mix")) }),
]);

export type OilSaid = z.infer<typeof oil>;

/** Volumes of oil to one of fuel, or why the words for it cannot be understood. */
export function oilSaid(said: OilSaid): ReturnType<typeof oilPerFuel> | ReturnType<typeof readOil> {
  if (typeof said === "string") {
    const measure = readOil(said);
    return measure.ok ? oilPerFuel(measure.value) : measure;
  }
  if ("ratio" in said) return oilPerFuel({ by: "ratio", numbers: [said.ratio as number, 1] });
  if ("percentOfFuel" in said) {
    return oilPerFuel({ by: "percent of fuel", percent: said.percentOfFuel as number });
  }
  return oilPerFuel({ by: "percent of mix", percent: said.percentOfMix as number });
}

/** The fuel in the tank. Without a bike it holds for all bikes of the log. */
export const fuelUsed = defineKind({
  kind: "fuel-used",
  v: 1,
  bike: "allowed",
  personal: [],
  upcasters: {},
  body: z.looseObject({
    ethanolPercent: z
      .optional(percent)
      .check(z.describe("Share by volume of the fuel without oil: 10 for E10")),
    alkylatePercent: z
      .optional(percent)
      .check(z.describe("Alkylate petrol, share by volume of the fuel without oil")),
    oil: z.optional(oil),
    petrolDensityKgPerM3: z
      .optional(z.number().check(z.gte(600), z.lte(900)))
      .check(z.describe("Of the petrol part at 15 °C")),
    temperatureC: z.optional(temperatureC).check(z.describe("Of the fuel in the tank")),
    name: z.optional(shortText),
  }),
  settle: (fuel) => {
    if (fuel.oil === undefined) return { body: fuel, flaws: [] };
    const oilShare = oilSaid(fuel.oil);
    return oilShare.ok
      ? { body: fuel, flaws: [] }
      : { body: null, flaws: [flaw("body.oil", "oil", oilShare)] };
  },
});
