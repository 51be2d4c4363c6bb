import {
  fromCelsius,
  fromFahrenheit,
  fromFoot,
  fromHectopascal,
  fromInchOfMercury,
  fromMetre,
  fromMillimetreOfMercury,
  fromPascal,
  toCelsius,
  toFahrenheit,
  toFoot,
  toHectopascal,
  toInchOfMercury,
} from "@jetwright/core";
import { figure, plainFigure } from "../words/figures.ts";
import type { Preferences } from "./preferences.ts";

export type Units = Pick<Preferences, "temperature" | "height" | "pressure" | "language">;

/** A height of so many metres in the unit chosen, whole: "640 m", "2100 ft". */
export const heightText = (
  metres: number,
  { height, language }: Pick<Units, "height" | "language">,
): string =>
  height === "ft"
    ? `${plainFigure(toFoot(fromMetre(metres)), language, 0)} ft`
    : `${plainFigure(metres, language, 0)} m`;

/** A temperature of so many °C in the unit chosen, to a tenth: "14 °C", "57.2 °F". */
export const temperatureText = (
  celsius: number,
  { temperature, language }: Pick<Units, "temperature" | "language">,
): string =>
  temperature === "F"
    ? `${plainFigure(toFahrenheit(fromCelsius(celsius)), language, 1)} °F`
    : `${plainFigure(celsius, language, 1)} °C`;

/** A pressure of so many hPa in the unit chosen: "938 hPa" to a tenth, "27.70 inHg" to a hundredth. */
export const pressureText = (
  hectopascals: number,
  { pressure, language }: Pick<Units, "pressure" | "language">,
): string =>
  pressure === "inHg"
    ? `${figure(toInchOfMercury(fromHectopascal(hectopascals)), 2, language)} inHg`
    : `${plainFigure(hectopascals, language, 1)} hPa`;

/** How the unit of a field is written beside it. */
export const temperatureUnit = ({ temperature }: Pick<Units, "temperature">): string => `°${temperature}`;

type Reader = Readonly<Record<string, (x: number) => number>>;

const HEIGHT: Reader = {
  m: (x) => x,
  ft: (x) => fromFoot(x),
};
const TEMPERATURE: Reader = {
  c: (x) => x,
  f: (x) => toCelsius(fromFahrenheit(x)),
};
const PRESSURE: Reader = {
  hpa: (x) => x,
  inhg: (x) => toHectopascal(fromInchOfMercury(x)),
  mmhg: (x) => toHectopascal(fromMillimetreOfMercury(x)),
  kpa: (x) => toHectopascal(fromPascal(x * 1000)),
};

/** How people write the units. */
const SPELLED: Readonly<Record<string, string>> = {
  metre: "m",
  metres: "m",
  meter: "m",
  meters: "m",
  masl: "m",
  "'": "ft",
  feet: "ft",
  foot: "ft",
  celsius: "c",
  fahrenheit: "f",
  mb: "hpa",
  mbar: "hpa",
  in: "inhg",
  '"': "inhg",
  mm: "mmhg",
  torr: "mmhg",
};

/**
 * The height typed, metres: in the unit chosen unless another stands behind it ("5000 ft", "640 m"). Comma and
 * point both mark the decimals, but three digits behind either are thousands ("5,000 ft" is five thousand).
 * Null when no height stands there.
 */
export function readHeight(typed: string, { height }: Pick<Units, "height">): number | null {
  const grouped = typed.trim().replace(/^([-−]?\d{1,3})[., '’](\d{3})(?!\d)/, "$1$2");
  return read(grouped, HEIGHT, height);
}

/** The temperature typed, °C: in the unit chosen unless another stands behind it ("75F", "24 °C"). Null when none stands there. */
export const readTemperature = (typed: string, { temperature }: Pick<Units, "temperature">): number | null =>
  read(typed, TEMPERATURE, temperature);

/**
 * The pressure typed, hPa: in the unit chosen unless another stands behind it ("29.92 inHg", "1013 hPa",
 * "101.3 kPa", "760 mmHg"). Null when none stands there.
 */
export const readPressure = (typed: string, { pressure }: Pick<Units, "pressure">): number | null =>
  read(typed, PRESSURE, pressure);

function read(typed: string, readers: Reader, usual: string): number | null {
  const found = /^([-+−]?)(\d+(?:[.,]\d*)?|[.,]\d+)\s*([^\d]*)$/.exec(typed.trim());
  if (found === null) return null;
  const [, sign, digits, behind] = found;
  const said = behind!.toLowerCase().replace(/[°º.\s]/g, "");
  const unit = SPELLED[said] ?? (said === "" ? usual.toLowerCase() : said);
  if (!Object.hasOwn(readers, unit)) return null;
  const size = Number(digits!.replace(",", "."));
  return readers[unit]!(sign === "-" || sign === "−" ? -size : size);
}
