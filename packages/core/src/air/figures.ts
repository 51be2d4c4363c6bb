import { toCelsius, toHectopascal } from "../units/convert.ts";
import type { Kelvin, Metre, Pascal } from "../units/quantity.ts";

// How this folder writes figures in its sentences: few digits, no "-0".

const plain = (x: number, digits: number): string => String(Number(x.toFixed(digits)) + 0);

/** Such as "21.1 °C". */
export const sayCelsius = (t: Kelvin): string => `${plain(toCelsius(t), 1)} °C`;
/** Such as "1013 hPa". */
export const sayHectopascal = (p: Pascal): string => `${plain(toHectopascal(p), 0)} hPa`;
/** Such as "1500 m". */
export const sayMetre = (h: Metre): string => `${plain(h, 0)} m`;
/** A share as percent, such as "20 %"; one decimal below 10 %. */
export const sayPercent = (share: number): string =>
  `${plain(share * 100, Math.abs(share) < 0.0995 ? 1 : 0)} %`;
