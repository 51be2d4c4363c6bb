import { toCelsius, toHectopascal } from "../units/convert.ts";
import type { Pascal } from "../units/quantity.ts";
import { readWeatherReport, type WeatherReport } from "./weather-report.ts";

// Short cuts for the tests of weather reports.

export const taken = (text: string): WeatherReport => {
  const report = readWeatherReport(text);
  if (!report.ok) throw new Error(`${report.reason}: ${report.detail}`);
  return report.value;
};
export const reason = (text: string): string => {
  const report = readWeatherReport(text);
  return report.ok ? "taken" : report.reason;
};
export const codes = (report: WeatherReport) => report.warnings.map((w) => w.code);
export const celsius = (report: WeatherReport) =>
  [report.temperature, report.dewPoint].map((t) => (t === null ? null : Number(toCelsius(t).toFixed(6))));
export const hpa = (p: Pascal | null) => (p === null ? null : Number(toHectopascal(p).toFixed(2)));
export const around = (groups: string) => `METAR LFPG 121130Z 24008KT 9999 SCT030 ${groups}`;
