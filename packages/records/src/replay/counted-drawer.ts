import type { UsedEntry } from "../entry.ts";
import type { DrawerPart } from "../kinds/drawer-parts.ts";

/** A part of the drawer with how many there are, as the records say it. */
export interface CountedPart {
  readonly part: DrawerPart;
  readonly count: number;
}

const plain = (text: string | undefined): string => (text ?? "").trim().toLowerCase();

/** What makes two entries the same part. */
export function partKey(part: DrawerPart): string {
  switch (part.part) {
    case "main":
    case "pilot":
      return `${part.part} ${part.number} ${part.numbering ?? "bore"} ${plain(part.maker)}`;
    case "needle":
      return `needle ${plain(part.marks)}`;
    case "needleJet":
      return `needleJet ${part.boreMm}`;
    case "slide":
      return `slide ${part.cutawayMm}`;
  }
}

/** A part with what is told of it later laid over, under the marks it was first written with. */
function sameWith(before: DrawerPart, later: DrawerPart): DrawerPart {
  const marks = before.part === "needle" ? { marks: before.marks } : {};
  return { ...before, ...later, ...marks } as DrawerPart;
}

/** The drawer, counted from the records in the order of the story. */
export class CountedDrawer {
  readonly #parts = new Map<string, CountedPart>();

  get parts(): readonly CountedPart[] {
    return [...this.#parts.values()];
  }

  /** Takes a record of the drawer; gives the parts of which more were used than there were. */
  take(entry: UsedEntry & { readonly kind: "parts-counted" | "parts-bought" | "parts-used" }): DrawerPart[] {
    const short: DrawerPart[] = [];
    for (const part of entry.body.parts) {
      const key = partKey(part);
      const before = this.#parts.get(key);
      let count = part.count;
      if (entry.kind === "parts-bought") count = (before?.count ?? 0) + part.count;
      if (entry.kind === "parts-used") {
        count = (before?.count ?? 0) - part.count;
        if (count < 0) short.push(part);
      }
      const told = before === undefined ? part : sameWith(before.part, part);
      this.#parts.set(key, { part: told, count: Math.max(0, count) });
    }
    return short;
  }
}
