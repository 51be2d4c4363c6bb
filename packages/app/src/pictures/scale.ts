/** Where a value lies on the page; the same way for every value between. */
export type Scale = (value: number) => number;

/** A straight scale from one pair of ends to another; values beyond the ends are held at them. */
export function straightScale(
  [from, to]: readonly [number, number],
  [start, end]: readonly [number, number],
): Scale {
  if (from === to) throw new RangeError(`A scale needs two ends apart, got ${from} twice`);
  return (value) => {
    const share = Math.min(1, Math.max(0, (value - from) / (to - from)));
    return start + share * (end - start);
  };
}

/** The same in the square root of the value, from 0: the bottom of the throttle takes as much room as the top. */
export function rootScale(to: number, ends: readonly [number, number]): Scale {
  const straight = straightScale([0, Math.sqrt(to)], ends);
  return (value) => straight(Math.sqrt(Math.max(0, value)));
}
