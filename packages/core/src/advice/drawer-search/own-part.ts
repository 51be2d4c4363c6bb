import { writeSeriesShift } from "../../metering/part-shifts.ts";
import { exp } from "../../numerics/elementary.ts";
import { OPENINGS } from "../../units/opening.ts";
import { type Collapsed, OWN } from "./collapsed.ts";
import type { DrawerSpace } from "./drawer-space.ts";
import { CIRCUIT_COUNT } from "./loss-table.ts";
import { BOX, CELLS, type PartnerTree } from "./partner-tree.ts";

/** Needle and main jet of the combination at hand, ready to be put together with any partner. */
export class OwnPart {
  /** Shift under "needle" and "main" at the eleven openings. */
  readonly needle = new Float64Array(OPENINGS.length);
  readonly main = new Float64Array(OPENINGS.length);
  readonly #space: DrawerSpace;
  readonly #collapsed: Collapsed;
  readonly #tree: PartnerTree;
  /** A of partner-tree.ts, and the distance from the centre. */
  readonly #height = new Float64Array(OPENINGS.length);
  readonly #awayNeedle = new Float64Array(OPENINGS.length);
  readonly #awayMain = new Float64Array(OPENINGS.length);
  #base = 0;

  constructor(space: DrawerSpace, collapsed: Collapsed, tree: PartnerTree) {
    this.#space = space;
    this.#collapsed = collapsed;
    this.#tree = tree;
  }

  /** Takes up the shift alone. */
  shift(needle: number, main: number): void {
    writeSeriesShift(this.#space.shifts, needle, main, this.needle, this.main);
  }

  /** Works out what every floor starts from; after `shift`. */
  weigh(): void {
    const { centre, height, gradient, curvature, slope, base } = this.#collapsed;
    let linear = base;
    for (let u = 0; u < height.length; u++) {
      const o = u * CIRCUIT_COUNT;
      const x = this.needle[u]! - centre[o + OWN[0]]!;
      const y = this.main[u]! - centre[o + OWN[1]]!;
      const row = (o + OWN[0]) * CIRCUIT_COUNT;
      const nn = curvature[row + OWN[0]]!;
      const nm = curvature[row + OWN[1]]!;
      const mm = curvature[(o + OWN[1]) * CIRCUIT_COUNT + OWN[1]]!;
      const straight = gradient[o + OWN[0]]! * x + gradient[o + OWN[1]]! * y;
      this.#height[u] = exp(height[u]! + straight + x * (0.5 * nn * x + nm * y) + 0.5 * mm * y * y);
      linear += slope[o + OWN[0]]! * x + slope[o + OWN[1]]! * y;
      this.#awayNeedle[u] = x;
      this.#awayMain[u] = y;
    }
    this.#base = linear;
  }

  /** No partner of this node makes the expected loss smaller than this. */
  floorOver(node: number): number {
    const { floor, cellsPer, box } = this.#tree;
    const openings = this.#height.length;
    let sum = this.#base;
    for (let u = 0; u < openings; u++) {
      const o = (node * openings + u) * BOX;
      const x = this.#awayNeedle[u]!;
      const y = this.#awayMain[u]!;
      const cross =
        1 + (x > 0 ? x * box[o + 1]! : x * box[o + 2]!) + (y > 0 ? y * box[o + 3]! : y * box[o + 4]!);
      const height = cross > 0 ? this.#height[u]! * cross : 0;
      const across = height * cellsPer[u]!;
      const table = (node * openings + u) * (CELLS + 1);
      if (across < CELLS) {
        const cell = Math.floor(across);
        const low = floor[table + cell]!;
        sum += low + (across - cell) * (floor[table + cell + 1]! - low);
      } else {
        sum += floor[table + CELLS]! + (height - CELLS / cellsPer[u]!) * box[o]!;
      }
    }
    return sum;
  }

  /** The partner at this place of the tree's order makes the expected loss no smaller than this. */
  floorWith(place: number): number {
    const { features, linear } = this.#tree;
    const openings = this.#height.length;
    let sum = this.#base + linear[place]!;
    for (let u = 0, at = place * openings * 3; u < openings; u++, at += 3) {
      sum +=
        this.#height[u]! *
        (features[at]! + this.#awayNeedle[u]! * features[at + 1]! + this.#awayMain[u]! * features[at + 2]!);
    }
    return sum;
  }
}
