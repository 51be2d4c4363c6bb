import { normalCumulative } from "../../numerics/normal.ts";
import { LEAN_LIMIT } from "../loss.ts";
import { PARTNER_VALUES } from "./drawer-space.ts";
import { CIRCUIT_COUNT, type LossTable, quadraticAt, TERMS, TOP_OPENINGS } from "./loss-table.ts";
import type { PartnerTree } from "./partner-tree.ts";

/** Shifts under "needle" are told apart by cells over this range, ln ratio; the edge under "main" is sought over this one. */
const NEEDLES = { least: -1, most: 1, cells: 256 };
const MAINS = { least: -1.5, most: 1.5, step: 0.01, close: 2e-4 };
/** The floor must exceed the limit by more than sums round. */
const ROUNDING = 1e-9;
/** Where the variance of a circuit's effectiveness stands among the terms of a quadratic. */
const SQUARES = [7, 13, 18, 22, 25, 27];

/**
 * Rules out whole branches by the lean limit: where even the richest of a node leaves the chance too large.
 *
 * Under part h the standardised limit is z_h(d) = (limit − m)/s with m = μ + κ·d and s(d) = the spread of a sum of
 * normal variables, so |s(d) − s(d′)| ≤ ‖d − d′‖_K ≤ Σ √K_cc |d_c − d′_c| (triangle inequality). Let r_h be the least of
 * κ_c/√K_cc over the circuits. For any d ≤ d₁ in every circuit, Δ = d₁ − d has κ·Δ ≥ r_h ‖Δ‖_K, and
 *
 *     z_h(d) = (z₁ s₁ + κ·Δ)/s(d) ≥ (z₁ s₁ + r_h ‖Δ‖)/s(d),   s₁ − ‖Δ‖ ≤ s(d) ≤ s₁ + ‖Δ‖.
 *
 * If |z₁| ≤ r_h this is at least z₁: r_h ‖Δ‖ ≥ z₁ (s(d) − s₁) whichever sign z₁ has. If z₁ > r_h ≥ 0 it is at least r_h.
 * So Σ_h p_h Φ(z₁), or Φ(r_h) for it, or 0 where z₁ < −r_h, is a floor under the chance of everything leaner than d₁. A
 * setup leaner in each circuit than one where this floor exceeds the limit is ruled out by it.
 */
export class LeanEdge {
  readonly #table: LossTable;
  readonly #tree: PartnerTree;
  readonly #limit: number;
  /** r_h by opening of the top and part. */
  readonly #reach: Float64Array;
  /** By node, opening of the top and needle cell: up to this shift under "main" all is ruled out; NaN until asked. */
  readonly #edges: Float64Array;
  readonly #lines: Float64Array;

  constructor(table: LossTable, tree: PartnerTree, limit: number) {
    this.#table = table;
    this.#tree = tree;
    this.#limit = limit + ROUNDING;
    const tops = TOP_OPENINGS.length;
    this.#reach = new Float64Array(tops * table.parts);
    for (let i = 0; i < this.#reach.length; i++) {
      let least = Infinity;
      for (let c = 0; c < CIRCUIT_COUNT; c++) {
        const answer = table.means[i * TERMS + 1 + c]!;
        const spread = Math.sqrt(Math.max(0, table.variances[i * TERMS + SQUARES[c]!]!));
        least = Math.min(least, spread > 0 || answer < 0 ? answer / spread : Infinity);
      }
      this.#reach[i] = least;
    }
    this.#edges = new Float64Array(limit < 1 ? tree.nodes * tops * NEEDLES.cells : 0).fill(Number.NaN);
    this.#lines = new Float64Array(5 * table.parts);
  }

  /** Bytes held. */
  get bytes(): number {
    return this.#edges.byteLength;
  }

  /** True when no partner of the node keeps the limit with these shifts under "needle" and "main" at the eleven openings. */
  rulesOut(node: number, needle: Float64Array, main: Float64Array): boolean {
    if (this.#limit >= 1) return false;
    for (let top = TOP_OPENINGS.length - 1; top >= 0; top--) {
      const u = TOP_OPENINGS[top]!;
      const across = ((needle[u]! - NEEDLES.least) * NEEDLES.cells) / (NEEDLES.most - NEEDLES.least);
      if (!(across < NEEDLES.cells)) continue;
      const cell = across > 0 ? Math.floor(across) : 0;
      const at = (node * TOP_OPENINGS.length + top) * NEEDLES.cells + cell;
      let edge = this.#edges[at]!;
      if (Number.isNaN(edge)) {
        edge = this.#edgeOf(node, top, cell);
        this.#edges[at] = edge;
      }
      if (main[u]! <= edge) return true;
    }
    return false;
  }

  /**
   * The richest main found at which the floor still exceeds the limit: an end that was checked is given back. What
   * rules out the node above rules out this one, so the search starts there.
   */
  #edgeOf(node: number, top: number, cell: number): number {
    const needle = NEEDLES.least + ((cell + 1) * (NEEDLES.most - NEEDLES.least)) / NEEDLES.cells;
    this.#draw(node, top, needle);
    const above = this.#edges[(this.#tree.parent[node]! * TOP_OPENINGS.length + top) * NEEDLES.cells + cell]!;
    let low = above;
    let step = MAINS.step;
    if (!(above > MAINS.least)) {
      low = MAINS.least;
      step = MAINS.most - MAINS.least;
      if (!(this.#floorAt(top, low) > this.#limit)) return -Infinity;
    }
    while (low + step < MAINS.most && this.#floorAt(top, low + step) > this.#limit) {
      low += step;
      step *= 2;
    }
    for (step /= 2; step > MAINS.close; step /= 2) {
      if (this.#floorAt(top, low + step) > this.#limit) low += step;
    }
    return low;
  }

  /** Mean and variance of each part along "main", the rest at the node's richest: m = a + b x, v = c + d x + e x². */
  #draw(node: number, top: number, needle: number): void {
    const { parts, means, variances } = this.#table;
    const o = (node * TOP_OPENINGS.length + top) * PARTNER_VALUES;
    const { richest } = this.#tree;
    const pilot = richest[o]!;
    const screw = richest[o + 1]!;
    const slide = richest[o + 2]!;
    const lift = richest[o + 3]!;
    const air = richest[o + 4]!;
    const lines = this.#lines;
    for (let h = 0; h < parts; h++) {
      const at = (top * parts + h) * TERMS;
      const m0 = quadraticAt(means, at, pilot, screw, slide, needle, lift, air);
      const m1 = quadraticAt(means, at, pilot, screw, slide, needle, lift + 1, air);
      const v0 = quadraticAt(variances, at, pilot, screw, slide, needle, lift, air);
      const v1 = quadraticAt(variances, at, pilot, screw, slide, needle, lift + 1, air);
      const v2 = quadraticAt(variances, at, pilot, screw, slide, needle, lift - 1, air);
      const o = 5 * h;
      lines[o] = m0;
      lines[o + 1] = m1 - m0;
      lines[o + 2] = v0;
      lines[o + 3] = 0.5 * (v1 - v2);
      lines[o + 4] = 0.5 * (v1 + v2) - v0;
    }
  }

  #floorAt(top: number, main: number): number {
    const { parts, weight } = this.#table;
    const lines = this.#lines;
    let chance = 0;
    for (let h = 0; h < parts; h++) {
      const mean = lines[5 * h]! + lines[5 * h + 1]! * main;
      const variance = lines[5 * h + 2]! + main * (lines[5 * h + 3]! + main * lines[5 * h + 4]!);
      const z = (LEAN_LIMIT - mean) / Math.sqrt(variance);
      const reach = this.#reach[top * parts + h]!;
      if (reach >= 0 && z >= -reach) chance += weight[h]! * normalCumulative(Math.min(z, reach));
    }
    return chance;
  }
}
