import { toCelsius, toHectopascal } from "../units/convert.ts";
import type { Kelvin, Metre, Pascal } from "../units/quantity.ts";

// Figures as this folder has them said in sentences: few digits, no "-0".

const plain = (x: number, digits: number): number => Number(x.toFixed(digits)) + 0;

/** Such as 21.1. */
export const celsiusSaid = (t: Kelvin): number => plain(toCelsius(t), 1);
/** Such as 1013. */
export const hectopascalSaid = (p: Pascal): number => plain(toHectopascal(p), 0);
/** Such as 1500. */
export const metresSaid = (h: Metre): number => plain(h, 0);
/** A share in percent, such as 20; one decimal below 10 %. */
export const percentSaid = (share: number): number => plain(share * 100, Math.abs(share) < 0.0995 ? 1 : 0);

/** Such as "21.1 °C". */
export const sayCelsius = (t: Kelvin): string => `${celsiusSaid(t)} °C`;
/** Such as "1013 hPa". */
export const sayHectopascal = (p: Pascal): string => `${hectopascalSaid(p)} hPa`;
/** Such as "1500 m". */
export const sayMetre = (h: Metre): string => `${metresSaid(h)} m`;
