/** One setup of a drawer by the numbers of its options, and what it promises. */
export interface Found {
  readonly needle: number;
  readonly main: number;
  readonly slide: number;
  readonly pilot: number;
  readonly screw: number;
  /** Minutes of trouble expected with it, over the whole belief. */
  readonly trouble: number;
  /** Minutes to fit it, fetch what is missing, and prove it. */
  readonly minutes: number;
  /** What it is ranked by. */
  readonly total: number;
  /** How many parts change. */
  readonly changes: number;
}

/** Best first: by total, then fewer changes, then the numbers of the options. No two setups are equal. */
export const inOrder = (a: Found, b: Found): number =>
  a.total - b.total ||
  a.changes - b.changes ||
  a.needle - b.needle ||
  a.main - b.main ||
  a.slide - b.slide ||
  a.pilot - b.pilot ||
  a.screw - b.screw;

/** The best few of what it was offered, in order, whatever the order of offering. */
export class BestList {
  readonly #wanted: number;
  readonly #kept: Found[] = [];

  constructor(wanted: number) {
    if (!(Number.isInteger(wanted) && wanted >= 1)) {
      throw new RangeError(`A list holds a whole number of setups from 1, got ${wanted}`);
    }
    this.#wanted = wanted;
  }

  offer(found: Found): void {
    const kept = this.#kept;
    if (kept.length === this.#wanted && inOrder(found, kept[kept.length - 1]!) >= 0) return;
    const place = kept.findIndex((other) => inOrder(found, other) < 0);
    kept.splice(place < 0 ? kept.length : place, 0, found);
    if (kept.length > this.#wanted) kept.pop();
  }

  /** The total that a further setup must not exceed; Infinity while there is room. */
  get limit(): number {
    return this.#kept.length < this.#wanted ? Infinity : this.#kept[this.#wanted - 1]!.total;
  }

  get kept(): readonly Found[] {
    return [...this.#kept];
  }
}

/** The best few of several lists: what searching the whole at once gives. */
export function mergeLists(lists: readonly (readonly Found[])[], wanted: number): readonly Found[] {
  const best = new BestList(wanted);
  for (const list of lists) for (const found of list) best.offer(found);
  return best.kept;
}
