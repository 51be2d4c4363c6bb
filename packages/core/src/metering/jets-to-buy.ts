import type { Metre } from "../units/quantity.ts";

/** A place and season a bike is ridden in, and the range of main jets that serve it. */
export interface Wanted {
  readonly bike: string;
  readonly height: Metre;
  readonly celsius: number;
  /** Smallest number that is not lean there. */
  readonly least: number;
  /** Largest number that is not too rich there. */
  readonly most: number;
}

export interface JetToBuy {
  readonly number: number;
  /** What it serves that no other chosen or owned jet does. */
  readonly serves: readonly Wanted[];
}

export interface Purchase {
  readonly buy: readonly JetToBuy[];
  /** What the jets owned serve already. */
  readonly served: readonly Wanted[];
  /** What no size sold can serve. */
  readonly outOfReach: readonly Wanted[];
}

const fits = ({ least, most }: Wanted, number: number): boolean =>
  number >= least - 1e-9 && number <= most + 1e-9;

/**
 * The fewest jets to add to those owned so that every wanted range holds one. Exact: ranges on a line are served by
 * the fewest points when each still open range, taken by its upper end, gets the largest size that fits it
 * (interval stabbing; common textbook result, no source). Ties go to the richer jet.
 * @param sizes the sizes that can be bought
 */
export function jetsToBuy(
  wanted: readonly Wanted[],
  owned: readonly number[],
  sizes: readonly number[],
): Purchase {
  const served = wanted.filter((want) => owned.some((number) => fits(want, number)));
  const reachable = (want: Wanted): readonly number[] => sizes.filter((number) => fits(want, number));
  const open = wanted.filter((want) => !served.includes(want));
  const outOfReach = open.filter((want) => reachable(want).length === 0);
  let left = open
    .filter((want) => reachable(want).length > 0)
    .sort((a, b) => Math.max(...reachable(a)) - Math.max(...reachable(b)) || a.least - b.least);
  const buy: JetToBuy[] = [];
  while (left.length > 0) {
    const number = Math.max(...reachable(left[0]!));
    const serves = left.filter((want) => fits(want, number));
    buy.push({ number, serves });
    left = left.filter((want) => !serves.includes(want));
  }
  return { buy, served, outOfReach };
}
