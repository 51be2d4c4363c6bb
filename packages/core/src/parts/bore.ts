import type { Metre } from "../units/quantity.ts";

/** The shape of the hole the slide opens. */
export type Bore =
  | { readonly shape: "round"; readonly diameter: Metre }
  /** An upright or lying ellipse. */
  | { readonly shape: "oval"; readonly width: Metre; readonly height: Metre }
  /** Flat floor, straight sides, then a half circle of the width as roof. */
  | { readonly shape: "D"; readonly width: Metre; readonly height: Metre };

/** Full lift of the slide: the height of the bore. */
export const boreHeight = (bore: Bore): Metre => (bore.shape === "round" ? bore.diameter : bore.height);
