import { fromCelsius } from "../units/convert.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { Kelvin, Pascal } from "../units/quantity.ts";
import type { Warning } from "../words/warning.ts";
import { hectopascalSaid } from "./figures.ts";
import { type Candidate, type ChoiceRefusal, chooseReport } from "./report-choice.ts";
import { type ReportTime, readGroups, type TemperatureGroup } from "./report-groups.ts";
import { readSeaLevelRemark } from "./report-pressure.ts";
import { splitReports } from "./report-split.ts";

/** What a routine (METAR) or special (SPECI) weather report says about the air at its station. */
export interface WeatherReport {
  /** Null when the text does not open with the word. */
  readonly kind: "METAR" | "SPECI" | null;
  readonly station: string | null;
  readonly time: ReportTime | null;
  readonly automatic: boolean;
  readonly corrected: boolean;
  /** The finest given; null when the report leaves it out. */
  readonly temperature: Kelvin | null;
  /** Over liquid water; null when the report leaves it out. */
  readonly dewPoint: Kelvin | null;
  /** True when the temperature comes from the tenths in the remarks, else it is rounded to whole degrees. */
  readonly inTenths: boolean;
  /** The altimeter setting (QNH) to use; null when there is none. */
  readonly altimeter: Pascal | null;
  /** Which group `altimeter` comes from: A when both agree, being finer; Q when they do not. */
  readonly altimeterFrom: "Q" | "A" | null;
  readonly qGroup: Pascal | null;
  readonly aGroup: Pascal | null;
  /** From an SLP remark. Reduced with the day's temperature, so never an altimeter setting. */
  readonly seaLevelPressure: Pascal | null;
  /** From a QFE group: what a barometer reads at the station. */
  readonly stationPressure: Pascal | null;
  /** True when `stationPressure` comes from whole mmHg. */
  readonly stationPressureCoarse: boolean;
  /** The report used, in upper case, without the others pasted with it. */
  readonly text: string;
  readonly warnings: readonly Warning[];
}

export type ReportRefusal = "empty" | "too-long" | ChoiceRefusal;

/** Characters. Dozens of reports fit; a longer paste is something else. */
const LONGEST_TEXT = 100_000;

/**
 * Reads weather report text as pasted or typed, in any case.
 *
 * Of several reports the newest by day and time is used, a correction before what it corrects, the later in
 * the text before the earlier; days more than 15 apart are taken to lie across a month's end. Text of any
 * content gives a report or a refusal in time linear in its length.
 */
export function readWeatherReport(text: string): Outcome<WeatherReport, ReportRefusal> {
  if (text.length > LONGEST_TEXT) {
    return refuse("too-long", "The text is too long for a weather report: paste the one report only.");
  }
  if (text.trim() === "") return refuse("empty", "No weather report given: paste one, or type the readings.");
  const all = splitReports(text).map((words) => ({ groups: readGroups(words), text: words.join(" ") }));
  const chosen = chooseReport(all);
  return chosen.ok ? accept(assemble(chosen.value.report, chosen.value.warnings)) : chosen;
}

/** Degrees between tenths and whole degrees that rounding cannot explain. */
const TENTHS_SLACK = 1;

function finest(
  whole: TemperatureGroup | null,
  tenths: TemperatureGroup | null,
  warnings: Warning[],
): { readonly temperature: number | null; readonly dewPoint: number | null; readonly inTenths: boolean } {
  const coarse = {
    temperature: whole?.temperature ?? null,
    dewPoint: whole?.dewPoint ?? null,
    inTenths: false,
  };
  if (tenths === null) return coarse;
  if (coarse.temperature !== null && Math.abs(tenths.temperature - coarse.temperature) > TENTHS_SLACK) {
    warnings.push({
      code: "tenths-disagree",
      given: { remarks: tenths.temperature, report: coarse.temperature },
    });
    return coarse;
  }
  return {
    temperature: tenths.temperature,
    dewPoint: tenths.dewPoint ?? coarse.dewPoint,
    inTenths: true,
  };
}

/** Pa by which A may lie above and below a Q that is the same setting rounded down to whole hPa. */
const A_ABOVE_Q = 150;
const A_BELOW_Q = 50;

function chooseAltimeter(
  q: Pascal | null,
  a: Pascal | null,
  warnings: Warning[],
): { readonly altimeter: Pascal | null; readonly altimeterFrom: "Q" | "A" | null } {
  if (a === null) return { altimeter: q, altimeterFrom: q === null ? null : "Q" };
  if (q === null || (a - q <= A_ABOVE_Q && q - a <= A_BELOW_Q)) return { altimeter: a, altimeterFrom: "A" };
  warnings.push({
    code: "altimeters-disagree",
    given: { q: hectopascalSaid(q), a: hectopascalSaid(a) },
  });
  return { altimeter: q, altimeterFrom: "Q" };
}

function assemble({ groups, text }: Candidate, before: readonly Warning[]): WeatherReport {
  const warnings = [...before, ...groups.warnings];
  const { temperature, dewPoint, inTenths } = finest(groups.whole, groups.tenths, warnings);
  const qGroup = groups.q?.pressure ?? null;
  const aGroup = groups.a?.pressure ?? null;
  const { altimeter, altimeterFrom } = chooseAltimeter(qGroup, aGroup, warnings);
  const stationPressure = groups.qfe?.pressure ?? null;
  if (temperature === null) {
    warnings.push({ code: "temperature-missing" });
  } else if (dewPoint === null) {
    warnings.push({ code: "dew-point-missing" });
  }
  if (altimeter === null && stationPressure === null) {
    warnings.push({ code: "pressure-missing", given: { seaLevelRemark: groups.seaLevelDigits !== null } });
  }
  return {
    kind: groups.kind,
    station: groups.station,
    time: groups.time,
    automatic: groups.automatic,
    corrected: groups.corrected,
    temperature: temperature === null ? null : fromCelsius(temperature),
    dewPoint: dewPoint === null ? null : fromCelsius(dewPoint),
    inTenths,
    altimeter,
    altimeterFrom,
    qGroup,
    aGroup,
    seaLevelPressure:
      groups.seaLevelDigits === null ? null : readSeaLevelRemark(groups.seaLevelDigits, altimeter),
    stationPressure,
    stationPressureCoarse: groups.qfe?.coarse ?? false,
    text,
    warnings,
  };
}
