import { log } from "./elementary.ts";

/** A stream of numbers that is fixed by its seed. */
export interface Random {
  /** Uniform in [0, 1), 32 random bits. */
  readonly uniform: () => number;
  /** Standard normal. */
  readonly normal: () => number;
}

/**
 * Seeded generator: sfc32 (C. Doty-Humphrey, PractRand), the same stream on every machine.
 * @param seed any integer; its lowest 32 bits count
 */
export function seededRandom(seed: number): Random {
  let a = 0x9e3779b9;
  let b = 0x243f6a88;
  let c = seed | 0;
  let counter = 1;
  const next = (): number => {
    const sum = (((a + b) | 0) + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = ((c << 21) | (c >>> 11)) + sum;
    c |= 0;
    return sum >>> 0;
  };
  for (let i = 0; i < 15; i++) next();
  const uniform = (): number => next() / 4294967296;
  let spare: number | undefined;
  const normal = (): number => {
    if (spare !== undefined) {
      const kept = spare;
      spare = undefined;
      return kept;
    }
    for (;;) {
      const u = 2 * uniform() - 1;
      const v = 2 * uniform() - 1;
      const s = u * u + v * v;
      if (s > 0 && s < 1) {
        const scale = Math.sqrt((-2 * log(s)) / s);
        spare = v * scale;
        return u * scale;
      }
    }
  };
  return { uniform, normal };
}
