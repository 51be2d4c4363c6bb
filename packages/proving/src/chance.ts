/** A stream of numbers fixed by its key: the same key tells the same story on every machine. */
export class Chance {
  #state: number;

  constructor(...key: readonly (string | number)[]) {
    // FNV-1a over the key's text, then a mixing step, so that neighbouring keys give unrelated streams.
    let hash = 0x811c9dc5;
    for (const letter of key.join("/")) hash = Math.imul(hash ^ letter.charCodeAt(0), 0x01000193);
    this.#state = (hash ^ (hash >>> 15)) | 0;
    this.uniform();
  }

  /** In [0, 1). Mulberry32 (T. Ettinger, public domain) [from memory]. */
  uniform(): number {
    this.#state = (this.#state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(this.#state ^ (this.#state >>> 15), 1 | this.#state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  }

  normal(mean = 0, sd = 1): number {
    const radius = Math.sqrt(-2 * Math.log(1 - this.uniform()));
    return mean + sd * radius * Math.cos(2 * Math.PI * this.uniform());
  }

  between(least: number, most: number): number {
    return least + (most - least) * this.uniform();
  }

  /** True with that chance. */
  of(chance: number): boolean {
    return this.uniform() < chance;
  }

  pick<T>(from: readonly T[]): T {
    return from[Math.floor(this.uniform() * from.length)]!;
  }

  weighted<T>(from: readonly (readonly [T, number])[]): T {
    let left = this.uniform() * from.reduce((sum, [, weight]) => sum + weight, 0);
    for (const [each, weight] of from) {
      left -= weight;
      if (left < 0) return each;
    }
    return from[from.length - 1]![0];
  }
}
