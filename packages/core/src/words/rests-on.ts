/** The theory a figure of a starting point rests on: a jet goes by the carburetor's bore, the rest by common practice. */
export type TheoryBasis =
  | {
      readonly of: "main" | "pilot";
      /** The jet's bore in percent of the carburetor's, as published settings have it. */
      readonly lowPercent: number;
      readonly highPercent: number;
      /** A flow number tells the bore only roughly. */
      readonly flow: boolean;
    }
  | { readonly of: "clip" | "screw" | "cutaway" };

/** What a figure of a starting point rests on, as bare figures. */
export interface RestsOn {
  readonly theory: TheoryBasis;
  /** The shop's bikes with a say in it; null where none has. */
  readonly shop: {
    readonly bikes: number;
    readonly lowCc: number;
    readonly highCc: number;
    /** They weigh more than the theory. */
    readonly most: boolean;
  } | null;
}
