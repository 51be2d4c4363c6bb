import { exp, log, power } from "../numerics/elementary.ts";
import { fromCelsius } from "../units/convert.ts";
import type { Kelvin } from "../units/quantity.ts";
import { NAMED_FUELS } from "./named-fuels.ts";

/** Kinematic viscosity over that of neat petrol at 20 °C: the middle guess and the two rules it lies between. */
export interface ViscosityRatio {
  readonly ratio: number;
  readonly low: number;
  readonly high: number;
}

/** Volume shares of the fuel without oil; the rest is petrol. */
export interface FuelShares {
  readonly ethanol: number;
  readonly alkylate: number;
}

const TWENTY = fromCelsius(20);
const REFERENCE = NAMED_FUELS.petrol.viscosity.at20;

/**
 * Viscosity of fuel with `oilPerFuel` volumes of two-stroke oil to one of fuel. Soft: the three blending rules
 * (logarithmic for the middle, Refutas below, Kendall-Monroe above, all from memory) disagree by a quarter at
 * 50:1 and by two thirds at 20:1, and oils differ. Good enough for the small exponents it is used with.
 * Fuel: exponential in temperature through its values at 20 and -20 °C. Oil: 50 mm²/s at 40 °C and 8.5 at
 * 100 °C (typical, from memory) on Walther's line (ASTM D341, from memory).
 */
export function viscosityRatio(shares: FuelShares, oilPerFuel: number, temperature: Kelvin): ViscosityRatio {
  const petrol = 1 - shares.ethanol - shares.alkylate;
  const fuelLog =
    petrol * logViscosity("petrol", temperature) +
    shares.alkylate * logViscosity("alkylate", temperature) +
    shares.ethanol * logViscosity("ethanol", temperature);
  const oilShare = oilPerFuel / (1 + oilPerFuel);
  const fuel = exp(fuelLog);
  const oil = oilViscosity(temperature);
  const blendLog = (1 - oilShare) * fuelLog + oilShare * log(oil);
  return {
    ratio: exp(blendLog) / REFERENCE,
    low: refutas(fuel, oil, oilShare) / REFERENCE,
    high: kendallMonroe(fuel, oil, oilShare) / REFERENCE,
  };
}

function logViscosity(name: "petrol" | "alkylate" | "ethanol", temperature: Kelvin): number {
  const { at20, coldFactor } = NAMED_FUELS[name].viscosity;
  return log(at20) + (log(coldFactor) * (TWENTY - temperature)) / 40;
}

const walther = (viscosity: number): number => log(log(viscosity + 0.7));

/** mm²/s. */
function oilViscosity(temperature: Kelvin): number {
  const [warm, hot] = [fromCelsius(40), fromCelsius(100)];
  const slope = (walther(8.5) - walther(50)) / (log(hot) - log(warm));
  return exp(exp(walther(50) + slope * (log(temperature) - log(warm)))) - 0.7;
}

function refutas(fuel: number, oil: number, oilShare: number): number {
  const number = (v: number): number => log(log(v + 0.8));
  return exp(exp((1 - oilShare) * number(fuel) + oilShare * number(oil))) - 0.8;
}

function kendallMonroe(fuel: number, oil: number, oilShare: number): number {
  const root = (1 - oilShare) * power(fuel, 1 / 3) + oilShare * power(oil, 1 / 3);
  return root * root * root;
}
