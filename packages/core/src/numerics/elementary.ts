/**
 * exp, log and their kin from additions, multiplications, divisions and square roots only. IEEE 754 fixes
 * those to the last bit; the language leaves Math.exp and its kin to each engine. With these, the same log
 * gives the same bytes on every phone.
 *
 * Method and coefficients: fdlibm (Sun Microsystems, 1993), reproduced from memory; the tests hold each
 * function to within 4 units in the last place of the engine's own over its whole range.
 */

const LN2_HIGH = 0.6931471803691238;
const LN2_LOW = 1.9082149292705877e-10;
const SMALLEST_EXPONENT = -1074;

/** 2^k for k from -1074 to 1023; every entry is exact. */
const POWERS_OF_TWO = (() => {
  const table = new Float64Array(1023 - SMALLEST_EXPONENT + 1);
  table[-SMALLEST_EXPONENT] = 1;
  for (let k = 1; k <= 1023; k++) table[k - SMALLEST_EXPONENT] = table[k - 1 - SMALLEST_EXPONENT]! * 2;
  for (let k = -1; k >= SMALLEST_EXPONENT; k--) {
    table[k - SMALLEST_EXPONENT] = table[k + 1 - SMALLEST_EXPONENT]! / 2;
  }
  return table;
})();

const powerOfTwo = (k: number): number => POWERS_OF_TWO[k - SMALLEST_EXPONENT]!;

/** e to the x. Overflows to Infinity above 709.78, underflows to 0 below -745.13. */
export function exp(x: number): number {
  if (Number.isNaN(x)) return x;
  if (x > 709.782712893384) return Infinity;
  if (x < -745.1332191019411) return 0;
  // biome-ignore lint/suspicious/noApproximativeNumericConstant: 1/ln 2 written out, as the method needs it
  const k = Math.round(x * 1.4426950408889634);
  const high = x - k * LN2_HIGH;
  const low = k * LN2_LOW;
  const r = high - low;
  const t = r * r;
  const c =
    r -
    t *
      (0.16666666666666602 +
        t *
          (-0.0027777777777015593 +
            t * (0.00006613756321437934 + t * (-0.0000016533902205465252 + t * 4.1381367970572385e-8))));
  const y = 1 - (low - (r * c) / (2 - c) - high);
  if (k >= -1022 && k <= 1023) return y * powerOfTwo(k);
  return k > 1023 ? y * 2 * powerOfTwo(k - 1) : y * powerOfTwo(k + 60) * powerOfTwo(-60);
}

const bits = new DataView(new ArrayBuffer(8));

/** Natural logarithm. NaN below 0, -Infinity at 0. */
export function log(x: number): number {
  if (Number.isNaN(x) || x < 0) return Number.NaN;
  if (x === 0) return -Infinity;
  if (x === Infinity) return Infinity;
  let k = 0;
  let value = x;
  if (value < 2.2250738585072014e-308) {
    value *= 18014398509481984; // 2^54, lifts a subnormal
    k = -54;
  }
  bits.setFloat64(0, value);
  let top = bits.getUint32(0);
  k += (top >>> 20) - 1023;
  top &= 0xfffff;
  const aboveRootTwo = top >= 0x6a09e; // mantissa at or above about √2
  bits.setUint32(0, top | (aboveRootTwo ? 0x3fe00000 : 0x3ff00000));
  if (aboveRootTwo) k += 1;
  const f = bits.getFloat64(0) - 1;
  const s = f / (2 + f);
  const z = s * s;
  const w = z * z;
  const even = w * (0.3999999999940942 + w * (0.22222198432149784 + w * 0.15313837699209373));
  const odd =
    z * (0.6666666666666735 + w * (0.2857142874366239 + w * (0.1818357216161805 + w * 0.14798198605116586)));
  const half = 0.5 * f * f;
  return k * LN2_HIGH - (half - (s * (half + even + odd) + k * LN2_LOW) - f);
}

/** x to the y for x above 0, as exp(y log x): within about 1e-15 times |y log x| relative. */
export function power(x: number, y: number): number {
  if (x < 0) throw new RangeError(`power needs a base of at least 0, got ${x}`);
  if (y === 0) return 1;
  if (x === 1) return 1;
  return exp(y * log(x));
}

const HALF_PI_HIGH = 1.5707963267341256;
const HALF_PI_LOW = 6.077100506506192e-11;

function sineKernel(x: number): number {
  const z = x * x;
  const tail =
    0.00833333333332249 +
    z *
      (-0.0001984126982985795 +
        z * (0.0000027557313707070068 + z * (-2.5050760253406863e-8 + z * 1.58969099521155e-10)));
  return x + x * z * (-0.16666666666666632 + z * tail);
}

function cosineKernel(x: number): number {
  const z = x * x;
  const tail =
    0.0416666666666666 +
    z *
      (-0.001388888888887411 +
        z *
          (0.00002480158728947673 +
            z * (-2.7557314351390663e-7 + z * (2.087572321298175e-9 - z * 1.1359647557788195e-11))));
  return 1 - (0.5 * z - z * z * tail);
}

function quarterTurns(x: number): { quarter: number; rest: number } {
  if (!(Math.abs(x) <= 1e4)) throw new RangeError(`Angle must be within ±10000 rad, got ${x}`);
  const k = Math.round(x / 1.5707963267948966);
  return { quarter: ((k % 4) + 4) % 4, rest: x - k * HALF_PI_HIGH - k * HALF_PI_LOW };
}

/** Sine of an angle in radians, |x| up to 10 000. */
export function sine(x: number): number {
  const { quarter, rest } = quarterTurns(x);
  const value = quarter % 2 === 0 ? sineKernel(rest) : cosineKernel(rest);
  return quarter < 2 ? value : -value;
}

/** Cosine of an angle in radians, |x| up to 10 000. */
export function cosine(x: number): number {
  const { quarter, rest } = quarterTurns(x);
  const value = quarter % 2 === 0 ? cosineKernel(rest) : sineKernel(rest);
  return quarter === 0 || quarter === 3 ? value : -value;
}

/** Tangent of an angle in radians, |x| up to 10 000. */
export const tangent = (x: number): number => sine(x) / cosine(x);

const ARCTANGENT_SERIES = [
  0.3333333333333293, -0.19999999999876483, 0.14285714272503466, -0.11111110405462356, 0.09090887133436507,
  -0.0769187620504483, 0.06661073137387531, -0.058335701337905735, 0.049768779946159324,
  -0.036531572744216916, 0.016285820115365782,
];

/** Arctangent, in radians. */
export function arctangent(x: number): number {
  if (x < 0) return -arctangent(-x);
  let base = 0;
  let t = x;
  if (x > 2.4375) {
    base = 1.5707963267948966;
    t = -1 / x;
  } else if (x > 1.1875) {
    base = 0.982793723247329; // arctan 3/2
    t = (x - 1.5) / (1 + 1.5 * x);
  } else if (x > 0.6875) {
    base = 0.7853981633974483;
    t = (x - 1) / (x + 1);
  } else if (x > 0.4375) {
    base = 0.4636476090008061; // arctan 1/2
    t = (2 * x - 1) / (2 + x);
  }
  const z = t * t;
  let series = 0;
  for (let i = ARCTANGENT_SERIES.length - 1; i >= 0; i--) series = ARCTANGENT_SERIES[i]! + z * series;
  return base + (t - t * z * series);
}

/** Arccosine, in radians, for x from -1 to 1. */
export function arccosine(x: number): number {
  if (!(x >= -1 && x <= 1)) throw new RangeError(`Arccosine needs a value from -1 to 1, got ${x}`);
  return x === -1 ? Math.PI : 2 * arctangent(Math.sqrt((1 - x) / (1 + x)));
}
