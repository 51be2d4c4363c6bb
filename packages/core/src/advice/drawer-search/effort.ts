import type { BikeCase, LabourPart } from "../case.ts";
import { BUY_MINUTES, labourMinutes, provingMinutes } from "../labour.ts";
import type { Option } from "../options.ts";

const PARTS: readonly LabourPart[] = ["main", "pilot", "needle", "clip", "slide", "screw", "needleJet"];
const BUY = 1 << PARTS.length;
const MASKS = BUY << 1;

/** Which parts an option changes, and whether one must be bought, as bits. */
export function maskOf({ changes, toBuy }: Option): number {
  const parts = changes.reduce((mask, part) => mask | (1 << PARTS.indexOf(part)), 0);
  return toBuy.length > 0 ? parts | BUY : parts;
}

export const changesIn = (mask: number): number => PARTS.filter((_, p) => (mask & (1 << p)) !== 0).length;

/** Minutes by mask. */
export interface Effort {
  /** To fit the parts, fetch what is missing and prove them. */
  readonly minutes: Float64Array;
  /** The least of these over every mask that holds this one: a floor for what more may be changed. */
  readonly floor: Float64Array;
}

export function effortFor(own: BikeCase["minutes"]): Effort {
  const minutes = Float64Array.from({ length: MASKS }, (_, mask) => {
    const parts = PARTS.filter((_, p) => (mask & (1 << p)) !== 0);
    if (parts.length === 0) return 0;
    return labourMinutes(parts, own) + provingMinutes(parts) + ((mask & BUY) === 0 ? 0 : BUY_MINUTES);
  });
  const floor = minutes.map((_, mask) => {
    let least = Infinity;
    for (let wider = mask; wider < MASKS; wider++) {
      if ((wider & mask) === mask) least = Math.min(least, minutes[wider]!);
    }
    return least;
  });
  return { minutes, floor };
}
