import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { Kelvin, Metre } from "../units/quantity.ts";
import type { Warning } from "../words/warning.ts";
import { type AirEstimate, estimateAir, type MeasuredAir } from "./air-estimate.ts";
import { THERMOMETER_SD } from "./air-from.ts";
import { celsiusSaid, hectopascalSaid, metresSaid, sayHectopascal } from "./figures.ts";
import { type Humidity, UNKNOWN_HUMIDITY } from "./humidity.ts";
import { HEIGHT_SD } from "./pressure-at-place.ts";
import {
  pressureFromReport,
  STATION_HEIGHT_SD,
  type SureHeight,
  stationHeightOf,
} from "./pressure-from-report.ts";
import { STANDARD_LAPSE } from "./standard-atmosphere.ts";
import { type HeightRefusal, readHeight, type TypedHeight } from "./typed-height.ts";
import { checkDewPoint, type HumidityRefusal } from "./typed-humidity.ts";
import { readTemperature, type TemperatureRefusal, type TypedTemperature } from "./typed-temperature.ts";
import type { WeatherReport } from "./weather-report.ts";

/** Where and when the reported air is to be breathed. */
export interface ReportPlace {
  /** Of the riding place. */
  readonly height: TypedHeight;
  /** Of the station; without it the report's own Q and QFE groups tell it if both are there. */
  readonly stationHeight?: TypedHeight;
  /** Minutes since the report was made; null when nobody knows. */
  readonly ageMinutes: number | null;
  /** Read on the spot; it replaces the report's. */
  readonly temperature?: TypedTemperature;
}

export type ReportAirRefusal =
  | TemperatureRefusal
  | HeightRefusal
  | HumidityRefusal
  | "temperature-missing"
  | "pressure-height-mismatch"
  | "report-age";

// Standard deviations, estimates of ours unless said otherwise.
/** K: the station's thermometer, and one shady spot against another in the same district. */
const SENSOR_SD = 0.5;
const DISTRICT_SD = 1;
/** Of a figure rounded to whole ones: an even spread of width 1. */
const ROUNDING_SD = 1 / Math.sqrt(12);
/** K per metre by which the day's lapse differs from the standard one. */
const LAPSE_SD = 0.003;
/** K per metre a dew point falls with height in well-mixed air [from memory], and its doubt. */
const DEW_POINT_LAPSE = 0.0018;
const DEW_POINT_LAPSE_SD = 0.001;
/** Relative density per hour of age: nearly all of it temperature, which a thermometer on the spot settles. */
const DRIFT_PER_HOUR = 0.01;
const DRIFT_PER_HOUR_OWN_THERMOMETER = 0.002;
/** Hours after which an older report tells no less: the day's range is spent. */
const DRIFT_HOURS = 6;
const OLD_MINUTES = 120;
/** Minutes a clock may be slow, or a report be issued before the hour it is for. */
const CLOCK_SLACK = 15;
/** Pa, beyond what any riding place from -500 to 6000 m has. */
const LOWEST_PRESSURE = 40_000;
const HIGHEST_PRESSURE = 115_000;
/** Metres of height difference worth a word. */
const HEIGHT_WORTH_SAYING = 150;

/**
 * Air at the riding place from a weather report.
 *
 * Pressure as `pressureFromReport`; a sea-level pressure remark is never used. Temperature: read on the spot if
 * given, else the report's, falling 6.5 K for 1000 m. A missing dew point leaves humidity unknown. Age,
 * rounding and both heights widen the band; a report over two hours old is named as such.
 */
export function airFromReport(
  report: WeatherReport,
  place: ReportPlace,
): Outcome<AirEstimate, ReportAirRefusal> {
  const here = readSureHeight(place.height);
  if (!here.ok) return here;
  const given = place.stationHeight === undefined ? accept(null) : readSureHeight(place.stationHeight);
  if (!given.ok) return given;
  const age = readAge(place.ageMinutes, place.temperature !== undefined);
  if (!age.ok) return age;
  const station = stationHeightOf(report, given.value);
  const rise = station === null ? null : here.value.height - station.height;
  const temperature = temperatureHere(report, place.temperature, rise);
  if (!temperature.ok) return temperature;
  const pressure = pressureFromReport(report, here.value, station, temperature.value.temperature);
  if (pressure.pressure < LOWEST_PRESSURE || pressure.pressure > HIGHEST_PRESSURE) {
    return refuse(
      "pressure-height-mismatch",
      `The report's pressure comes to ${sayHectopascal(pressure.pressure)} at the riding place, which cannot be: check the report and both heights.`,
      { hPa: hectopascalSaid(pressure.pressure) },
    );
  }
  const humidity = humidityHere(report, temperature.value.temperature, rise ?? 0);
  if (!humidity.ok) return humidity;
  return accept(
    estimateAir({
      temperature: temperature.value.temperature,
      temperatureDoubts: temperature.value.doubts,
      pressure: pressure.pressure,
      pressureDoubts: pressure.doubts,
      humidity: humidity.value.humidity,
      otherDoubts: [{ cause: "age of the report", relativeSd: age.value.drift }],
      warnings: [
        ...report.warnings,
        ...age.value.warnings,
        ...heightWarnings(rise, place.temperature === undefined ? temperature.value.temperature : null),
        ...temperature.value.warnings,
        ...pressure.warnings,
        ...humidity.value.warnings,
      ],
    }),
  );
}

function readSureHeight(typed: TypedHeight): Outcome<SureHeight, HeightRefusal> {
  const read = readHeight(typed);
  return read.ok ? accept({ height: read.value.height, sd: read.value.sd ?? HEIGHT_SD }) : read;
}

function readAge(
  minutes: number | null,
  ownThermometer: boolean,
): Outcome<{ readonly drift: number; readonly warnings: readonly Warning[] }, "report-age"> {
  const perHour = ownThermometer ? DRIFT_PER_HOUR_OWN_THERMOMETER : DRIFT_PER_HOUR;
  if (minutes === null) {
    return accept({
      drift: (perHour * OLD_MINUTES) / 60,
      warnings: [{ code: "report-age-unknown" }],
    });
  }
  if (!Number.isFinite(minutes) || minutes < -CLOCK_SLACK) {
    return refuse(
      "report-age",
      `A report age of ${minutes} minutes cannot be: check the clock, the date and the report's time (UTC).`,
      { minutes },
    );
  }
  const drift = perHour * Math.min(Math.max(minutes, 0) / 60, DRIFT_HOURS);
  if (minutes <= OLD_MINUTES) return accept({ drift, warnings: [] });
  return accept({ drift, warnings: [{ code: "report-old", given: { hours: minutes / 60 } }] });
}

/** @param carried the report's temperature brought to the riding place; null when one was read there */
function heightWarnings(rise: number | null, carried: Kelvin | null): readonly Warning[] {
  if (rise === null) return [{ code: "station-height-unknown" }];
  if (Math.abs(rise) <= HEIGHT_WORTH_SAYING) return [];
  return [
    {
      code: "station-height-differs",
      given: {
        m: metresSaid(Math.abs(rise) as Metre),
        below: rise > 0,
        celsius: carried === null ? null : celsiusSaid(carried),
      },
    },
  ];
}

interface TemperatureHere {
  readonly temperature: Kelvin;
  readonly doubts: MeasuredAir["temperatureDoubts"];
  readonly warnings: readonly Warning[];
}

/** @param rise metres from the station up to the riding place; null when not known */
function temperatureHere(
  report: WeatherReport,
  own: TypedTemperature | undefined,
  rise: number | null,
): Outcome<TemperatureHere, TemperatureRefusal | "temperature-missing"> {
  if (own !== undefined) {
    const read = readTemperature(own);
    if (!read.ok) return read;
    const { temperature, sd, warnings } = read.value;
    return accept({ temperature, doubts: [{ cause: "temperature", sd: sd ?? THERMOMETER_SD }], warnings });
  }
  if (report.temperature === null) {
    return refuse("temperature-missing", "The report gives no temperature: give one read on the spot.");
  }
  const carried = report.temperature - STANDARD_LAPSE * (rise ?? 0);
  const read = readTemperature({ value: carried, unit: "K" });
  if (!read.ok) return read;
  const doubts = [
    { cause: "temperature", sd: readingSd(report) },
    { cause: "another place", sd: DISTRICT_SD },
    {
      cause: "temperature by height",
      sd: rise === null ? STATION_HEIGHT_SD * STANDARD_LAPSE : Math.abs(rise) * LAPSE_SD,
    },
  ];
  return accept({ temperature: read.value.temperature, doubts, warnings: read.value.warnings });
}

/** K, sensor and rounding, the same for temperature and dew point. */
function readingSd(report: WeatherReport): number {
  const rounding = report.inTenths ? ROUNDING_SD / 10 : ROUNDING_SD;
  return Math.sqrt(SENSOR_SD * SENSOR_SD + rounding * rounding);
}

/** The dew point carried to the riding place, where it cannot lie above the temperature. */
function humidityHere(
  report: WeatherReport,
  temperature: Kelvin,
  rise: number,
): Outcome<{ readonly humidity: Humidity; readonly warnings: readonly Warning[] }, HumidityRefusal> {
  if (report.dewPoint === null)
    return accept({ humidity: UNKNOWN_HUMIDITY, warnings: [{ code: "humidity-assumed" }] });
  const sensor = readingSd(report);
  const lapse = DEW_POINT_LAPSE_SD * rise;
  const sd = Math.sqrt(sensor * sensor + lapse * lapse);
  const checked = checkDewPoint(report.dewPoint, report.temperature ?? report.dewPoint, sd);
  if (!checked.ok) return checked;
  const carried = (Math.min(report.dewPoint, report.temperature ?? report.dewPoint) -
    DEW_POINT_LAPSE * rise) as Kelvin;
  if (carried <= temperature) {
    return accept({
      humidity: { kind: "dew-point", temperature: carried, sd },
      warnings: checked.value.warnings,
    });
  }
  return accept({
    humidity: { kind: "dew-point", temperature, sd },
    warnings: [
      ...checked.value.warnings,
      {
        code: "humidity-clamped",
        given: {
          of: "carried dew-point",
          celsius: celsiusSaid(carried),
          limitCelsius: celsiusSaid(temperature),
        },
      },
    ],
  });
}
