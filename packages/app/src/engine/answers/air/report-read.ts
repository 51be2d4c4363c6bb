import { readWeatherReport, toCelsius, toHectopascal, type WeatherReport } from "@jetwright/core";
import { reportAgeMinutes } from "@jetwright/records";

/** What was understood of a weather report, as plain figures; null for what it does not say. */
export interface ReportRead {
  readonly station: string | null;
  /** Day of the month and UTC time. */
  readonly time: WeatherReport["time"];
  readonly ageMinutes: number | null;
  readonly celsius: number | null;
  readonly dewPointC: number | null;
  /** Altimeter setting. */
  readonly altimeterHpa: number | null;
  /** What a barometer reads at the station. */
  readonly stationHpa: number | null;
}

/** What a pasted report says, at a time; null where it cannot be read as one. */
export function reportRead(text: string, at: number): ReportRead | null {
  const report = readWeatherReport(text);
  if (!report.ok) return null;
  const { station, time, temperature, dewPoint, altimeter, stationPressure } = report.value;
  return {
    station,
    time,
    ageMinutes: reportAgeMinutes(time, at),
    celsius: temperature === null ? null : toCelsius(temperature),
    dewPointC: dewPoint === null ? null : toCelsius(dewPoint),
    altimeterHpa: altimeter === null ? null : toHectopascal(altimeter),
    stationHpa: stationPressure === null ? null : toHectopascal(stationPressure),
  };
}
