import { readWeatherReport } from "@jetwright/core";
import * as z from "zod";
import { defineKind } from "../kind.ts";
import { flaw } from "../problem.ts";
import { heightM, longText, shortText, temperatureC } from "./shapes.ts";

const pressureHpa = z.number().min(300).max(1150);

const body = z.looseObject({
  temperatureC: temperatureC.optional(),
  stationPressureHpa: pressureHpa
    .optional()
    .describe("What a barometer reads at the place itself, not reduced to sea level"),
  seaLevelPressureHpa: pressureHpa
    .optional()
    .describe("As forecasts and airfields give it, reduced to sea level; give heightM too"),
  heightM: heightM.optional(),
  humidityPercent: z.number().min(0).max(100).optional(),
  dewPointC: z.number().min(-90).max(60).optional(),
  wetBulbC: z.number().min(-60).max(60).optional(),
  report: longText.optional().describe("A weather report (METAR or SPECI), kept as typed; give heightM too"),
  stationHeightM: heightM.optional().describe("Above sea level, of the station the report is from"),
  place: shortText.optional(),
});

/** The air it is ridden in. Without a bike it holds for all bikes of the log. */
export const airMeasured = defineKind({
  kind: "air-measured",
  v: 1,
  bike: "allowed",
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
      flaws.push(
        flaw(
          "body",
          "it says nothing about the air",
          "Give temperatureC with stationPressureHpa, or with heightM; or a weather report with heightM.",
        ),
      );
    }
    if (air.report !== undefined) {
      const report = readWeatherReport(air.report);
      if (!report.ok) flaws.push(flaw("body.report", "cannot be read as a weather report", report.detail));
    }
    return { body: flaws.length === 0 ? air : null, flaws };
  },
});
