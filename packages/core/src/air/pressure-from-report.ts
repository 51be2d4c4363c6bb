import type { Kelvin, Metre, Pascal } from "../units/quantity.ts";
import type { Warning } from "../words/warning.ts";
import type { AirDoubt } from "./air-estimate.ts";
import { hectopascalSaid, metresSaid } from "./figures.ts";
import { heightDoubt, type PressureAtPlace, pressureFromHeight } from "./pressure-at-place.ts";
import { heightBetween, pressureAfterRise, reductionError, stationPressure } from "./pressure-reduction.ts";
import { saturatedFraction } from "./saturation.ts";
import { STANDARD_LAPSE, standardTemperature } from "./standard-atmosphere.ts";
import type { WeatherReport } from "./weather-report.ts";

/** A height with one standard deviation, metres. */
export interface SureHeight {
  readonly height: Metre;
  readonly sd: number;
}

// Estimates of ours.
/** Metres a station may differ in height from the riding place when nobody says. */
export const STATION_HEIGHT_SD = 300;
/** Metres, of a station height reckoned from whole hPa of Q and QFE. */
const RECKONED_HEIGHT_SD = 5;
/** Pa, a station's barometer. */
const BAROMETER_SD = 50;
/** K, the mean temperature between station and riding place. */
const LAYER_SD = 3;
/** Metres between which stations stand. */
const LOWEST = -500;
const HIGHEST = 6000;
/** Pa by which QNH and QFE may miss one another at a known station height. */
const QFE_SLACK = 300;
/** Steps of the groups, Pa: whole mmHg, hundredths of inHg, whole hPa. */
const STEP = { mercury: 133, A: 34, Q: 100 } as const;

/** Q is rounded down to whole hPa (WMO-No. 306, rule 15.11), so on average the truth is half a hPa higher. */
function bestSetting({ altimeter, altimeterFrom }: WeatherReport): Pascal | null {
  if (altimeter === null) return null;
  return altimeterFrom === "Q" ? ((altimeter + STEP.Q / 2) as Pascal) : altimeter;
}

/**
 * Height of the station: as given, else from its Q and QFE groups together, else null; null too when those two
 * put it where no station stands.
 */
export function stationHeightOf(report: WeatherReport, given: SureHeight | null): SureHeight | null {
  if (given !== null) return given;
  const setting = bestSetting(report);
  if (setting === null || report.stationPressure === null) return null;
  const height = heightBetween(setting, report.stationPressure);
  if (height < LOWEST || height > HIGHEST) return null;
  return { height, sd: RECKONED_HEIGHT_SD };
}

/**
 * Pressure at a riding place from a report.
 *
 * Station pressure (QFE), or the altimeter setting taken down to the station, is carried to the riding place
 * through air of the day's temperature. With the station's height unknown the altimeter setting is taken down
 * at the riding place itself. With neither group it is the usual pressure for the height.
 * @param temperature at the riding place
 */
export function pressureFromReport(
  report: WeatherReport,
  here: SureHeight,
  station: SureHeight | null,
  temperature: Kelvin,
): PressureAtPlace {
  const setting = bestSetting(report);
  const read = report.stationPressure;
  const group = read ?? setting;
  if (group === null) return pressureFromHeight(here.height, here.sd, temperature);
  const doubts = [...groupDoubts(report, group), heightDoubt("height", here.sd, temperature)];
  if (station === null) {
    if (setting === null) {
      doubts.push(heightDoubt("height of the station", STATION_HEIGHT_SD, temperature));
      return { pressure: group, doubts, warnings: [] };
    }
    const error = reductionError(STATION_HEIGHT_SD, temperature, standardTemperature(here.height));
    doubts.push({ cause: "height of the station", relativeSd: Math.abs(error) });
    const pressure = stationPressure(setting, here.height);
    return { pressure, doubts, warnings: read === null ? [] : [qfeNotUsed(read, setting)] };
  }
  const reduced = setting === null ? null : stationPressure(setting, station.height);
  const rise = here.height - station.height;
  // Only a pressure read at the station depends on where exactly that is.
  if (read !== null) doubts.push(heightDoubt("height of the station", station.sd, temperature));
  const mean = (temperature + (STANDARD_LAPSE * rise) / 2) as Kelvin;
  const start = (read ?? reduced) as Pascal;
  doubts.push({
    cause: "height difference",
    relativeSd: Math.abs(reductionError(rise, (mean + LAYER_SD) as Kelvin, mean)),
  });
  return {
    pressure: pressureAfterRise(start, rise, virtualTemperature(report, mean, start)),
    doubts,
    warnings: read !== null && reduced !== null ? mismatch(read, reduced, station.height) : [],
  };
}

function groupDoubts(report: WeatherReport, group: Pascal): AirDoubt[] {
  const { qGroup, aGroup, altimeterFrom } = report;
  const step =
    report.stationPressure !== null
      ? report.stationPressureCoarse
        ? STEP.mercury
        : STEP.Q
      : STEP[altimeterFrom ?? "Q"];
  const doubts = [
    {
      cause: "pressure group",
      relativeSd: Math.sqrt(BAROMETER_SD * BAROMETER_SD + (step * step) / 12) / group,
    },
  ];
  if (altimeterFrom === "Q" && qGroup !== null && aGroup !== null) {
    doubts.push({ cause: "Q against A", relativeSd: Math.abs(qGroup - aGroup) / 2 / group });
  }
  return doubts;
}

/** Temperature at which dry air would weigh as little as the layer's moist air, at half saturation if nothing is known. */
function virtualTemperature(report: WeatherReport, mean: Kelvin, pressure: Pascal): Kelvin {
  const vapour =
    report.dewPoint === null
      ? saturatedFraction(mean, pressure) / 2
      : saturatedFraction(report.dewPoint, pressure);
  return (mean / (1 - 0.378 * vapour)) as Kelvin;
}

function mismatch(read: Pascal, reduced: Pascal, station: Metre): readonly Warning[] {
  if (Math.abs(read - reduced) <= QFE_SLACK) return [];
  return [
    {
      code: "station-pressure-mismatch",
      given: { qfe: hectopascalSaid(read), setting: hectopascalSaid(reduced), m: metresSaid(station) },
    },
  ];
}

const qfeNotUsed = (read: Pascal, setting: Pascal): Warning => ({
  code: "station-pressure-mismatch",
  given: { qfe: hectopascalSaid(read), setting: hectopascalSaid(setting), m: null },
});
