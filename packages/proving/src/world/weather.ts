import type { Chance } from "../chance.ts";
import { type Air, airOf, pressureAt } from "../truth/air.ts";
import type { Place } from "../truth/draw-bike.ts";

/** Air at one ride, as it is and as the instruments at hand have it. */
export interface Weather {
  readonly air: Air;
  readonly celsius: number;
  readonly read: { readonly celsius: number; readonly pressure: number; readonly humidity: number };
}

/** Errors that stay with the instruments. */
export interface Instruments {
  readonly celsius: number;
  readonly pressure: number;
  readonly humidity: number;
}

export const drawInstruments = (chance: Chance): Instruments => ({
  celsius: chance.normal(0, 1),
  pressure: chance.normal(0, 250),
  humidity: chance.normal(0, 0.08),
});

/** The weather of a ride: a day's course, another day after every third ride. */
export function weatherAt(
  seed: string,
  chanceOf: (...key: readonly (string | number)[]) => Chance,
  place: Place,
  ride: number,
  instruments: Instruments,
): Weather {
  const day = Math.floor(ride / 3);
  const daily = chanceOf(seed, "day", day);
  const hourly = chanceOf(seed, "hour", ride);
  const dayCelsius = day === 0 ? 0 : daily.normal(0, 3);
  const dayPressure = day === 0 ? daily.normal(0, 600) : daily.normal(0, 700);
  const celsius = place.celsius + dayCelsius + hourly.normal(0, 1.5) + 2 * ((ride % 3) - 1);
  const humidity = Math.max(0.1, Math.min(1, place.humidity + hourly.normal(0, 0.08)));
  const pressure = pressureAt(place.height) + dayPressure + hourly.normal(0, 100);
  return {
    air: airOf(celsius, pressure, humidity),
    celsius,
    read: {
      celsius: Math.round((celsius + instruments.celsius + hourly.normal(0, 0.4)) * 2) / 2,
      pressure: Math.round((pressure + instruments.pressure) / 100) * 100,
      humidity: Math.max(0.05, Math.min(1, humidity + instruments.humidity)),
    },
  };
}
