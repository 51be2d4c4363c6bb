import { describe, expect, test } from "vitest";
import { HERE } from "../metering/test-situations.ts";
import type { CubicMetre, Metre } from "../units/quantity.ts";
import type { CoreWords } from "../words/core-words.ts";
import { starting as germanStarting } from "../words/de/starting.ts";
import { german } from "../words/de.ts";
import { type StartingWords, starting } from "../words/en/starting.ts";
import { english } from "../words/en.ts";
import { starting as spanishStarting } from "../words/es/starting.ts";
import { spanish } from "../words/es.ts";
import type { BikeToStart } from "./bike.ts";
import { STANDARD_AIR, standardFuel } from "./known-good.ts";
import { startingPoint } from "./starting-point.ts";
import { startingPointText } from "./starting-point-text.ts";

const ENGLISH: readonly [CoreWords, StartingWords] = [english, starting];

const BIKE: BikeToStart = {
  strokes: 2,
  displacement: 249e-6 as CubicMetre,
  bore: 0.036 as Metre,
  use: "enduro",
  screwKind: "air",
  mainNumbering: "bore",
  pilotNumbering: "bore",
};
const textOf = (change: Partial<BikeToStart>, broken = false, said = ENGLISH): string => {
  const twin = {
    engine: { strokes: 2 as const, displacement: 249e-6 as CubicMetre },
    use: "enduro" as const,
  };
  const wrong = { ...HERE, air: { ...HERE.air, density: 99 as never } };
  const goods = broken
    ? [
        { ...twin, situation: wrong },
        { ...twin, situation: HERE },
      ]
    : [];
  const point = startingPoint({ ...BIKE, ...change }, goods, { air: STANDARD_AIR, fuel: standardFuel(2) });
  if (!point.ok) throw new Error(point.detail);
  return startingPointText(point.value, ...said);
};

describe("the text for the caller", () => {
  test("names engine, air, every part with its range, and that it is no setting", () => {
    const text = textOf({});
    expect(text.split("\n").slice(0, 2)).toEqual([
      "Starting point: 249 cm³, two-stroke, enduro, 36 mm carburetor",
      "For air of 15 °C, 1013 hPa at the place.",
    ]);
    expect(text).toMatch(/^ {2}Main jet \(bore number\) {2,}\d+(\.5)? {2,}\d+(\.5)? to \d+(\.5)?$/m);
    expect(text).toMatch(/^ {2}Pilot jet \(bore number\) {2,}\d+ {2,}\d+ to \d+$/m);
    expect(text).toMatch(/^ {2}Clip {2,}groove 3 of 5 from the top {2,}1 to 4$/m);
    expect(text).toMatch(/^ {2}Screw {2,}1.5 turns out {2,}0.75 to 2.25$/m);
    expect(text).toContain("This is a starting point, not a setting.");
    expect(text).toContain("rich at the top on purpose");
    expect(text).not.toContain("To know first");
    expect(text).not.toContain("Not used");
    expect(text.endsWith("\n")).toBe(true);
  });

  test("one line for figures that rest on the same, and what was left out", () => {
    const text = textOf({ mainNumbering: null }, true);
    expect(text).toContain("Main jet (flow number)");
    expect(text).toContain("mostly one bike of this shop of 249 cm³, brought to standard air");
    expect(text).toContain("Not used\n  - Air of 99 kg/m³");
  });

  test("a guessed bore is called so, and no use is no word", () => {
    expect(textOf({ bore: null, use: null }).split("\n")[0]).toMatch(
      /two-stroke, \d+(\.\d)? mm carburetor \(guessed\)$/,
    );
    expect(textOf({ displacement: null }).split("\n")[0]).toBe(
      "Starting point: two-stroke, enduro, 36 mm carburetor",
    );
    expect(textOf({ bore: null })).toContain("To know first\n  - The bore is not known");
  });
});

/** English words that neither other language has. */
const LEFT = /\b(the|and|with|of|is|jet|needle|screw|bore|throttle|turns)\b/i;

test.each([
  ["German", german, germanStarting],
  ["Spanish", spanish, spanishStarting],
] as const)("in %s nothing is left in English but why a bike was not used", (_, core, words) => {
  for (const change of [
    {},
    { bore: null, use: null, screwKind: null },
    { displacement: null, mainNumbering: null, pilotNumbering: null, screwKind: "fuel" },
  ] as const) {
    for (const broken of [false, true]) {
      const text = textOf(change, broken, [core, words]);
      const [whole, leftOut = ""] = [text, text.split(`${words.text.notUsed}\n`)[1]?.split("\n\n")[0]];
      expect(whole.replace(leftOut, "")).not.toMatch(LEFT);
      expect(whole.replace(leftOut, "")).not.toMatch(/\d\.\d/);
    }
  }
});

describe("what to do with it", () => {
  test("mechanics before any jet, then screw, roll-off, middle", () => {
    const steps = starting.afterwards("air");
    expect(steps.map((step) => step.split(/[ :,]/)[0])).toEqual(["Before", "Screw", "Roll-off", "Then"]);
    expect(steps[2]).toContain("If it picks up it is lean: go a size up.");
  });
  // Common practice, no source: an air screw far in means the pilot is too small; a fuel screw far in, too big.
  test("the way of the screw decides the pilot", () => {
    expect(starting.afterwards("air")[1]).toContain(
      "below 3/4 turn out: a bigger pilot jet; above 2 1/2: a smaller one. An air screw",
    );
    expect(starting.afterwards("fuel")[1]).toContain(
      "below 3/4 turn out: a smaller pilot jet; above 2 1/2: a bigger one. A fuel screw",
    );
    const open = starting.afterwards(null)[1];
    expect(open).toContain("Settle first which screw it is");
    expect(open).not.toContain("pilot jet");
  });
  test("only two-strokes are told of four-stroking", () => {
    expect(starting.firstRide(2).join()).toContain("four-stroking");
    expect(starting.firstRide(4).join()).not.toContain("four-stroking");
  });
});
