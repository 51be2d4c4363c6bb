import { describe, expect, test } from "vitest";
import type { Jet } from "./jet.ts";
import { jetAreaRatio, jetText, jetTolerance, sameMaker } from "./jet-compare.ts";
import { known, UNKNOWN } from "./known.ts";

const bore = (number: number, maker = "Nadel"): Jet => ({ number, numbering: "bore", maker });
const flow = (number: number, maker = "Nadel"): Jet => ({ number, numbering: "flow", maker });

test("bore numbers go as the square, flow numbers as they are", () => {
  const byBore = jetAreaRatio(bore(175), bore(180));
  const byFlow = jetAreaRatio(flow(200), flow(210));
  expect(byBore.ok && byBore.value.ratio).toBeCloseTo((180 / 175) ** 2, 12);
  expect(byFlow.ok && byFlow.value.ratio).toBeCloseTo(1.05, 12);
});

// Common practice, no source: the higher the number, the bigger the hole and the richer.
test.each([bore, flow])("the higher the number, the bigger the hole", (jet) => {
  const outcome = jetAreaRatio(jet(150), jet(152.5));
  expect(outcome.ok && outcome.value.ratio).toBeGreaterThan(1);
});

test("doubt: packet scatter of both jets, and more when a maker is not named", () => {
  const same = jetAreaRatio(bore(175), bore(175, " NADEL "));
  const unnamed = jetAreaRatio(bore(175), bore(175, ""));
  const neither = jetAreaRatio(bore(175, ""), bore(175, ""));
  expect(same.ok && same.value.relativeSd).toBeCloseTo(0.02 * Math.SQRT2, 12);
  expect(neither.ok && neither.value.relativeSd).toBeCloseTo(0.02 * Math.SQRT2, 12);
  expect(unnamed.ok && unnamed.value.relativeSd).toBeCloseTo(Math.sqrt(2 * 0.02 ** 2 + 0.05 ** 2), 12);
});

test("two numberings are refused with the guess and its error", () => {
  const outcome = jetAreaRatio(bore(175), flow(300));
  expect(outcome).toMatchObject({ ok: false, reason: "other numbering" });
  if (!outcome.ok) expect(outcome.detail).toMatch(/98 % of the first's area.*10 % off/);
});

test("two named makers are refused", () => {
  const outcome = jetAreaRatio(bore(175), bore(175, "Quell"));
  expect(outcome).toMatchObject({ ok: false, reason: "other maker" });
  if (!outcome.ok) expect(outcome.detail).toMatch(/10 % another area/);
});

test("same maker by name, not by case", () => {
  expect(sameMaker(bore(1, "Nadel "), bore(2, "nadel"))).toBe(true);
  expect(sameMaker(bore(1, "Nadel"), bore(2, ""))).toBe(false);
});

describe("doubt about one jet", () => {
  test("measured is firmest, told the softest; a gauge does not care who made it", () => {
    const measured = jetTolerance(known(bore(175), "measured"))!;
    const read = jetTolerance(known(bore(175)))!;
    const told = jetTolerance(known(bore(175), "told"))!;
    expect(measured).toEqual({ own: 0.01, shared: 0 });
    expect(read).toEqual({ own: 0.02, shared: 0.05 });
    expect(told).toEqual({ own: 0.05, shared: 0.05 });
  });

  test("nothing is said of a jet nobody knows", () => {
    expect(jetTolerance(UNKNOWN)).toBeNull();
    expect(jetTolerance({ part: bore(175), how: "unknown" })).toBeNull();
  });
});

test("in words", () => {
  expect(jetText(bore(175, ""))).toBe("175 (bore, 1/100 mm)");
  expect(jetText(flow(17.5, " Nadel "))).toBe("17.5 (flow, Nadel)");
});
