/** A share with its 95 % interval. */
export interface Share {
  readonly share: number;
  readonly low: number;
  readonly high: number;
  readonly of: number;
}

const Z = 1.959964;

/** Wilson's interval for a share: E. B. Wilson, J. Am. Stat. Assoc. 22 (1927) 209 [formula from memory]. */
export function wilson(hits: number, of: number): Share {
  if (of === 0) return { share: Number.NaN, low: 0, high: 1, of };
  const share = hits / of;
  const scale = 1 + (Z * Z) / of;
  const middle = (share + (Z * Z) / (2 * of)) / scale;
  const half = (Z / scale) * Math.sqrt((share * (1 - share)) / of + (Z * Z) / (4 * of * of));
  return { share, low: Math.max(0, middle - half), high: Math.min(1, middle + half), of };
}

/**
 * A share of things that come in clusters (rides of one bike), with its interval by resampling whole clusters: the
 * rides of a bike go wrong together.
 * @param clusters hits and how many there were, for each bike
 */
export function clustered(
  clusters: readonly (readonly [number, number])[],
  random: () => number,
  draws = 400,
): Share {
  const total = (list: readonly (readonly [number, number])[]): readonly [number, number] =>
    list.reduce<readonly [number, number]>(([a, b], [hits, of]) => [a + hits, b + of], [0, 0]);
  const [hits, of] = total(clusters);
  const shares = Array.from({ length: draws }, () => {
    let a = 0;
    let b = 0;
    for (let i = 0; i < clusters.length; i++) {
      const [hit, out] = clusters[Math.floor(random() * clusters.length)]!;
      a += hit;
      b += out;
    }
    return a / Math.max(1, b);
  }).sort((a, b) => a - b);
  return {
    share: hits / of,
    low: shares[Math.floor(0.025 * draws)]!,
    high: shares[Math.ceil(0.975 * draws) - 1]!,
    of,
  };
}

/** A quantile of counts where null is "never" and comes last, with the interval of its order statistics. */
export interface Quantile {
  readonly value: number | null;
  readonly low: number | null;
  readonly high: number | null;
}

export function quantile(values: readonly (number | null)[], at: number): Quantile {
  const sorted = values.map((value) => value ?? Infinity).sort((a, b) => a - b);
  const n = sorted.length;
  const take = (index: number): number | null => {
    const value = sorted[Math.max(0, Math.min(n - 1, index))] ?? Infinity;
    return value === Infinity ? null : value;
  };
  // The number of values below the true quantile is binomial: near normal at these sizes.
  const spread = Z * Math.sqrt(n * at * (1 - at));
  return {
    value: take(Math.ceil(at * n) - 1),
    low: take(Math.floor(at * n - spread) - 1),
    high: take(Math.ceil(at * n + spread) - 1),
  };
}
