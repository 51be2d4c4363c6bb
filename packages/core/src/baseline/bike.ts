import type { JetNumbering } from "../parts/jet.ts";
import type { ScrewKind } from "../parts/setup.ts";
import type { CubicMetre, Metre } from "../units/quantity.ts";
import type { Use } from "./use.ts";

/** A bike as a caller can describe it, before anything of its own is on record. */
export interface BikeToStart {
  readonly strokes: 2 | 4;
  /** Swept volume that this one carburetor feeds; null when not known. */
  readonly displacement: CubicMetre | null;
  /** Bore of the carburetor, for other shapes of the round one with the same area; null when not known. */
  readonly bore: Metre | null;
  /** Null: not said; reckoned as the middle one, with a little more doubt. */
  readonly use: Use | null;
  readonly screwKind: ScrewKind | null;
  /** Which numbering its jets have; null answers in both, since the two are never converted. */
  readonly mainNumbering: JetNumbering | null;
  readonly pilotNumbering: JetNumbering | null;
}
