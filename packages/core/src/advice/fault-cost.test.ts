import { describe, expect, test } from "vitest";
import type { FaultId } from "../belief/catalogue.ts";
import type { Check } from "./catalogue.ts";
import { checkGain, checksByWorth, type FaultChances, faultCost, stakeOf } from "./fault-cost.ts";

const check = (id: string, minutes: number, finds: Check["finds"]): Check => ({
  id: id as Check["id"],
  minutes,
  finds,
  falseAlarm: 0.02,
  cautions: [],
  strokes: "both",
  source: "test",
});

const QUICK = check("quick", 5, { reed: 0.5 });
const SURE = check("sure", 40, { reed: 0.95 });
const SPARK = check("spark", 10, { ignition: 0.8, "plug-heat-range": 0.9 });

describe("what faults cost", () => {
  test("a fault that ruins engines has the higher stake", () => {
    expect(stakeOf("air-leak")).toBeGreaterThan(stakeOf("ignition"));
    expect(stakeOf("slide-or-cable")).toBe(300);
    expect(stakeOf("reed")).toBe(180);
  });

  test("a check is worth the chance it finds each fault times that fault's stake", () => {
    expect(checkGain(SPARK, { ignition: 0.1, "plug-heat-range": 0.05, reed: 0.5 })).toBeCloseTo(
      0.1 * 0.8 * 180 + 0.05 * 0.9 * 180,
      9,
    );
    expect(checkGain(SPARK, {})).toBe(0);
  });

  test("checks go by worth per minute, ties by name", () => {
    const chances: FaultChances = { reed: 0.2, ignition: 0.02 };
    expect(checksByWorth([SURE, SPARK, QUICK], chances).map(({ id }) => id)).toEqual([
      "quick",
      "sure",
      "spark",
    ]);
    expect(checksByWorth([SURE, QUICK, SPARK], {}).map(({ id }) => id)).toEqual(["quick", "spark", "sure"]);
  });

  test("nothing suspected costs nothing, and what is not worth a look costs its stake", () => {
    expect(faultCost([QUICK, SURE], {})).toBe(0);
    expect(faultCost([SURE], { reed: 0.01 })).toBeCloseTo(0.01 * 180, 9);
    expect(faultCost([], { "air-leak": 0.5 })).toBeCloseTo(150, 9);
  });

  test("looking in the best order, by hand", () => {
    // quick: 0.4·0.5·180/5 = 7.2 a minute first; then reed 0.2 left, and still looking at 0.8: sure gives
    // 0.2·0.95·180/40 = 0.855 a minute against 0.8, so it still pays.
    const second = 40 * 0.8 + 0.2 * 0.05 * 180;
    expect(faultCost([SURE, QUICK], { reed: 0.4 })).toBeCloseTo(5 + second, 9);
    // With 0.3: quick, then sure at 0.15·0.95·180/40 = 0.64 against 0.85 no longer pays.
    expect(faultCost([SURE, QUICK], { reed: 0.3 })).toBeCloseTo(5 + 0.15 * 180, 9);
  });

  const inOrder = (order: readonly Check[], chances: FaultChances): number => {
    const left = new Map(Object.entries(chances) as [FaultId, number][]);
    let cost = 0;
    let looking = 1;
    for (const each of order) {
      cost += each.minutes * looking;
      for (const [fault, chance] of left) {
        const found = chance * (each.finds[fault] ?? 0);
        looking -= found;
        left.set(fault, chance - found);
      }
    }
    for (const [fault, chance] of left) cost += chance * stakeOf(fault);
    return cost;
  };
  const orders = (checks: readonly Check[]): Check[][] => [
    [],
    ...checks.flatMap((first) =>
      orders(checks.filter((each) => each !== first)).map((rest) => [first, ...rest]),
    ),
  ];

  test("no order or choice of checks of different faults is cheaper", () => {
    const checks = [SPARK, check("reeds", 30, { reed: 0.8 }), check("filter", 5, { "air-filter": 0.9 })];
    for (const chances of [
      { reed: 0.5, ignition: 0.3, "air-filter": 0.02 },
      { reed: 0.1, ignition: 0.02, "air-filter": 0.3 },
      { reed: 0.05, ignition: 0.05, "air-filter": 0.05 },
    ]) {
      const best = Math.min(...orders(checks).map((order) => inOrder(order, chances)));
      expect(faultCost(checks, chances)).toBeCloseTo(best, 6);
    }
  });

  test("where checks overlap it is within a tenth of the best", () => {
    for (const reed of [0.1, 0.3, 0.5, 0.8]) {
      const chances = { reed, ignition: 0.15 };
      const best = Math.min(...orders([QUICK, SURE, SPARK]).map((order) => inOrder(order, chances)));
      const ours = faultCost([QUICK, SURE, SPARK], chances);
      expect(ours).toBeGreaterThanOrEqual(best - 1e-9);
      expect(ours).toBeLessThanOrEqual(best * 1.1);
    }
  });
});
