import { describe, expect, test } from "vitest";
import { readLog } from "./log-reader.ts";

/** "path: what. mend" for the body of one record. */
function flaws(kind: string, body: unknown): string[] {
  const log = readLog([JSON.stringify({ id: "a", kind, at: "2026-05-02T10:15:00Z", bike: "b", body })]);
  return log.problems.map(({ path, what, mend }) => `${path}: ${what}. ${mend}`);
}

describe("[R6] a wrong body says where, what and how to mend it", () => {
  test.each<[string, string, unknown, string[]]>([
    [
      "a number in quotes, with a decimal comma",
      "setup-fitted",
      { main: { number: "172,5" } },
      [
        'body.main.number: must be a number, but is "172,5". Write 172.5 without quotes, with a point for decimals.',
      ],
    ],
    [
      "a word where a part belongs",
      "setup-fitted",
      { clip: "three" },
      ['body.clip: "three" cannot be read here. Write "unknown", or an object in { }.'],
    ],
    [
      "a part that lacks its figure",
      "setup-fitted",
      { screw: { how: "told" } },
      ["body.screw.turnsOut: is missing. Add it: a number."],
    ],
    [
      "a figure beyond what can be",
      "setup-fitted",
      { screw: { turnsOut: 15 } },
      [
        "body.screw.turnsOut: must be at most 12, but is 15. Check the value and its unit: the field's name says which unit it is in.",
      ],
    ],
    [
      "a limit that is itself too much",
      "setup-fitted",
      { main: { number: 2000 } },
      [
        "body.main.number: must be less than 2000, but is 2000. Check the value and its unit: the field's name says which unit it is in.",
      ],
    ],
    [
      "a misspelt word",
      "bike-described",
      { engine: { strokes: 2 }, carburetor: { screw: "aire" } },
      ['body.carburetor.screw: must be one of "air", "fuel", "unknown", but is "aire". Did you mean "air"?'],
    ],
    [
      "neither of two numbers",
      "bike-described",
      { engine: { strokes: 3 } },
      ["body.engine.strokes: 3 cannot be read here. Write 2, or 4."],
    ],
    [
      "a shape nobody makes",
      "bike-described",
      { carburetor: { bore: { shape: "square" } } },
      ['body.carburetor.bore.shape: "square" cannot be read here. Write "round", or "oval", or "D".'],
    ],
    [
      "no shape at all",
      "bike-described",
      { carburetor: { bore: {} } },
      ['body.carburetor.bore.shape: is missing. Write "round", or "oval", or "D".'],
    ],
    [
      "an opening nobody speaks of",
      "test-done",
      { test: "chop-warm", outcome: "hangs", opening: 2 },
      [
        "body.opening: must be at most 1, but is 2. Check the value and its unit: the field's name says which unit it is in.",
      ],
    ],
    [
      "text where true or false belongs",
      "ride-reported",
      { warm: "TRUE" },
      ['body.warm: must be true or false, but is "TRUE". Write true without quotes.'],
    ],
    [
      "a number where text belongs",
      "note",
      { text: 7 },
      ['body.text: must be text in quotes, but is 7. Put quotes around it: "7".'],
    ],
    ["nothing where text belongs", "note", {}, ["body.text: is missing. Add it: text in quotes."]],
    [
      "a list where text belongs",
      "note",
      { text: [1] },
      [
        "body.text: must be text in quotes, but is a list. Write text in quotes there, or take the field out.",
      ],
    ],
    [
      "a name that is no name",
      "record-struck",
      { record: "the last one" },
      [
        'body.record: is "the last one", which is not in the right form. Use 1 to 64 letters, digits and . _ : - for it.',
      ],
    ],
    [
      "an empty list",
      "mixture-measured",
      { readings: [] },
      ["body.readings: must have at least 1 entries, but is a list. Add an entry."],
    ],
    [
      "empty text",
      "engine-changed",
      { what: "" },
      ['body.what: must have at least 1 letters, but is "". Write it out.'],
    ],
    [
      "too long a text",
      "engine-changed",
      { what: "x".repeat(201) },
      [`body.what: must have at most 200 letters, but is "${"x".repeat(36)}.... Shorten it.`],
    ],
    [
      "half a part",
      "parts-bought",
      { parts: [{ part: "slide", cutawayMm: 3, count: 1.5 }] },
      [
        "body.parts.0.count: must be a whole number, but is 1.5. Write a whole number there, or take the field out.",
      ],
    ],
    [
      "text that is no hash",
      "photo",
      { hash: "abc" },
      [
        'body.hash: is "abc", which is not in the right form. Write the 64 hex digits of the file\'s SHA-256, in small letters.',
      ],
    ],
    [
      "oil that is given in one way but beyond it",
      "fuel-used",
      { oil: { percentOfFuel: 50 } },
      [
        "body.oil.percentOfFuel: must be at most 20, but is 50. Check the value and its unit: the field's name says which unit it is in.",
      ],
    ],
    [
      "oil in words that mean nothing",
      "fuel-used",
      { oil: "a good glug" },
      [
        'body.oil: the oil cannot be understood. "a good glug" is not an oil ratio. Write it like 50:1, 20 ml/l, 2 % of fuel, or none.',
      ],
    ],
    [
      "a setup that names no part",
      "setup-fitted",
      { why: "no reason" },
      [
        'body: no part is named. Name at least one of main, pilot, needle, clip, needleJet, slide, screw, fuelLevel, mainAirJet, pilotAirJet, or write a record of kind "note".',
      ],
    ],
    [
      "air that says nothing of the air",
      "air-measured",
      { humidityPercent: 50 },
      [
        "body: it says nothing about the air. Give temperatureC with stationPressureHpa, or with heightM; or a weather report with heightM.",
      ],
    ],
    [
      "a reading without its figure",
      "mixture-measured",
      { readings: [{ opening: "full", lambda: 0.8 }] },
      [
        'body.readings.0: the reading has no errorPercent and no pair of lambda and wantedLambda, so it is left out. Give "errorPercent": 4 for 4 % rich, or "lambda": 0.84, "wantedLambda": 0.88.',
      ],
    ],
    ["a body that is no object", "note", [], ["body: must be an object in { }. Write what happened in it."]],
  ])("%s", (_name, kind, body, said) => {
    expect(flaws(kind, body)).toEqual(said);
  });

  test("a weather report that is none is refused with the reason of the reader of reports", () => {
    expect(flaws("air-measured", { report: "sunny", heightM: 3 })).toMatchObject([
      expect.stringMatching(/^body\.report: cannot be read as a weather report\. /),
    ]);
  });

  test("readings that are complete count beside one that is not", () => {
    const body = { readings: [{ opening: "full" }, { opening: "1/2", errorPercent: 3 }] };
    const log = readLog([
      JSON.stringify({ id: "a", kind: "mixture-measured", at: "2026-05-02T10:15:00Z", bike: "b", body }),
    ]);
    expect(log.entries[0]).toMatchObject({ reading: "used", body: { readings: [{ errorPercent: 3 }] } });
  });
});
