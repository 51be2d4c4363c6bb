import type { CubicMetre, Kelvin, KgPerCubicMetre, Metre, Pascal, Radian } from "./quantity.ts";

// Exact by definition unless said otherwise. Sources: NIST SP 811 (2008), appendix B.8 [from memory].

export const fromKelvin = (x: number): Kelvin => x as Kelvin;
export const fromCelsius = (x: number): Kelvin => (x + 273.15) as Kelvin;
export const toCelsius = (t: Kelvin): number => t - 273.15;
export const fromFahrenheit = (x: number): Kelvin => ((x - 32) / 1.8 + 273.15) as Kelvin;
export const toFahrenheit = (t: Kelvin): number => (t - 273.15) * 1.8 + 32;

export const fromPascal = (x: number): Pascal => x as Pascal;
export const fromHectopascal = (x: number): Pascal => (x * 100) as Pascal;
export const toHectopascal = (p: Pascal): number => p / 100;
/** Conventional inch of mercury at 0 °C: 25.4 x 133.322387415 Pa, rounded in the source to 3386.389. */
export const fromInchOfMercury = (x: number): Pascal => (x * 3386.389) as Pascal;
export const toInchOfMercury = (p: Pascal): number => p / 3386.389;
/** Conventional millimetre of mercury, 13595.1 kg/m³ x 9.80665 m/s². */
export const fromMillimetreOfMercury = (x: number): Pascal => (x * 133.322387415) as Pascal;

export const fromMetre = (x: number): Metre => x as Metre;
export const fromMillimetre = (x: number): Metre => (x / 1000) as Metre;
export const toMillimetre = (x: Metre): number => x * 1000;
export const fromFoot = (x: number): Metre => (x * 0.3048) as Metre;
export const toFoot = (x: Metre): number => x / 0.3048;

export const fromLitre = (x: number): CubicMetre => (x / 1000) as CubicMetre;
export const fromCubicCentimetre = (x: number): CubicMetre => (x / 1e6) as CubicMetre;
export const toCubicCentimetre = (v: CubicMetre): number => v * 1e6;
/** US liquid gallon, 231 cubic inches. */
export const fromUsGallon = (x: number): CubicMetre => (x * 3.785411784e-3) as CubicMetre;
/** Imperial gallon. */
export const fromImperialGallon = (x: number): CubicMetre => (x * 4.54609e-3) as CubicMetre;

export const fromKgPerCubicMetre = (x: number): KgPerCubicMetre => x as KgPerCubicMetre;

export const fromRadian = (x: number): Radian => x as Radian;
export const fromDegree = (x: number): Radian => ((x * Math.PI) / 180) as Radian;
export const toDegree = (x: Radian): number => (x * 180) / Math.PI;
