import { describe, expect, test } from "vitest";
import { NO_SHIFT } from "../belief/state.ts";
import { boreJet, fitted } from "../metering/test-situations.ts";
import { known } from "../parts/known.ts";
import type { Shift } from "../units/circuit.ts";
import { OPENINGS } from "../units/opening.ts";
import { english } from "../words/en.ts";
import { lowerFirst, upperFirst } from "../words/letters.ts";
import type { BikeCase } from "./case.ts";
import { mainEffect, reasonsAt, reasonsForChange, reasonsForFault } from "./reasons.ts";
import type { Candidate } from "./search.ts";
import { FOUND, notThere, ride, saw, story, tested } from "./test-stories.ts";
import { weighingOf } from "./test-weighing.ts";

const shifted = (circuit: keyof Shift, by: Partial<Record<number, number>>): Candidate =>
  ({
    shift: { ...NO_SHIFT, [circuit]: OPENINGS.map((opening) => by[opening] ?? 0) },
  }) as unknown as Candidate;
const STAY = shifted("main", {});

describe("where a change acts most", () => {
  test("the opening of the largest change either way, all circuits together", () => {
    expect(mainEffect(STAY, shifted("main", { 1: 0.05, 0.5: -0.08 }))).toEqual({
      opening: 0.5,
      change: -0.08,
    });
    const both = {
      shift: {
        ...shifted("pilot", { 0: 0.05 }).shift,
        screw: OPENINGS.map((o) => (o === 0 ? -0.04 : 0)),
        main: OPENINGS.map((o) => (o === 1 ? 0.03 : 0)),
      },
    } as unknown as Candidate;
    expect(mainEffect(STAY, both).opening).toBe(1);
    expect(mainEffect(both, both)).toEqual({ opening: 0, change: 0 });
  });

  test("of equal ones the lowest opening, whatever the rounding", () => {
    expect(mainEffect(STAY, shifted("main", { 0.25: 0.05, 0.5: 0.05 + 1e-15, 1: -0.05 })).opening).toBe(0.25);
  });
});

describe("[A11] the records that weighed most", () => {
  const why = (given: Partial<BikeCase>, way: 1 | -1, opening = 0) => {
    const weighing = weighingOf(story(given));
    const candidate = shifted("screw", { [opening]: 0.05 * way });
    return reasonsForChange({ ...weighing, present: { ...STAY } }, candidate);
  };
  const rides = [
    ride([saw("dives-below-idle")], { at: 1 }),
    ride([saw("hangs-after-closing")], { at: 2, situation: fitted({ pilot: known(boreJet(38)) }, FOUND) }),
  ];

  test("for leaner the rich signs, for richer the lean ones, each with its record", () => {
    expect(why({ rides }, -1)).toEqual([{ record: "ride-1", text: "Revs dive below idle, then climb back" }]);
    expect(why({ rides }, 1)).toEqual([{ record: "ride-2", text: "Revs hang before they drop" }]);
  });

  test("what was looked for and not there says so", () => {
    const [reason] = why({ rides: [ride([notThere("drops-straight-to-idle")])] }, 1);
    expect(reason?.text).toBe("Looked for and not there: drops straight to idle and stays");
  });

  test("at most three, the weightiest first, the same words once", () => {
    const many = [
      ride(
        [
          saw("hangs-after-closing"),
          saw("bogs-hollow-no-smoke"),
          saw("delay-then-sudden-hit"),
          saw("hot-start-needs-choke"),
          saw("runs-only-on-choke"),
        ],
        { at: 1 },
      ),
      ride([saw("hangs-after-closing")], { at: 2, situation: fitted({ main: known(boreJet(180)) }, FOUND) }),
    ];
    const texts = why({ rides: many }, 1).map(({ text }) => text);
    expect(texts).toHaveLength(3);
    expect(new Set(texts).size).toBe(3);
    expect(texts).toContain("Revs hang before they drop");
  });

  test("verdicts, swept screws and measurements in trade words", () => {
    const bigger = fitted({ main: known(boreJet(182.5)) }, FOUND);
    const verdicts = [{ opening: OPENINGS[10]!, felt: "better" as const }];
    const felt = ride([], { situation: bigger, against: { situation: FOUND, verdicts } });
    const weighing = weighingOf(story({ rides: [felt] }));
    expect(reasonsAt(weighing, OPENINGS[10]!)).toEqual([
      { record: "ride-1", text: "It felt better after the last change at full throttle" },
    ]);
    const swept = tested("screw-sweep-air", "far-out", { numbers: { bestTurns: 2.5 } });
    expect(why({ tests: [swept] }, -1)).toEqual([
      { record: "test-1", text: "Sweep the air screw for the best idle: best at 2½ turns out" },
    ]);
    const measurements = [
      { record: "m", at: 1, situation: FOUND, opening: OPENINGS[0]!, error: 0.06, sd: 0.02 },
    ];
    expect(why({ measurements }, -1)).toEqual([{ record: "m", text: "The mixture you measured" }]);
    expect(why({ measurements }, 1)).toEqual([]);
  });

  test("for a fault, only what speaks for it", () => {
    const weighing = weighingOf(
      story({
        rides: [ride([saw("hang-grows-with-heat"), saw("pulls-clean-to-peak"), saw("answers-crisply")])],
      }),
    );
    expect(reasonsForFault(weighing, "air-leak").map(({ text }) => text)).toEqual([
      "The hang grows as it gets hotter",
    ]);
    expect(reasonsForFault(weighing, "cooling")).toEqual([]);
  });

  test("at an opening, what moved it either way", () => {
    const mixed = [ride([saw("dives-below-idle"), saw("bogs-hollow-no-smoke"), saw("pulls-clean-to-peak")])];
    const weighing = weighingOf(story({ rides: mixed }));
    const texts = reasonsAt(weighing, OPENINGS[1]!).map(({ text }) => text);
    expect(texts).toEqual(
      expect.arrayContaining([expect.stringMatching(/dive/), expect.stringMatching(/Bogs/)]),
    );
  });
});

test("openings and letters as they stand in a sentence", () => {
  expect([OPENINGS[0]!, OPENINGS[4]!, OPENINGS[10]!].map(english.openings.at)).toEqual([
    "at closed throttle",
    "at 1/4 throttle",
    "at full throttle",
  ]);
  expect(lowerFirst("Hangs")).toBe("hangs");
  expect(upperFirst("hangs")).toBe("Hangs");
  expect(lowerFirst("") + upperFirst("")).toBe("");
});
