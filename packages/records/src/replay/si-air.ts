import {
  type AirInput,
  type AirState,
  airFrom,
  airFromReport,
  type Outcome,
  readWeatherReport,
} from "@jetwright/core";
import type { UsedEntryOf } from "../entry.ts";
import type { CaseWarnings } from "./case-warning.ts";
import { reportAgeMinutes } from "./report-age.ts";

type Air = UsedEntryOf<"air-measured">;

const HOUR = 3_600_000;
/** Air noted longer ago than this is no longer the air of the ride. */
const FRESH_HOURS = 12;
/** One standard deviation that other weather adds to the density, relative: estimates for a day and for a season. */
const OTHER_DAY_SD = 0.02;
const OTHER_SEASON_SD = 0.04;
const SEASON_HOURS = 24 * 21;
/** K and m, one standard deviation, of air nobody noted: estimates for a riding season in hilly country. */
const ANY_AIR_SD = 10;
const ANY_HEIGHT_SD = 400;

function humidityOf(body: Air["body"]): AirInput["humidity"] {
  if (body.humidityPercent !== undefined) return { kind: "relative", percent: body.humidityPercent };
  if (body.dewPointC !== undefined) return { kind: "dew-point", value: body.dewPointC, unit: "C" };
  if (body.wetBulbC !== undefined) return { kind: "wet-bulb", value: body.wetBulbC, unit: "C" };
  return { kind: "unknown" };
}

function pressureOf(body: Air["body"]): AirInput["pressure"] {
  if (body.stationPressureHpa !== undefined) {
    return { kind: "station", value: body.stationPressureHpa, unit: "hPa" };
  }
  if (body.seaLevelPressureHpa !== undefined) {
    return { kind: "sea-level", value: body.seaLevelPressureHpa, unit: "hPa" };
  }
  return { kind: "none" };
}

const standardCelsius = (heightM: number): number => 15 - 0.0065 * heightM;

const metres = (value: number): { value: number; unit: "m" } => ({ value, unit: "m" });
/** Sea level, give or take the hills: where no height is told. */
const ANY_HEIGHT = { ...metres(0), sd: ANY_HEIGHT_SD };

/** The height to reckon with; a barometer at the place needs none. */
function heightOf(body: Air["body"], heightM: number | undefined): Pick<AirInput, "height"> {
  if (heightM !== undefined) return { height: metres(heightM) };
  return body.stationPressureHpa === undefined ? { height: ANY_HEIGHT } : {};
}

/**
 * The air that a record tells of. A barometer read at the place counts before a weather report; with a report,
 * a temperature read at the place counts before the report's.
 */
export function airOf(body: Air["body"], at: number, placeHeightM: number | undefined): Outcome<AirState> {
  const heightM =
    body.heightM ??
    (body.stationPressureHpa === undefined ? (placeHeightM ?? body.stationHeightM) : undefined);
  if (body.report !== undefined && body.stationPressureHpa === undefined) {
    const report = readWeatherReport(body.report);
    if (!report.ok) return report;
    return airFromReport(report.value, {
      height: heightM === undefined ? ANY_HEIGHT : metres(heightM),
      ageMinutes: reportAgeMinutes(report.value.time, at),
      ...(body.stationHeightM !== undefined && { stationHeight: metres(body.stationHeightM) }),
      ...(body.temperatureC !== undefined && { temperature: { value: body.temperatureC, unit: "C" } }),
    });
  }
  const celsius = body.temperatureC ?? standardCelsius(heightM ?? 0);
  return airFrom({
    temperature: { value: celsius, unit: "C", ...(body.temperatureC === undefined && { sd: ANY_AIR_SD }) },
    pressure: pressureOf(body),
    humidity: humidityOf(body),
    ...heightOf(body, heightM),
  });
}

/** Standard air at a height, or at sea level with a wide band where the height is not known either. */
export function usualAir(placeHeightM: number | undefined): AirState {
  const height = placeHeightM ?? 0;
  const air = airFrom({
    temperature: { value: standardCelsius(height), unit: "C", sd: ANY_AIR_SD },
    pressure: { kind: "none" },
    humidity: { kind: "unknown" },
    height: { value: height, unit: "m", ...(placeHeightM === undefined && { sd: ANY_HEIGHT_SD }) },
  });
  if (!air.ok) throw new RangeError(`Standard air was refused: ${air.detail}`);
  return air.value;
}

/** The air with more doubt, in quadrature. */
const widened = (air: AirState, sd: number): AirState => ({
  ...air,
  relativeSd: Math.sqrt(air.relativeSd * air.relativeSd + sd * sd),
});

/** How much the weather may have moved between a reading and its use, relative, by the milliseconds between. */
export function stalenessSd(milliseconds: number): number {
  if (milliseconds <= FRESH_HOURS * HOUR) return 0;
  return milliseconds <= SEASON_HOURS * HOUR ? OTHER_DAY_SD : OTHER_SEASON_SD;
}

/** Air at a time, from the record in force; standard air, said so, where there is none that can be used. */
export function siAir(
  entry: Air | null,
  at: number,
  placeHeightM: number | undefined,
  warnings: CaseWarnings,
): AirState {
  const placeM = placeHeightM ?? null;
  if (entry === null) {
    warnings.add({ code: "air-assumed", given: { placeM } });
    return usualAir(placeHeightM);
  }
  const air = airOf(entry.body, entry.at, placeHeightM);
  if (!air.ok) {
    warnings.add({ code: "air-unusable", given: { why: air, placeM } }, entry.id);
    return usualAir(placeHeightM);
  }
  if (entry.body.temperatureC === undefined && entry.body.report === undefined) {
    warnings.add({ code: "temperature-assumed" }, entry.id);
  }
  const told =
    entry.body.heightM ?? entry.body.stationPressureHpa ?? placeHeightM ?? entry.body.stationHeightM;
  if (told === undefined) warnings.add({ code: "height-assumed" }, entry.id);
  for (const warning of air.value.warnings) warnings.add(warning, entry.id);
  const sd = stalenessSd(Math.abs(at - entry.at));
  if (sd === 0) return air.value;
  warnings.add({ code: "air-old" }, entry.id);
  return widened(air.value, sd);
}
