import { describe, expect, test } from "vitest";
import { faultProbability } from "../belief/believe.ts";
import { FAULTS } from "../belief/catalogue.ts";
import { reaches } from "../belief/reach.ts";
import { FUEL_SCREW } from "../metering/test-situations.ts";
import { EMPTY_DRAWER } from "../parts/drawer.ts";
import { known } from "../parts/known.ts";
import type { Step } from "./advice.ts";
import type { BikeCase } from "./case.ts";
import { cautionById } from "./cautions.ts";
import { changeSteps } from "./change-steps.ts";
import { mainEffect } from "./reasons.ts";
import { DRAWER, FOUND, ride, saw, story } from "./test-stories.ts";
import { adviceOf, partsOf, stateOf, sureOf, weighingOf } from "./test-weighing.ts";
import type { Weighing } from "./weighing.ts";

const SOUND = { hypotheses: [{ fault: null, probability: 1 }] };
const weighed = (given: Partial<BikeCase>, belief = {}): Weighing =>
  weighingOf(story({ drawer: DRAWER, ...given }), { ...SOUND, ...belief });
const steps = (given: Partial<BikeCase>, belief = {}) => changeSteps(weighed(given, belief));
const only = (list: readonly Step[], id: string): Step => list.find((step) => step.id === id)!;

const RICH_TOP = [ride([saw("will-not-rev-out")])];
const RICH_BOTTOM = [ride([saw("dives-below-idle"), saw("idle-loads-up")])];
const LEAN_BOTTOM = [ride([saw("hangs-after-closing"), saw("bogs-hollow-no-smoke")])];
const LEAN_MIDDLE = [ride([saw("jerks-at-constant-grip"), saw("revs-without-pull")])];

describe("[A2] the lean limit", () => {
  const MAINS = { ...EMPTY_DRAWER, mains: DRAWER.mains };
  const topRich = (weightOfLean: number) => {
    const rich = stateOf((opening) => (opening >= 0.7 ? 0.08 : 0), 0.012);
    const lean = stateOf((opening) => (opening >= 0.7 ? -0.055 : 0), 0.002);
    return {
      overall: rich,
      parts: partsOf([
        [1 - weightOfLean, rich],
        [weightOfLean, lean],
      ]),
    };
  };
  const smaller = (belief: ReturnType<typeof topRich>) =>
    steps({ rides: RICH_TOP, drawer: MAINS }, belief).filter(({ changes }) =>
      changes.some(({ part }) => part === "main"),
    );

  test("is judged over the whole belief: a light part that the change would make lean forbids it", () => {
    expect(smaller(topRich(0)).length).toBeGreaterThan(0);
    expect(smaller(topRich(0.015)).length).toBeGreaterThan(0);
    expect(smaller(topRich(0.03))).toEqual([]);
  });

  test("a smaller main where the top is surely rich, none where it is not", () => {
    const main = only(
      steps({ rides: RICH_TOP }, sureOf(stateOf((o) => (o >= 0.7 ? 0.07 : 0), 0.01))),
      "main",
    );
    expect(main.title).toMatch(/^Main jet 175 to 1[67]/);
    // [A3] leaner than before: short pulls first. Common practice, no source.
    expect(main.topThrottle).toBe("seconds only");
    const unsure = steps({ rides: RICH_TOP }, sureOf(stateOf((o) => (o >= 0.7 ? 0.03 : 0), 0.05)));
    expect(unsure.filter(({ title }) => /Main jet 175 to 1[67][0-4]/.test(title))).toEqual([]);
  });

  test("what leaves the top alone may be done before it is proved, the throttle held back", () => {
    const screw = only(steps({ rides: LEAN_BOTTOM }), "screw");
    expect(screw.topThrottle).toBe("stay below 3/4");
    expect(screw.notes[0]).toMatch(/stay below 3\/4/);
    expect(screw.cautions).toContain("seizure-at-full-throttle");
  });
});

describe("[A20] what feels rich on top and is not", () => {
  const surelyRich = sureOf(stateOf((o) => (o >= 0.7 ? 0.07 : 0), 0.01));
  const smallerMain = (chances: Weighing["chances"], rides = RICH_TOP) => {
    const weighing = { ...weighed({ rides }, surelyRich), chances };
    return changeSteps(weighing).some(({ title }) => /Main jet 175 to 1[67]/.test(title));
  };

  test("no smaller main jet while spark, filter, exhaust or squeeze may be the reason by more than 12 % together", () => {
    expect(smallerMain({})).toBe(true);
    for (const fault of [
      "ignition",
      "air-filter",
      "exhaust-blocked",
      "power-valve",
      "compression",
    ] as const) {
      expect(smallerMain({ [fault]: 0.115 }), fault).toBe(true);
      expect(smallerMain({ [fault]: 0.125 }), fault).toBe(false);
    }
    expect(smallerMain({ ignition: 0.065, "air-filter": 0.065 })).toBe(false);
  });

  test("half of that after each smaller main jet that was ridden", () => {
    const on = (number: number, at: number) => {
      const main = known({ ...FOUND.setup.main.part!, number });
      return ride([saw("will-not-rev-out")], {
        at,
        situation: { ...FOUND, setup: { ...FOUND.setup, main } },
      });
    };
    const now = on(175, 9);
    expect(smallerMain({ ignition: 0.065 }, [now])).toBe(true);
    expect(smallerMain({ ignition: 0.065 }, [on(180, 1), now])).toBe(false);
    expect(smallerMain({ ignition: 0.055 }, [on(180, 1), now])).toBe(true);
    expect(smallerMain({ ignition: 0.055 }, [on(180, 1), on(180, 2), now])).toBe(true);
    expect(smallerMain({ ignition: 0.035 }, [on(185, 1), on(180, 2), now])).toBe(false);
    expect(smallerMain({ ignition: 0.025 }, [on(185, 1), on(180, 2), now])).toBe(true);
  });

  test("what does not feel rich up there does not hold it back", () => {
    expect(smallerMain({ "blocked-pilot": 0.3 })).toBe(true);
  });

  test("what leaves the top alone is not held back by it", () => {
    const weighing = { ...weighed({ rides: LEAN_BOTTOM }), chances: { ignition: 0.5 } };
    expect(changeSteps(weighing).map(({ id }) => id)).toContain("screw");
  });

  test("a weak spark that was heard of is looked at before the main jet is made smaller", () => {
    const told = story({
      drawer: DRAWER,
      rides: [ride([saw("will-not-rev-out"), saw("misses-more-the-harder-it-pulls")])],
    });
    const { step, others } = adviceOf(told);
    const ways = [step, ...others];
    expect(ways.some(({ id }) => id === "spark-and-plug")).toBe(true);
    expect(ways.some(({ title }) => /Main jet 175 to 1[67]/.test(title))).toBe(false);
  });
});

describe("[A1] worth", () => {
  test("the trouble it saves, less what a fault hides there, for each minute", () => {
    const weighing = weighingOf(story({ drawer: DRAWER, rides: LEAN_BOTTOM }));
    const list = changeSteps(weighing);
    const called = list.filter(({ id }) => id !== "main");
    expect(called.length).toBeGreaterThan(1);
    for (const step of called) {
      const candidate = weighing.candidates.find(({ situation }) => situation === step.situation)!;
      const { opening } = mainEffect(weighing.present, candidate);
      const hidden = FAULTS.reduce(
        (sum, fault) => sum + (reaches(fault, opening) ? faultProbability(weighing.belief, fault) : 0),
        0,
      );
      expect(hidden).toBeGreaterThan(0.1);
      expect(step.worth * step.minutes).toBeCloseTo(
        (weighing.present.trouble - candidate.trouble) * (1 - hidden),
        6,
      );
      expect(step.minutes).toBe(candidate.minutes);
    }
    expect(list.map(({ worth }) => worth)).toEqual(list.map(({ worth }) => worth).sort((a, b) => b - a));
    expect(list.length).toBeLessThanOrEqual(4);
    expect(new Set(list.map(({ id }) => id)).size).toBe(list.length);
  });

  test("[A15] from the top down: with trouble above that a change reaches, what is below counts a quarter", () => {
    const rich = sureOf(stateOf(() => 0.08, 0.01));
    const worth = (signs: readonly string[], id: string) =>
      only(steps({ rides: [ride(signs.map((sign) => saw(sign)))], oneChangeAtATime: true }, rich), id).worth;
    const bottom = "dives-below-idle";
    const [middle, top] = ["four-strokes-under-load", "will-not-rev-out"];
    expect(worth([bottom, top], "screw") / worth([bottom], "screw")).toBeCloseTo(0.25, 9);
    expect(worth([bottom, middle], "screw") / worth([bottom], "screw")).toBeCloseTo(0.25, 9);
    expect(worth([bottom, middle, top], "clip") / worth([middle], "clip")).toBeCloseTo(0.25, 9);
    expect(worth([bottom, middle, top], "main") / worth([top], "main")).toBeCloseTo(1, 9);
    // Nothing on offer reaches the top while it may turn lean: then the bottom need not wait.
    const leanAbove = sureOf(stateOf((opening) => (opening < 0.7 ? 0.08 : 0), 0.01));
    const free = steps({ rides: [ride([saw(bottom), saw(top)])], oneChangeAtATime: true }, leanAbove);
    const calm = steps({ rides: [ride([saw(bottom)])], oneChangeAtATime: true }, leanAbove);
    expect(only(free, "screw").worth).toBeCloseTo(only(calm, "screw").worth, 9);
  });

  test("[A9] a bigger main that only doubt asks for counts a quarter while the bottom has trouble", () => {
    const belief = sureOf(stateOf(() => 0, 0.06));
    const main = (rides: BikeCase["rides"]) => {
      const weighing = weighed({ rides, drawer: { ...EMPTY_DRAWER, mains: DRAWER.mains } }, belief);
      const step = only(changeSteps(weighing), "main");
      const candidate = weighing.candidates.find(({ situation }) => situation === step.situation)!;
      return (step.worth * step.minutes) / (weighing.present.trouble - candidate.trouble);
    };
    expect(main([ride([])])).toBeCloseTo(1, 9);
    expect(main([ride([saw("hangs-after-closing")])])).toBeCloseTo(0.25, 9);
  });
});

describe("which way", () => {
  const turns = (step: Step) => step.situation!.setup.screw.part!.turnsOut;
  const fuel = { ...FOUND, setup: FUEL_SCREW };
  const on = (rides: BikeCase["rides"]) => ({
    now: fuel,
    reference: fuel,
    rides: rides.map((each) => ({ ...each, situation: fuel })),
  });

  test("a rich bottom turns an air screw out and a fuel screw in, a lean one the other way (common practice, no source)", () => {
    expect(turns(only(steps({ rides: RICH_BOTTOM }), "screw"))).toBeGreaterThan(1.5);
    expect(turns(only(steps(on(RICH_BOTTOM)), "screw"))).toBeLessThan(1.5);
    expect(turns(only(steps({ rides: LEAN_BOTTOM }), "screw"))).toBeLessThan(1.5);
    expect(turns(only(steps(on(LEAN_BOTTOM)), "screw"))).toBeGreaterThan(1.5);
  });

  test("the same belief mirrored moves each part the other way", () => {
    const rides = [ride([saw("dives-below-idle"), saw("jerks-at-constant-grip"), saw("will-not-rev-out")])];
    const ways = (error: number) =>
      steps(
        {
          rides,
          oneChangeAtATime: true,
          drawer: { ...EMPTY_DRAWER, mains: DRAWER.mains, pilots: DRAWER.pilots },
        },
        sureOf(stateOf(() => error, 0.01)),
      );
    const to = (error: number) =>
      Object.fromEntries(
        ways(error).map(({ id, situation }) => {
          const { main, pilot, clip, screw } = situation!.setup;
          const fitted = {
            main: main.part!.number - 175,
            pilot: pilot.part!.number - 42,
            clip: clip.part! - 3,
            screw: 1.5 - screw.part!.turnsOut,
          };
          return [id, Math.sign(fitted[id as keyof typeof fitted])];
        }),
      );
    expect(to(-0.07)).toEqual({ main: 1, pilot: 1, clip: 1, screw: 1 });
    expect(to(0.07)).toEqual({ main: -1, pilot: -1, clip: -1, screw: -1 });
  });
});

describe("[A11] a change in full", () => {
  test("which way, by how much and where it acts most, and what tells right from wrong", () => {
    const weighing = weighed({ rides: RICH_BOTTOM });
    const screw = only(changeSteps(weighing), "screw");
    const candidate = weighing.candidates.find(({ situation }) => situation === screw.situation)!;
    const { change } = mainEffect(weighing.present, candidate);
    expect(screw.expect).toBe(
      `Leaner by about ${Math.round(-change * 100)} % at closed throttle, where it acts most. If that is right, it drops straight to idle when you close the throttle, and answers at once from idle.`,
    );
    expect(screw.wrongIf).toBe(
      "The revs hang when you close the throttle, or it gasps hollow with no smoke on a quick opening. Then undo it.",
    );
    const richer = only(steps({ rides: LEAN_BOTTOM }), "screw");
    expect(richer.expect).toMatch(/^Richer by about \d+ % at closed/);
    expect(richer.wrongIf).toMatch(/^It dives below idle/);
  });

  test("a change too small to name in whole per cent says so", () => {
    const close = {
      now: {
        ...FOUND,
        setup: {
          ...FOUND.setup,
          screw: { part: { kind: "air" as const, turnsOut: 2.6 }, how: "measured" as const },
        },
      },
    };
    const list = steps(
      { ...close, reference: close.now, rides: [ride([saw("dives-below-idle")], { situation: close.now })] },
      sureOf(stateOf(() => 0.02, 0.005)),
    );
    for (const { expect: text } of list) expect(text).not.toMatch(/about 0 %/);
  });

  test("how sure, undo, reasons and cautions", () => {
    const screw = only(steps({ rides: RICH_BOTTOM }), "screw");
    expect(screw.sure.chance).toBeGreaterThan(0.6);
    expect(screw.undo).toBe("Back to air screw 1½ turns out.");
    expect(screw.why.map(({ record }) => record)).toContain("ride-1");
    expect(screw.tools).toEqual(["flat screwdriver"]);
    expect(screw.cautions).not.toContain("fuel-off-first");
    expect(screw.cautions).toContain("fumes");
  });

  test("opening the carburetor starts with the fuel off and ends with the slide snapped; the bowl needs its spanner", () => {
    const lists = [
      steps({ rides: RICH_TOP }, sureOf(stateOf((o) => (o >= 0.7 ? 0.07 : 0), 0.01))),
      steps({ rides: LEAN_MIDDLE }),
    ];
    const opened = lists.flat().filter(({ id }) => id !== "screw");
    expect(opened.length).toBeGreaterThan(2);
    for (const { cautions, tools, changes } of opened) {
      expect(cautions.slice(0, 2)).toEqual(["fuel-off-first", "petrol-vapour"]);
      expect(cautions).toEqual(
        expect.arrayContaining(["slide-snap-before-start", "runaway", "test-riding", "makers-manual"]),
      );
      for (const id of cautions) expect(cautionById(id).id).toBe(id);
      const bowl = changes.some(({ part }) => ["main", "pilot", "needleJet"].includes(part));
      expect(tools.includes("14 or 17 mm open spanner for the bowl plug")).toBe(bowl);
      expect(tools).toContain("3 mm hex key");
    }
  });

  test("each part by its own steps", () => {
    const rides = [
      ride([saw("hangs-after-closing"), saw("jerks-at-constant-grip"), saw("roll-off-picks-up")]),
    ];
    const error = new Map<string, number>([
      ["main", 1],
      ["clip", 0.4],
      ["pilot", 0.1],
      ["slide", 0.2],
      ["screw", 0],
      ["needleJet", 0.3],
      ["needle", 0.4],
    ]);
    const how = (id: string, drawer: BikeCase["drawer"], lean = -0.06) => {
      const place = error.get(id)!;
      const belief = sureOf(stateOf((o) => (Math.abs(o - place) < 0.3 ? lean : 0.01), 0.01));
      const weighing = weighed({ rides, drawer, oneChangeAtATime: true }, belief);
      return only(changeSteps(weighing), id).how.join(" ");
    };
    expect(how("main", { ...EMPTY_DRAWER, mains: DRAWER.mains })).toMatch(
      /^Bowl plug out.*fit the 1\d\d.*Ours\). Read the number/,
    );
    expect(how("clip", EMPTY_DRAWER)).toMatch(
      /clip from groove 3 to groove 4\. Groove 1 is the top one, at the blunt end; a lower groove lifts the needle and richens the middle/,
    );
    expect(how("pilot", { ...EMPTY_DRAWER, pilots: DRAWER.pilots })).toMatch(
      /^Bowl off, pilot jet out.*fit the 4[458]/,
    );
    expect(how("screw", EMPTY_DRAWER)).toMatch(
      /^Air screw, on the filter side: out is leaner\. Count the turns .* then set (¾|1|1¼) turns? out\.$/,
    );
    expect(how("slide", { ...EMPTY_DRAWER, slides: DRAWER.slides })).toBe(
      "Cap off, fit the slide with cutaway 3.0 mm; the relief faces the filter.",
    );
    expect(how("needle", { ...EMPTY_DRAWER, needles: DRAWER.needles })).toMatch(
      /fit needle N2, groove \d\.$/,
    );
    expect(how("needleJet", { ...EMPTY_DRAWER, needleJets: DRAWER.needleJets })).toBe(
      "Bowl off, needle jet out, fit the 2.72 mm one.",
    );
    const screw = only(
      steps({
        now: { ...FOUND, setup: FUEL_SCREW },
        reference: { ...FOUND, setup: FUEL_SCREW },
        rides: LEAN_BOTTOM.map((each) => ({ ...each, situation: { ...FOUND, setup: FUEL_SCREW } })),
      }),
      "screw",
    );
    expect(screw.how.join(" ")).toMatch(/^Fuel screw, on the engine side: out is richer/);
  });

  test("what must be bought is named; a part for one body must be tried for fit", () => {
    const rich = sureOf(stateOf((o) => (o >= 0.7 ? 0.07 : 0), 0.01));
    const bought = only(steps({ rides: RICH_TOP, drawer: EMPTY_DRAWER }, rich), "main");
    expect(bought.notes.join(" ")).toMatch(/Not in the drawer: main jet 1[67]/);
    expect(bought.changes[0]!.inDrawer).toBe(false);
    const owned = only(steps({ rides: RICH_TOP }, rich), "main");
    expect(owned.notes.join(" ")).not.toMatch(/Not in the drawer/);
    expect(owned.changes[0]!.inDrawer).toBe(true);
    const needle = steps({ rides: LEAN_MIDDLE }).find(({ id }) => id.includes("needle"));
    expect(needle!.notes.join(" ")).toMatch(/check that they fit this one first/);
    expect(owned.notes.join(" ")).not.toMatch(/fit this one/);
  });
});
