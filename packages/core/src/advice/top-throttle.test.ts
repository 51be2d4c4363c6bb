import { describe, expect, test } from "vitest";
import type { Belief } from "../belief/believe.ts";
import type { FaultId } from "../belief/catalogue.ts";
import { NO_SHIFT } from "../belief/state.ts";
import { OPENINGS } from "../units/opening.ts";
import { english } from "../words/en.ts";
import { partsOf, stateOf } from "./test-weighing.ts";
import { leanChanceAtTop, topThrottle, topThrottleText } from "./top-throttle.ts";

/** A belief by its parts alone. */
const believed = (...states: Parameters<typeof partsOf>[0]): Belief =>
  ({ parts: partsOf(states) }) as unknown as Belief;

describe("[A3] how far to open it", () => {
  // A normal variable is below its mean less 2.0537 spreads with 2 %, less 1.2816 with 10 % (normal tables [memory]).
  const SD = 0.04;
  const standing = (spreads: number) =>
    topThrottle(believed([1, stateOf(() => -0.06 + spreads * SD, SD)]), NO_SHIFT);

  test("free up to a 2 % chance of more than 6 % lean, seconds up to 10 %, then none", () => {
    expect([4, 2.06].map(standing)).toEqual(["free", "free"]);
    expect([2.05, 1.29].map(standing)).toEqual(["seconds only", "seconds only"]);
    expect([1.27, 0, -3].map(standing)).toEqual(["stay below 3/4", "stay below 3/4", "stay below 3/4"]);
  });

  test("the leanest of 3/4, 7/8 and full decides; below 3/4 nothing does", () => {
    for (const place of [0.75, 0.875, 1]) {
      const lean = stateOf((opening) => (opening === place ? -0.08 : 0.1), 0.01);
      expect(topThrottle(believed([1, lean]), NO_SHIFT)).toBe("stay below 3/4");
    }
    const leanBelow = stateOf((opening) => (opening < 0.75 ? -0.2 : 0.1), 0.01);
    expect(topThrottle(believed([1, leanBelow]), NO_SHIFT)).toBe("free");
  });

  test("[A2] over the whole belief: a light part that is surely lean counts with its weight, however rich the rest", () => {
    const rich = stateOf(() => 0.15, 0.01);
    const lean = stateOf(() => -0.12, 0.01);
    const with_ = (weight: number) => believed([1 - weight, rich], [weight, lean]);
    expect(leanChanceAtTop(with_(0.05), NO_SHIFT, "seconds")).toBeCloseTo(0.05, 9);
    expect(topThrottle(with_(0.019), NO_SHIFT)).toBe("free");
    expect(topThrottle(with_(0.021), NO_SHIFT)).toBe("seconds only");
    expect(topThrottle(with_(0.11), NO_SHIFT)).toBe("stay below 3/4");
  });

  test("held for long, a poor supply or a low float counts with what it takes from the fuel; a few seconds hardly", () => {
    const rich = stateOf(() => 0.03, 0.02);
    const suspected = (fault: FaultId, chance: number): Belief =>
      ({
        parts: [
          { ...partsOf([[1 - chance, rich]])[0], fault: null },
          { ...partsOf([[chance, rich]])[0], fault },
        ],
      }) as unknown as Belief;
    const supply = suspected("fuel-supply", 0.2);
    // 20 % less fuel, give or take 12 %: leaner than 6 % with Phi((0.20 - 0.09) / 0.1217) = 0.8170 (normal tables [memory]).
    expect(leanChanceAtTop(supply, NO_SHIFT, "held")).toBeCloseTo(0.2 * 0.817, 3);
    expect(leanChanceAtTop(supply, NO_SHIFT, "seconds")).toBeLessThan(0.02);
    expect(topThrottle(supply, NO_SHIFT)).toBe("seconds only");
    expect(topThrottle(suspected("fuel-supply", 0.013), NO_SHIFT)).toBe("seconds only");
    expect(topThrottle(suspected("fuel-supply", 0.012), NO_SHIFT)).toBe("free");
    expect(topThrottle(suspected("float-level", 0.3), NO_SHIFT)).toBe("seconds only");
    expect(topThrottle(suspected("blocked-pilot", 0.9), NO_SHIFT)).toBe("free");
  });

  test("a shift counts as the circuits answer", () => {
    const shift = { ...NO_SHIFT, main: OPENINGS.map((opening) => (opening >= 0.75 ? -0.1 : 0)) };
    const state = believed([1, stateOf(() => 0.03, 0.02)]);
    expect(topThrottle(state, NO_SHIFT)).toBe("free");
    expect(topThrottle(state, shift)).toBe("stay below 3/4");
  });

  test("says so in one sentence, and nothing when the top is free", () => {
    expect(topThrottleText("free", english)).toEqual([]);
    expect(topThrottleText("seconds only", english).join()).toMatch(
      /a few seconds at 3\/4 or more.*at the first ping\.$/,
    );
    expect(topThrottleText("stay below 3/4", english).join()).toMatch(/stay below 3\/4 throttle\.$/);
  });
});
