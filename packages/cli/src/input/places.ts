import {
  accept,
  fromCelsius,
  fromFahrenheit,
  fromFoot,
  fromMetre,
  type Kelvin,
  type Metre,
  type Outcome,
  refuse,
  type TripPoint,
} from "@jetwright/core";
import { readHeight, readTemperature } from "./quantities.ts";

/** A height of a list or a trip, in metres unless it says ft. */
export function heightIn(flag: string, text: string, us: boolean): Outcome<Metre> {
  const read = readHeight(flag, text, us ? "ft" : undefined);
  if (!read.ok) return read;
  return accept(read.value.unit === "ft" ? fromFoot(read.value.value) : fromMetre(read.value.value));
}

/** A temperature of a list or a trip, in °C unless it says F. */
export function temperatureIn(flag: string, text: string, us: boolean): Outcome<Kelvin> {
  const read = readTemperature(flag, text, us ? "F" : undefined);
  if (!read.ok) return read;
  const { value, unit } = read.value;
  return accept(unit === "F" ? fromFahrenheit(value) : unit === "K" ? (value as Kelvin) : fromCelsius(value));
}

const MOST = 40;

/** "0,500,1000" or "0m, 500m" read one by one. */
export function listOf<Value>(
  flag: string,
  text: string,
  read: (one: string) => Outcome<Value>,
): Outcome<Value[]> {
  const parts = text
    .split(/[,;]/)
    .map((part) => part.trim())
    .filter((part) => part !== "");
  if (parts.length === 0 || parts.length > MOST) {
    return refuse("list", `${flag} takes 1 to ${MOST} values with commas between, such as 0,500,1000.`);
  }
  const values: Value[] = [];
  for (const part of parts) {
    const one = read(part);
    if (!one.ok) return one;
    values.push(one.value);
  }
  return accept(values);
}

/** The places of a ride: "valley:300m:15C,pass:2100m:4C". */
export const readTrip = (text: string, us: boolean): Outcome<TripPoint[]> =>
  listOf("--trip", text, (place) => {
    const [name, height, temperature, ...rest] = place.split(":").map((part) => part.trim());
    if (!name || !height || !temperature || rest.length > 0) {
      return refuse(
        "trip",
        `--trip "${place}" is not a place of the ride. Write name:height:coldest, such as pass:2100m:4C, with commas between places.`,
      );
    }
    const metres = heightIn("--trip", height, us);
    if (!metres.ok) return metres;
    const kelvin = temperatureIn("--trip", temperature, us);
    return kelvin.ok ? accept({ name, height: metres.value, temperature: kelvin.value }) : kelvin;
  });
