import { toMillimetre } from "../units/convert.ts";
import { accept, type Outcome, refuse } from "../units/outcome.ts";
import type { Metre } from "../units/quantity.ts";
import type { Drawer, Stock } from "./drawer.ts";
import type { Jet, JetNumbering } from "./jet.ts";
import { jetText, sameMaker } from "./jet-compare.ts";
import type { Needle } from "./needle.ts";

export type DrawerSide = keyof Drawer;
type PartOf<Side extends DrawerSide> = Drawer[Side][number]["part"];

/** How many of this part are in the drawer now. */
export const howMany = <Side extends DrawerSide>(drawer: Drawer, side: Side, part: PartOf<Side>): number =>
  find(drawer, side, part)?.count ?? 0;

/** The drawer with `count` more of a part. Throws RangeError for a count that is not a whole number of at least 1. */
export function addPart<Side extends DrawerSide>(
  drawer: Drawer,
  side: Side,
  part: PartOf<Side>,
  count = 1,
): Drawer {
  if (!(Number.isInteger(count) && count >= 1)) {
    throw new RangeError(`Parts are added in whole numbers from 1, got ${count}`);
  }
  return setCount(drawer, side, part, howMany(drawer, side, part) + count);
}

/** The drawer after one of a part was taken out to be fitted; refuses when there is none, and says what there is. */
export function usePart<Side extends DrawerSide>(
  drawer: Drawer,
  side: Side,
  part: PartOf<Side>,
): Outcome<Drawer, "none left" | "not owned"> {
  const stock = find(drawer, side, part);
  if (!stock) {
    return refuse(
      "not owned",
      `There is no ${partName(part)} in the drawer. Count it in first, or choose another.`,
    );
  }
  if (stock.count < 1) {
    return refuse(
      "none left",
      `The last ${partName(part)} is out of the drawer. Put it on the list to buy, or choose another.`,
    );
  }
  return accept(setCount(drawer, side, part, stock.count - 1));
}

/** The drawer after somebody looked and counted. Refuses a count that is not a whole number of at least 0. */
export function countPart<Side extends DrawerSide>(
  drawer: Drawer,
  side: Side,
  part: PartOf<Side>,
  count: number,
): Outcome<Drawer, "count"> {
  if (Number.isInteger(count) && count >= 0) return accept(setCount(drawer, side, part, count));
  return refuse(
    "count",
    `A count is a whole number, 0 or more; got ${count}. Count ${partName(part)} again.`,
  );
}

/** Jet sizes in the drawer of one numbering and maker, smallest first. */
export function sizesOwned(
  drawer: Drawer,
  side: "mains" | "pilots",
  kind: { readonly numbering: JetNumbering; readonly maker: string },
): readonly number[] {
  return drawer[side]
    .filter(({ part, count }) => count > 0 && sameKind(part, { ...kind, number: part.number }))
    .map(({ part }) => part.number)
    .sort((a, b) => a - b);
}

/**
 * The owned jet next to `jet` on the richer (larger) or leaner side, of its own numbering and maker; others cannot be
 * compared. Refuses when there is none.
 */
export function nextOwned(
  drawer: Drawer,
  side: "mains" | "pilots",
  jet: Jet,
  direction: "richer" | "leaner",
): Outcome<Jet, "not owned"> {
  const sizes = sizesOwned(drawer, side, jet);
  const number =
    direction === "richer"
      ? sizes.find((size) => size > jet.number)
      : sizes.filter((size) => size < jet.number).pop();
  if (number !== undefined) return accept({ ...jet, number });
  const has = sizes.length === 0 ? "none of its kind" : sizes.join(", ");
  return refuse(
    "not owned",
    `No jet ${direction} than ${jetText(jet)} is in the drawer (it holds ${has}). Buy one ${direction === "richer" ? "larger" : "smaller"}.`,
  );
}

function setCount<Side extends DrawerSide>(
  drawer: Drawer,
  side: Side,
  part: PartOf<Side>,
  count: number,
): Drawer {
  const stocks = drawer[side] as readonly Stock<PartOf<Side>>[];
  const place = stocks.findIndex((stock) => samePart(stock.part, part));
  const stock = { part: place < 0 ? part : better(stocks[place]!.part, part), count };
  return {
    ...drawer,
    [side]: place < 0 ? [...stocks, stock] : stocks.map((old, i) => (i === place ? stock : old)),
  };
}

const find = <Side extends DrawerSide>(
  drawer: Drawer,
  side: Side,
  part: PartOf<Side>,
): Stock<PartOf<Side>> | undefined =>
  (drawer[side] as readonly Stock<PartOf<Side>>[]).find((stock) => samePart(stock.part, part));

type AnyPart = Jet | Needle | Metre;
const isNeedle = (part: AnyPart): part is Needle => typeof part === "object" && "marks" in part;
const isJet = (part: AnyPart): part is Jet => typeof part === "object" && "number" in part;

/** Bores and cutaways are the same within a thousandth of a millimetre; needles by marks and grooves. */
function samePart(a: AnyPart, b: AnyPart): boolean {
  if (isJet(a) && isJet(b)) return sameKind(a, b);
  if (isNeedle(a) && isNeedle(b)) return sameNeedle(a, b);
  return typeof a === "number" && typeof b === "number" && Math.abs(a - b) < 1e-6;
}

const sameKind = (a: Jet, b: Jet): boolean =>
  a.number === b.number && a.numbering === b.numbering && sameMaker(a, b);

/** Without marks only the same measured shape counts as the same needle. */
function sameNeedle(a: Needle, b: Needle): boolean {
  const marks = (needle: Needle): string => needle.marks.trim().toLowerCase();
  if (marks(a) !== marks(b) || a.grooves !== b.grooves) return false;
  if (Math.abs(a.groovePitch - b.groovePitch) > 1e-5) return false;
  return marks(a) !== "" || JSON.stringify(a.profile) === JSON.stringify(b.profile);
}

/** Keeps a measured profile when the same needle is named again without one. */
const better = <Part extends AnyPart>(old: Part, fresh: Part): Part =>
  isNeedle(old) && isNeedle(fresh) && fresh.profile === null ? old : fresh;

function partName(part: AnyPart): string {
  if (isJet(part)) return `jet ${jetText(part)}`;
  if (isNeedle(part)) return `needle ${part.marks.trim() || "without marks"}`;
  return `${Math.round(toMillimetre(part) * 1000) / 1000} mm part`;
}
