import { describe, expect, test } from "vitest";
import { NO_SHIFT } from "../belief/state.ts";
import { OPENINGS } from "../units/opening.ts";
import { chanceItHelps, isCalledFor, onDoubtAlone } from "./called-for.ts";
import type { BikeCase, LabourPart } from "./case.ts";
import type { Candidate } from "./search.ts";
import { ride, saw, story, tested } from "./test-stories.ts";
import { stateOf, sureOf, weighingOf } from "./test-weighing.ts";
import type { Weighing } from "./weighing.ts";

/** A candidate that changes those parts, each by so much at one opening. */
const moving = (...parts: readonly (readonly [LabourPart, number, number])[]): Candidate => {
  const circuit = {
    main: "main",
    pilot: "pilot",
    clip: "needle",
    needle: "needle",
    needleJet: "needle",
    slide: "slide",
    screw: "screw",
  } as const;
  const shift = { ...NO_SHIFT };
  for (const [part, where, by] of parts) {
    shift[circuit[part]] = OPENINGS.map(
      (opening, i) => shift[circuit[part]][i]! + (opening === where ? by : 0),
    );
  }
  return { shift, changes: parts.map(([part]) => part) } as unknown as Candidate;
};

const TROUBLE = [ride([saw("dives-below-idle"), saw("jerks-at-constant-grip"), saw("will-not-rev-out")])];
const ALL_WELL = [ride([saw("drops-straight-to-idle"), saw("pulls-smoothly"), saw("pulls-clean-to-peak")])];
const NOTHING = [ride([])];

/** The belief at 0 or elsewhere stands so many spreads to the rich side. */
const rich = (spreads: number, rides: BikeCase["rides"], given: Partial<BikeCase> = {}): Weighing =>
  weighingOf(story({ rides, ...given }), sureOf(stateOf(() => spreads * 0.05, 0.05)));

/** A step too small to shift the middle, so that the spreads decide. */
const LITTLE = 1e-9;

describe("[A7] no change on doubt", () => {
  test("where trouble was noticed, taking away a third of all that is expected is no doubt", () => {
    const weighing = rich(0, TROUBLE);
    const saving = (share: number, where = 3 / 8): Candidate => ({
      ...moving(["clip", where, 0.09]),
      trouble: (1 - share) * weighing.present.trouble,
    });
    expect(chanceItHelps(weighing, saving(0.34))).toBeLessThan(0.6);
    expect(isCalledFor(weighing, saving(0.34))).toBe(true);
    expect(isCalledFor(weighing, saving(0.33))).toBe(false);
    for (const rides of [ALL_WELL, NOTHING]) {
      const calm = rich(0, rides);
      expect(isCalledFor(calm, { ...saving(0.9), trouble: 0.1 * calm.present.trouble })).toBe(false);
    }
  });

  // A normal is above a point 0.2533 spreads below its middle with 60 %, 0.6745 with 75 % (tables [memory]).
  test("with trouble in its stretch a part must be 60 % likely to go the right way", () => {
    for (const [part, where] of [
      ["screw", 0],
      ["pilot", 1 / 8],
      ["clip", 3 / 8],
      ["main", 1],
      ["slide", 1 / 4],
    ] as const) {
      const leaner = moving([part, where, -LITTLE]);
      expect(isCalledFor(rich(0.26, TROUBLE), leaner), part).toBe(true);
      expect(isCalledFor(rich(0.25, TROUBLE), leaner), part).toBe(false);
      if (part === "main") continue;
      const richer = moving([part, where, LITTLE]);
      expect(isCalledFor(rich(-0.26, TROUBLE), richer), part).toBe(true);
      expect(isCalledFor(rich(-0.25, TROUBLE), richer), part).toBe(false);
    }
  });

  test("where nothing was noticed 75 %", () => {
    const leaner = moving(["clip", 3 / 8, -LITTLE]);
    expect(isCalledFor(rich(0.68, NOTHING), leaner)).toBe(true);
    expect(isCalledFor(rich(0.67, NOTHING), leaner)).toBe(false);
  });

  test("a stretch that was well is left alone, however sure", () => {
    expect(isCalledFor(rich(3, ALL_WELL), moving(["clip", 3 / 8, -0.05]))).toBe(false);
    expect(isCalledFor(rich(-3, ALL_WELL), moving(["screw", 0, 0.05]))).toBe(false);
    expect(isCalledFor(rich(3, ALL_WELL), moving(["main", 1, -0.05]))).toBe(false);
  });

  test("the middle between the two setups decides: a step far past right is not called for", () => {
    const weighing = rich(1, TROUBLE);
    expect(isCalledFor(weighing, moving(["clip", 3 / 8, -0.05]))).toBe(true);
    expect(isCalledFor(weighing, moving(["clip", 3 / 8, -0.09]))).toBe(false);
    expect(chanceItHelps(weighing, moving(["clip", 3 / 8, -0.1]))).toBeCloseTo(0.5, 9);
    expect(chanceItHelps(weighing, moving(["clip", 3 / 8, 0.1]))).toBeLessThan(0.03);
  });

  test("every part of a set by itself, where it acts most", () => {
    const weighing = rich(1, TROUBLE);
    expect(isCalledFor(weighing, moving(["clip", 3 / 8, -0.03], ["screw", 0, -0.03]))).toBe(true);
    expect(isCalledFor(weighing, moving(["clip", 3 / 8, -0.03], ["screw", 0, 0.001]))).toBe(false);
    expect(isCalledFor(weighing, moving(["main", 1, 0.03], ["screw", 0, -0.03]))).toBe(false);
  });

  test("doubt alone only richens the main jet, as a step of its own, and not where the top was well", () => {
    expect(isCalledFor(rich(0, NOTHING), moving(["main", 1, 0.05]))).toBe(true);
    expect(isCalledFor(rich(2, NOTHING), moving(["main", 1, 0.05]))).toBe(true);
    expect(isCalledFor(rich(0, NOTHING), moving(["main", 1, -0.05]))).toBe(false);
    expect(isCalledFor(rich(0, NOTHING), moving(["pilot", 0, 0.05]))).toBe(false);
    expect(isCalledFor(rich(0, ALL_WELL), moving(["main", 1, 0.05]))).toBe(false);
  });

  test("a swept screw whose best was at an end is no cure by itself, but may go with another part", () => {
    const swept = { tests: [tested("screw-sweep-air", "far-out", { at: 2 })] };
    const screw = moving(["screw", 0, -0.02]);
    expect(isCalledFor(rich(2, TROUBLE), screw)).toBe(true);
    expect(isCalledFor(rich(2, TROUBLE, swept), screw)).toBe(false);
    expect(isCalledFor(rich(2, TROUBLE, swept), moving(["pilot", 1 / 8, -0.04], ["screw", 0, -0.02]))).toBe(
      true,
    );
  });
});

describe("[A9] a bigger main jet on doubt alone", () => {
  const bigger = moving(["main", 1, 0.02]);
  const HANG = [ride([saw("hangs-after-closing")])];

  test("while another stretch has trouble and the top none", () => {
    expect(onDoubtAlone(rich(0, HANG), bigger)).toBe(true);
    expect(onDoubtAlone(rich(0, NOTHING), bigger)).toBe(false);
    expect(onDoubtAlone(rich(0, [ride([saw("will-not-rev-out"), saw("hangs-after-closing")])]), bigger)).toBe(
      false,
    );
  });

  test("not when it is likely right, nor a set, nor another part", () => {
    expect(onDoubtAlone(rich(-1, HANG), bigger)).toBe(false);
    expect(onDoubtAlone(rich(0, HANG), moving(["main", 1, 0.02], ["screw", 0, 0.01]))).toBe(false);
    expect(onDoubtAlone(rich(0, HANG), moving(["clip", 3 / 8, 0.02]))).toBe(false);
  });
});
