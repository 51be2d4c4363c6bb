import type { Warning } from "../words/warning.ts";
import { type PressureGroup, type QfeGroup, readPressureGroups, readQfe } from "./report-pressure.ts";
import { isStation, isTime } from "./report-split.ts";

/** Day of the month and UTC time; a report carries no month. */
export interface ReportTime {
  readonly day: number;
  readonly hour: number;
  readonly minute: number;
}

/** Temperature and dew point in °C; the dew point is null where the report has none. */
export interface TemperatureGroup {
  readonly temperature: number;
  readonly dewPoint: number | null;
}

/** The groups of one report that tell about the air, as they stand. */
export interface ReportGroups {
  kind: "METAR" | "SPECI" | null;
  forecast: boolean;
  nil: boolean;
  automatic: boolean;
  corrected: boolean;
  station: string | null;
  time: ReportTime | null;
  whole: TemperatureGroup | null;
  tenths: TemperatureGroup | null;
  q: PressureGroup | null;
  a: PressureGroup | null;
  seaLevelDigits: string | null;
  qfe: QfeGroup | null;
  readonly warnings: Warning[];
}

/** `+ 0` turns the -0 of M00 into 0. */
const signed = (minus: boolean, value: number): number => (minus ? -value : value) + 0;

/**
 * Body group TT/DD: whole degrees, M for minus; the dew point may be missing (10///, 10/). Null for anything
 * else, also when the temperature is missing.
 */
export function readTemperatureGroup(word: string): TemperatureGroup | null {
  const match = /^([M-])?(\d\d)\/(?:([M-])?(\d\d)|\/\/|XX)?$/.exec(word);
  if (match === null) return null;
  const [, minus, degrees, dewMinus, dewDegrees] = match;
  return {
    temperature: signed(minus !== undefined, Number(degrees)),
    dewPoint: dewDegrees === undefined ? null : signed(dewMinus !== undefined, Number(dewDegrees)),
  };
}

/** Remark group T01280083: tenths of a degree, 1 before them for below zero; the dew point may be missing. */
export function readTenthsGroup(word: string): TemperatureGroup | null {
  const match = /^T([01])(\d{3})(?:([01])(\d{3}))?$/.exec(word);
  if (match === null) return null;
  const [, minus, tenths, dewMinus, dewTenths] = match;
  return {
    temperature: signed(minus === "1", Number(tenths) / 10),
    dewPoint: dewTenths === undefined ? null : signed(dewMinus === "1", Number(dewTenths) / 10),
  };
}

function readTime(word: string): ReportTime | null {
  const time = {
    day: Number(word.slice(0, 2)),
    hour: Number(word.slice(2, 4)),
    minute: Number(word.slice(4, 6)),
  };
  return time.day >= 1 && time.day <= 31 && time.hour <= 23 && time.minute <= 59 ? time : null;
}

const TREND = /^(?:TEMPO|BECMG|NOSIG|INTER|PROB\d\d)$/;
type Part = "body" | "trend" | "remarks";

/**
 * Reads the groups of one report. Sources: WMO-No. 306 FM 15 and 16 (codes form, rules 15.11 and 15.12), ASOS
 * User's Guide appendix C (remarks) [read in transcriptions]. What follows TEMPO, BECMG or NOSIG is a forecast
 * and is passed over until the remarks. The first group of each sort counts; groups not about the air are passed over.
 */
export function readGroups(words: readonly string[]): ReportGroups {
  const groups: ReportGroups = {
    kind: null,
    forecast: false,
    nil: false,
    automatic: false,
    corrected: false,
    station: null,
    time: null,
    whole: null,
    tenths: null,
    q: null,
    a: null,
    seaLevelDigits: null,
    qfe: null,
    warnings: [],
  };
  let part: Part = "body";
  words.forEach((word, i) => {
    const next = words[i + 1] ?? "";
    if (word === "RMK" || word === "RMKS") part = "remarks";
    else if (part === "body" && TREND.test(word)) part = "trend";
    if (part === "trend") return;
    if (part === "body") readBodyWord(groups, word, next);
    else readRemark(groups, word);
    for (const group of readPressureGroups(word)) keepPressure(groups, group);
    if (word.startsWith("QFE")) keepQfe(groups, word === "QFE" ? next : word.slice(3));
  });
  return groups;
}

function readBodyWord(groups: ReportGroups, word: string, next: string): void {
  if (word === "METAR" || word === "SPECI") groups.kind = word;
  else if (word === "TAF") groups.forecast = true;
  else if (word === "NIL") groups.nil = true;
  else if (word === "AUTO") groups.automatic = true;
  else if (word === "COR" || /^CC[A-Z]$/.test(word)) groups.corrected = true;
  else if (isTime(word) && groups.time === null) {
    groups.time = readTime(word);
    if (groups.time === null) {
      groups.warnings.push({ code: "report-time-impossible", given: { time: word } });
    }
  } else if (isStation(word) && groups.station === null && (isTime(next) || next === "NIL")) {
    groups.station = word;
  } else if ((word === "Q" || word === "QNH" || word === "A") && /^[\d.]+$/.test(next)) {
    for (const group of readPressureGroups(`${word}${next}`)) keepPressure(groups, group);
  } else groups.whole ??= readTemperatureGroup(word);
}

function readRemark(groups: ReportGroups, word: string): void {
  groups.tenths ??= readTenthsGroup(word);
  const seaLevel = /^SLP(\d{3})$/.exec(word);
  if (seaLevel !== null) groups.seaLevelDigits ??= seaLevel[1]!;
}

function keepPressure(groups: ReportGroups, group: PressureGroup): void {
  const slot = group.letter === "Q" ? "q" : "a";
  const before = groups[slot]?.pressure ?? null;
  if (before === null) {
    groups[slot] = group;
    groups.warnings.push(...group.warnings);
  } else if (group.pressure !== null && group.pressure !== before) {
    groups.warnings.push({ code: "pressure-group-twice", given: { letter: group.letter } });
  }
}

function keepQfe(groups: ReportGroups, figures: string): void {
  const qfe = readQfe(figures);
  if (qfe === null || groups.qfe !== null) return;
  groups.qfe = qfe;
  groups.warnings.push(...qfe.warnings);
}
