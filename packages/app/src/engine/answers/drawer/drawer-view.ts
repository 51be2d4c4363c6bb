import { type CountedPart, shopDrawer } from "@jetwright/records";
import type { EngineState } from "../../state.ts";

export interface DrawerView {
  readonly parts: readonly CountedPart[];
  /** Numbering and maker of the jets on the bikes, to offer when jets are added. */
  readonly kinds: readonly { readonly numbering: "bore" | "flow"; readonly maker: string }[];
}

/** What the shop owns, largest number last in each kind. */
export function drawerView({ shop }: EngineState, _given: null): DrawerView {
  const kinds = new Map<string, { numbering: "bore" | "flow"; maker: string }>();
  const { mains, pilots } = shopDrawer(shop);
  for (const { part } of [...mains, ...pilots]) {
    kinds.set(`${part.numbering} ${part.maker}`, { numbering: part.numbering, maker: part.maker });
  }
  return { parts: [...shop.drawer].sort(byPart), kinds: [...kinds.values()] };
}

const ORDER = ["main", "pilot", "needle", "needleJet", "slide"] as const;

function sizeOf({ part }: CountedPart): number {
  switch (part.part) {
    case "main":
    case "pilot":
      return part.number;
    case "needleJet":
      return part.boreMm;
    case "slide":
      return part.cutawayMm;
    case "needle":
      return 0;
  }
}

const byPart = (a: CountedPart, b: CountedPart): number =>
  ORDER.indexOf(a.part.part) - ORDER.indexOf(b.part.part) || sizeOf(a) - sizeOf(b);
