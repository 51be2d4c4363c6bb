import type { Opening } from "../units/quantity.ts";

/** Mechanical faults that look like jetting. */
export const FAULTS = [
  "air-leak",
  "blocked-pilot",
  "float-level",
  "float-valve",
  "fuel-supply",
  "choke-not-seating",
  "air-filter",
  "slide-or-cable",
  "worn-needle-and-jet",
  "reed",
  "ignition",
  "plug-heat-range",
  "compression",
  "gearbox-side-seal",
  "exhaust-blocked",
  "power-valve",
  "fuel-or-oil-wrong",
  "cooling",
  "loose-head",
  "idle-stop",
  "accelerator-pump",
  "valve-clearance",
] as const;
export type FaultId = (typeof FAULTS)[number];

/** A: repeatable and measurable. B: good with a careful rider. C: often misjudged. D: weak. */
export type Reliability = "A" | "B" | "C" | "D";

/** One row of the sign catalogue; what it is called stands in the words of a language, by its id. Figures are chances of noticing it, given the state; only ratios matter. */
export interface Sign {
  /** Our own name for it, words joined by hyphens; never reused for another meaning. */
  readonly id: string;
  /** The openings it speaks of, with weights that sum to 1; a report's own opening overrides it. */
  readonly speaksOf: readonly (readonly [Opening, number])[];
  /** Chance of noticing it when the mixture there is clearly rich, right, clearly lean. Null: the mixture does not matter. */
  readonly chance: { readonly rich: number; readonly right: number; readonly lean: number };
  /**
   * Chance of noticing it when that fault is present and the jets are right. For a sign of trouble the fault
   * adds to what the mixture does (noisy-or); for a sign of health (`healthy`) the fault takes it away.
   */
  readonly faults: Partial<Readonly<Record<FaultId, number>>>;
  readonly healthy: boolean;
  readonly reliability: Reliability;
  /** Signs of one group are the same evidence and have one vote together. */
  readonly group: string;
  readonly strokes: "two" | "four" | "both";
  /** True: only counts with the engine fully warm. */
  readonly warmOnly: boolean;
  /** True: stop riding and tuning now. */
  readonly stop: boolean;
  /** Where the figures come from: the row of the shared table and its own source mark. */
  readonly source: string;
}

export interface Fault {
  readonly id: FaultId;
  /** Chance that a bike brought in with a running complaint has it, before anything is known. */
  readonly prior: { readonly two: number; readonly four: number };
  readonly source: string;
}
