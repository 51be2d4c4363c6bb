import type { AirBody } from "../../engine/answers/air/air-preview.ts";
import { readHeight, readPressure, readTemperature, type Units } from "../../preferences/units.ts";
import { typedNumber } from "../../ui/number-field.tsx";

export type AirWay = "hand" | "report" | "height";
export type PressureKind = "station" | "seaLevel" | "none";
export type HumidityKind = "none" | "percent" | "dewPoint";

/** The fields of the air screen as typed. */
export interface TypedAir {
  readonly way: AirWay;
  readonly temperature: string;
  readonly height: string;
  readonly pressureKind: PressureKind;
  readonly pressure: string;
  readonly humidityKind: HumidityKind;
  readonly humidity: string;
  readonly report: string;
  readonly stationHeight: string;
}

export type AirField = "temperature" | "height" | "pressure" | "humidity" | "stationHeight";

export interface ReadAir {
  /** Fields of this way that hold something that cannot be read. */
  readonly wrong: ReadonlySet<AirField>;
  /** The body of the record; null while something is missing or cannot be read. */
  readonly body: AirBody | null;
}

type Read = number | null | undefined;

/** What was typed, read in the units chosen: null where it cannot be read, undefined where nothing stands. */
function readAll(typed: TypedAir, units: Units): Readonly<Record<AirField, Read>> {
  const read = (text: string, by: (text: string) => number | null): Read =>
    text.trim() === "" ? undefined : by(text);
  return {
    temperature: read(typed.temperature, (text) => readTemperature(text, units)),
    height: read(typed.height, (text) => readHeight(text, units)),
    stationHeight: read(typed.stationHeight, (text) => readHeight(text, units)),
    pressure: read(typed.pressure, (text) => readPressure(text, units)),
    humidity: read(typed.humidity, (text) =>
      typed.humidityKind === "percent" ? typedNumber(text.replace("%", "")) : readTemperature(text, units),
    ),
  };
}

const FIELDS: Readonly<Record<AirWay, readonly AirField[]>> = {
  hand: ["temperature", "height", "pressure", "humidity"],
  report: ["height", "stationHeight", "temperature"],
  height: ["height", "temperature"],
};

const asked = (typed: TypedAir, field: AirField): boolean =>
  FIELDS[typed.way].includes(field) &&
  !(field === "pressure" && typed.pressureKind === "none") &&
  !(field === "humidity" && typed.humidityKind === "none");

/** The record of the air from what was typed; fields of another way are left out and not lost. */
export function readAir(typed: TypedAir, units: Units): ReadAir {
  const all = readAll(typed, units);
  const value = (field: AirField): Read => (asked(typed, field) ? all[field] : undefined);
  const wrong = new Set(FIELDS[typed.way].filter((field) => value(field) === null));
  return { wrong, body: wrong.size > 0 ? null : bodyOf(typed, value) };
}

function bodyOf(typed: TypedAir, value: (field: AirField) => Read): AirBody | null {
  const put = <Key extends string>(key: Key, field: AirField) => {
    const read = value(field);
    return typeof read === "number" ? ({ [key]: read } as Record<Key, number>) : {};
  };
  const common = { ...put("temperatureC", "temperature"), ...put("heightM", "height") };
  const has = (field: AirField): boolean => typeof value(field) === "number";
  switch (typed.way) {
    case "report":
      return typed.report.trim() === ""
        ? null
        : { report: typed.report, ...common, ...put("stationHeightM", "stationHeight") };
    case "height":
      return has("height") && has("temperature") ? common : null;
    case "hand":
      if (!has("temperature")) return null;
      if (!has(typed.pressureKind === "none" ? "height" : "pressure")) return null;
      return {
        ...common,
        ...put(typed.pressureKind === "station" ? "stationPressureHpa" : "seaLevelPressureHpa", "pressure"),
        ...put(typed.humidityKind === "percent" ? "humidityPercent" : "dewPointC", "humidity"),
      };
  }
}
