/** How a fitted part came to be known. */
export const HOW_KNOWN = ["measured", "read by eye", "told", "unknown"] as const;
export type HowKnown = (typeof HOW_KNOWN)[number];

/** A part with how it is known; `part` is null when nobody knows what is fitted. */
export interface Known<Part> {
  readonly part: Part | null;
  readonly how: HowKnown;
}

export const known = <Part>(part: Part, how: Exclude<HowKnown, "unknown"> = "read by eye"): Known<Part> => ({
  part,
  how,
});

export const UNKNOWN: Known<never> = { part: null, how: "unknown" };
