import { describe, expect, test } from "vitest";
import { OPENINGS } from "../units/opening.ts";
import { english } from "../words/en.ts";
import { type Band, bandOf, bandWords } from "./stretch-words.ts";

const said = (band: Band, strokes: 2 | 4) => bandWords(english, band, strokes);

describe("the three stretches of throttle", () => {
  test("bottom to 3/16, top from 3/4, the middle between", () => {
    expect(OPENINGS.map(bandOf)).toEqual([
      ...["bottom", "bottom", "bottom", "bottom"],
      ...["middle", "middle", "middle", "middle"],
      ...["top", "top", "top"],
    ]);
  });

  test.each([2, 4] as const)(
    "a %d-stroke's words for right, too much and too little all differ",
    (strokes) => {
      const all = (["bottom", "middle", "top"] as const).flatMap((band) => {
        const { right, tooMuch, tooLittle } = said(band, strokes);
        return [right, tooMuch, tooLittle];
      });
      expect(new Set(all).size).toBe(9);
      for (const words of all) expect(words).toMatch(/^[a-z].*[^.]$/);
    },
  );

  test("signs stand on their own side: hang, hollow and picking up are lean; dive, smoke and burble are rich (common practice, no source)", () => {
    for (const strokes of [2, 4] as const) {
      const bottom = said("bottom", strokes);
      expect(bottom.tooLittle).toMatch(/hang/);
      expect(bottom.tooMuch).toMatch(/dives below idle/);
      expect(said("middle", strokes).tooLittle).toMatch(/jerks.*hollow.*pings/);
      expect(said("top", strokes).tooLittle).toMatch(/picks up when you roll back.*shut off gently/);
      expect(said("top", strokes).tooMuch).toMatch(/will not rev out/);
    }
    expect(said("middle", 2).tooMuch).toMatch(/burbles under load/);
  });

  test("only a two-stroke burbles as it is rolled back; a rich four-stroke smokes black", () => {
    const all = (strokes: 2 | 4) =>
      (["bottom", "middle", "top"] as const).map((band) => Object.values(said(band, strokes)).join(" "));
    expect(all(2).join(" ")).toMatch(/burble/);
    expect(all(4).join(" ")).not.toMatch(/burble/);
    expect(said("middle", 4).tooMuch).toMatch(/smokes black/);
    expect(said("bottom", 4).tooLittle).toMatch(/overrun/);
  });
});
