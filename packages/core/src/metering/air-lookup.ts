import type { AirState } from "../air/air-state.ts";
import { vapourFraction } from "../air/humidity.ts";
import { airAt } from "../air/moist-air.ts";
import { standardPressure } from "../air/standard-atmosphere.ts";
import { toCelsius } from "../units/convert.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { Kelvin, Metre } from "../units/quantity.ts";

/** Air expected at a height above sea level, by temperature and relative humidity (0 to 1). */
export type AirLookup = (
  height: Metre,
  temperature: Kelvin,
  relativeHumidity: number,
) => Outcome<AirState, "outside the tables">;

/** Weather moves the pressure at a height by about 1 %, one standard deviation, relative. */
const WEATHER_SD = 0.01;

/**
 * Moist air at the standard pressure of a height (geopotential), whatever the temperature. -500 to 6000 m,
 * -40 to 60 °C, humidity 0 to 1; refuses the rest.
 */
export const usualAir: AirLookup = (height, temperature, relativeHumidity) => {
  const celsius = toCelsius(temperature);
  const inside =
    height >= -500 &&
    height <= 6000 &&
    celsius >= -40 &&
    celsius <= 60 &&
    relativeHumidity >= 0 &&
    relativeHumidity <= 1;
  if (!inside) {
    return refuse(
      "outside the tables",
      `No air for ${height} m, ${celsius.toFixed(1)} °C and humidity ${relativeHumidity}: give -500 to 6000 m, -40 to 60 °C and 0 to 1.`,
    );
  }
  const pressure = standardPressure(height);
  const humidity = { kind: "relative", fraction: relativeHumidity, sd: 0 } as const;
  return accept(airAt(temperature, pressure, vapourFraction(humidity, temperature, pressure), WEATHER_SD));
};
