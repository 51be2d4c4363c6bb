import {
  accept,
  airAt,
  compare,
  fromCelsius,
  type Kelvin,
  log,
  type Metre,
  type Outcome,
  type Pascal,
  pressureAltitude,
  relativeHumidity,
  type Situation,
  standardPressure,
  toCelsius,
  vapourFraction,
} from "@jetwright/core";

/** How far a setup that is right may drift before it should be set again: 4 % lean or 6 % rich, ln ratios. */
export const LEAN_EDGE = log(0.96);
export const RICH_EDGE = log(1.06);

/** The air a setup stays right in, moved one way at a time from the air it was right in. */
export interface StaysRight {
  /** °C at the same height. Null: no limit down to -40 or up to 60 °C. */
  readonly coldest: number | null;
  readonly warmest: number | null;
  /** Metres up or down from the place, at the same temperature; null: no limit in -500 to 6000 m. */
  readonly down: number | null;
  readonly up: number | null;
  /** Density of the moist air, kg/m³, at the edges. */
  readonly thinnest: number;
  readonly thickest: number;
}

const COLDEST = -40;
const WARMEST = 60;
const LOWEST = -500;
const HIGHEST = 6000;

/** Within this of the edge, °C and m, the search stops: finer than any thermometer or map a rider has. */
const FINE_CELSIUS = 0.1;
const FINE_METRES = 5;

/** The range in which every opening stays within the edges by comparison with the air it was right in. */
export function staysRight(base: Situation): Outcome<StaysRight> {
  const { temperature, pressure } = base.air;
  const fraction = Math.min(1, Math.max(0, relativeHumidity(base.air)));
  const airOf = (t: Kelvin, p: Pascal) =>
    airAt(t, p, vapourFraction({ kind: "relative", fraction, sd: 0 }, t, p), base.air.relativeSd);
  const ground = pressureAltitude(pressure);
  const here = toCelsius(temperature);
  const warmed = (celsius: number) => airOf(fromCelsius(celsius), pressure);
  const lifted = (height: number) =>
    airOf(temperature, (pressure * (standardPressure(height as Metre) / standardPressure(ground))) as Pascal);
  const first = compare(base, base);
  if (!first.ok) return first;
  const holds = (air: Situation["air"]): boolean => {
    const compared = compare(base, { ...base, air });
    if (!compared.ok) return false;
    return compared.value.at.every(({ logRatio }) => logRatio >= LEAN_EDGE && logRatio <= RICH_EDGE);
  };
  const coldest = edge(here, COLDEST, FINE_CELSIUS, (t) => holds(warmed(t)));
  const warmest = edge(here, WARMEST, FINE_CELSIUS, (t) => holds(warmed(t)));
  const lowest = edge(ground, LOWEST, FINE_METRES, (h) => holds(lifted(h)));
  const highest = edge(ground, HIGHEST, FINE_METRES, (h) => holds(lifted(h)));
  return accept({
    coldest,
    warmest,
    down: lowest === null ? null : ground - lowest,
    up: highest === null ? null : highest - ground,
    thickest: Math.min(warmed(coldest ?? COLDEST).density, lifted(lowest ?? LOWEST).density),
    thinnest: Math.max(warmed(warmest ?? WARMEST).density, lifted(highest ?? HIGHEST).density),
  });
}

/** The last value toward the limit that still holds, on the safe side of the edge; null when the limit holds too. */
function edge(from: number, limit: number, fine: number, holds: (x: number) => boolean): number | null {
  if (holds(limit)) return null;
  let inside = from;
  let outside = limit;
  while (Math.abs(outside - inside) > fine) {
    const middle = (inside + outside) / 2;
    if (holds(middle)) inside = middle;
    else outside = middle;
  }
  return inside;
}
