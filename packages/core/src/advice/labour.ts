import type { BikeCase, LabourPart } from "./case.ts";

/**
 * Minutes to change a part on a usual slide carburetor: the main jet through the bowl plug, the pilot with
 * the bowl off, needle and clip through the cap; slide and needle jet ask for more, being a last resort. Estimate; a
 * shop's own figures replace them.
 */
export const USUAL_MINUTES: Readonly<Record<LabourPart, number>> = {
  screw: 2,
  clip: 15,
  needle: 15,
  slide: 30,
  main: 15,
  pilot: 25,
  needleJet: 40,
};

/** Parts that are reached by the same opening of the carburetor: each further one adds only this. */
const SAME_ACCESS = 4;
const ACCESS: Readonly<Record<LabourPart, "screw" | "cap" | "bowl">> = {
  screw: "screw",
  clip: "cap",
  needle: "cap",
  slide: "cap",
  main: "bowl",
  pilot: "bowl",
  needleJet: "bowl",
};

/** Minutes to ride or idle it afterwards and tell the difference. */
export const RIDE_MINUTES = 12;
export const STAND_MINUTES = 4;
/** Minutes that fetching a part costs which is not in the drawer. */
export const BUY_MINUTES = 45;

/** Minutes to change these parts in one go. */
export function labourMinutes(parts: readonly LabourPart[], own: BikeCase["minutes"]): number {
  const longest = new Map<string, number>();
  let extra = 0;
  for (const part of parts) {
    const minutes = own[part] ?? USUAL_MINUTES[part];
    const access = ACCESS[part];
    const before = longest.get(access);
    if (before !== undefined) extra += SAME_ACCESS;
    longest.set(access, Math.max(before ?? 0, minutes));
  }
  let sum = extra;
  for (const minutes of longest.values()) sum += minutes;
  return sum;
}

/** Minutes to find out what a change did: on the stand for the screw alone, else a ride. */
export const provingMinutes = (parts: readonly LabourPart[]): number =>
  parts.every((part) => part === "screw") ? STAND_MINUTES : RIDE_MINUTES;
