import { describe, expect, test } from "vitest";
import type { Situation } from "../metering/situation.ts";
import { boreJet, FUEL_SCREW, fitted, mm, NEEDLE, SETUP } from "../metering/test-situations.ts";
import { known, UNKNOWN } from "../parts/known.ts";
import type { Setup } from "../parts/setup.ts";
import { partName } from "../words/en/parts.ts";
import { english } from "../words/en.ts";
import { turnsText } from "../words/figures.ts";
import type { LabourPart } from "./case.ts";
import { partChanges, partMoves, partStand } from "./part-stands.ts";
import type { Candidate } from "./search.ts";
import { FOUND } from "./test-stories.ts";

const partValue = (part: LabourPart, setup: Setup) => english.parts.value(partStand(part, setup));
const named = (part: LabourPart, setup: Setup) => partName(partStand(part, setup));

const to = (
  parts: Partial<Setup>,
  changes: readonly LabourPart[],
  toBuy: readonly LabourPart[] = [],
): Candidate => ({ situation: fitted(parts, FOUND), changes, toBuy }) as unknown as Candidate;

describe("turns of a screw as a technician says them", () => {
  test.each([
    [0, "0"],
    [0.25, "¼"],
    [0.5, "½"],
    [0.75, "¾"],
    [1, "1"],
    [1.25, "1¼"],
    [1.5, "1½"],
    [2.75, "2¾"],
    [2.99, "3"],
    [1.49, "1½"],
    [1.3, "1.3"],
    [1.125, "1.13"],
    [0.1, "0.1"],
  ])("%d: %s", (turns, text) => {
    expect(turnsText(turns)).toBe(text);
  });

  test("one turn or less is a turn, more are turns", () => {
    const out = (turnsOut: number) =>
      partValue("screw", { ...SETUP, screw: known({ kind: "air", turnsOut }) });
    expect([0.75, 1, 1.25, 2].map(out)).toEqual(["¾ turn out", "1 turn out", "1¼ turns out", "2 turns out"]);
  });
});

describe("what stands on a part", () => {
  test("each part by what is read on it", () => {
    const values = (setup: Setup) =>
      (["main", "pilot", "clip", "needle", "slide", "screw", "needleJet"] as const).map((part) =>
        partValue(part, setup),
      );
    expect(values(SETUP)).toEqual([
      "175",
      "42",
      "groove 3",
      "N1, groove 3",
      "cutaway 3.5 mm",
      "1½ turns out",
      "2.70 mm",
    ]);
    const unknown = {
      ...SETUP,
      main: UNKNOWN,
      pilot: UNKNOWN,
      clip: UNKNOWN,
      needle: UNKNOWN,
      cutaway: UNKNOWN,
      screw: UNKNOWN,
      needleJet: UNKNOWN,
    };
    expect(values(unknown)).toEqual(new Array(7).fill("not known"));
    expect(partValue("needle", { ...SETUP, clip: UNKNOWN })).toBe("N1, groove ?");
  });

  test("the screw is called by its kind", () => {
    expect(named("screw", SETUP)).toBe("air screw");
    expect(named("screw", FUEL_SCREW)).toBe("fuel screw");
    expect([named("needleJet", SETUP), named("main", SETUP)]).toEqual(["needle jet", "main jet"]);
  });

  test("a jet in full names its packet", () => {
    expect(english.steps.change.jet(SETUP.main.part)).toMatch(/^175 .*bore.*Ours/);
    expect(english.steps.change.jet(UNKNOWN.part)).toBe("not known");
  });
});

describe("headings", () => {
  const title = (candidate: Candidate, now: Situation = FOUND) =>
    english.parts.change(partMoves(now, candidate));

  test("a jet by its numbers; the clip by groove and way, groove 1 being the top one", () => {
    expect(title(to({ main: known(boreJet(180)) }, ["main"]))).toBe("Main jet 175 to 180");
    expect(title(to({ clip: known(2) }, ["clip"]))).toBe("Clip up, groove 3 to 2");
    expect(title(to({ clip: known(4) }, ["clip"]))).toBe("Clip down, groove 3 to 4");
  });

  test("a word both values share is said once", () => {
    expect(title(to({ screw: known({ kind: "air", turnsOut: 2 }) }, ["screw"]))).toBe(
      "Air screw 1½ to 2 turns out",
    );
    expect(title(to({ cutaway: known(mm(4)) }, ["slide"]))).toBe("Slide cutaway 3.5 to 4.0 mm");
    expect(title(to({ needleJet: known(mm(2.72)) }, ["needleJet"]))).toBe("Needle jet 2.70 to 2.72 mm");
  });

  test("a set lists its parts; a needle brings its groove", () => {
    const set = to({ needle: known({ ...NEEDLE, marks: "N2" }), clip: known(2), main: known(boreJet(170)) }, [
      "main",
      "needle",
    ]);
    expect(title(set)).toBe("Main jet 175 to 170; needle N1, groove 3 to N2, groove 2");
  });

  test("[A11] a change names what is fitted, what is to be fitted, and whether it is in the drawer", () => {
    const set = to({ main: known(boreJet(177.5)), pilot: known(boreJet(45)) }, ["main", "pilot"], ["pilot"]);
    expect(partChanges(FOUND, set, english)).toEqual([
      { part: "main", from: "175", to: "177.5", inDrawer: true },
      { part: "pilot", from: "42", to: "45", inDrawer: false },
    ]);
  });
});
