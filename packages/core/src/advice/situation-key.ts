import type { Situation } from "../metering/situation.ts";
import { log } from "../numerics/elementary.ts";
import type { Jet } from "../parts/jet.ts";
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

const jetKey = (jet: Jet | null): string =>
  jet === null ? "?" : `${jet.number}${jet.numbering}${jet.maker}`;
