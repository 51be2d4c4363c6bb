import { cosine, sine } from "./elementary.ts";

/** A complex discrete Fourier transform of one length, with its work space. */
export interface Fourier {
  readonly length: number;
  /**
   * Transforms in place: re + i·im becomes the sum over n of x[n] exp(−2πi kn/length), unscaled.
   * Both arrays must hold `length` values.
   */
  readonly transform: (re: Float64Array, im: Float64Array) => void;
}

/** Lengths a transform can have: powers of two up to 65 536. */
const isLength = (n: number): boolean => Number.isInteger(n) && n >= 2 && n <= 65536 && (n & (n - 1)) === 0;

/** The least length a transform can have that holds n values. */
export function lengthFor(n: number): number {
  let length = 2;
  while (length < n) length *= 2;
  if (!isLength(length)) throw new RangeError(`A transform holds at most 65536 values, got ${n}`);
  return length;
}

/**
 * A transform for a length that is a power of two from 2 to 65 536, within 1e-13 of the definition relative
 * to the largest value. Method: Stockham's sorted radix 4, with a last step of radix 2 for odd powers.
 */
export function fourier(length: number): Fourier {
  if (!isLength(length))
    throw new RangeError(`A transform needs a power of two from 2 to 65536, got ${length}`);
  const turnCos = new Float64Array(length);
  const turnSin = new Float64Array(length);
  for (let k = 0; k < length; k++) {
    turnCos[k] = cosine((2 * Math.PI * k) / length);
    turnSin[k] = -sine((2 * Math.PI * k) / length);
  }
  const otherRe = new Float64Array(length);
  const otherIm = new Float64Array(length);

  const transform = (re: Float64Array, im: Float64Array): void => {
    let xr = re;
    let xi = im;
    let yr: Float64Array = otherRe;
    let yi: Float64Array = otherIm;
    let n = length;
    let s = 1;
    if (n > 4) {
      firstFourWay(xr, xi, yr, yi, turnCos, turnSin);
      [xr, xi, yr, yi] = [yr, yi, xr, xi];
      n /= 4;
      s = 4;
    }
    while (n >= 4) {
      if (n === 4) lastFourWay(xr, xi, yr, yi, s);
      else fourWay(xr, xi, yr, yi, n, s, turnCos, turnSin);
      [xr, xi, yr, yi] = [yr, yi, xr, xi];
      n /= 4;
      s *= 4;
    }
    if (n === 2) {
      for (let q = 0; q < s; q++) {
        const ar = xr[q]!;
        const ai = xi[q]!;
        const br = xr[q + s]!;
        const bi = xi[q + s]!;
        yr[q] = ar + br;
        yi[q] = ai + bi;
        yr[q + s] = ar - br;
        yi[q + s] = ai - bi;
      }
      [xr, xi] = [yr, yi];
    }
    if (xr !== re) {
      re.set(xr);
      im.set(xi);
    }
  };
  return { length, transform };
}

/** One radix-4 step: n is the length still to be split, s = length/n the number of transforms side by side. */
function fourWay(
  xr: Float64Array,
  xi: Float64Array,
  yr: Float64Array,
  yi: Float64Array,
  n: number,
  s: number,
  turnCos: Float64Array,
  turnSin: Float64Array,
): void {
  const quarter = n / 4;
  const step = s * quarter;
  for (let p = 0; p < quarter; p++) {
    const c1 = turnCos[p * s]!;
    const s1 = turnSin[p * s]!;
    const c2 = turnCos[2 * p * s]!;
    const s2 = turnSin[2 * p * s]!;
    const c3 = turnCos[3 * p * s]!;
    const s3 = turnSin[3 * p * s]!;
    const from = s * p;
    const to = 4 * s * p;
    for (let q = 0; q < s; q++) {
      const i = from + q;
      const ar = xr[i]!;
      const ai = xi[i]!;
      const br = xr[i + step]!;
      const bi = xi[i + step]!;
      const cr = xr[i + 2 * step]!;
      const ci = xi[i + 2 * step]!;
      const dr = xr[i + 3 * step]!;
      const di = xi[i + 3 * step]!;
      const sumR = ar + cr;
      const sumI = ai + ci;
      const lessR = ar - cr;
      const lessI = ai - ci;
      const pairR = br + dr;
      const pairI = bi + di;
      // i (b − d)
      const turnedR = di - bi;
      const turnedI = br - dr;
      const o = to + q;
      yr[o] = sumR + pairR;
      yi[o] = sumI + pairI;
      const oneR = lessR - turnedR;
      const oneI = lessI - turnedI;
      yr[o + s] = oneR * c1 - oneI * s1;
      yi[o + s] = oneR * s1 + oneI * c1;
      const twoR = sumR - pairR;
      const twoI = sumI - pairI;
      yr[o + 2 * s] = twoR * c2 - twoI * s2;
      yi[o + 2 * s] = twoR * s2 + twoI * c2;
      const threeR = lessR + turnedR;
      const threeI = lessI + turnedI;
      yr[o + 3 * s] = threeR * c3 - threeI * s3;
      yi[o + 3 * s] = threeR * s3 + threeI * c3;
    }
  }
}

/** The first radix-4 step, one transform alone. */
function firstFourWay(
  xr: Float64Array,
  xi: Float64Array,
  yr: Float64Array,
  yi: Float64Array,
  turnCos: Float64Array,
  turnSin: Float64Array,
): void {
  const quarter = xr.length / 4;
  for (let p = 0; p < quarter; p++) {
    const ar = xr[p]!;
    const ai = xi[p]!;
    const br = xr[p + quarter]!;
    const bi = xi[p + quarter]!;
    const cr = xr[p + 2 * quarter]!;
    const ci = xi[p + 2 * quarter]!;
    const dr = xr[p + 3 * quarter]!;
    const di = xi[p + 3 * quarter]!;
    const sumR = ar + cr;
    const sumI = ai + ci;
    const lessR = ar - cr;
    const lessI = ai - ci;
    const pairR = br + dr;
    const pairI = bi + di;
    // i (b − d)
    const turnedR = di - bi;
    const turnedI = br - dr;
    const o = 4 * p;
    yr[o] = sumR + pairR;
    yi[o] = sumI + pairI;
    const oneR = lessR - turnedR;
    const oneI = lessI - turnedI;
    const c1 = turnCos[p]!;
    const s1 = turnSin[p]!;
    yr[o + 1] = oneR * c1 - oneI * s1;
    yi[o + 1] = oneR * s1 + oneI * c1;
    const twoR = sumR - pairR;
    const twoI = sumI - pairI;
    const c2 = turnCos[2 * p]!;
    const s2 = turnSin[2 * p]!;
    yr[o + 2] = twoR * c2 - twoI * s2;
    yi[o + 2] = twoR * s2 + twoI * c2;
    const threeR = lessR + turnedR;
    const threeI = lessI + turnedI;
    const c3 = turnCos[3 * p]!;
    const s3 = turnSin[3 * p]!;
    yr[o + 3] = threeR * c3 - threeI * s3;
    yi[o + 3] = threeR * s3 + threeI * c3;
  }
}

/** The radix-4 step that is left when n is 4: nothing turns. */
function lastFourWay(
  xr: Float64Array,
  xi: Float64Array,
  yr: Float64Array,
  yi: Float64Array,
  s: number,
): void {
  for (let q = 0; q < s; q++) {
    const sumR = xr[q]! + xr[q + 2 * s]!;
    const sumI = xi[q]! + xi[q + 2 * s]!;
    const lessR = xr[q]! - xr[q + 2 * s]!;
    const lessI = xi[q]! - xi[q + 2 * s]!;
    const pairR = xr[q + s]! + xr[q + 3 * s]!;
    const pairI = xi[q + s]! + xi[q + 3 * s]!;
    const turnedR = xi[q + 3 * s]! - xi[q + s]!;
    const turnedI = xr[q + s]! - xr[q + 3 * s]!;
    yr[q] = sumR + pairR;
    yi[q] = sumI + pairI;
    yr[q + s] = lessR - turnedR;
    yi[q + s] = lessI - turnedI;
    yr[q + 2 * s] = sumR - pairR;
    yi[q + 2 * s] = sumI - pairI;
    yr[q + 3 * s] = lessR + turnedR;
    yi[q + 3 * s] = lessI + turnedI;
  }
}
