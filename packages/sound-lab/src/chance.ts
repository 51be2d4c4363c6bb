/** Seeded random numbers for the made sounds (mulberry32, T. Ettinger; reproduced from memory). */
export interface Chance {
  readonly uniform: () => number;
  readonly normal: () => number;
  readonly between: (low: number, high: number) => number;
  readonly pick: <T>(from: readonly T[]) => T;
  readonly happens: (probability: number) => boolean;
}

export function chance(seed: number): Chance {
  let state = (seed * 2654435761) >>> 0;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
  return {
    uniform,
    normal: () => Math.sqrt(-2 * Math.log(1 - uniform())) * Math.cos(2 * Math.PI * uniform()),
    between: (low, high) => low + (high - low) * uniform(),
    pick: (from) => from[Math.floor(uniform() * from.length)]!,
    happens: (probability) => uniform() < probability,
  };
}
