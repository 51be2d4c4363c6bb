import {
  accept,
  type Outcome,
  type PressureUnit,
  refuse,
  type TypedHeight,
  type TypedPressure,
  type TypedTemperature,
} from "@jetwright/core";

const NUMBER = String.raw`([+\-−]?\d+(?:[.,]\d+)?|[+\-−]?[.,]\d+)`;
const SHAPE = new RegExp(`^${NUMBER}\\s*(.*)$`);

interface NumberWithUnit {
  readonly value: number;
  readonly unit: string;
}

/** "24,5 °C" into 24.5 and "°c". Null where it does not begin with a number. */
export function readNumber(text: string): NumberWithUnit | null {
  const match = SHAPE.exec(text.trim());
  if (match === null) return null;
  const value = Number(match[1]!.replace(",", ".").replace("−", "-"));
  return Number.isFinite(value) ? { value, unit: match[2]!.trim() } : null;
}

const notUsable = (flag: string, text: string, example: string) =>
  refuse("quantity", `${flag} "${text}" cannot be read. Write it like ${example}.`);

const TEMPERATURES: Readonly<Record<string, "C" | "F" | "K">> = {
  c: "C",
  "°c": "C",
  "º c": "C",
  f: "F",
  "°f": "F",
  k: "K",
};

/** A temperature as typed, such as 24C, "24 °C" or 75F; a bare number is in `bare`, or left for the core to tell. */
export function readTemperature(flag: string, text: string, bare?: "F"): Outcome<TypedTemperature> {
  const read = readNumber(text);
  const unit = read && (read.unit === "" ? bare : TEMPERATURES[read.unit.toLowerCase()]);
  if (read === null || (read.unit !== "" && unit === undefined)) return notUsable(flag, text, "24C or 75F");
  return accept(unit === undefined || unit === null ? { value: read.value } : { value: read.value, unit });
}

const HEIGHTS: Readonly<Record<string, "m" | "ft">> = {
  m: "m",
  metres: "m",
  meters: "m",
  ft: "ft",
  feet: "ft",
  "'": "ft",
};

/** A height above sea level, such as 1500m or 5000ft. */
export function readHeight(flag: string, text: string, bare?: "ft"): Outcome<TypedHeight> {
  const read = readNumber(text);
  const unit = read && (read.unit === "" ? bare : HEIGHTS[read.unit.toLowerCase()]);
  if (read === null || (read.unit !== "" && unit === undefined)) {
    return notUsable(flag, text, "1500m or 5000ft");
  }
  return accept(unit === undefined || unit === null ? { value: read.value } : { value: read.value, unit });
}

const PRESSURES: Readonly<Record<string, PressureUnit>> = {
  hpa: "hPa",
  mbar: "mbar",
  mb: "mbar",
  kpa: "kPa",
  pa: "Pa",
  mmhg: "mmHg",
  inhg: "inHg",
  in: "inHg",
  '"': "inHg",
};

/** A pressure, such as 952hPa or 29.92inHg. */
export function readPressure(
  flag: string,
  text: string,
  kind: TypedPressure["kind"],
  bare?: "inHg",
): Outcome<TypedPressure> {
  const read = readNumber(text);
  const unit = read && (read.unit === "" ? bare : PRESSURES[read.unit.toLowerCase()]);
  if (read === null || (read.unit !== "" && unit === undefined)) {
    return notUsable(flag, text, "952hPa or 29.92inHg");
  }
  return accept({ kind, value: read.value, ...(unit ? { unit } : {}) });
}

/** A share in percent, such as 40% or 40. */
export function readPercent(flag: string, text: string): Outcome<number> {
  const read = readNumber(text);
  if (read === null || !["", "%", "percent"].includes(read.unit.toLowerCase())) {
    return notUsable(flag, text, "40%");
  }
  return accept(read.value);
}

/** A plain number with one of the units named, such as 249cc. */
export function readPlain(
  flag: string,
  text: string,
  units: readonly string[],
  example: string,
): Outcome<number> {
  const read = readNumber(text);
  if (read === null || !["", ...units].includes(read.unit.toLowerCase())) {
    return notUsable(flag, text, example);
  }
  return accept(read.value);
}
