import { type LossTable, leanChanceAt, leanShare, TOP_OPENINGS } from "./loss-table.ts";

/** A chance that is over the limit by more than sums round is over it however it is summed. */
const ROUNDING = 1e-9;

/**
 * Whether a setup keeps the lean limit: the same answer as `leanChance`, sooner. The parts of the belief that weigh most
 * near the centre are summed first; what is over the limit with some of them is over it with all.
 */
export class LeanTest {
  readonly #table: LossTable;
  readonly #limit: number;
  readonly #order: Int32Array;

  constructor(table: LossTable, centre: Float64Array, limit: number) {
    this.#table = table;
    this.#limit = limit;
    const { parts } = table;
    this.#order = new Int32Array(TOP_OPENINGS.length * parts);
    for (let top = 0; top < TOP_OPENINGS.length; top++) {
      const shares = Float64Array.from({ length: parts }, (_, h) => leanShare(table, top, h, centre));
      const own = this.#order.subarray(top * parts, (top + 1) * parts);
      own.set(own.map((_, h) => h).sort((a, b) => shares[b]! - shares[a]! || a - b));
    }
  }

  keeps(shift: Float64Array): boolean {
    if (this.#limit >= 1) return true;
    const { parts } = this.#table;
    for (let top = TOP_OPENINGS.length - 1; top >= 0; top--) {
      let chance = 0;
      for (let i = 0; i < parts; i++) {
        chance += leanShare(this.#table, top, this.#order[top * parts + i]!, shift);
        if (chance > this.#limit + ROUNDING) return false;
      }
      if (chance > this.#limit - ROUNDING && !(leanChanceAt(this.#table, top, shift) <= this.#limit))
        return false;
    }
    return true;
  }
}
