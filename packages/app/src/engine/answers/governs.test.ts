import { readFileSync } from "node:fs";
import type { Opening, Shares } from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import { describe, expect, test } from "vitest";
import { EngineState } from "../state.ts";
import { governsFor, stretchesOf } from "./governs.ts";

const share = (opening: number, over: Partial<Shares>): Shares => ({
  opening: opening as Opening,
  pilot: 0,
  outlet: 0,
  needle: 0,
  main: 0,
  slideStep: 0,
  screwStep: 0,
  clipStep: 0,
  governs: "pilot",
  text: "",
  ...over,
});

const demo = (): EngineState => {
  const state = new EngineState();
  state.speak(english);
  state.add(readFileSync("demo/shop.jsonl", "utf8").split("\n").filter(Boolean));
  return state;
};

describe("the stretch each part leads", () => {
  test("ends where the lead is lost, on a line between the openings", () => {
    expect(
      stretchesOf([
        share(0, { pilot: 0.8, outlet: 0.2, slideStep: 0.06 }),
        share(0.1, { pilot: 0.5, outlet: 0.1, needle: 0.4, slideStep: 0.05 }),
        share(0.2, { pilot: 0.1, outlet: 0.1, needle: 0.7, main: 0.1, slideStep: 0.04 }),
        share(0.4, { needle: 0.8, main: 0.2, slideStep: 0 }),
        share(0.8, { needle: 0.6, main: 0.4 }),
        share(1, { needle: 0.3, main: 0.7 }),
      ]).map(({ part, from, to }) => [part, from.toFixed(4), to.toFixed(4)]),
    ).toEqual([
      ["pilot", "0.0000", "0.1250"],
      ["slide", "0.1250", "0.3000"],
      ["needle", "0.3000", "0.8667"],
      ["main", "0.8667", "1.0000"],
    ]);
  });

  test("a part that leads nowhere is left out", () => {
    expect(stretchesOf([share(0, { pilot: 1 }), share(0.5, { needle: 1 }), share(1, { needle: 1 })])).toEqual(
      [
        { part: "pilot", from: 0, to: 0.25 },
        { part: "needle", from: 0.25, to: 1 },
      ],
    );
  });

  // Common practice, no source: pilot to about 1/8, slide to 1/4, needle to 3/4, main jet above.
  // A small main jet under a wide needle gap takes over earlier.
  test("lies where workshop manuals put it on every bike of the example shop", () => {
    const state = demo();
    for (const [bike, { description }] of state.shop.bikes) {
      if (description?.engine === undefined) continue;
      const answer = governsFor(state, { bike });
      if (!answer.ok) throw new RangeError(answer.detail);
      const { stretches, at } = answer.value;
      expect(stretches.map(({ part }) => part)).toEqual(["pilot", "slide", "needle", "main"]);
      const [pilot, slide, needle, main] = stretches;
      expect(pilot!.from).toBe(0);
      expect(pilot!.to).toBeGreaterThan(1 / 16);
      expect(pilot!.to).toBeLessThan(1 / 4);
      expect(slide!.to).toBeGreaterThan(3 / 16);
      expect(slide!.to).toBeLessThan(3 / 8);
      expect(needle!.to).toBeGreaterThan(3 / 8);
      expect(main!.to).toBe(1);
      expect(at).toHaveLength(11);
    }
  });

  test("of no bike at all is refused", () => {
    expect(governsFor(demo(), { bike: "nobody" })).toMatchObject({ ok: false, reason: "no-such-bike" });
  });
});
