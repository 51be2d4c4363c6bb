import { oilPerFuel, readOil } from "@jetwright/core";
import * as z from "zod";
import { defineKind } from "../kind.ts";
import { flaw } from "../problem.ts";
import { shortText, temperatureC } from "./shapes.ts";

const percent = z.number().min(0).max(100);

const oil = z.union([
  shortText.describe('As people write it: "40:1", "20 ml/l", "2 % of fuel", "none"'),
  z.looseObject({
    ratio: z.number().min(5).max(500).describe("Parts of petrol to one part of oil: 40 for 40:1"),
  }),
  z.looseObject({ percentOfFuel: z.number().gt(0).max(20).describe("Oil over petrol: 2.5 is 40:1") }),
  z.looseObject({ percentOfMix: z.number().gt(0).max(20).describe("Oil over the whole mix") }),
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
  upcasters: {},
  body: z.looseObject({
    ethanolPercent: percent.optional().describe("Share by volume of the fuel without oil: 10 for E10"),
    alkylatePercent: percent.optional().describe("Alkylate petrol, share by volume of the fuel without oil"),
    oil: oil.optional(),
    petrolDensityKgPerM3: z.number().min(600).max(900).optional().describe("Of the petrol part at 15 °C"),
    temperatureC: temperatureC.optional().describe("Of the fuel in the tank"),
    name: shortText.optional(),
  }),
  settle: (fuel) => {
    if (fuel.oil === undefined) return { body: fuel, flaws: [] };
    const oilShare = oilSaid(fuel.oil);
    return oilShare.ok
      ? { body: fuel, flaws: [] }
      : { body: null, flaws: [flaw("body.oil", "the oil cannot be understood", oilShare.detail)] };
  },
});
