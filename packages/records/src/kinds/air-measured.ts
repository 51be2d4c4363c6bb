import { readWeatherReport } from "@jetwright/core";
import * as z from "zod/mini";
import { defineKind } from "../kind.ts";
import { flaw } from "../problem.ts";
import { heightM, longText, shortText, temperatureC } from "./shapes.ts";

const pressureHpa = z.number().check(z.gte(300), z.lte(1150));

const body = z.looseObject({
  temperatureC: z.optional(temperatureC),
  stationPressureHpa: z
    .optional(pressureHpa)
    .check(z.describe("What a barometer reads at the place itself, not reduced to sea level")),
  seaLevelPressureHpa: z
    .optional(pressureHpa)
    .check(z.describe("As forecasts and airfields give it, reduced to sea level; give heightM too")),
  heightM: z.optional(heightM),
  humidityPercent: z.optional(z.number().check(z.gte(0), z.lte(100))),
  dewPointC: z.optional(z.number().check(z.gte(-90), z.lte(60))),
  wetBulbC: z.optional(z.number().check(z.gte(-60), z.lte(60))),
  report: z
    .optional(longText)
    .check(z.describe("A weather report (METAR or SPECI), kept as typed; give heightM too")),
  stationHeightM: z.optional(heightM).check(z.describe("Above sea level, of the station the report is from")),
  place: z.optional(shortText),
});

/** The air it is ridden in. Without a bike it holds for all bikes of the log. */
export const airMeasured = defineKind({
  kind: "air-measured",
  v: 1,
  bike: "allowed",
  personal: ["place"],
  upcasters: {},
  body,
  settle: (air) => {
    const flaws = [];
    const says =
      air.temperatureC !== undefined ||
      air.stationPressureHpa !== undefined ||
      air.heightM !== undefined ||
      air.report !== undefined;
    if (!says) {
      flaws.push(flaw("body", "no-air", {}));
    }
    if (air.report !== undefined) {
      const report = readWeatherReport(air.report);
      if (!report.ok) flaws.push(flaw("body.report", "weather-report", report));
    }
    return { body: flaws.length === 0 ? air : null, flaws };
  },
});
