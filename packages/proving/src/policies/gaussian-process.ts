/** Regression by a Gaussian process with a squared-exponential kernel of fixed lengths, and expected improvement. */
export class GaussianProcess {
  readonly #points: number[][] = [];
  readonly #values: number[] = [];
  readonly #lengths: readonly number[];
  readonly #signal: number;
  readonly #noise: number;
  #lower: number[][] = [];
  #weights: number[] = [];
  #mean = 0;

  constructor(lengths: readonly number[], signal: number, noise: number) {
    this.#lengths = lengths;
    this.#signal = signal;
    this.#noise = noise;
  }

  add(point: readonly number[], value: number): void {
    this.#points.push([...point]);
    this.#values.push(value);
    this.#mean = this.#values.reduce((sum, each) => sum + each, 0) / this.#values.length;
    this.#factorise();
  }

  #kernel(a: readonly number[], b: readonly number[]): number {
    let squared = 0;
    for (let i = 0; i < a.length; i++) squared += ((a[i]! - b[i]!) / this.#lengths[i]!) ** 2;
    return this.#signal ** 2 * Math.exp(-0.5 * squared);
  }

  #factorise(): void {
    const n = this.#points.length;
    const lower: number[][] = [];
    for (let i = 0; i < n; i++) {
      lower.push(new Array<number>(n).fill(0));
      for (let j = 0; j <= i; j++) {
        let sum = this.#kernel(this.#points[i]!, this.#points[j]!) + (i === j ? this.#noise ** 2 : 0);
        for (let k = 0; k < j; k++) sum -= lower[i]![k]! * lower[j]![k]!;
        lower[i]![j] = i === j ? Math.sqrt(sum) : sum / lower[j]![j]!;
      }
    }
    this.#lower = lower;
    const half = this.#forward(this.#values.map((value) => value - this.#mean));
    for (let i = n - 1; i >= 0; i--) {
      for (let k = i + 1; k < n; k++) half[i] = half[i]! - lower[k]![i]! * half[k]!;
      half[i] = half[i]! / lower[i]![i]!;
    }
    this.#weights = half;
  }

  #forward(values: readonly number[]): number[] {
    const solved: number[] = [];
    for (let i = 0; i < values.length; i++) {
      let sum = values[i]!;
      for (let k = 0; k < i; k++) sum -= this.#lower[i]![k]! * solved[k]!;
      solved.push(sum / this.#lower[i]![i]!);
    }
    return solved;
  }

  /** Mean and standard deviation of the value at a point. */
  at(point: readonly number[]): { readonly mean: number; readonly sd: number } {
    const kernels = this.#points.map((each) => this.#kernel(each, point));
    const mean = this.#mean + kernels.reduce((sum, kernel, i) => sum + kernel * this.#weights[i]!, 0);
    const solved = this.#forward(kernels);
    const variance = this.#signal ** 2 - solved.reduce((sum, each) => sum + each * each, 0);
    return { mean, sd: Math.sqrt(Math.max(1e-12, variance)) };
  }

  /** How much lower than the best so far a point is expected to come out. */
  improvement(point: readonly number[], best: number): number {
    const { mean, sd } = this.at(point);
    const z = (best - mean) / sd;
    return (best - mean) * cumulative(z) + (sd * Math.exp(-0.5 * z * z)) / Math.sqrt(2 * Math.PI);
  }
}

/** Abramowitz and Stegun (1964) 26.2.17, good to 7.5e-8 [from memory]. */
export function cumulative(z: number): number {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const tail =
    (Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI)) *
    t *
    (0.31938153 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z > 0 ? 1 - tail : tail;
}
