import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { Bore } from "./bore.ts";

/** A bore as given by a person, or what is wrong with it. Slide carburetors run from 8 to 60 mm. */
export function checkBore(bore: Bore): Outcome<Bore, "bore"> {
  const [width, height] = bore.shape === "round" ? [bore.diameter, bore.diameter] : [bore.width, bore.height];
  if (!(width >= 0.008 && width <= 0.06 && height >= 0.008 && height <= 0.06)) {
    return refuse(
      "bore",
      `The bore must be 8 to 60 mm, got ${mm(width)} by ${mm(height)} mm. Check the unit.`,
    );
  }
  if (bore.shape === "D" && height < width / 2) {
    return refuse(
      "bore",
      `A D-shaped bore is at least half as high as wide, got ${mm(width)} mm wide and ${mm(height)} mm high. Check that the two are not swapped.`,
    );
  }
  return accept(bore);
}

const mm = (x: number): number => Math.round(x * 1e5) / 100;
