import {
  type Pascal,
  readWeatherReport,
  toCelsius,
  toHectopascal,
  type WeatherReport,
} from "@jetwright/core";
import { parseMetar } from "metar-taf-parser";
import type { ReferenceCheck } from "./check.ts";

const read = (text: string): WeatherReport => {
  const report = readWeatherReport(text);
  if (!report.ok) throw new RangeError(`Sample not read: ${report.detail}`);
  return report.value;
};
const celsius = (t: WeatherReport["temperature"]): number => (t === null ? Number.NaN : toCelsius(t));
const hectopascal = (p: Pascal | null): number => (p === null ? Number.NaN : toHectopascal(p));

interface Sample {
  readonly text: string;
  readonly source: string;
  readonly standing: ReferenceCheck["standing"];
  readonly temperature: number;
  readonly dewPoint: number;
  readonly altimeter: number;
  readonly seaLevel?: number;
}

const SAMPLES: readonly Sample[] = [
  {
    text: "METAR KABC 121755Z AUTO 21016G24KT 180V240 1SM R11/P6000FT -RA BR BKN015 OVC025 06/04 A2990 RMK AO2 PK WND 20032/25 WSHFT 1715 VIS 3/4V1 1/2 VIS 3/4 RWY11 RAB07 CIG 013V017 CIG 017 RWY11 PRESFR SLP125 P0003 60009 T00640036 10066 21012 58033 TSNO $",
    source: "ASOS User's Guide (NOAA, 1998), appendix C, sample report",
    standing: "read",
    temperature: 6.4,
    dewPoint: 3.6,
    altimeter: 1012.53,
    seaLevel: 1012.5,
  },
  {
    text: "METAR YUDO 221630Z 24004MPS 0600 R12/1000U DZ FG SCT010 OVC020 17/16 Q1018 BECMG TL1700 0800 FG BECMG AT1800 9999 NSW",
    source: "ICAO Annex 3, example A3-1",
    standing: "read",
    temperature: 17,
    dewPoint: 16,
    altimeter: 1018,
  },
  {
    text: "SPECI YUDO 151115Z 05025G37KT 3000 1200NE+TSRA BKN005CB 25/22 Q1008 TEMPO TL1200 0600 BECMG AT1200 8000 NSW NSC",
    source: "ICAO Annex 3, example of a special report",
    standing: "memory",
    temperature: 25,
    dewPoint: 22,
    altimeter: 1008,
  },
  {
    text: "KLAX 161550Z COR 27007KT 10SM FEW012 19/16 A2993 RMK AO2 SLP134 T01890156",
    source: "dixwx.com, weather decoding page",
    standing: "read",
    temperature: 18.9,
    dewPoint: 15.6,
    altimeter: 1013.55,
    seaLevel: 1013.4,
  },
  {
    text: "KPIT 211151Z 26008KT 10SM FEW250 M12/M15 A3014 RMK A02 SLP236 4/002 T11171150 11106 21131=",
    source: "Texas A&M University, report decoding page (met.tamu.edu)",
    standing: "read",
    temperature: -11.7,
    dewPoint: -15,
    altimeter: 1020.66,
    seaLevel: 1023.6,
  },
  {
    text: "KSFO 240156Z 26016G22KT 9SM BKN012 13/08 A3006 RMK AO2 PK WND 26027/0109 SLP179 T01280083",
    source: "mail-archive.com, U.S. Metric Association, message 36625",
    standing: "read",
    temperature: 12.8,
    dewPoint: 8.3,
    altimeter: 1017.95,
    seaLevel: 1017.9,
  },
  {
    text: "KJFK 141751Z 31013KT 10SM SCT049 02/M10 A3005 RMK AO2 SLP174 T00221100",
    source: "github.com/keesL/metar, README",
    standing: "read",
    temperature: 2.2,
    dewPoint: -10,
    altimeter: 1017.61,
    seaLevel: 1017.4,
  },
  {
    text: "YGEL 092130Z AUTO 18017KT 9999 // OVC011 22/19 Q1006 RF00.0/000.0",
    source:
      "aviationweather.gov data of 2018-01-09 (22.0 and 19.0 °C, 29.7047 inHg), stored in a public repository",
    standing: "read",
    temperature: 22,
    dewPoint: 19,
    altimeter: 1005.92,
  },
  {
    text: "METAR KNPA 082255Z 27004KT 7/8SM R04/4500FT DZ FG SCT000 BKN011 OVC380 19/18 A2997 RMK VIS1/2V1 CIG009V013 FG SCT000 BKN TOPS 027 SLP149",
    source: "US Navy flight manual P-304, figure 1-14",
    standing: "read",
    temperature: 19,
    dewPoint: 18,
    altimeter: 1014.9,
    seaLevel: 1014.9,
  },
];

const nameOf = (text: string): string => text.split(" ").slice(0, 3).join(" ");

const samples = SAMPLES.flatMap((sample): ReferenceCheck[] => {
  const { text, source, standing } = sample;
  const of = { source, standing, because: "decoded in the source to this many digits" } as const;
  const checks: ReferenceCheck[] = [
    {
      ...of,
      name: `${nameOf(text)}: temperature`,
      unit: "°C",
      want: sample.temperature,
      within: 1e-9,
      got: () => celsius(read(text).temperature),
    },
    {
      ...of,
      name: `${nameOf(text)}: dew point`,
      unit: "°C",
      want: sample.dewPoint,
      within: 1e-9,
      got: () => celsius(read(text).dewPoint),
    },
    {
      ...of,
      name: `${nameOf(text)}: altimeter setting`,
      unit: "hPa",
      want: sample.altimeter,
      within: 0.1,
      because: "inches turned into hPa with factors that differ in the fifth digit, or rounded to 0.1",
      got: () => hectopascal(read(text).altimeter),
    },
  ];
  if (sample.seaLevel !== undefined) {
    checks.push({
      ...of,
      name: `${nameOf(text)}: sea-level pressure remark`,
      unit: "hPa",
      want: sample.seaLevel,
      within: 0.01,
      got: () => hectopascal(read(text).seaLevelPressure),
    });
  }
  return checks;
});

/** A whole report around one group, so that the example is read as it stands in a report. */
const around = (group: string, pressure = "Q1013"): string =>
  `METAR EGXX 121150Z 24008KT 9999 SCT030 ${group} ${pressure}`;
const AIP = "UK AIP GEN 3.5.10, examples of the temperature group";
const WMO = "WMO-No. 306, FM 15, rules 15.11 and 15.12";

const groups: readonly ReferenceCheck[] = [
  ["10/03", AIP, "temperature", 10],
  ["10/03", AIP, "dewPoint", 3],
  ["01/M01", AIP, "temperature", 1],
  ["01/M01", AIP, "dewPoint", -1],
  ["10///", `${AIP} (dew point missing)`, "temperature", 10],
  ["02/", "US Navy training manual 14342A (dew point missing)", "temperature", 2],
  ["M00/M09", `${WMO} (-0.5 °C is M00)`, "temperature", 0],
  ["M00/M09", `${WMO} (-9 °C is M09)`, "dewPoint", -9],
].map(([group, source, field, want]): ReferenceCheck => {
  const key = field as "temperature" | "dewPoint";
  return {
    name: `group ${group}: ${field === "temperature" ? "temperature" : "dew point"}`,
    source: String(source),
    standing: "read",
    unit: "°C",
    want: Number(want),
    within: 1e-9,
    because: "whole degrees",
    got: () => celsius(read(around(String(group)))[key]),
  };
});

const pressures: readonly ReferenceCheck[] = [
  {
    name: "group Q0995 is 995 hPa",
    source: `${WMO} (995.6 hPa is Q0995)`,
    standing: "read",
    unit: "hPa",
    want: 995,
    within: 1e-9,
    because: "whole hPa",
    got: () => hectopascal(read(around("10/03", "Q0995")).altimeter),
  },
  {
    name: "group A2999 is 29.99 inHg",
    source: "US Navy training manual 14342A",
    standing: "read",
    unit: "hPa",
    want: 29.99 * 33.8639,
    within: 0.01,
    because: "the factor 33.8639 hPa is given to six digits",
    got: () => hectopascal(read(around("10/03", "A2999")).altimeter),
  },
  ...(
    [
      ["SLP862", 986.2, "Plymouth State University, decoding page"],
      ["SLP125", 1012.5, "Plymouth State University, decoding page"],
      ["SLP982", 998.2, "AFMAN 15-111 (2019), p. 98, item 22"],
    ] as const
  ).map(
    ([remark, want, source]): ReferenceCheck => ({
      name: `remark ${remark} without an altimeter setting`,
      source,
      standing: "read",
      unit: "hPa",
      want,
      within: 1e-6,
      because: "tenths of a hPa",
      got: () => hectopascal(read(`METAR KABC 121755Z 10/03 RMK ${remark}`).seaLevelPressure),
    }),
  ),
  {
    name: "remark QFE729/0972: both figures tell one pressure",
    source: "practice of Central Asian stations: mmHg, then hPa; 1 mmHg = 133.322 Pa",
    standing: "computed by hand",
    unit: "hPa",
    want: 729 * 1.33322,
    within: 0.7,
    because: "half a mmHg of rounding",
    got: () => hectopascal(read(around("10/03", "Q1018 RMK QFE729/0972")).stationPressure),
  },
];

// The parser package loses the temperature when the dew point is missing, gives -0 for M00 and reads SLP500 to
// SLP899 a hundred hPa too high, so it judges complete reports only, and never the remark.
const library = SAMPLES.flatMap(({ text }): ReferenceCheck[] => {
  const theirs = parseMetar(text.replace(/[=$]\s*$/, "").trim());
  const of = {
    source: "metar-taf-parser 9.1.3 (npm), parseMetar",
    standing: "second library",
  } as const;
  const { altimeter } = theirs;
  return [
    {
      ...of,
      name: `${nameOf(text)}: temperature by a parser package`,
      unit: "°C",
      want: theirs.temperature ?? Number.NaN,
      within: 0.6,
      because: "the package gives whole degrees; ours the tenths where the remarks have them",
      got: () => celsius(read(text).temperature),
    },
    {
      ...of,
      name: `${nameOf(text)}: dew point by a parser package`,
      unit: "°C",
      want: theirs.dewPoint ?? Number.NaN,
      within: 0.6,
      because: "the package gives whole degrees; ours the tenths where the remarks have them",
      got: () => celsius(read(text).dewPoint),
    },
    {
      ...of,
      name: `${nameOf(text)}: altimeter setting by a parser package`,
      unit: "hPa",
      want:
        altimeter === undefined
          ? Number.NaN
          : altimeter.unit === "inHg"
            ? altimeter.value * 33.86389
            : altimeter.value,
      within: 0.01,
      because: "the same group; the inch to six digits",
      got: () => hectopascal(read(text).altimeter),
    },
  ];
});

export const WEATHER_REPORT_CHECKS: readonly ReferenceCheck[] = [
  ...samples,
  ...groups,
  ...pressures,
  ...library,
];
