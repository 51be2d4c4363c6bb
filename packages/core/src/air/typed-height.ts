import { fromFoot, fromMetre } from "../units/convert.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { Metre } from "../units/quantity.ts";
import { metresSaid, sayMetre } from "./figures.ts";
import { readSd } from "./typed-sd.ts";

/** A height above sea level as a person typed it. Without a unit it is read as metres where that is likely. */
export interface TypedHeight {
  readonly value: number;
  readonly unit?: "m" | "ft";
  /** One standard deviation, in the same unit. */
  readonly sd?: number;
}

export interface ReadHeight {
  readonly height: Metre;
  /** One standard deviation in metres, null when none was given. */
  readonly sd: number | null;
}

export type HeightRefusal = "height-not-a-number" | "height-unit" | "height-out-of-range" | "sd-not-usable";

/** Metres. The lowest dry land lies at -430 m. */
const LOWEST = -500;
const HIGHEST = 6000;
/** Above this a height without a unit is as likely feet. */
const HIGHEST_SURE_METRES = 3000;

/** Height above sea level, -500 to 6000 m. Above 3000 without a unit it asks: metres or feet. */
export function readHeight(typed: TypedHeight): Outcome<ReadHeight, HeightRefusal> {
  const { value, unit } = typed;
  if (!Number.isFinite(value)) {
    return refuse("height-not-a-number", "The height above sea level is not a number: give it in m or ft.");
  }
  const sd = readSd(typed.sd, "height", 3000);
  if (!sd.ok) return sd;
  const inFeet = fromFoot(value);
  if (unit === undefined && value > HIGHEST_SURE_METRES && inFeet <= HIGHEST) {
    return refuse(
      "height-unit",
      `A height of ${value} could be metres or feet (${sayMetre(inFeet)}): say which unit it is.`,
      { metres: metresSaid(inFeet) },
    );
  }
  const height = unit === "ft" ? inFeet : fromMetre(value);
  if (height < LOWEST || height > HIGHEST) {
    return refuse(
      "height-out-of-range",
      `A height of ${sayMetre(height)} lies outside ${LOWEST} to ${HIGHEST} m: check the figure and the unit.`,
      { metres: metresSaid(height) },
    );
  }
  const scale = unit === "ft" ? fromFoot(1) : 1;
  return accept({ height, sd: sd.value === null ? null : sd.value * scale });
}
