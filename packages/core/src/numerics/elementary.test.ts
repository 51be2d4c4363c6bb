import { describe, expect, test } from "vitest";
import { arccosine, arctangent, cosine, exp, log, power, sine, tangent } from "./elementary.ts";
import { seededRandom } from "./random.ts";

// Oracle: the engine's own Math functions, which share no code with ours.

const near = (ours: number, theirs: number, ulps: number): boolean =>
  ours === theirs || Math.abs(ours - theirs) <= ulps * Number.EPSILON * Math.abs(theirs);

function worst(
  ours: (x: number) => number,
  theirs: (x: number) => number,
  from: number,
  to: number,
  ulps: number,
): number[] {
  const random = seededRandom(7);
  const wrong: number[] = [];
  for (let i = 0; i < 20_000; i++) {
    const x = from + (to - from) * random.uniform();
    if (!near(ours(x), theirs(x), ulps)) wrong.push(x);
  }
  return wrong;
}

describe("elementary functions agree with the engine's own", () => {
  test("exp", () => {
    expect(worst(exp, Math.exp, -700, 700, 2)).toEqual([]);
    expect(worst(exp, Math.exp, -1, 1, 2)).toEqual([]);
    expect(exp(0)).toBe(1);
    expect(exp(710)).toBe(Infinity);
    expect(exp(-746)).toBe(0);
    expect(exp(-740)).toBeCloseTo(Math.exp(-740), 322);
    expect(exp(709.5) / Math.exp(709.5)).toBeCloseTo(1, 12);
    expect(exp(Number.NaN)).toBeNaN();
  });

  test("log", () => {
    expect(worst(log, Math.log, 0, 10, 2)).toEqual([]);
    expect(worst(log, Math.log, 1e-300, 1e300, 2)).toEqual([]);
    expect(log(5e-324)).toBe(Math.log(5e-324));
    expect(log(1)).toBe(0);
    expect(log(0)).toBe(-Infinity);
    expect(log(Infinity)).toBe(Infinity);
    expect(log(-1)).toBeNaN();
    expect(log(Number.NaN)).toBeNaN();
  });

  test("power", () => {
    expect(
      worst(
        (x) => power(x, 5.25588),
        (x) => x ** 5.25588,
        0.1,
        10,
        60,
      ),
    ).toEqual([]);
    expect(power(3, 0)).toBe(1);
    expect(power(1, 55)).toBe(1);
    expect(power(0, 2)).toBe(0);
    expect(() => power(-1, 2)).toThrow("-1");
  });

  test("sine, cosine, tangent, away from their zeros", () => {
    const apart = (f: (x: number) => number) => (x: number) => 3 + f(x);
    expect(worst(apart(sine), apart(Math.sin), -30, 30, 2)).toEqual([]);
    expect(worst(apart(cosine), apart(Math.cos), -30, 30, 2)).toEqual([]);
    expect(worst(tangent, Math.tan, -0.7, 0.7, 4)).toEqual([]);
    expect(worst(sine, Math.sin, -0.7, 0.7, 2)).toEqual([]);
    expect(() => sine(1e9)).toThrow("1000000000");
  });

  test("arctangent and arccosine", () => {
    expect(worst(arctangent, Math.atan, -10, 10, 3)).toEqual([]);
    expect(worst(arccosine, Math.acos, -1, 0.9, 4)).toEqual([]);
    expect(arccosine(1)).toBe(0);
    expect(arccosine(-1)).toBe(Math.PI);
    expect(() => arccosine(1.01)).toThrow("1.01");
  });
});
