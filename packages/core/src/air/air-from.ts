import { accept, type Outcome } from "../units/outcome.ts";
import { type AirEstimate, estimateAir } from "./air-estimate.ts";
import { HEIGHT_SD, type PlaceRefusal, pressureAtPlace } from "./pressure-at-place.ts";
import { type HeightRefusal, readHeight, type TypedHeight } from "./typed-height.ts";
import { type HumidityRefusal, readHumidity, type TypedHumidity } from "./typed-humidity.ts";
import type { TypedPressure } from "./typed-pressure.ts";
import { readTemperature, type TemperatureRefusal, type TypedTemperature } from "./typed-temperature.ts";

/** What a person knows about the air, as typed. */
export interface AirInput {
  readonly temperature: TypedTemperature;
  /** `none`: only the height tells the pressure. */
  readonly pressure: TypedPressure | { readonly kind: "none" };
  readonly humidity: TypedHumidity;
  /** Above sea level, of the place ridden at. */
  readonly height?: TypedHeight;
}

export type AirRefusal = TemperatureRefusal | HeightRefusal | HumidityRefusal | PlaceRefusal;

/** K, one standard deviation of a thermometer hung in the shade when none is given. An estimate. */
export const THERMOMETER_SD = 1;

/**
 * Air from what a person knows: temperature, a pressure or only a height, a humidity or none.
 *
 * Takes -40 to 60 °C, 500 to 1100 hPa, -500 to 6000 m. Units left out are told by the size of the number, and
 * asked for (refused) where that is not safe. `relativeSd` adds in quadrature the stated or usual doubt of each
 * reading, of the height, of the sea-level reduction, of the weather when no pressure is given, and of the
 * formula; `doubts` lists them.
 */
export function airFrom(input: AirInput): Outcome<AirEstimate, AirRefusal> {
  const temperature = readTemperature(input.temperature);
  if (!temperature.ok) return temperature;
  const height = input.height === undefined ? accept(null) : readHeight(input.height);
  if (!height.ok) return height;
  const place = pressureAtPlace(
    input.pressure,
    height.value?.height ?? null,
    height.value?.sd ?? HEIGHT_SD,
    temperature.value.temperature,
  );
  if (!place.ok) return place;
  const humidity = readHumidity(
    input.humidity,
    temperature.value.temperature,
    place.value.pressure,
    temperature.value.unit,
  );
  if (!humidity.ok) return humidity;
  return accept(
    estimateAir({
      temperature: temperature.value.temperature,
      temperatureDoubts: [{ cause: "temperature", sd: temperature.value.sd ?? THERMOMETER_SD }],
      pressure: place.value.pressure,
      pressureDoubts: place.value.doubts,
      humidity: humidity.value.humidity,
      warnings: [...temperature.value.warnings, ...place.value.warnings, ...humidity.value.warnings],
    }),
  );
}
