import type { Metre } from "../units/quantity.ts";
import type { Jet } from "./jet.ts";
import type { Needle } from "./needle.ts";

/** What the shop owns and can fit today. A count of 0 is kept: it was owned once. */
export interface Drawer {
  readonly mains: readonly Stock<Jet>[];
  readonly pilots: readonly Stock<Jet>[];
  readonly needles: readonly Stock<Needle>[];
  /** Needle jets by bore. */
  readonly needleJets: readonly Stock<Metre>[];
  /** Slides by cutaway height. */
  readonly slides: readonly Stock<Metre>[];
}

export interface Stock<Part> {
  readonly part: Part;
  readonly count: number;
}

export const EMPTY_DRAWER: Drawer = { mains: [], pilots: [], needles: [], needleJets: [], slides: [] };
