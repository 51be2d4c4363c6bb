import { boreHeight, openingName, SPOKEN_OPENINGS, toMillimetre } from "@jetwright/core";
import { bikeCase } from "@jetwright/records";
import type { EngineState } from "../state.ts";

export interface ThrottleMarks {
  /** Full lift of the slide, mm. */
  readonly heightMm: number;
  readonly widthMm: number;
  /** Nobody noted the bore: it is what is usual for the engine. */
  readonly assumed: boolean;
  readonly shape: "round" | "oval" | "D";
  readonly marks: readonly { readonly opening: string; readonly liftMm: number }[];
}

/** The slide lift at each mark of the grip; null when nobody described the engine. */
export function throttleMarks(
  { shop }: EngineState,
  { bike }: { readonly bike: string },
): ThrottleMarks | null {
  const story = bikeCase(shop, bike);
  if (!story.ok) return null;
  const { bore } = story.value.now.setup.body;
  const heightMm = toMillimetre(boreHeight(bore));
  return {
    heightMm,
    widthMm: toMillimetre(bore.shape === "round" ? bore.diameter : bore.width),
    assumed: shop.bikes.get(bike)?.description?.carburetor?.bore === undefined,
    shape: bore.shape,
    marks: SPOKEN_OPENINGS.map((opening) => ({ opening: openingName(opening), liftMm: opening * heightMm })),
  };
}
