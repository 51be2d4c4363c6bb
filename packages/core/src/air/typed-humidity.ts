import { fromCelsius, fromFahrenheit, fromKelvin, toCelsius } from "../units/convert.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { Kelvin, Pascal } from "../units/quantity.ts";
import type { Warning } from "../words/warning.ts";
import { celsiusSaid, sayCelsius } from "./figures.ts";
import { driestWetBulb, type Humidity, UNKNOWN_HUMIDITY } from "./humidity.ts";
import { readSd } from "./typed-sd.ts";
import type { TemperatureUnit } from "./typed-temperature.ts";

/** Humidity as a person knows it. Temperatures without a unit take the unit the air temperature was read in. */
export type TypedHumidity =
  | { readonly kind: "relative"; readonly percent: number; readonly sd?: number }
  | {
      readonly kind: "dew-point" | "wet-bulb";
      readonly value: number;
      readonly unit?: TemperatureUnit;
      readonly sd?: number;
    }
  | { readonly kind: "unknown" };

export interface ReadHumidity {
  readonly humidity: Humidity;
  readonly warnings: readonly Warning[];
}

export type HumidityRefusal =
  | "humidity-not-a-number"
  | "humidity-unit"
  | "humidity-out-of-range"
  | "dew-point-above-temperature"
  | "wet-bulb-above-temperature"
  | "wet-bulb-too-low"
  | "sd-not-usable";

type Read = Outcome<ReadHumidity, HumidityRefusal>;

/** Kelvin by which rounding to whole degrees can put a dew point or a wet bulb above the temperature. */
const ROUNDING_SLACK = 1;
/** Percent a hygrometer may read above saturation. */
const HYGROMETER_SLACK = 5;
/** Standard deviations of unstated instruments: a household hygrometer, a dew point as shown, a sling thermometer. Estimates. */
const RELATIVE_SD = 0.05;
const DEW_POINT_SD = 1;
const WET_BULB_SD = 0.5;

/** Humidity fit for the formula, against the temperature and pressure it was read at. */
export function readHumidity(
  typed: TypedHumidity,
  temperature: Kelvin,
  pressure: Pascal,
  temperatureUnit: TemperatureUnit,
): Read {
  if (typed.kind === "unknown") {
    return accept({ humidity: UNKNOWN_HUMIDITY, warnings: [{ code: "humidity-assumed" }] });
  }
  const sd = readSd(typed.sd, "humidity", 100);
  if (!sd.ok) return sd;
  if (typed.kind === "relative") return readRelative(typed.percent, sd.value);
  if (!Number.isFinite(typed.value)) {
    return refuse(
      "humidity-not-a-number",
      "The dew point or wet bulb is not a number: give it, or leave humidity out.",
    );
  }
  const unit = typed.unit ?? temperatureUnit;
  const reading =
    unit === "F"
      ? fromFahrenheit(typed.value)
      : unit === "K"
        ? fromKelvin(typed.value)
        : fromCelsius(typed.value);
  const inKelvin = sd.value === null ? null : unit === "F" ? sd.value / 1.8 : sd.value;
  return typed.kind === "dew-point"
    ? checkDewPoint(reading, temperature, inKelvin ?? DEW_POINT_SD)
    : checkWetBulb(reading, temperature, pressure, inKelvin ?? WET_BULB_SD);
}

function readRelative(percent: number, sdPercent: number | null): Read {
  if (!Number.isFinite(percent)) {
    return refuse(
      "humidity-not-a-number",
      "The relative humidity is not a number: give percent, or leave it out.",
    );
  }
  if (percent === 1) {
    return refuse(
      "humidity-unit",
      "A relative humidity of 1 could mean 1 % or saturated air: give it in percent.",
    );
  }
  if (percent < 0 || percent > 100 + HYGROMETER_SLACK) {
    return refuse(
      "humidity-out-of-range",
      `A relative humidity of ${percent} % cannot be: give 0 to 100, or leave it out.`,
    );
  }
  const isFraction = percent > 0 && percent < 1;
  const sd = sdPercent === null ? RELATIVE_SD : isFraction && sdPercent < 1 ? sdPercent : sdPercent / 100;
  const read = (fraction: number, warnings: readonly Warning[]): Read =>
    accept({ humidity: { kind: "relative", fraction, sd }, warnings });
  if (isFraction) {
    const given = { typed: percent, percent: Number((percent * 100).toFixed(1)) };
    return read(percent, [{ code: "humidity-fraction", given }]);
  }
  if (percent > 100) {
    return read(1, [{ code: "humidity-clamped", given: { of: "relative", percent } }]);
  }
  if (percent < 2) {
    return read(percent / 100, [{ code: "unusual-humidity", given: { percent } }]);
  }
  return read(percent / 100, []);
}

const clamped = (of: "dew-point" | "wet-bulb" | "dry wet-bulb", reading: Kelvin, limit: Kelvin): Warning => ({
  code: "humidity-clamped",
  given: { of, celsius: celsiusSaid(reading), limitCelsius: celsiusSaid(limit) },
});

/** A dew point up to 1 K above the temperature is taken as saturation and says so; higher is refused. */
export function checkDewPoint(dewPoint: Kelvin, temperature: Kelvin, sd: number): Read {
  if (dewPoint > temperature + ROUNDING_SLACK + 1e-9) {
    return refuse(
      "dew-point-above-temperature",
      `A dew point of ${sayCelsius(dewPoint)} cannot lie above the temperature ${sayCelsius(temperature)}: check both, and their units.`,
      { dewPoint: celsiusSaid(dewPoint), celsius: celsiusSaid(temperature) },
    );
  }
  if (toCelsius(dewPoint) < -70) {
    return refuse(
      "humidity-out-of-range",
      `A dew point of ${sayCelsius(dewPoint)} is not met near the ground: check it and its unit.`,
    );
  }
  if (dewPoint > temperature) {
    const warnings = [clamped("dew-point", dewPoint, temperature)];
    return accept({ humidity: { kind: "dew-point", temperature, sd }, warnings });
  }
  return accept({ humidity: { kind: "dew-point", temperature: dewPoint, sd }, warnings: [] });
}

function checkWetBulb(wetBulb: Kelvin, temperature: Kelvin, pressure: Pascal, sd: number): Read {
  if (wetBulb > temperature + ROUNDING_SLACK + 1e-9) {
    return refuse(
      "wet-bulb-above-temperature",
      `A wet bulb of ${sayCelsius(wetBulb)} cannot lie above the temperature ${sayCelsius(temperature)}: check both, and their units.`,
      { wetBulb: celsiusSaid(wetBulb), celsius: celsiusSaid(temperature) },
    );
  }
  const driest = driestWetBulb(temperature, pressure);
  if (wetBulb < driest - ROUNDING_SLACK) {
    return refuse(
      "wet-bulb-too-low",
      `A wet bulb cannot fall below ${sayCelsius(driest)} at ${sayCelsius(temperature)}: ${sayCelsius(wetBulb)} may be a dew point, give it as one.`,
      { driest: celsiusSaid(driest), celsius: celsiusSaid(temperature) },
    );
  }
  const warnings: Warning[] = [];
  if (wetBulb > temperature) warnings.push(clamped("wet-bulb", wetBulb, temperature));
  if (wetBulb < driest) warnings.push(clamped("dry wet-bulb", wetBulb, driest));
  if (toCelsius(wetBulb) < 0) warnings.push({ code: "wet-bulb-freezing" });
  const reading = Math.min(Math.max(wetBulb, driest), temperature) as Kelvin;
  return accept({ humidity: { kind: "wet-bulb", temperature: reading, sd }, warnings });
}
