import { accept, type Opening, type Outcome, type Shares, shares } from "@jetwright/core";
import { bikeCase } from "@jetwright/records";
import type { ShopInWords } from "../state.ts";

/** The parts a person can change, named by the stretch of throttle they lead. */
export type Governor = "pilot" | "slide" | "needle" | "main";

/** From one opening to another, as fractions of full lift, one part has most of the say. */
export interface Stretch {
  readonly part: Governor;
  readonly from: number;
  readonly to: number;
}

/** How the say is shared at an opening, together 1. */
export interface LeadAt {
  readonly opening: Opening;
  readonly shares: Readonly<Record<"pilot" | "needle" | "main", number>>;
  /** What half a millimetre less cutaway does, ln ratio; null where the slide has no say worth naming. */
  readonly slideStep: number | null;
}

export interface Governs {
  /** From closed to full without a gap; a part that leads nowhere is left out. */
  readonly stretches: readonly Stretch[];
  readonly at: readonly LeadAt[];
}

/** Which part leads where with what is fitted on a bike now. */
export function governsFor({ shop }: ShopInWords, { bike }: { readonly bike: string }): Outcome<Governs> {
  const story = bikeCase(shop, bike);
  if (!story.ok) return story;
  const all = shares(story.value.now);
  if (!all.ok) return all;
  return accept({
    stretches: stretchesOf(all.value),
    at: all.value.map(({ opening, pilot, outlet, needle, main, slideStep }) => ({
      opening,
      shares: { pilot: pilot + outlet, needle, main },
      slideStep: slideStep >= SLIDE_SPEAKS ? slideStep : null,
    })),
  });
}

/** Half a millimetre of cutaway moves the mixture by this much where the slide is worth naming, ln ratio. */
const SLIDE_SPEAKS = 0.02;

/**
 * Pilot until needle and main jet together have more of the say, slide as long as its step still counts, then needle
 * until the main jet has more. The ends lie on a straight line between the openings on either side.
 */
export function stretchesOf(all: readonly Shares[]): readonly Stretch[] {
  const pilotEnds = lost(all, 0, ({ pilot, outlet, needle, main }) => pilot + outlet - needle - main);
  const slideEnds = lost(all, pilotEnds, ({ slideStep }) => slideStep - SLIDE_SPEAKS);
  const needleEnds = lost(all, slideEnds, ({ needle, main }) => needle - main);
  const stretches: readonly Stretch[] = [
    { part: "pilot", from: 0, to: pilotEnds },
    { part: "slide", from: pilotEnds, to: slideEnds },
    { part: "needle", from: slideEnds, to: needleEnds },
    { part: "main", from: needleEnds, to: 1 },
  ];
  return stretches.filter(({ from, to }) => to > from);
}

/** Where a lead is first lost at or above an opening; full throttle where it never is. */
function lost(all: readonly Shares[], from: number, lead: (shares: Shares) => number): number {
  for (const [i, one] of all.entries()) {
    const now = lead(one);
    if (one.opening < from || now > 0) continue;
    const below = all[i - 1];
    const before = below === undefined ? 0 : lead(below);
    if (below === undefined || before <= 0) return Math.max(from, below?.opening ?? 0);
    return Math.max(from, below.opening + ((one.opening - below.opening) * before) / (before - now));
  }
  return 1;
}
