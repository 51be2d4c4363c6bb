import { readFileSync } from "node:fs";
import { nextStep } from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import { bikeCase } from "@jetwright/records";
import { describe, expect, test } from "vitest";
import { EngineState } from "../state.ts";
import { trendOf } from "./trend.ts";

const state = new EngineState();
state.speak(english);
state.add(readFileSync("demo/shop.jsonl", "utf8").split("\n").filter(Boolean));

function rides(bike: string) {
  const answer = trendOf(state, { bike });
  if (!answer.ok) throw new RangeError(answer.detail);
  return answer.value;
}

describe("the mixture from ride to ride", () => {
  test.each([...state.shop.bikes.keys()])("%s: every ride once, oldest first", (bike) => {
    const got = rides(bike);
    expect(new Set(got.map(({ record }) => record)).size).toBe(got.length);
    expect(got.map(({ at }) => at)).toEqual(got.map(({ at }) => at).sort((a, b) => a - b));
    expect(got[0]?.changed ?? false).toBe(false);
    for (const { bottom, middle, top } of got) {
      expect([bottom.opening, middle.opening, top.opening]).toEqual([1 / 8, 1 / 2, 1]);
      for (const { mean, sd } of [bottom, middle, top]) {
        expect(Number.isFinite(mean)).toBe(true);
        expect(sd).toBeGreaterThan(0);
      }
    }
  });

  test("a last ride on what is fitted now reads as the picture of now does", () => {
    let compared = 0;
    for (const bike of state.shop.bikes.keys()) {
      const story = bikeCase(state.shop, bike);
      if (!story.ok) continue;
      const last = [...story.value.rides].sort((a, b) => a.at - b.at).at(-1);
      const shown = rides(bike).at(-1);
      const { now } = story.value;
      const same =
        last !== undefined &&
        last.situation.setup === now.setup &&
        last.situation.air === now.air &&
        last.situation.fuel === now.fuel;
      if (!same || shown === undefined) continue;
      const advice = nextStep(story.value, english);
      if (!advice.ok) throw new RangeError(advice.detail);
      const at = (opening: number) => advice.value.picture.find((one) => one.opening === opening)!;
      expect(shown.bottom.mean).toBeCloseTo(at(1 / 8).mean, 9);
      expect(shown.middle.mean).toBeCloseTo(at(1 / 2).mean, 9);
      expect(shown.top.sd).toBeCloseTo(at(1).sd, 9);
      compared++;
    }
    expect(compared).toBeGreaterThan(0);
  });

  test("a smaller pilot jet shows as leaner at the bottom", () => {
    const line = (id: string, kind: string, day: number, body: object) =>
      JSON.stringify({ id, kind, v: 1, at: `2026-05-0${day}T10:00:00Z`, bike: "fern", body });
    const fern = new EngineState();
    fern.speak(english);
    fern.add([
      line("a", "bike-described", 1, {
        name: "Fern",
        engine: { strokes: 2, displacementCc: 249 },
        carburetor: { bore: { shape: "round", diameterMm: 36 }, screw: "air", jetNumbering: "bore" },
      }),
      line("b", "setup-fitted", 1, { main: { number: 170 }, pilot: { number: 48 } }),
      line("c", "ride-reported", 2, { reports: [{ sign: "idles-steadily" }] }),
      line("d", "setup-fitted", 3, { pilot: { number: 42 } }),
      line("e", "ride-reported", 4, { reports: [{ sign: "idles-steadily" }] }),
    ]);
    const answer = trendOf(fern, { bike: "fern" });
    if (!answer.ok) throw new RangeError(answer.detail);
    const [first, second] = answer.value;
    expect(answer.value.map(({ changed }) => changed)).toEqual([false, true]);
    expect(second!.bottom.mean).toBeLessThan(first!.bottom.mean - 0.03);
    expect(Math.abs(second!.top.mean - first!.top.mean)).toBeLessThan(0.03);
  });

  test("no such bike is refused", () => {
    expect(trendOf(state, { bike: "nobody" }).ok).toBe(false);
  });
});
