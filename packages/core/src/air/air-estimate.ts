import type { Kelvin, Pascal } from "../units/quantity.ts";
import type { Warning } from "../words/warning.ts";
import type { AirState } from "./air-state.ts";
import { type Humidity, vapourFraction } from "./humidity.ts";
import { airAt, dryAirDensity, insideFormulaRange } from "./moist-air.ts";

/** One cause of doubt and what it does to the dry-air density. */
export interface AirDoubt {
  readonly cause: string;
  /** One standard deviation, relative. */
  readonly relativeSd: number;
}

/** Air with the list of what makes it unsure; `relativeSd` is these in quadrature. */
export interface AirEstimate extends AirState {
  readonly doubts: readonly AirDoubt[];
}

/** Temperature, station pressure and humidity, already checked, with their standard deviations. */
export interface MeasuredAir {
  readonly temperature: Kelvin;
  readonly pressure: Pascal;
  readonly humidity: Humidity;
  /** Causes of doubt about the temperature, each a standard deviation in K. */
  readonly temperatureDoubts: readonly { readonly cause: string; readonly sd: number }[];
  /** Causes of doubt about the station pressure, each a relative standard deviation. */
  readonly pressureDoubts: readonly AirDoubt[];
  /** Causes of doubt about the density that come by neither. */
  readonly otherDoubts?: readonly AirDoubt[];
  readonly warnings: readonly Warning[];
}

/** Standard uncertainty CIPM-2007 states for itself. */
const FORMULA_SD = 22e-6;
/** Outside its range: the 0.075 % between two independent formulas, taken as the half width of an even spread. */
const FORMULA_SD_OUTSIDE = 0.00075 / Math.sqrt(3);

const withLevel = (humidity: Humidity, shift: number): Humidity =>
  humidity.kind === "relative"
    ? { ...humidity, fraction: humidity.fraction + shift }
    : { ...humidity, temperature: (humidity.temperature + shift) as Kelvin };

/**
 * Air from checked readings. Every cause of doubt is carried through the density formula by its own slope (a
 * temperature error moves the vapour too when humidity is relative) and added in quadrature as independent.
 */
export function estimateAir(measured: MeasuredAir): AirEstimate {
  const { temperature, pressure, humidity } = measured;
  const dryAt = (t: number, p: number, h: Humidity): number =>
    dryAirDensity(t as Kelvin, p as Pascal, vapourFraction(h, t as Kelvin, p as Pascal));
  const dry = dryAt(temperature, pressure, humidity);
  const slope = (high: number, low: number, width: number): number => Math.abs((high - low) / (width * dry));

  const byTemperature = slope(
    dryAt(temperature + 0.05, pressure, humidity),
    dryAt(temperature - 0.05, pressure, humidity),
    0.1,
  );
  const step = 1e-4;
  const byPressure = slope(
    dryAt(temperature, pressure * (1 + step), humidity),
    dryAt(temperature, pressure * (1 - step), humidity),
    2 * step,
  );
  const up = humidity.kind === "relative" ? 1e-3 : 0.05;
  const down = humidity.kind === "relative" ? Math.min(up, humidity.fraction) : up;
  const byHumidity = slope(
    dryAt(temperature, pressure, withLevel(humidity, up)),
    dryAt(temperature, pressure, withLevel(humidity, -down)),
    up + down,
  );

  const doubts: AirDoubt[] = [
    ...measured.temperatureDoubts.map(({ cause, sd }) => ({ cause, relativeSd: byTemperature * sd })),
    ...measured.pressureDoubts.map(({ cause, relativeSd }) => ({
      cause,
      relativeSd: byPressure * relativeSd,
    })),
    { cause: "humidity", relativeSd: byHumidity * humidity.sd },
    ...(measured.otherDoubts ?? []),
    {
      cause: "density formula",
      relativeSd: insideFormulaRange(temperature, pressure) ? FORMULA_SD : FORMULA_SD_OUTSIDE,
    },
  ];
  const relativeSd = Math.sqrt(doubts.reduce((sum, doubt) => sum + doubt.relativeSd * doubt.relativeSd, 0));
  const air = airAt(
    temperature,
    pressure,
    vapourFraction(humidity, temperature, pressure),
    relativeSd,
    measured.warnings,
  );
  return { ...air, doubts };
}
