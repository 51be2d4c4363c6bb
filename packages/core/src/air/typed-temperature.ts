import { fromCelsius, fromFahrenheit, fromKelvin, toCelsius, toFahrenheit } from "../units/convert.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { Kelvin } from "../units/quantity.ts";
import type { Warning } from "../words/warning.ts";
import { celsiusSaid, sayCelsius } from "./figures.ts";
import { readSd } from "./typed-sd.ts";

export type TemperatureUnit = "C" | "F" | "K";

/** A temperature as a person typed it. Without a unit it is read as Celsius where that can be. */
export interface TypedTemperature {
  readonly value: number;
  readonly unit?: TemperatureUnit;
  /** One standard deviation of the thermometer, in the same degrees. */
  readonly sd?: number;
}

export interface ReadTemperature {
  readonly temperature: Kelvin;
  /** The unit it was read in. */
  readonly unit: TemperatureUnit;
  /** One standard deviation in K, null when none was given. */
  readonly sd: number | null;
  readonly warnings: readonly Warning[];
}

export type TemperatureRefusal =
  | "temperature-not-a-number"
  | "temperature-unit"
  | "temperature-out-of-range"
  | "sd-not-usable";

const fromUnit: Record<TemperatureUnit, (x: number) => Kelvin> = {
  C: fromCelsius,
  F: fromFahrenheit,
  K: fromKelvin,
};

/** Kelvin in one degree of the unit. */
const degree: Record<TemperatureUnit, number> = { C: 1, F: 1 / 1.8, K: 1 };

/** Above this a temperature without a unit is not taken for Celsius; no air on Earth has reached 57 °C. */
const HIGHEST_SURE_CELSIUS = 50;
const HIGHEST_CELSIUS = 60;
const LOWEST_CELSIUS = -40;
const USUAL_LOW = -30;
const USUAL_HIGH = 50;

/**
 * Air temperature from what was typed.
 *
 * Taken from -40 to 60 °C. Without a unit: up to 50 is Celsius, above 60 to 140 Fahrenheit (said in a
 * warning), 50 to 60 is asked. Warns outside -30 to 50 °C.
 */
export function readTemperature(typed: TypedTemperature): Outcome<ReadTemperature, TemperatureRefusal> {
  const { value } = typed;
  if (!Number.isFinite(value)) {
    return refuse("temperature-not-a-number", "The air temperature is not a number: give it in °C or °F.");
  }
  const sd = readSd(typed.sd, "temperature", 40);
  if (!sd.ok) return sd;
  if (typed.unit === undefined && value > HIGHEST_SURE_CELSIUS && value <= HIGHEST_CELSIUS) {
    return refuse(
      "temperature-unit",
      `${value} could be °F (${sayCelsius(fromFahrenheit(value))}) or a very hot day in °C: say which unit it is.`,
      { celsius: celsiusSaid(fromFahrenheit(value)) },
    );
  }
  const warnings: Warning[] = [];
  const takenAsFahrenheit = typed.unit === undefined && value > HIGHEST_CELSIUS && value <= 140;
  const unit = typed.unit ?? (takenAsFahrenheit ? "F" : "C");
  const temperature = fromUnit[unit](value);
  const celsius = toCelsius(temperature);
  if (!(celsius >= LOWEST_CELSIUS - 1e-9 && celsius <= HIGHEST_CELSIUS + 1e-9)) {
    return refuse("temperature-out-of-range", outOfRange(value, unit));
  }
  if (takenAsFahrenheit) {
    warnings.push({
      code: "read-as-fahrenheit",
      given: { typed: value, celsius: celsiusSaid(temperature) },
    });
  }
  if (celsius < USUAL_LOW || celsius > USUAL_HIGH) {
    warnings.push({ code: "unusual-temperature", given: { celsius: celsiusSaid(temperature) } });
  }
  return accept({ temperature, unit, sd: sd.value === null ? null : sd.value * degree[unit], warnings });
}

function outOfRange(value: number, unit: TemperatureUnit): string {
  const limits = `air from ${LOWEST_CELSIUS} to ${HIGHEST_CELSIUS} °C is taken`;
  const within = (t: Kelvin): boolean => toCelsius(t) >= LOWEST_CELSIUS && toCelsius(t) <= HIGHEST_CELSIUS;
  const guess = (["F", "K", "C"] as const).find(
    (other) => other !== unit && within(fromUnit[other](value)) && (other !== "F" || value > HIGHEST_CELSIUS),
  );
  if (guess === undefined) {
    return `${value} ${unit === "K" ? "K" : `°${unit}`} is no air temperature to ride in (${limits}): check the reading.`;
  }
  const asGuess =
    guess === "F"
      ? `${value} °F is ${sayCelsius(fromFahrenheit(value))}`
      : guess === "K"
        ? `${value} K is ${sayCelsius(fromKelvin(value))}`
        : `${value} °C is ${toFahrenheit(fromCelsius(value)).toFixed(0)} °F`;
  return `${value} ${unit === "K" ? "K" : `°${unit}`} is no air temperature to ride in (${limits}), but ${asGuess}: check the unit.`;
}
