import {
  type AirState,
  type MixtureReading,
  type Opening,
  openingName,
  type Setup,
  toCelsius,
  toHectopascal,
  toMillimetre,
  type Warning,
  warningText,
} from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import type { CaseWarning, Problem } from "@jetwright/records";
import * as z from "zod";
import { percentOf } from "../print/mixture-words.ts";

// Shapes that several answers share, each with the function that makes it. A field's name ends in its unit.

export const warningShape = z.strictObject({
  code: z.string(),
  text: z.string(),
  record: z.string().nullable(),
});
export const warningJson = (warning: Warning | CaseWarning) =>
  ({
    code: warning.code,
    text: warningText(warning, english),
    record: "record" in warning ? warning.record : null,
  }) satisfies z.infer<typeof warningShape>;

export const problemShape = z.strictObject({
  line: z.int().nullable().describe("Line of the log, from 1"),
  record: z.string().nullable(),
  path: z.string().describe("Where in the record, such as body.main.number"),
  what: z.string(),
  mend: z.string(),
});
export const problemJson = ({ line, record, path, what, mend }: Problem) =>
  ({ line, record, path, what, mend }) satisfies z.infer<typeof problemShape>;

export const airShape = z.strictObject({
  temperatureC: z.number(),
  pressureHpa: z.number().describe("Station pressure: what a barometer reads there"),
  vapourPercent: z.number().describe("Water vapour, share of the molecules"),
  densityKgPerM3: z.number().describe("Of the moist air"),
  dryDensityKgPerM3: z.number().describe("Of the dry air in a cubic metre of it"),
  sdPercent: z.number().describe("One standard deviation of the dry density"),
});
export const airJson = (air: AirState) =>
  ({
    temperatureC: toCelsius(air.temperature),
    pressureHpa: toHectopascal(air.pressure),
    vapourPercent: 100 * air.vapourFraction,
    densityKgPerM3: air.density,
    dryDensityKgPerM3: air.dryDensity,
    sdPercent: 100 * air.relativeSd,
  }) satisfies z.infer<typeof airShape>;

export const openingShape = z
  .enum(["closed", "1/16", "1/8", "3/16", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8", "full"])
  .describe("Throttle opening");
export const openingJson = (opening: Opening) => openingShape.parse(openingName(opening));

export const mixtureShape = z.strictObject({
  opening: openingShape,
  errorPercent: z.number().describe("Above 0 rich, below 0 lean"),
  lowPercent: z.number().describe("One standard deviation below"),
  highPercent: z.number().describe("One standard deviation above"),
});
export const mixtureJson = ({ opening, mean, sd }: MixtureReading) =>
  ({
    opening: openingJson(opening),
    errorPercent: percentOf(mean),
    lowPercent: percentOf(mean - sd),
    highPercent: percentOf(mean + sd),
  }) satisfies z.infer<typeof mixtureShape>;

const how = z.enum(["measured", "read by eye", "told", "unknown"]);
const jet = z
  .strictObject({ number: z.number(), numbering: z.enum(["bore", "flow"]), maker: z.string(), how })
  .nullable();

export const setupShape = z
  .strictObject({
    main: jet,
    pilot: jet,
    needle: z.strictObject({ marks: z.string(), grooves: z.int(), measured: z.boolean(), how }).nullable(),
    clip: z.strictObject({ groove: z.number(), how }).nullable(),
    needleJet: z.strictObject({ boreMm: z.number(), how }).nullable(),
    slide: z.strictObject({ cutawayMm: z.number(), how }).nullable(),
    screw: z.strictObject({ kind: z.enum(["air", "fuel"]), turnsOut: z.number(), how }).nullable(),
    fuelLevel: z.strictObject({ liftMm: z.number(), how }).nullable(),
  })
  .describe("Null: nobody knows what is fitted");
export function setupJson(setup: Setup): z.infer<typeof setupShape> {
  const jetJson = ({ part, how: known }: Setup["main"]) =>
    part === null ? null : { number: part.number, numbering: part.numbering, maker: part.maker, how: known };
  const { needle, clip, needleJet, cutaway, screw, fuelLift } = setup;
  return {
    main: jetJson(setup.main),
    pilot: jetJson(setup.pilot),
    needle: needle.part && {
      marks: needle.part.marks,
      grooves: needle.part.grooves,
      measured: needle.part.profile !== null,
      how: needle.how,
    },
    clip: clip.part === null ? null : { groove: clip.part, how: clip.how },
    needleJet: needleJet.part === null ? null : { boreMm: toMillimetre(needleJet.part), how: needleJet.how },
    slide: cutaway.part === null ? null : { cutawayMm: toMillimetre(cutaway.part), how: cutaway.how },
    screw: screw.part && { ...screw.part, how: screw.how },
    fuelLevel: fuelLift.part === null ? null : { liftMm: toMillimetre(fuelLift.part), how: fuelLift.how },
  };
}
