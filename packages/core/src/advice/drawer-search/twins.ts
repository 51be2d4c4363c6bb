import { OPENINGS } from "../../units/opening.ts";
import { type DrawerSpace, PARTNER_VALUES } from "./drawer-space.ts";

/** What is left to search after twins: numbers of needles, main jets and partners. */
export interface Considered {
  readonly needles: readonly number[];
  readonly mains: readonly number[];
  readonly partners: readonly number[];
}

/**
 * The options that can stand in a list of `wanted`. Of options with the same shift to the last bit and the same parts
 * to change, one after the first `wanted` cannot: with it exchanged for each of those, `wanted` setups have the same
 * figures and go before it by their numbers.
 * @param span the needles to search, first and one past the last
 */
export function withoutTwins(
  space: DrawerSpace,
  span: readonly [number, number],
  wanted: number,
): Considered {
  const { shifts, needleMask, mainMask, partners } = space;
  const n = OPENINGS.length;
  const needles = [
    { table: needleMask, width: 1 },
    { table: shifts.needleResistance, width: n },
    { table: shifts.needleAlone, width: n },
  ];
  const mains = [
    { table: mainMask, width: 1 },
    { table: shifts.mainResistance, width: 1 },
    { table: shifts.mainAlone, width: n },
  ];
  const all = [
    { table: partners.mask, width: 1 },
    { table: partners.shift, width: n * PARTNER_VALUES },
  ];
  return {
    needles: firstOfEach(span[0], span[1], needles, wanted),
    mains: firstOfEach(0, mainMask.length, mains, wanted),
    partners: firstOfEach(0, partners.count, all, wanted),
  };
}

interface Rows {
  readonly table: Float64Array | Uint8Array;
  readonly width: number;
}

/** Numbers from `from` on, of each kind of equal rows the first few. */
function firstOfEach(from: number, to: number, rows: readonly Rows[], few: number): readonly number[] {
  const met = new Map<number, { readonly first: number; count: number }[]>();
  const kept: number[] = [];
  for (let i = from; i < to; i++) {
    const hash = hashOf(rows, i);
    const kinds = met.get(hash) ?? [];
    if (kinds.length === 0) met.set(hash, kinds);
    let kind = kinds.find(({ first }) => equal(rows, first, i));
    if (kind === undefined) {
      kind = { first: i, count: 0 };
      kinds.push(kind);
    }
    kind.count++;
    if (kind.count <= few) kept.push(i);
  }
  return kept;
}

const word = new Float64Array(1);
const halves = new Uint32Array(word.buffer);

function hashOf(rows: readonly Rows[], i: number): number {
  let hash = 17;
  for (const { table, width } of rows) {
    for (let at = i * width; at < (i + 1) * width; at++) {
      word[0] = table[at]!;
      hash = Math.imul(hash ^ halves[0]!, 0x01000193);
      hash = Math.imul(hash ^ halves[1]!, 0x01000193);
    }
  }
  return hash;
}

function equal(rows: readonly Rows[], i: number, j: number): boolean {
  return rows.every(({ table, width }) => {
    for (let k = 0; k < width; k++) if (table[i * width + k] !== table[j * width + k]) return false;
    return true;
  });
}
