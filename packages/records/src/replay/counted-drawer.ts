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

/** A part as it is spoken of in a problem. */
export function partName(part: DrawerPart): string {
  switch (part.part) {
    case "main":
    case "pilot":
      return `${part.part} jet ${part.number}`;
    case "needle":
      return `needle ${part.marks}`;
    case "needleJet":
      return `needle jet ${part.boreMm} mm`;
    case "slide":
      return `slide ${part.cutawayMm} mm`;
  }
}

/** A part with what is told of it later laid over, under the marks it was first written with. */
function sameWith(before: DrawerPart, later: DrawerPart): DrawerPart {
  const marks = before.part === "needle" ? { marks: before.marks } : {};
  return { ...before, ...later, ...marks } as DrawerPart;
}

/** A record that may move parts in or out of the drawer. */
export type DrawerEntry = Extract<
  UsedEntry,
  { readonly kind: "parts-counted" | "parts-bought" | "parts-used" | "setup-fitted" }
>;

/** A part taken that the drawer did not hold. */
export interface Shortage {
  readonly part: DrawerPart;
  readonly taken: DrawerEntry;
  /** What took the last one that was there; null where there was none. */
  readonly lastTaken: DrawerEntry | null;
}

/** The drawer, counted from the records in the order of the story. */
export class CountedDrawer {
  readonly #parts = new Map<string, CountedPart>();
  readonly #lastTaken = new Map<string, DrawerEntry>();
  readonly #short = new Map<string, Shortage[]>();

  get parts(): readonly CountedPart[] {
    return [...this.#parts.values()];
  }

  /** What does not add up and was not counted anew since. */
  get shortages(): readonly Shortage[] {
    return [...this.#short.values()].flat();
  }

  /** Takes a record; gives what it took that was not there. */
  take(entry: DrawerEntry): readonly Shortage[] {
    switch (entry.kind) {
      case "parts-counted":
        for (const part of entry.body.parts) this.#count(part);
        return [];
      case "parts-bought":
        for (const part of entry.body.parts) this.#set(part, this.#held(part) + part.count);
        return [];
      case "parts-used":
        return entry.body.parts.flatMap((part) => this.#takeOut(part, entry));
      case "setup-fitted": {
        const { took = [], kept = [] } = entry.body.drawer ?? {};
        const short = took.flatMap((part) => this.#takeOut(part, entry));
        for (const part of kept) this.#set(part, this.#held(part) + part.count);
        return short;
      }
      default:
        return entry satisfies never;
    }
  }

  #held(part: DrawerPart): number {
    return this.#parts.get(partKey(part))?.count ?? 0;
  }

  #set(part: DrawerPart, count: number): void {
    const key = partKey(part);
    const before = this.#parts.get(key);
    this.#parts.set(key, { part: before === undefined ? part : sameWith(before.part, part), count });
  }

  #count(part: DrawerPart): void {
    this.#set(part, part.count);
    this.#lastTaken.delete(partKey(part));
    this.#short.delete(partKey(part));
  }

  #takeOut(part: DrawerPart, taken: DrawerEntry): Shortage[] {
    const key = partKey(part);
    const left = this.#held(part) - part.count;
    this.#set(part, Math.max(0, left));
    const short = { part, taken, lastTaken: this.#lastTaken.get(key) ?? null };
    this.#lastTaken.set(key, taken);
    if (left >= 0) return [];
    this.#short.set(key, [...(this.#short.get(key) ?? []), short]);
    return [short];
  }
}
