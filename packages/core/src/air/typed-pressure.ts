import { fromHectopascal, fromInchOfMercury, fromMillimetreOfMercury, fromPascal } from "../units/convert.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { Metre, Pascal } from "../units/quantity.ts";
import type { Warning } from "../words/warning.ts";
import { hectopascalSaid, sayHectopascal } from "./figures.ts";
import { altimeterSetting } from "./pressure-reduction.ts";
import { readSd } from "./typed-sd.ts";

export type PressureUnit = "hPa" | "mbar" | "kPa" | "Pa" | "mmHg" | "inHg";

/** A pressure as a person typed it. Without a unit, the size of the number tells it where it can. */
export interface TypedPressure {
  /** What a barometer reads on the spot, or that value carried to sea level (an altimeter setting or QNH). */
  readonly kind: "station" | "sea-level";
  readonly value: number;
  readonly unit?: PressureUnit;
  /** One standard deviation of the instrument, in the same unit. */
  readonly sd?: number;
}

export interface ReadPressure {
  readonly pressure: Pascal;
  /** One standard deviation in Pa, null when none was given. */
  readonly sd: number | null;
  readonly warnings: readonly Warning[];
}

export type PressureRefusal =
  | "pressure-not-a-number"
  | "pressure-unit"
  | "pressure-out-of-range"
  | "sd-not-usable";

type PressureUnitRead = Exclude<PressureUnit, "mbar"> | "hundredths of inHg";
type Candidate = { readonly unit: PressureUnit; readonly pressure: Pascal; readonly name: PressureUnitRead };

const toPressure: Record<PressureUnit, (x: number) => Pascal> = {
  hPa: fromHectopascal,
  mbar: fromHectopascal,
  kPa: (x) => fromPascal(x * 1000),
  Pa: fromPascal,
  mmHg: fromMillimetreOfMercury,
  inHg: fromInchOfMercury,
};

/** Pa. Barometers where people ride: from 5500 m to the Dead Sea shore in a strong high. */
const STATION_LIMITS = [50_000, 110_000] as const;
/** Pa. Sea-level records are 870 and 1084 hPa [memory, WMO archive of extremes]. */
const SEA_LEVEL_LIMITS = [87_000, 108_500] as const;
/** Altimeter settings, Pa, that make a guessed unit fit a known height. */
const FITTING_SETTINGS = [94_000, 106_000] as const;

const inside = (p: Pascal, [low, high]: readonly [number, number]): boolean => p >= low && p <= high;

/** Every unit the bare number could be in. Whole hundredths of an inch (2992) count as inches. */
function candidates(value: number): readonly Candidate[] {
  return [
    { unit: "hPa", pressure: fromHectopascal(value), name: "hPa" },
    { unit: "mmHg", pressure: fromMillimetreOfMercury(value), name: "mmHg" },
    { unit: "inHg", pressure: fromInchOfMercury(value), name: "inHg" },
    { unit: "inHg", pressure: fromInchOfMercury(value / 100), name: "hundredths of inHg" },
    { unit: "kPa", pressure: toPressure.kPa(value), name: "kPa" },
    { unit: "Pa", pressure: fromPascal(value), name: "Pa" },
  ];
}

/**
 * A pressure from what was typed.
 *
 * Station pressure is taken from 500 to 1100 hPa, sea-level pressure from 870 to 1085. A number without a unit
 * is read in the only unit that makes it a pressure people ride in; between about 500 and 825, where it could
 * be hPa high up or mmHg, the height settles it if given, else it is refused with both readings.
 */
export function readPressure(
  typed: TypedPressure,
  height: Metre | null,
): Outcome<ReadPressure, PressureRefusal> {
  const { kind, value } = typed;
  if (!Number.isFinite(value) || value <= 0) {
    return refuse("pressure-not-a-number", `A pressure of ${value} cannot be: give the number and its unit.`);
  }
  const limits = kind === "station" ? STATION_LIMITS : SEA_LEVEL_LIMITS;
  const possible = candidates(value).filter((c) => inside(c.pressure, limits));
  if (typed.unit !== undefined) return readStated(typed, typed.unit, limits, possible);

  let fitting = possible;
  if (possible.length > 1 && kind === "station" && height !== null) {
    fitting = possible.filter((c) => inside(altimeterSetting(c.pressure, height), FITTING_SETTINGS));
  }
  const [only, second] = fitting;
  if (possible.length > 1 && (only === undefined || second !== undefined)) {
    const readings = possible
      .map((c) => (c.name === "hPa" ? `${value} hPa` : `${value} ${c.name} (${sayHectopascal(c.pressure)})`))
      .join(" or ");
    const units = possible.map(({ name }) => name).join(", ");
    return refuse("pressure-unit", `A pressure of ${value} could be ${readings}: say which unit it is.`, {
      units,
    });
  }
  if (only === undefined) {
    return refuse(
      "pressure-out-of-range",
      `${value} is no ${kind === "station" ? "pressure to ride in" : "sea-level pressure"} in hPa, kPa, mmHg or inHg: check the figure and give its unit.`,
    );
  }
  const warnings: Warning[] =
    only.name === "hPa" && possible.length === 1
      ? []
      : [
          {
            code: "pressure-unit-guessed",
            given: { typed: value, unit: only.name, hPa: hectopascalSaid(only.pressure) },
          },
        ];
  return finish(typed, only.pressure, only.pressure / value, warnings);
}

function readStated(
  typed: TypedPressure,
  unit: PressureUnit,
  limits: readonly [number, number],
  possible: readonly Candidate[],
): Outcome<ReadPressure, PressureRefusal> {
  const pressure = toPressure[unit](typed.value);
  if (inside(pressure, limits)) return finish(typed, pressure, toPressure[unit](1), []);
  const other = possible.find((c) => c.unit !== unit || c.name !== c.unit);
  const what = typed.kind === "station" ? "pressure to ride in" : "sea-level pressure";
  if (other === undefined && typed.kind === "sea-level" && inside(pressure, STATION_LIMITS)) {
    return refuse(
      "pressure-out-of-range",
      `${sayHectopascal(pressure)} is no sea-level pressure; if a barometer on the spot reads it, give it as station pressure.`,
    );
  }
  return refuse(
    other === undefined ? "pressure-out-of-range" : "pressure-unit",
    other === undefined
      ? `${typed.value} ${unit} is no ${what} (${sayHectopascal(limits[0] as Pascal)} to ${sayHectopascal(limits[1] as Pascal)} is taken): check the figure.`
      : `${typed.value} ${unit} is no ${what}, but ${typed.value} ${other.name} would be ${sayHectopascal(other.pressure)}: check the unit.`,
  );
}

function finish(
  typed: TypedPressure,
  pressure: Pascal,
  pascalPerUnit: number,
  warnings: readonly Warning[],
): Outcome<ReadPressure, PressureRefusal> {
  const sd = readSd(typed.sd, "pressure", Number((10_000 / pascalPerUnit).toPrecision(3)));
  if (!sd.ok) return sd;
  return accept({ pressure, sd: sd.value === null ? null : sd.value * pascalPerUnit, warnings });
}
