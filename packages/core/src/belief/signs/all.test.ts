import { describe, expect, test } from "vitest";
import { OPENINGS } from "../../units/opening.ts";
import { english } from "../../words/en.ts";
import { FAULTS, type FaultId, type Sign } from "../catalogue.ts";
import { SIGN_SECTIONS, SIGNS, signById } from "./all.ts";

const sign = (id: string): Sign => {
  const found = signById(id);
  if (found === undefined) throw new Error(`no sign ${id}`);
  return found;
};
const named = SIGNS.map((each) => [each.id, each] as const);
const faultsOf = (each: Sign) => Object.entries(each.faults) as [FaultId, number][];

describe("the sign catalogue", () => {
  test("has unique ids, words joined by hyphens", () => {
    expect(new Set(SIGNS.map(({ id }) => id)).size).toBe(SIGNS.length);
    for (const { id } of SIGNS) expect(id).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
  });

  test("is found by id, and an unknown name is undefined", () => {
    for (const each of SIGNS) expect(signById(each.id)).toBe(each);
    expect(signById("no-such-sign")).toBeUndefined();
  });

  test("is the sum of its sections, in their order", () => {
    expect(SIGN_SECTIONS.map(({ id }) => english.signSections[id])).toEqual([
      "Starting and idle",
      "Closing the throttle",
      "Opening the throttle",
      "Part throttle",
      "Full throttle",
      "Heat, smell and fuel",
      "Plug and piston",
      "Smoke, oil and fuel used",
      "Shown by a test",
    ]);
    expect(SIGN_SECTIONS.flatMap(({ signs }) => signs.map(({ id }) => id))).toEqual(
      SIGNS.map(({ id }) => id),
    );
    for (const { signs } of SIGN_SECTIONS) expect(signs.length).toBeGreaterThan(5);
  });

  test.each(named)("%s speaks of openings held, weights summing to exactly 1", (_, { speaksOf }) => {
    expect(speaksOf.reduce((sum, [, weight]) => sum + weight, 0)).toBe(1);
    for (const [opening, weight] of speaksOf) {
      expect(OPENINGS).toContain(opening);
      expect(weight).toBeGreaterThan(0);
    }
    expect(new Set(speaksOf.map(([opening]) => opening)).size).toBe(speaksOf.length);
  });

  test.each(named)("%s has chances above 0 and below 1, and faults that pull the right way", (_, each) => {
    for (const chance of [
      each.chance.rich,
      each.chance.right,
      each.chance.lean,
      ...faultsOf(each).map(([, x]) => x),
    ]) {
      expect(chance).toBeGreaterThan(0);
      expect(chance).toBeLessThan(1);
    }
    for (const [fault, chance] of faultsOf(each)) {
      expect(FAULTS).toContain(fault);
      if (each.healthy) expect(chance).toBeLessThan(each.chance.right);
      else expect(chance).toBeGreaterThanOrEqual(each.chance.right);
    }
  });

  test.each(named)("%s is told as sound, smoke and feel, never by the name of a mixture", (_, each) => {
    const said = english.signs[each.id];
    for (const text of [said.words, said.description, said.notToBeTakenFor ?? "", said.when]) {
      expect(text).not.toMatch(/\b(rich|lean)(er|est|ness|ing|ed|s|en|ens)?\b/i);
    }
    expect(said.words.length).toBeLessThanOrEqual(60);
    expect(said.description).toMatch(/[.]$/);
    expect(said.when).not.toBe("");
    expect(each.source).toMatch(/\[estimate\]/);
  });

  test("no two signs an engine can show have the same words", () => {
    for (const strokes of ["two", "four"] as const) {
      const words = SIGNS.filter((each) => each.strokes === strokes || each.strokes === "both").map(
        (each) => english.signs[each.id].words,
      );
      expect(new Set(words).size).toBe(words.length);
    }
  });

  test("a fault of one kind of engine stands behind no sign of the other alone", () => {
    for (const each of SIGNS) {
      if (each.strokes === "four") {
        for (const only of ["gearbox-side-seal", "reed", "power-valve"] as const)
          expect(each.faults[only]).toBeUndefined();
      }
      if (each.strokes === "two") {
        for (const only of ["accelerator-pump", "valve-clearance"] as const)
          expect(each.faults[only]).toBeUndefined();
      }
    }
  });

  test("every fault has a sign that shows it at least three times as often as a sound engine does", () => {
    for (const fault of FAULTS) {
      const best = Math.max(
        ...SIGNS.filter((each) => !each.healthy).map((each) => (each.faults[fault] ?? 0) / each.chance.right),
      );
      expect(best, fault).toBeGreaterThan(3);
    }
  });

  test("stop signs are these and no others", () => {
    expect(SIGNS.filter(({ stop }) => stop).map(({ id }) => id)).toEqual([
      "runs-on-by-itself",
      "tearing-note-at-full-throttle",
      "knocks-from-inside",
      "seized-or-nipped",
      "specks-on-plug",
      "piston-scuffed",
    ]);
  });

  test("a sign of health is likeliest when all is right", () => {
    // Two of them are answers a starved engine does not give; there too much fuel answers the same way.
    const answers = ["touch-of-choke-worse", "hang-no-longer-when-hot"];
    for (const each of SIGNS.filter(({ healthy, id }) => healthy && !answers.includes(id))) {
      expect(each.chance.right, each.id).toBeGreaterThanOrEqual(
        1.5 * Math.max(each.chance.rich, each.chance.lean),
      );
    }
    for (const id of answers) expect(sign(id).chance.right).toBeGreaterThan(sign(id).chance.lean);
  });

  test("outcomes that exclude one another and leave nothing out share each state between them", () => {
    const whole = [
      ["mixture-ring-wide", "mixture-ring-thin", "mixture-ring-none"],
      ["piston-wash-wide", "piston-wash-narrow", "piston-wash-none"],
      ["header-inside-dark", "header-inside-khaki", "header-inside-white"],
      ["touch-of-choke-better", "touch-of-choke-worse", "touch-of-choke-no-change"],
      ["tap-off-clears-before-it-dies", "tap-off-no-clearing"],
      ["one-step-more-fuel-better", "one-step-more-fuel-worse", "one-step-more-fuel-same"],
      ["stays-on-known-good-setting", "gone-on-known-good-setting"],
      [
        "roll-off-picks-up",
        "four-strokes-after-tiny-cut",
        "four-strokes-at-about-80-percent",
        "roll-off-never-four-strokes",
      ],
      ["roll-off-picks-up", "roll-off-no-pick-up"],
      ["choke-flick-revs-higher", "choke-flick-revs-lower", "choke-flick-no-change"],
      ["hang-grows-with-heat", "hang-no-longer-when-hot"],
      ["hang-gone-with-half-a-turn", "hang-stays-after-half-a-turn"],
    ];
    for (const ids of whole) {
      expect(new Set(ids.map((id) => sign(id).group)).size, ids[0]).toBe(1);
      for (const state of ["rich", "right", "lean"] as const) {
        expect(
          ids.reduce((sum, id) => sum + sign(id).chance[state], 0),
          `${ids[0]} ${state}`,
        ).toBeCloseTo(1, 9);
      }
    }
  });
});

describe("groups: the same evidence has one vote", () => {
  const group = (id: string) => sign(id).group;

  test.each([
    ["plug-nose-dry-black", "black-oil-at-silencer", "smokes-when-warm", "fouls-plugs", "everyday-plug-dark"],
    ["plug-nose-white", "pings-on-roll-on", "very-hot-or-boils", "blue-header"],
    [
      "drops-straight-to-idle",
      "hangs-after-closing",
      "dives-below-idle",
      "stalls-on-closing",
      "hangs-only-when-hot",
    ],
    ["answers-crisply", "bogs-hollow-no-smoke", "stumbles-with-smoke", "delay-then-sudden-hit"],
    ["idles-steadily", "idle-loads-up", "idle-hunts", "will-not-idle"],
    ["four-strokes-light-throttle", "four-strokes-under-load"],
    ["fades-after-ten-seconds", "cuts-as-if-tap-off"],
    ["touch-of-choke-better", "touch-of-choke-worse", "runs-only-on-choke"],
    ["tap-off-clears-before-it-dies", "idle-better-with-tap-shut"],
    [
      "screw-peak-in-the-middle",
      "air-screw-best-far-out",
      "fuel-screw-best-far-out",
      "screw-makes-no-difference",
    ],
  ])("%s and its like are one", (...ids) => {
    expect(new Set(ids.map(group)).size).toBe(1);
  });

  test("evidence of different kinds is in different groups", () => {
    const kinds = [
      "hangs-after-closing",
      "hang-grows-with-heat",
      "plug-nose-dry-black",
      "plug-nose-white",
      "bogs-hollow-no-smoke",
      "idle-loads-up",
      "screw-makes-no-difference",
      "touch-of-choke-better",
      "one-step-more-fuel-better",
      "four-strokes-under-load",
      "will-not-rev-out",
      "roll-off-picks-up",
      "piston-wash-wide",
      "fades-after-ten-seconds",
    ];
    expect(new Set(kinds.map(group)).size).toBe(kinds.length);
  });
});

describe("facts of the trade (common practice, no source)", () => {
  const ratio = (id: string, over: "rich" | "lean", under: "rich" | "right" | "lean") =>
    sign(id).chance[over] / sign(id).chance[under];

  test.each([
    ["slow, blubbering answer to a quick opening at low revs", "stumbles-with-smoke"],
    ["revs that dive below idle", "dives-below-idle"],
    ["stalling after closing the throttle", "stalls-on-closing"],
    ["black unburnt oil at the silencer with heavy smoke", "black-oil-at-silencer"],
    ["heavy smoke", "smokes-when-warm"],
    ["plugs fouling again and again", "fouls-plugs"],
  ])("%s speaks for rich", (_, id) => {
    expect(ratio(id, "rich", "lean")).toBeGreaterThanOrEqual(1.5);
    expect(ratio(id, "rich", "right")).toBeGreaterThanOrEqual(1.5);
  });

  test("an idle that hangs after closing the throttle speaks for lean, first in the pilot circuit", () => {
    expect(ratio("hangs-after-closing", "lean", "right")).toBeGreaterThanOrEqual(5);
    expect(ratio("hangs-after-closing", "lean", "rich")).toBeGreaterThanOrEqual(5);
    const { speaksOf } = sign("hangs-after-closing");
    expect(Math.max(...speaksOf.map(([opening]) => opening))).toBeLessThanOrEqual(1 / 8);
    const atOrBelowSixteenth = speaksOf.filter(([opening]) => opening <= 1 / 16);
    expect(atOrBelowSixteenth.reduce((sum, [, weight]) => sum + weight, 0)).toBeGreaterThanOrEqual(0.75);
  });

  test("a bog with nothing happening on a big handful speaks for lean", () => {
    expect(ratio("bogs-hollow-no-smoke", "lean", "right")).toBeGreaterThanOrEqual(5);
    expect(ratio("bogs-hollow-no-smoke", "lean", "rich")).toBeGreaterThanOrEqual(5);
  });

  test("pinging is a lean warning", () => {
    expect(ratio("pings-on-roll-on", "lean", "right")).toBeGreaterThanOrEqual(5);
    expect(ratio("pings-on-roll-on", "lean", "rich")).toBeGreaterThanOrEqual(5);
    expect(english.signs["pings-on-roll-on"].notToBeTakenFor).toMatch(/warning/);
  });

  test("a bog, a stumble and a burble are told apart by sound and smoke", () => {
    expect(english.signs["bogs-hollow-no-smoke"].description).toMatch(
      /hollow gasp.*silent.*no smoke.*out of petrol/,
    );
    expect(english.signs["stumbles-with-smoke"].description).toMatch(
      /keeps firing.*gargle.*smoke.*clears as the revs rise/,
    );
    expect(english.signs["four-strokes-under-load"].description).toMatch(
      /every other turn.*half the beat.*soft and uneven/,
    );
  });

  test("only a two-stroke four-strokes: a four-stroke always fires every second turn", () => {
    for (const each of SIGNS) {
      if (/every other turn/.test(english.signs[each.id].description))
        expect(each.strokes, each.id).toBe("two");
    }
  });
});

describe("what separates a fault from jetting", () => {
  const against = (id: string, fault: FaultId) => {
    const { faults, chance } = sign(id);
    return (faults[fault] ?? 0) / Math.max(chance.rich, chance.lean, chance.right);
  };

  test.each([
    ["a leak: the hang grows with heat", "hang-grows-with-heat", "air-leak", 4],
    ["a leak: same throttle, worse at lower revs", "worse-at-low-revs-same-grip", "air-leak", 3],
    ["supply: it fades with time at full throttle", "fades-after-ten-seconds", "fuel-supply", 4],
    ["supply: cured with the vent freed", "better-with-cap-or-vent-free", "fuel-supply", 4],
    ["supply: cuts as if the tap were off", "cuts-as-if-tap-off", "fuel-supply", 3],
    ["filter: clean with the filter off", "clears-with-filter-off", "air-filter", 2],
    ["ignition: misses more the harder it pulls", "misses-more-the-harder-it-pulls", "ignition", 2],
    ["wear: no clip cures the middle", "clip-moves-make-no-difference", "worn-needle-and-jet", 3],
    ["float valve: drips", "petrol-drips-from-overflow", "float-valve", 4],
    ["gearbox seal: the oil goes missing", "gearbox-oil-goes-missing", "gearbox-side-seal", 4],
    ["pilot: the screw makes no difference", "screw-makes-no-difference", "blocked-pilot", 3],
    [
      "pump: bogs only when opened fast",
      "fast-opening-bogs-slow-is-clean-four-stroke",
      "accelerator-pump",
      2,
    ],
    ["power valve: its step is missing", "no-step-where-the-power-valve-opens", "power-valve", 3],
  ] as const)("%s", (_, id, fault, least) => {
    expect(against(id, fault)).toBeGreaterThanOrEqual(least);
  });

  test("a dark plug beside a hang points away from too little fuel", () => {
    expect(sign("plug-nose-dry-black").chance.lean).toBeLessThan(sign("plug-nose-dry-black").chance.right);
    expect(sign("everyday-plug-dark").chance.lean).toBeLessThan(sign("everyday-plug-dark").chance.right);
  });

  test("air screw and fuel screw tell the opposite at the same end", () => {
    for (const [air, fuel] of [
      ["air-screw-best-nearly-closed", "fuel-screw-best-nearly-closed"],
      ["air-screw-best-far-out", "fuel-screw-best-far-out"],
    ] as const) {
      const leanish = ({ chance }: Sign) => Math.sign(chance.lean - chance.rich);
      expect(leanish(sign(air))).toBe(-leanish(sign(fuel)));
    }
    // An air screw best nearly closed: the pilot gives too little.
    expect(sign("air-screw-best-nearly-closed").chance.lean).toBeGreaterThan(0.5);
  });
});
