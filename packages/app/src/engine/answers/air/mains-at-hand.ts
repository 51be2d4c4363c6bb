import { type Drawer, howMany, type Jet, type JetPlace, sizesOwned, sizesSold } from "@jetwright/core";

/** Where the jets come from that an answer may name. */
export type JetSource = "sold" | "drawer";

const SIDE = { main: "mains", pilot: "pilots" } as const;

/** Sizes that could be fitted instead of a jet, in order: those of its kind in the drawer, it, and those usually sold. */
export function sizesFor(jet: Jet, place: JetPlace, drawer: Drawer, source: JetSource): readonly number[] {
  const sizes = [jet.number, ...sizesOwned(drawer, SIDE[place], jet)];
  if (source === "sold") sizes.push(...sizesSold(place, jet.numbering));
  return [...new Set(sizes)].sort((a, b) => a - b);
}

/** Whether this size of a jet's kind lies in the drawer. */
export const isOwned = (jet: Jet, place: JetPlace, drawer: Drawer, number: number): boolean =>
  howMany(drawer, SIDE[place], { ...jet, number }) > 0;
