import { describe, expect, test } from "vitest";
import { type CallersBike, starting } from "./starting.ts";
import { DEMO, shopOf } from "./test-shop.ts";

const caller: CallersBike = {
  strokes: 2,
  displacementCc: 249,
  boreMm: 36,
  use: "enduro",
  screw: "air",
  numbering: "bore",
  heightM: 420,
  temperatureC: 15,
};
const mainOf = async (state = shopOf(DEMO), change: Partial<CallersBike> = {}) => {
  const point = await starting(state, { ...caller, ...change });
  if (!point.ok) throw new Error(point.detail);
  return { ...point.value, main: point.value.figures.find(({ part }) => part === "main")! };
};

describe("a starting point for a caller", () => {
  test("lies where such bikes are jetted, and says how far it may be off", async () => {
    // Mains of 250 cm³ two-strokes with 36 mm bodies are between about 155 and 185. Common practice, no source.
    const { main } = await mainOf();
    expect(main.start).toBeGreaterThan(150);
    expect(main.start).toBeLessThan(190);
    expect(main.low).toBeLessThan(main.start);
    expect(main.high).toBeGreaterThan(main.low);
  });

  test("is smaller up a mountain and in the heat", async () => {
    const { main } = await mainOf();
    expect((await mainOf(undefined, { heightM: 2500 })).main.middle).toBeLessThan(main.middle);
    expect((await mainOf(undefined, { temperatureC: 38 })).main.middle).toBeLessThan(main.middle);
  });

  test("rests on the shop's own marked setups where there are any, and says so", async () => {
    const [with_, without] = [await mainOf(), await mainOf(shopOf([]))];
    expect(with_.shopSetups).toBe(5);
    expect(without.shopSetups).toBe(0);
    expect(without.main.restsOn.join()).not.toMatch(/shop/i);
    expect(with_.main.high - with_.main.low).toBeLessThan(without.main.high - without.main.low);
  });

  test("asks for less, and knows less: numbering open gives both, with a text to send", async () => {
    const bare = await mainOf(undefined, {
      boreMm: null,
      use: null,
      screw: null,
      numbering: null,
      displacementCc: 124,
    });
    expect(bare.figures.filter(({ part }) => part === "main").map(({ numbering }) => numbering)).toEqual([
      "bore",
      "flow",
    ]);
    expect(bare.text).toContain("Starting point");
    expect(bare.text).toContain("First ride");
    expect(bare.cautions.length).toBeGreaterThan(2);
  });

  test.each([
    [{ boreMm: 90 }],
    [{ heightM: 9000 }],
    [{ temperatureC: 99 }],
    [{ displacementCc: null, boreMm: null }],
  ])("refuses %j in words", async (change) => {
    const point = await starting(shopOf([]), { ...caller, ...change });
    expect(point.ok).toBe(false);
    if (!point.ok) expect(point.detail.length).toBeGreaterThan(20);
  });
});
