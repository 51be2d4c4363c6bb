/**
 * How one part stands in a setup, as bare figures: what a language needs to name it in its own order, case and gender.
 * Null: not known.
 */
export type PartStand =
  | { readonly part: "main" | "pilot"; readonly number: number | null }
  | { readonly part: "clip"; readonly groove: number | null }
  | { readonly part: "needle"; readonly marks: string | null; readonly groove: number | null }
  | { readonly part: "slide"; readonly cutawayMm: number | null }
  | { readonly part: "screw"; readonly kind: "air" | "fuel"; readonly turns: number | null }
  | { readonly part: "needleJet"; readonly boreMm: number | null };

/** A part before and after a change. */
export interface PartMove {
  readonly from: PartStand;
  readonly to: PartStand;
}

/** A jet as it is spoken of; an empty maker is one nobody named. */
export interface JetSpoken {
  readonly number: number;
  readonly numbering: "bore" | "flow";
  readonly maker: string;
}
