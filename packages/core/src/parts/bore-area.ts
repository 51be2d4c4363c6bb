import { arccosine } from "../numerics/elementary.ts";
import type { Metre, SquareMetre } from "../units/quantity.ts";
import type { Bore } from "./bore.ts";

/**
 * Open area of the bore with the slide at `lift`, m². The slide rises from the floor of the bore, and its
 * lower edge is taken as straight. Below 0 gives 0, above the full lift gives the whole bore. Exact for all
 * three shapes; rounding stays below 1e-9 of the result down to a lift of 1/1000 of the bore.
 * Formula: circular segment R² acos((R-h)/R) - (R-h) √(2Rh - h²), standard geometry.
 * Throws RangeError for a bore that cannot exist.
 */
export function openArea(bore: Bore, lift: Metre): SquareMetre {
  requirePossible(bore);
  switch (bore.shape) {
    case "round":
      return segment(bore.diameter / 2, bore.diameter / 2, lift) as SquareMetre;
    case "oval":
      return segment(bore.width / 2, bore.height / 2, lift) as SquareMetre;
    case "D": {
      const radius = bore.width / 2;
      const straight = bore.height - radius;
      const walls = bore.width * Math.min(Math.max(lift, 0), straight);
      if (lift <= straight) return walls as SquareMetre;
      const belowRoof = segment(radius, radius, radius + lift - straight) - (Math.PI / 2) * radius * radius;
      return (walls + belowRoof) as SquareMetre;
    }
  }
}

/** Width of the bore at the lower edge of the slide, m: how fast the open area grows with lift. 0 outside. */
export function openWidth(bore: Bore, lift: Metre): Metre {
  requirePossible(bore);
  switch (bore.shape) {
    case "round":
      return chord(bore.diameter / 2, bore.diameter / 2, lift) as Metre;
    case "oval":
      return chord(bore.width / 2, bore.height / 2, lift) as Metre;
    case "D": {
      const radius = bore.width / 2;
      const straight = bore.height - radius;
      if (lift >= 0 && lift <= straight) return bore.width;
      return (lift < 0 ? 0 : chord(radius, radius, radius + lift - straight)) as Metre;
    }
  }
}

/** Part of an ellipse below `lift` above its lowest point. */
function segment(halfWidth: number, halfHeight: number, lift: number): number {
  const h = Math.min(Math.max(lift / halfHeight, 0), 2);
  const up = 1 - h;
  return halfWidth * halfHeight * (arccosine(up) - up * Math.sqrt(h * (2 - h)));
}

function chord(halfWidth: number, halfHeight: number, lift: number): number {
  const h = lift / halfHeight;
  return h <= 0 || h >= 2 ? 0 : 2 * halfWidth * Math.sqrt(h * (2 - h));
}

function requirePossible(bore: Bore): void {
  const { width, height } = bore.shape === "round" ? { width: bore.diameter, height: bore.diameter } : bore;
  if (!(width > 0 && height > 0 && width < Infinity && height < Infinity)) {
    throw new RangeError(`A bore's sizes must be above 0 m and finite, got ${width} by ${height}`);
  }
  if (bore.shape === "D" && height < width / 2) {
    throw new RangeError(`A D bore must be at least half as high as wide, got ${width} m by ${height} m`);
  }
}
