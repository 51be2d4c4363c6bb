import { exp } from "../../numerics/elementary.ts";
import { MINUTES } from "../loss.ts";
import { type Collapsed, OWN, PARTNER } from "./collapsed.ts";
import { PARTNER_VALUES, type Partners } from "./drawer-space.ts";
import { CIRCUIT_COUNT, TOP_OPENINGS } from "./loss-table.ts";

/** Steps of a floor's table, and how far it reaches over the height at the centre. */
export const CELLS = 96;
const REACH = 10;
/** A leaf holds so many partners at most; in a large drawer more, so that the tables stay within a few megabytes. */
const LEAF = 8;
const MOST_LEAVES = 160;

/**
 * Partners in a tree of like ones, each node with a floor under what its partners can make of any needle and main.
 *
 * By collapsed.ts the loss of own part i with partner k is at least, at each opening u,
 *
 *     A_u(i) B_u(k) exp X_u(i,k) + λ_u(k) + (linear in i),
 *     A = height · exp(g·δ + δ′Hδ/2) of the own part, B = exp(g·δ + δ′Hδ/2) of the partner, X = δ_i′ H δ_k.
 *
 * Over a node X ≥ x := the least of that bilinear form over the box of the node's H δ_k, and exp X ≥ 1 + X, so with
 * A′ = A max(0, 1 + x) the node's floor is ψ_u(A′) = min over its k of A′ B_u(k) + λ_u(k): lines that rise with A′, so
 * ψ rises and is concave. On a grid its chord therefore lies below it; beyond the grid ψ(A′) ≥ ψ(end) + (A′ − end) · least
 * B. The sum over openings of floors is a floor of the sum.
 */
export interface PartnerTree {
  /** Partner numbers, those of a node side by side. */
  readonly order: Int32Array;
  readonly from: Int32Array;
  readonly to: Int32Array;
  /** Number of the first child, the second follows; 0 for a leaf. */
  readonly child: Int32Array;
  /** Number of the node above; of the root its own. */
  readonly parent: Int32Array;
  readonly nodes: number;
  /** ψ by node, opening and cell. */
  readonly floor: Float64Array;
  /** Cells for a unit of A, by opening. */
  readonly cellsPer: Float64Array;
  /** By node and opening: least B; least and most of (H δ_k) under needle and under main. */
  readonly box: Float64Array;
  /** By node: parts changed by every partner of it. */
  readonly mask: Uint8Array;
  /** By node, opening of the top and value: the richest its partners reach, each value by itself. */
  readonly richest: Float64Array;
  /** By place in `order` and opening: B, B (Hδ) under needle, B (Hδ) under main. */
  readonly features: Float64Array;
  /** By place in `order`: Σ λ. */
  readonly linear: Float64Array;
}

export const BOX = 5;

export function partnerTree(partners: Partners, kept: readonly number[], collapsed: Collapsed): PartnerTree {
  const count = kept.length;
  const n = collapsed.height.length;
  const { gains, crosses, linears } = valuesOf(partners, kept, collapsed);
  const leaf = Math.max(LEAF, Math.ceil(count / MOST_LEAVES));
  const { order, from, to, child, parent, nodes } = splitUp(count, leaf, (i, u) => linears[i * n + u]!);
  const cellsPer = Float64Array.from(MINUTES, (minutes, u) => {
    const height = Math.max(minutes, Math.min(1e6 * minutes, exp(Math.min(600, collapsed.height[u]!))));
    return CELLS / (REACH * height);
  });
  const floor = new Float64Array(nodes * n * (CELLS + 1)).fill(Infinity);
  const box = new Float64Array(nodes * n * BOX);
  const mask = new Uint8Array(nodes);
  const richest = new Float64Array(nodes * TOP_OPENINGS.length * PARTNER_VALUES).fill(-Infinity);
  for (let node = nodes - 1; node >= 0; node--) {
    mask[node] = 255;
    for (let at = from[node]!; at < to[node]!; at++) {
      mask[node] = mask[node]! & partners.mask[kept[order[at]!]!]!;
    }
    for (let u = 0; u < n; u++) {
      const o = (node * n + u) * BOX;
      for (let b = 0; b < BOX; b++) box[o + b] = b === 2 || b === 4 ? -Infinity : Infinity;
      for (let at = from[node]!; at < to[node]!; at++) {
        const i = order[at]! * n + u;
        box[o] = Math.min(box[o]!, gains[i]!);
        for (let c = 0; c < 2; c++) {
          box[o + 1 + 2 * c] = Math.min(box[o + 1 + 2 * c]!, crosses[2 * i + c]!);
          box[o + 2 + 2 * c] = Math.max(box[o + 2 + 2 * c]!, crosses[2 * i + c]!);
        }
      }
      const table = (node * n + u) * (CELLS + 1);
      const first = child[node]!;
      for (let cell = 0; cell <= CELLS; cell++) {
        if (first > 0) {
          const one = floor[(first * n + u) * (CELLS + 1) + cell]!;
          const other = floor[((first + 1) * n + u) * (CELLS + 1) + cell]!;
          floor[table + cell] = Math.min(one, other);
          continue;
        }
        const height = cell / cellsPer[u]!;
        for (let at = from[node]!; at < to[node]!; at++) {
          const i = order[at]! * n + u;
          floor[table + cell] = Math.min(floor[table + cell]!, height * gains[i]! + linears[i]!);
        }
      }
    }
    TOP_OPENINGS.forEach((u, top) => {
      for (let at = from[node]!; at < to[node]!; at++) {
        for (let v = 0; v < PARTNER_VALUES; v++) {
          const there = (node * TOP_OPENINGS.length + top) * PARTNER_VALUES + v;
          const value = partners.shift[(kept[order[at]!]! * n + u) * PARTNER_VALUES + v]!;
          richest[there] = Math.max(richest[there]!, value);
        }
      }
    });
  }
  const features = new Float64Array(count * n * 3);
  const linear = new Float64Array(count);
  for (let at = 0; at < count; at++) {
    for (let u = 0; u < n; u++) {
      const i = order[at]! * n + u;
      const o = (at * n + u) * 3;
      features[o] = gains[i]!;
      features[o + 1] = gains[i]! * crosses[2 * i]!;
      features[o + 2] = gains[i]! * crosses[2 * i + 1]!;
      linear[at] = linear[at]! + linears[i]!;
    }
  }
  return {
    order: order.map((i) => kept[i]!),
    from,
    to,
    child,
    parent,
    nodes,
    floor,
    cellsPer,
    box,
    mask,
    richest,
    features,
    linear,
  };
}

/** B, Hδ under needle and main, and λ of each kept partner at each opening. */
function valuesOf(partners: Partners, kept: readonly number[], collapsed: Collapsed) {
  const { centre, gradient, curvature, slope, height } = collapsed;
  const n = height.length;
  const gains = new Float64Array(kept.length * n);
  const crosses = new Float64Array(kept.length * n * 2);
  const linears = new Float64Array(kept.length * n);
  const away = new Float64Array(PARTNER_VALUES);
  kept.forEach((k, i) => {
    for (let u = 0; u < n; u++) {
      const o = u * CIRCUIT_COUNT;
      let linear = 0;
      let exponent = 0;
      for (let v = 0; v < PARTNER_VALUES; v++) {
        const c = PARTNER[v]!;
        // The centre's main belongs to the own part; what the partner's fuel lift adds counts in full.
        const from = c === OWN[1] ? 0 : centre[o + c]!;
        away[v] = partners.shift[(k * n + u) * PARTNER_VALUES + v]! - from;
        linear += slope[o + c]! * away[v]!;
        exponent += gradient[o + c]! * away[v]!;
      }
      for (let v = 0; v < PARTNER_VALUES; v++) {
        const row = (o + PARTNER[v]!) * CIRCUIT_COUNT;
        for (let w = 0; w < PARTNER_VALUES; w++)
          exponent += 0.5 * away[v]! * away[w]! * curvature[row + PARTNER[w]!]!;
        for (let c = 0; c < 2; c++) {
          const at = (i * n + u) * 2 + c;
          crosses[at] = crosses[at]! + curvature[row + OWN[c]!]! * away[v]!;
        }
      }
      gains[i * n + u] = exp(exponent);
      linears[i * n + u] = linear;
    }
  });
  return { gains, crosses, linears };
}

/** Splits in two at the middle of the opening where they lie furthest apart, down to leaves. */
function splitUp(count: number, leaf: number, value: (i: number, u: number) => number) {
  const openings = MINUTES.length;
  const most = 4 * Math.ceil(count / leaf) + 2;
  const from = new Int32Array(most);
  const to = new Int32Array(most);
  const child = new Int32Array(most);
  const parent = new Int32Array(most);
  const order = Int32Array.from({ length: count }, (_, i) => i);
  to[0] = count;
  let nodes = 1;
  for (let node = 0; node < nodes; node++) {
    const [start, end] = [from[node]!, to[node]!];
    if (end - start <= leaf) continue;
    const own = order.subarray(start, end);
    let widest = -1;
    let along = 0;
    for (let u = 0; u < openings; u++) {
      let least = Infinity;
      let most = -Infinity;
      for (let at = start; at < end; at++) {
        least = Math.min(least, value(order[at]!, u));
        most = Math.max(most, value(order[at]!, u));
      }
      const width = most - least;
      if (width > widest) [widest, along] = [width, u];
    }
    own.sort((a, b) => value(a, along) - value(b, along) || a - b);
    const middle = start + ((end - start) >> 1);
    child[node] = nodes;
    parent[nodes] = node;
    parent[nodes + 1] = node;
    from[nodes] = start;
    to[nodes] = middle;
    from[nodes + 1] = middle;
    to[nodes + 1] = end;
    nodes += 2;
  }
  return { order, from, to, child, parent, nodes };
}
