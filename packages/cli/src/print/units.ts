import {
  type Kelvin,
  type Metre,
  type Pascal,
  toCelsius,
  toFahrenheit,
  toFoot,
  toHectopascal,
  toInchOfMercury,
} from "@jetwright/core";

/** How quantities are said to people, and in which unit a bare number of theirs is. */
export interface Units {
  readonly name: "metric" | "US";
  readonly temperature: (t: Kelvin) => string;
  readonly height: (h: Metre) => string;
  readonly pressure: (p: Pascal) => string;
}

export const METRIC: Units = {
  name: "metric",
  temperature: (t) => `${plain(toCelsius(t), 1)} °C`,
  height: (h) => `${Math.round(h) + 0} m`,
  pressure: (p) => `${toHectopascal(p).toFixed(0)} hPa`,
};

export const US: Units = {
  name: "US",
  temperature: (t) => `${plain(toFahrenheit(t), 0)} °F`,
  height: (h) => `${Math.round(toFoot(h) / 10) * 10 + 0} ft`,
  pressure: (p) => `${toInchOfMercury(p).toFixed(2)} inHg`,
};

/** Rounded, without zeros at the end and never "-0". */
export const plain = (x: number, digits: number): string => String(Number(x.toFixed(digits)) + 0);
