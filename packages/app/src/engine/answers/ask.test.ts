import { describe, expect, test } from "vitest";
import everyKind from "../../../../records/fixtures/version-1/every-kind.jsonl?raw";
import { askFor } from "./ask.ts";
import { DEMO, linesOf, shopOf } from "./test-shop.ts";

const EVERY_KIND = linesOf(everyKind);

describe("the block for a friend", () => {
  const demo = shopOf(DEMO);

  test("answers the thirteen things helpers ask back, in that order", () => {
    const view = askFor(demo, { bike: "bramble", language: "en" })!;
    expect(view.items).toHaveLength(13);
    for (const [i, { title, answer }] of view.items.entries()) {
      expect(view.text).toContain(`${i + 1}. ${title}: ${answer}`);
    }
    const answer = (n: number) => view.items[n - 1]!.answer;
    expect(answer(1)).toMatch(/pilot jet 45.*read by eye\n.*main jet 167.5/s);
    expect(answer(2)).toMatch(/°C \(\d+ °F\).*m \(\d+ ft\)/);
    expect(answer(3)).toContain("Ridden");
    expect(answer(4)).toContain("40:1");
    expect(view.text).toContain("two-stroke");
  });

  test("says not known for what nobody wrote, and never makes it up", () => {
    const bare = shopOf([
      {
        id: "d",
        kind: "bike-described",
        v: 1,
        at: "2026-01-01T00:00:00Z",
        bike: "b",
        body: { name: "Plain" },
      },
    ]);
    const view = askFor(bare, { bike: "b", language: "en" })!;
    expect(view.items.every(({ known, answer }) => !known && answer === "not known")).toBe(true);
    expect(askFor(bare, { bike: "zz", language: "en" })).toBeNull();
  });

  test("tells what was changed before, who set it up, what the checks found, and where the plug was seen", () => {
    const view = askFor(shopOf(EVERY_KIND), { bike: "bramble", language: "en" })!;
    const answer = (n: number) => view.items[n - 1]!.answer;
    expect(answer(5)).toContain("Engine changed: pipe");
    expect(answer(6)).toContain("sound");
    expect(answer(7)).toContain("1 photo");
    expect(answer(8)).toBe("not known");
    expect(answer(9)).toContain("36 mm");
    expect(answer(10)).toContain("vented to free air");
    expect(answer(12)).toContain("clip in groove 3");
    expect(answer(13)).toContain("enduro");
  });

  test("every bike of the example gives a text without holes", () => {
    for (const bike of demo.shop.bikes.keys()) {
      expect(askFor(demo, { bike, language: "en" })!.text).not.toMatch(/undefined|NaN|\[object/);
    }
  });
});
