import { describe, expect, test } from "vitest";
import { sheet as words } from "../../words/en/sheet.ts";
import { rangeWords } from "./range-words.ts";

const range = { coldest: -8.7, warmest: 35.6, down: 718, up: 1010.3, thinnest: 1.0776, thickest: 1.274 };
const metric = { temperature: "C", height: "m", pressure: "hPa", language: "en" } as const;

describe("how far it may move, in words", () => {
  test("rounds toward the inside, so that the printed edge is never past the true one", () => {
    expect(rangeWords(range, 900, metric, words)).toEqual([
      "At this height: −8 °C to 35 °C",
      "At this temperature: 190 m to 1910 m",
      "Air density: 1.08 to 1.27 kg/m³",
    ]);
  });

  test("in feet and Fahrenheit", () => {
    // -8.7 °C is 16.3 °F, 35.6 °C is 96.1 °F; 182 m is 597 ft, 1910.3 m is 6267 ft (1 ft = 0.3048 m).
    expect(
      rangeWords(
        range,
        900,
        { temperature: "F", height: "ft", pressure: "inHg", language: "en" },
        words,
      ).slice(0, 2),
    ).toEqual(["At this height: 17 °F to 96 °F", "At this temperature: 600 ft to 6250 ft"]);
  });

  test("tells the way up and down where the height is not known, and sea level where nothing stops it", () => {
    expect(rangeWords(range, null, metric, words)[1]).toBe(
      "At this temperature: 710 m lower to 1010 m higher",
    );
    expect(rangeWords({ ...range, down: null, up: null }, 300, metric, words)[1]).toBe(
      "At this temperature: sea level to any height",
    );
    expect(rangeWords(range, 300, metric, words)[1]).toBe("At this temperature: sea level to 1310 m");
    expect(rangeWords({ ...range, coldest: null, warmest: null }, 300, metric, words)[0]).toBe(
      "At this height: any cold to any heat",
    );
  });
});
