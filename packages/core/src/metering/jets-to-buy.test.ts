import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fromCelsius } from "../units/convert.ts";
import type { Metre } from "../units/quantity.ts";
import { jetsToBuy, type Wanted } from "./jets-to-buy.ts";

const want = (least: number, most: number, fitted: number | null = null): Wanted => ({
  bike: "fern",
  height: 0 as Metre,
  temperature: fromCelsius(15),
  least,
  most,
  fitted,
});
const SIZES = [160, 165, 170, 175, 180, 185];

describe("jets to buy", () => {
  test("an owned jet that fits saves buying one", () => {
    expect(jetsToBuy([want(168, 174)], [170], SIZES)).toEqual({
      buy: [],
      served: [want(168, 174)],
      outOfReach: [],
    });
  });

  test("the jet in the bike serves that bike and no other", () => {
    const [mine, other] = [want(168, 174, 170), want(168, 174, 180)];
    const { buy, served } = jetsToBuy([mine, other], [], SIZES);
    expect(served).toEqual([mine]);
    expect(buy).toEqual([{ number: 170, serves: [other] }]);
  });

  test("one jet serves every range it lies in, the richest that does", () => {
    const { buy } = jetsToBuy([want(162, 175), want(168, 181)], [], SIZES);
    expect(buy.map(({ number }) => number)).toEqual([175]);
    expect(buy[0]!.serves).toHaveLength(2);
  });

  test("the ends of a range serve", () => {
    expect(jetsToBuy([want(170, 172), want(178, 180)], [], SIZES).buy.map(({ number }) => number)).toEqual([
      170, 180,
    ]);
  });

  test("a range no size sold lies in is out of reach", () => {
    const never = want(Infinity, Infinity, 170);
    const { buy, outOfReach } = jetsToBuy([want(171, 174), want(179, 181), never], [], SIZES);
    expect(outOfReach).toEqual([want(171, 174), never]);
    expect(buy.map(({ number }) => number)).toEqual([180]);
  });

  test("never more jets than the fewest that do, by trying every set", () => {
    const range = fc.tuple(fc.integer({ min: 158, max: 184 }), fc.integer({ min: 0, max: 12 }));
    fc.assert(
      fc.property(fc.array(range, { minLength: 1, maxLength: 6 }), fc.subarray(SIZES), (ranges, owned) => {
        const wanted = ranges.map(([least, width]) => want(least, least + width));
        const { buy, served, outOfReach } = jetsToBuy(wanted, owned, SIZES);
        const has = (set: readonly number[], { least, most }: Wanted) =>
          set.some((n) => n >= least && n <= most);
        const reachable = wanted.filter((each) => has(SIZES, each));
        expect(served.every((each) => has(owned, each))).toBe(true);
        expect(outOfReach.every((each) => !has(SIZES, each) && !has(owned, each))).toBe(true);
        const all = [...owned, ...buy.map(({ number }) => number)];
        expect(reachable.every((each) => has(all, each))).toBe(true);
        let fewest = SIZES.length;
        for (let bits = 0; bits < 1 << SIZES.length; bits++) {
          const set = SIZES.filter((_, i) => bits & (1 << i));
          if (set.length < fewest && reachable.every((each) => has([...owned, ...set], each)))
            fewest = set.length;
        }
        expect(buy.length).toBe(fewest);
      }),
      { seed: 20261125, numRuns: 200 },
    );
  });
});
