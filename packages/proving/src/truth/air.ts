/** Air as it is, SI. */
export interface Air {
  readonly temperature: number;
  readonly pressure: number;
  /** Mole fraction of water vapour. */
  readonly vapour: number;
  readonly density: number;
  readonly dryDensity: number;
}

/** Two ideal gases; saturation by the Magnus formula of the WMO guide no. 8 (17.62, 243.12 °C) [from memory]. */
export function airOf(celsius: number, pressure: number, relativeHumidity: number): Air {
  const saturation = 611.2 * Math.exp((17.62 * celsius) / (243.12 + celsius));
  const vapourPressure = relativeHumidity * saturation;
  const temperature = celsius + 273.15;
  const dryDensity = (pressure - vapourPressure) / (287.05 * temperature);
  return {
    temperature,
    pressure,
    vapour: vapourPressure / pressure,
    dryDensity,
    density: dryDensity + vapourPressure / (461.5 * temperature),
  };
}

/** Pressure at a height in the standard atmosphere (ISO 2533: 288.15 K, 6.5 K/km) [constants from memory]. */
export const pressureAt = (height: number): number => 101325 * (1 - (0.0065 * height) / 288.15) ** 5.25588;
