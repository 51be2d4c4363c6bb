import { type MixtureReading, SPOKEN_OPENINGS } from "@jetwright/core";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { asciiText } from "./ascii.ts";
import { labelled, table, wrap } from "./layout.ts";
import { inTen, mixtureSentences, percentOf, twoSidedSentences, verdictOn } from "./mixture-words.ts";
import { mixturePicture } from "./picture.ts";
import { oneLine, printable } from "./printable.ts";
import { plain } from "./units.ts";

const SEED = { seed: 20260502, numRuns: 300 };
const reading = (mean: number, sd: number, i = 0): MixtureReading => ({
  opening: SPOKEN_OPENINGS[i]!,
  mean,
  sd,
});
const picture = (means: readonly number[], sd = 0.01): MixtureReading[] =>
  means.map((mean, i) => reading(mean, sd, i));

describe("layout", () => {
  test("wrapping keeps every word in order and no line too long", () => {
    fc.assert(
      fc.property(
        fc.array(fc.stringMatching(/^[a-z]{1,12}$/)),
        fc.integer({ min: 12, max: 80 }),
        (words, width) => {
          const lines = wrap(words.join(" "), width);
          expect(lines.join(" ")).toBe(words.join(" "));
          for (const line of lines) expect(line.length).toBeLessThanOrEqual(width);
        },
      ),
      SEED,
    );
  });

  test("a label stands in the margin of the first line only", () => {
    expect(labelled("Why", "one two three", 18)).toEqual(["Why       one two", "          three"]);
  });

  test("a table is flush left first, flush right after", () => {
    expect(
      table([
        ["a", "1", "22"],
        ["bcd", "100", "2"],
      ]),
    ).toEqual(["a      1  22", "bcd  100   2"]);
  });
});

describe("plain text", () => {
  test.each([
    ["1½ turns, 24 °C", "1 1/2 turns, 24 C"],
    ["½ a turn", "1/2 a turn"],
    ["Träil → café", "Trail -> cafe"],
    ["kg/m³ ± 2", "kg/m3 +/- 2"],
    ["日", "?"],
  ])("%s becomes %s", (text, ascii) => expect(asciiText(text)).toBe(ascii));

  test("nothing beyond ASCII is left, and lines stay lines", () => {
    fc.assert(
      fc.property(fc.string({ unit: "grapheme" }), (text) => {
        const ascii = asciiText(printable(text));
        expect(ascii).toMatch(/^[\n -~]*$/);
        expect(ascii.split("\n").length).toBe(text.split("\n").length);
      }),
      SEED,
    );
  });

  test("control and direction characters become spaces", () => {
    expect(printable("a\u001b[31mb\u0007\u202ec\nd")).toBe("a [31mb  c\nd");
    expect(oneLine(" a\n\tb ")).toBe("a b");
  });

  test("numbers lose zeros at the end, and nothing is ever -0", () => {
    expect([plain(1.5, 1), plain(2.04, 1), plain(-0.01, 1)]).toEqual(["1.5", "2", "0"]);
  });
});

describe("the mixture in words", () => {
  test("percent is that of the ratio", () => {
    expect(percentOf(Math.log(1.1))).toBeCloseTo(10, 12);
    expect(percentOf(Math.log(0.9))).toBeCloseTo(-10, 12);
  });

  test.each([
    [0.1, 0.02, "rich"],
    [-0.1, 0.02, "lean"],
    [0.0, 0.02, "right"],
    [0.03, 0.05, "seems rich"],
    [-0.03, 0.05, "seems lean"],
    [0.01, 0.1, "open"],
    [0.04, 0.2, "open"],
  ])("%d give or take %d is %s", (mean, sd, verdict) => expect(verdictOn({ mean, sd })).toBe(verdict));

  test("rich and lean change places when the sign does", () => {
    fc.assert(
      fc.property(
        fc.double({ min: -0.3, max: 0.3, noNaN: true }),
        fc.double({ min: 0.001, max: 0.3, noNaN: true }),
        (mean, sd) => {
          const turned = verdictOn({ mean: -mean, sd });
          const swap = { rich: "lean", lean: "rich" } as Record<string, string>;
          expect(turned).toBe(verdictOn({ mean, sd }).replace(/rich|lean/, (word) => swap[word]!));
        },
      ),
      SEED,
    );
  });

  test("says what is known first, with size and stretch, then what is not", () => {
    const mixed = [...picture([0.1, 0.12, 0, 0]), reading(-0.08, 0.01, 4), reading(0, 0.2, 5)];
    expect(mixtureSentences({ picture: mixed })).toBe(
      "It runs rich from closed to 1/8 by about 13 % and lean at 3/4 by about 8 %, and right from 1/4 to 1/2. Nothing can be told yet at full throttle.",
    );
    expect(mixtureSentences({ picture: picture([0, 0, 0, 0, 0, 0]) })).toBe(
      "It runs right at every opening.",
    );
    expect(mixtureSentences({ picture: picture([0, 0, 0, 0, 0, 0], 0.3) })).toContain("Nothing is sure yet");
  });

  test("a reading of two sides is told as two", () => {
    const [sentence] = twoSidedSentences({
      twoSided: [{ opening: SPOKEN_OPENINGS[0]!, rich: 0.62, richPeak: 0.07, leanPeak: -0.09 }],
    });
    expect(sentence).toBe(
      "At closed throttle it reads as too rich or too lean, not in between: about 7 % rich (6 in ten) or 9 % lean (4 in ten).",
    );
  });

  test("chances are said in tenths", () => {
    expect([0, 0.12, 0.5, 0.97, 1].map(inTen)).toEqual([
      "hardly any",
      "1 in ten",
      "even",
      "almost sure",
      "almost sure",
    ]);
  });
});

describe("the mixture drawn", () => {
  const none = (text: string): string => text;
  const rowsWith = (lines: readonly string[], mark: string): number[] =>
    lines.flatMap((line, i) => (i < 13 && line.slice(14).includes(mark) ? [i] : []));

  test("rich is above the line that says right, lean below", () => {
    const options = { unicode: false, paint: none };
    const rich = mixturePicture(picture([0.1, 0.1, 0.1, 0.1, 0.1, 0.1]), null, options);
    const lean = mixturePicture(picture([-0.1, -0.1, -0.1, -0.1, -0.1, -0.1]), null, options);
    expect(rich[0]).toContain("rich");
    expect(rich[6]).toContain("right");
    expect(rich[12]).toContain("lean");
    expect(Math.max(...rowsWith(rich, "#"))).toBeLessThan(6);
    expect(Math.min(...rowsWith(lean, "#"))).toBeGreaterThan(6);
  });

  test("the step's own line is drawn beside it, and only then named", () => {
    const options = { unicode: false, paint: none };
    const now = picture([0.1, 0.1, 0.1, 0.1, 0.1, 0.1]);
    const after = picture([0, 0, 0, 0, 0, 0]);
    const drawn = mixturePicture(now, after, options);
    expect(rowsWith(drawn, "o")).toEqual([6]);
    expect(drawn.at(-1)).toContain("o after the step");
    expect(mixturePicture(now, null, options).at(-1)).not.toContain("after");
  });

  test("any mixture makes a picture of thirteen rows and three lines, within 80 columns", () => {
    fc.assert(
      fc.property(
        fc.array(
          fc.tuple(
            fc.double({ min: -2, max: 2, noNaN: true }),
            fc.double({ min: 1e-6, max: 2, noNaN: true }),
          ),
          { minLength: 6, maxLength: 6 },
        ),
        (values) => {
          const lines = mixturePicture(
            values.map(([mean, sd], i) => reading(mean, sd, i)),
            null,
            { unicode: false, paint: none },
          );
          expect(lines).toHaveLength(16);
          expect(rowsWith(lines, "#").length).toBeGreaterThan(0);
          for (const line of lines) expect(line.length).toBeLessThanOrEqual(80);
        },
      ),
      SEED,
    );
  });
});
