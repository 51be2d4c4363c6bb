import { areaStep, type Jet, type JetNumbering, sizesSold } from "@jetwright/core";
import type { CountedPart, DrawerEntry, DrawerPart, ShopState } from "@jetwright/records";
import type { EngineState } from "../../state.ts";
import { personOf } from "../story/person-of.ts";

/** The size usually sold next to a jet, and how many of it lie in the drawer. */
export interface NextSize {
  readonly number: number;
  /** How much more area it has than the jet, per cent; below zero less. */
  readonly percent: number;
  readonly owned: number;
}

export interface DrawerLine {
  /** The same for the same part, whatever its count. */
  readonly key: string;
  readonly part: DrawerPart;
  readonly count: number;
  /** The neighbours of a jet; null for other parts and at the ends of what is sold. */
  readonly up: NextSize | null;
  readonly down: NextSize | null;
}

export interface JetKind {
  readonly numbering: JetNumbering;
  readonly maker: string;
}

export interface DrawerGroup {
  readonly part: DrawerPart["part"];
  /** Numbering and maker of the jets in it; null for other parts. */
  readonly kind: JetKind | null;
  /** Smallest first. */
  readonly lines: readonly DrawerLine[];
}

/** Who took a part, and when. */
export interface Taker {
  /** Name of the bike it was taken for; null when it was for none. */
  readonly bike: string | null;
  readonly by: string | null;
  readonly at: number;
}

/** A part taken that the drawer did not hold. */
export interface DrawerShort {
  readonly part: DrawerPart;
  readonly taken: Taker;
  /** Who took the last one that was there; null where none was. */
  readonly lastTaken: Taker | null;
}

export interface DrawerView {
  /** What does not add up, until it is counted anew. */
  readonly short: readonly DrawerShort[];
  readonly groups: readonly DrawerGroup[];
  /** Kinds of the jets in the drawer and on the bikes, to offer when jets are added. */
  readonly kinds: readonly JetKind[];
}

const ORDER = ["main", "pilot", "needle", "needleJet", "slide"] as const;

/** What the shop owns, by kind of part, and jets by what their numbers mean and who made them. */
export function drawerView({ shop }: EngineState, _given: null): DrawerView {
  const groups = new Map<string, { part: DrawerPart["part"]; kind: JetKind | null; parts: CountedPart[] }>();
  const kinds = new Map<string, JetKind>();
  for (const counted of shop.drawer) {
    const kind = kindOf(counted.part);
    if (kind !== null) kinds.set(kindKey(kind), kinds.get(kindKey(kind)) ?? kind);
    const key = `${counted.part.part} ${kind === null ? "" : kindKey(kind)}`;
    const group = groups.get(key) ?? { part: counted.part.part, kind, parts: [] };
    group.parts.push(counted);
    groups.set(key, group);
  }
  for (const { now, description } of shop.bikes.values()) {
    for (const jet of [now.setup.parts.main, now.setup.parts.pilot]) {
      if (jet === undefined || jet === "unknown") continue;
      const numbering = jet.numbering ?? description?.carburetor?.jetNumbering ?? "bore";
      const kind = { numbering, maker: jet.maker?.trim() ?? "" };
      kinds.set(kindKey(kind), kinds.get(kindKey(kind)) ?? kind);
    }
  }
  return {
    short: shop.shortages.map(({ part, taken, lastTaken }) => ({
      part,
      taken: takerOf(taken, shop),
      lastTaken: lastTaken && takerOf(lastTaken, shop),
    })),
    groups: [...groups.values()]
      .sort((a, b) => ORDER.indexOf(a.part) - ORDER.indexOf(b.part))
      .map(({ part, kind, parts }) => ({ part, kind, lines: linesOf(parts) })),
    kinds: [...kinds.values()],
  };
}

const takerOf = (entry: DrawerEntry, shop: ShopState): Taker => ({
  bike: entry.bike && (shop.bikes.get(entry.bike)?.description?.name ?? entry.bike),
  by: personOf(entry),
  at: entry.at,
});

const plain = (text: string): string => text.trim().toLowerCase();
const kindKey = ({ numbering, maker }: JetKind): string => `${numbering} ${plain(maker)}`;

const kindOf = (part: DrawerPart): JetKind | null =>
  part.part === "main" || part.part === "pilot"
    ? { numbering: part.numbering ?? "bore", maker: part.maker?.trim() ?? "" }
    : null;

function linesOf(parts: readonly CountedPart[]): DrawerLine[] {
  const owned = (number: number): number =>
    parts.find(({ part }) => (part.part === "main" || part.part === "pilot") && part.number === number)
      ?.count ?? 0;
  return [...parts]
    .sort((a, b) => sizeOf(a.part) - sizeOf(b.part) || (nameOf(a.part) < nameOf(b.part) ? -1 : 1))
    .map(({ part, count }) => ({ key: nameOf(part), part, count, ...nextTo(part, owned) }));
}

function nextTo(
  part: DrawerPart,
  owned: (number: number) => number,
): { readonly up: NextSize | null; readonly down: NextSize | null } {
  const kind = kindOf(part);
  if (kind === null || (part.part !== "main" && part.part !== "pilot")) return { up: null, down: null };
  const sizes = sizesSold(part.part, kind.numbering);
  const jet: Jet = { number: part.number, ...kind };
  const next = (number: number | undefined): NextSize | null =>
    number === undefined
      ? null
      : { number, percent: 100 * areaStep(jet, number - jet.number), owned: owned(number) };
  return {
    up: next(sizes.find((size) => size > jet.number)),
    down: next(sizes.findLast((size) => size < jet.number)),
  };
}

function sizeOf(part: DrawerPart): number {
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

const nameOf = (part: DrawerPart): string =>
  part.part === "needle" ? plain(part.marks) : String(sizeOf(part));
