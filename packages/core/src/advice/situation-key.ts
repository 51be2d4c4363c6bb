import type { Situation } from "../metering/situation.ts";
import { log } from "../numerics/elementary.ts";
import type { Jet } from "../parts/jet.ts";
import { UNKNOWN } from "../parts/known.ts";
import type { Setup } from "../parts/setup.ts";

/** The same text for the same metering parts. */
export function partsKey({ pilot, main, needle, clip, needleJet, cutaway, screw, fuelLift }: Setup): string {
  return [
    jetKey(pilot.part),
    jetKey(main.part),
    needle.part === null ? "?" : `${needle.part.marks}/${needle.part.profile?.straightDiameter ?? "?"}`,
    clip.part ?? "?",
    needleJet.part ?? "?",
    cutaway.part ?? "?",
    screw.part?.turnsOut ?? "?",
    fuelLift.part ?? "?",
  ].join("|");
}

/** The same text for the same metering parts, however far the screw is out. */
export const partsButTheScrew = (setup: Setup): string => partsKey({ ...setup, screw: UNKNOWN });

/**
 * The same text for the same parts in nearly the same air and fuel: what is noticed twice there is one
 * evidence, not two. Air counts in steps of 1 % of dry-air density. Rule B7.
 */
export function situationKey({ setup, air, fuel }: Situation): string {
  return [
    partsKey(setup),
    Math.round(log(air.dryDensity) * 100),
    Math.round(log(fuel.stoichiometricRatio) * 100),
    Math.round(log(fuel.fuelShare) * 100),
  ].join("|");
}

/** Air and fuel whose mixtures differ by less than this, ln ratio, feel the same. */
const SAME_FEEL = 0.02;

/** True for the same parts in air and on fuel that feel the same. */
export function feelsTheSame(a: Situation, b: Situation): boolean {
  if (partsKey(a.setup) !== partsKey(b.setup)) return false;
  const apart =
    0.5 * log(a.air.dryDensity / b.air.dryDensity) +
    log(a.fuel.stoichiometricRatio / b.fuel.stoichiometricRatio);
  return Math.abs(apart) < SAME_FEEL && Math.abs(a.fuel.fuelShare - b.fuel.fuelShare) < SAME_FEEL;
}

const jetKey = (jet: Jet | null): string =>
  jet === null ? "?" : `${jet.number}${jet.numbering}${jet.maker}`;
