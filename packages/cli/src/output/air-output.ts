import type { Correction, CorrectionRefusal, Corrections, Remaining } from "@jetwright/core";
import * as z from "zod";
import { percentOf } from "../print/mixture-words.ts";
import { comparisonJson, comparisonShape } from "./compare-output.ts";
import {
  airShape,
  openingJson,
  openingShape,
  problemShape,
  setupJson,
  setupShape,
  warningShape,
} from "./shapes.ts";

const remaining = z
  .array(z.strictObject({ opening: openingShape, richerPercent: z.number(), sdPercent: z.number() }))
  .describe("What is left at each opening; above 0 richer than it was");
const remainingJson = (all: readonly Remaining[]): z.infer<typeof remaining> =>
  all.map(({ opening, logRatio, sd }) => ({
    opening: openingJson(opening),
    richerPercent: percentOf(logRatio),
    sdPercent: 100 * sd,
  }));

const correction = z.strictObject({ setup: setupShape, remaining, warnings: z.array(z.string()) });
const correctionJson = (one: Correction): z.infer<typeof correction> => ({
  setup: setupJson(one.setup),
  remaining: remainingJson(one.remaining),
  warnings: [...one.warnings],
});

const refused = z.strictObject({ reason: z.string(), detail: z.string() });

export const correctionsShape = z.strictObject({
  unchanged: comparisonShape.describe("The setup left alone in the new air"),
  mainByRootRule: z.number().nullable().describe("Main jet by the fourth root of density (bore numbers)"),
  everyOpening: z.strictObject({
    areaFactor: z.number().describe("On the area of every fuel opening"),
    main: z.number().nullable(),
    pilot: z.number().nullable(),
    remaining,
    warnings: z.array(z.string()),
  }),
  mainAlone: z.union([correction, z.strictObject({ refused })]),
  fromDrawer: correction.nullable(),
});

export const correctionsJson = (all: Corrections): z.infer<typeof correctionsShape> => ({
  unchanged: comparisonJson(all.unchanged),
  mainByRootRule: all.rootRule,
  everyOpening: {
    areaFactor: all.everyOpening.areaFactor,
    main: all.everyOpening.main,
    pilot: all.everyOpening.pilot,
    remaining: remainingJson(all.everyOpening.remaining),
    warnings: [...all.everyOpening.warnings],
  },
  mainAlone: all.mainAlone.ok ? correctionJson(all.mainAlone.value) : { refused: refusalJson(all.mainAlone) },
  fromDrawer: all.fromDrawer === null ? null : correctionJson(all.fromDrawer),
});

const refusalJson = ({ reason, detail }: { reason: CorrectionRefusal; detail: string }) => ({
  reason,
  detail,
});

export const airOutput = z
  .strictObject({
    command: z.literal("air"),
    v: z.literal(1),
    air: airShape,
    relativeHumidityPercent: z.number(),
    densityAltitudeM: z.number(),
    shareOfStandardPercent: z
      .number()
      .describe("Dry density as a share of dry standard air at sea level, 15 °C and 1013.25 hPa"),
    doubts: z.array(z.strictObject({ cause: z.string(), sdPercent: z.number() })),
    report: z.string().nullable().describe("The weather report used"),
    bike: z
      .strictObject({ bike: z.string(), fitted: setupShape, ranIn: airShape, corrections: correctionsShape })
      .nullable()
      .describe("What it does to the setup fitted, where a log is given"),
    warnings: z.array(warningShape),
    problems: z.array(problemShape),
  })
  .describe("Answer of jetwright air");

export type AirOutput = z.infer<typeof airOutput>;
