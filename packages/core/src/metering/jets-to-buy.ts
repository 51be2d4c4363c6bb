import type { Kelvin, Metre } from "../units/quantity.ts";

/** A place and season a bike is ridden in, and the range of jet numbers that serve it. */
export interface Wanted {
  readonly bike: string;
  readonly height: Metre;
  readonly temperature: Kelvin;
  /** Smallest number that is not lean there; infinite where no jet can do it. */
  readonly least: number;
  /** Largest number that is not too rich there. */
  readonly most: number;
  /** The jet in that bike now: it serves this bike alone. Null where it is not known. */
  readonly fitted: number | null;
}

export interface JetToBuy {
  readonly number: number;
  /** What it serves that no other chosen or owned jet does. */
  readonly serves: readonly Wanted[];
}

export interface Purchase {
  /** In the order chosen, smallest first. */
  readonly buy: readonly JetToBuy[];
  /** What the jets owned and fitted serve already. */
  readonly served: readonly Wanted[];
  /** What no size sold can serve. */
  readonly outOfReach: readonly Wanted[];
}

const fits = ({ least, most }: Wanted, number: number): boolean =>
  number >= least - 1e-9 && number <= most + 1e-9;

/**
 * The fewest jets to add to those owned and fitted so that every wanted range holds one. Exact: ranges on a line are
 * served by the fewest points when each still open range, taken by its upper end, gets the largest size that fits it
 * (interval stabbing; common textbook result, no source). Ties go to the richer jet.
 * @param owned the sizes in the drawer, for any bike
 * @param sizes the sizes that can be bought
 */
export function jetsToBuy(
  wanted: readonly Wanted[],
  owned: readonly number[],
  sizes: readonly number[],
): Purchase {
  const has = (want: Wanted): boolean =>
    owned.some((number) => fits(want, number)) || (want.fitted !== null && fits(want, want.fitted));
  const served = wanted.filter(has);
  const open = wanted
    .filter((want) => !has(want))
    .map((want) => ({ want, best: Math.max(...sizes.filter((number) => fits(want, number))) }));
  let left = open
    .filter(({ best }) => best > -Infinity)
    .sort((a, b) => a.best - b.best || a.want.least - b.want.least);
  const buy: JetToBuy[] = [];
  while (left.length > 0) {
    const number = left[0]!.best;
    buy.push({ number, serves: left.filter(({ want }) => fits(want, number)).map(({ want }) => want) });
    left = left.filter(({ want }) => !fits(want, number));
  }
  return { buy, served, outOfReach: open.filter(({ best }) => best === -Infinity).map(({ want }) => want) };
}
