import {
  type AirEstimate,
  type AirInput,
  accept,
  airFrom,
  airFromReport,
  type Outcome,
  readWeatherReport,
  refuse,
  type TypedHeight,
  type TypedHumidity,
  type WeatherReport,
} from "@jetwright/core";
import { reportAgeMinutes } from "@jetwright/records";
import type { Arguments } from "../arguments.ts";
import type { Flags } from "../flag.ts";
import { readHeight, readPercent, readPressure, readTemperature } from "./quantities.ts";

/** The flags that say what air it is. */
export const AIR_FLAGS: Flags = {
  temperature: { type: "text", value: "24C", help: "Of the air, in the shade" },
  height: { type: "text", value: "1500m", help: "Above sea level, of the place that is ridden" },
  pressure: { type: "text", value: "848hPa", help: "What a barometer reads at that place" },
  "sea-level": { type: "switch", help: "The pressure is one reduced to sea level (QNH, weather page)" },
  humidity: { type: "text", value: "40%", help: "Relative humidity" },
  "dew-point": { type: "text", value: "12C", help: "In place of humidity" },
  "wet-bulb": { type: "text", value: "15C", help: "In place of humidity" },
  report: {
    type: "text",
    value: '"METAR ..."',
    help: "A weather report in place of readings; give --height too",
  },
  "station-height": { type: "text", value: "120m", help: "Of the station the report is from" },
};

/** Air read from flags, with the report it came from where there was one. */
export interface AirOfFlags {
  readonly air: AirEstimate;
  readonly report: WeatherReport | null;
  /** Height above sea level in metres, where it was given. */
  readonly height: number | null;
}

/** True when any flag speaks of the air. */
export const airIsGiven = (args: Arguments): boolean =>
  Object.entries(AIR_FLAGS).some(([flag, { type }]) =>
    type === "text" ? args.text(flag) !== undefined : args.on(flag),
  );

/**
 * The air the flags tell of.
 * @param now milliseconds since 1970, for the age of a report
 */
export function airOfFlags(args: Arguments, now: number): Outcome<AirOfFlags> {
  const us = args.on("us");
  const given = args.text("height");
  const height = given === undefined ? accept(null) : readHeight("--height", given, us ? "ft" : undefined);
  if (!height.ok) return height;
  const metres =
    height.value === null ? null : height.value.value * (height.value.unit === "ft" ? 0.3048 : 1);
  const report = args.text("report");
  if (report !== undefined) return fromReport(args, report, height.value, metres, now);
  const typed = args.text("temperature");
  if (typed === undefined) {
    return refuse(
      "no-temperature",
      "No temperature is given. Add --temperature 24C, or a weather report with --report.",
    );
  }
  const temperature = readTemperature("--temperature", typed, us ? "F" : undefined);
  if (!temperature.ok) return temperature;
  const pressure = pressureOf(args);
  if (!pressure.ok) return pressure;
  const humidity = humidityOf(args);
  if (!humidity.ok) return humidity;
  if (pressure.value.kind === "none" && height.value === null) {
    return refuse(
      "no-pressure",
      "Neither a pressure nor a height is given. Add --height 450m or --pressure 962hPa.",
    );
  }
  const air = airFrom({
    temperature: temperature.value,
    pressure: pressure.value,
    humidity: humidity.value,
    ...(height.value === null ? {} : { height: height.value }),
  });
  return air.ok ? accept({ air: air.value, report: null, height: metres }) : air;
}

function fromReport(
  args: Arguments,
  text: string,
  height: TypedHeight | null,
  metres: number | null,
  now: number,
): Outcome<AirOfFlags> {
  const us = args.on("us");
  for (const flag of ["pressure", "humidity", "dew-point", "wet-bulb"]) {
    if (args.text(flag) !== undefined) {
      return refuse(
        "report-and-reading",
        `--report and --${flag} say the same thing twice. Give one of them.`,
      );
    }
  }
  const report = readWeatherReport(text);
  if (!report.ok) return report;
  if (height === null) {
    return refuse(
      "no-height",
      "A report tells the air at its station. Add --height 450m, of the place that is ridden.",
    );
  }
  const station = args.text("station-height");
  const stationHeight =
    station === undefined ? accept(null) : readHeight("--station-height", station, us ? "ft" : undefined);
  if (!stationHeight.ok) return stationHeight;
  const own = args.text("temperature");
  const temperature =
    own === undefined ? accept(null) : readTemperature("--temperature", own, us ? "F" : undefined);
  if (!temperature.ok) return temperature;
  const air = airFromReport(report.value, {
    height,
    ageMinutes: reportAgeMinutes(report.value.time, now),
    ...(stationHeight.value === null ? {} : { stationHeight: stationHeight.value }),
    ...(temperature.value === null ? {} : { temperature: temperature.value }),
  });
  return air.ok ? accept({ air: air.value, report: report.value, height: metres }) : air;
}

function pressureOf(args: Arguments): Outcome<AirInput["pressure"]> {
  const text = args.text("pressure");
  if (text !== undefined) {
    const kind = args.on("sea-level") ? "sea-level" : "station";
    return readPressure("--pressure", text, kind, args.on("us") ? "inHg" : undefined);
  }
  if (args.on("sea-level")) {
    return refuse("no-pressure", "--sea-level says what kind of pressure it is. Add --pressure 1013hPa.");
  }
  return accept({ kind: "none" });
}

function humidityOf(args: Arguments): Outcome<TypedHumidity> {
  const given = ["humidity", "dew-point", "wet-bulb"].filter((flag) => args.text(flag) !== undefined);
  const [flag, second] = given;
  if (flag === undefined) return accept({ kind: "unknown" });
  if (second !== undefined) {
    return refuse("humidity-twice", `--${flag} and --${second} say the same thing twice. Give one of them.`);
  }
  const text = args.text(flag)!;
  if (flag === "humidity") {
    const percent = readPercent("--humidity", text);
    return percent.ok ? accept({ kind: "relative", percent: percent.value }) : percent;
  }
  const read = readTemperature(`--${flag}`, text, args.on("us") ? "F" : undefined);
  return read.ok ? accept({ kind: flag as "dew-point" | "wet-bulb", ...read.value }) : read;
}
