import { describe, expect, test } from "vitest";
import { boreJet } from "../metering/test-situations.ts";
import { type Drawer, EMPTY_DRAWER } from "../parts/drawer.ts";
import { known, UNKNOWN } from "../parts/known.ts";
import type { Opening } from "../units/quantity.ts";
import { english } from "../words/en.ts";
import type { Advice } from "./advice.ts";
import type { BikeCase } from "./case.ts";
import { CHECKS, checkById, looksFor } from "./checks.ts";
import { freeingStep } from "./freeing.ts";
import { changeAt, leansMost } from "./held-by.ts";
import { LEAN_CHANCE, TOP } from "./loss.ts";
import { FEEL_RICH } from "./rich-for-other-reasons.ts";
import { DRAWER, FOUND, LOOKED_OVER, ride, saw, sound, story, tested } from "./test-stories.ts";
import { adviceOf, stateOf, stepsOf, sureOf, weighingOf } from "./test-weighing.ts";
import { TESTS, testById } from "./tests-on-engine.ts";
import { leanChanceAtTop } from "./top-throttle.ts";
import { waysOf } from "./ways.ts";
import type { Weighing } from "./weighing.ts";

// A used two-stroke that hangs and burbles at a quarter, of which nobody knows more than its numbers; looked over. Rule A22.

const USED = {
  ...FOUND,
  setup: {
    ...FOUND.setup,
    pilot: known(boreJet(48)),
    main: known(boreJet(178)),
    needle: known({ ...FOUND.setup.needle.part!, profile: null }),
    needleJet: UNKNOWN,
    cutaway: UNKNOWN,
  },
};
const QUARTER = 0.25 as Opening;
const COMPLAINT = ride([saw("hangs-after-closing"), saw("four-strokes-under-load", QUARTER)], {
  situation: USED,
});
const answered = (answers: readonly (readonly [string, string, number | null])[]) =>
  answers.map(([test, outcome, opening], i) =>
    tested(test, outcome, { at: 2 + i, opening: opening as Opening | null, situation: USED }),
  );
/** What it answered to every short test of the bottom and the middle. */
const BELOW = [
  ["screw-sweep-air", "middle", null],
  ["tap-off-run-down", "clears", 0.25],
  ["touch-of-choke", "worse", 0.25],
  ["idle-hold", "steady", null],
  ["quick-opening", "crisp", 0.125],
  ["touch-of-choke", "worse", 0],
] as const;

const used = (given: Partial<BikeCase> = {}): BikeCase =>
  story({
    now: USED,
    reference: USED,
    rides: [COMPLAINT],
    tests: answered(BELOW),
    checks: LOOKED_OVER,
    ...given,
  });
const mains = (...numbers: readonly number[]): Drawer => ({
  ...EMPTY_DRAWER,
  mains: numbers.map((number) => ({ part: boreJet(number), count: 1 })),
});
const leanChance = (weighing: Weighing, id: string) =>
  leanChanceAtTop(
    weighing.belief,
    weighing.candidates.find(({ changes }) => changes.join("+") === id)!.shift,
    "seconds",
  );

const ALL_TRIED = answered([
  ...BELOW,
  ["full-pull", "clean", 1],
  ["full-pull", "clean", 0.75],
  ["roll-off", "never", 1],
  ["choke-flick-at-full", "no-change", 1],
]);

/** What this bike answers to a test: rich at a quarter, right below and above. */
const ANSWERS: Readonly<Record<string, (opening: number) => string>> = {
  "screw-sweep-air": () => "middle",
  "idle-hold": () => "steady",
  "quick-opening": (opening) => (opening < 0.2 ? "crisp" : "stumble"),
  "touch-of-choke": () => "worse",
  "half-turn-for-the-hang": () => "same",
  "tap-off-run-down": (opening) => (opening > 0.4 ? "no-clearing" : "clears"),
  "roll-on": (opening) => (opening > 0.4 ? "smooth" : "burbles"),
  "plug-look-part": (opening) => (opening > 0.4 ? "tan" : "black"),
  "one-step-more-fuel": () => "worse",
  "best-known-setting": () => "gone",
  "full-pull": () => "clean",
  "roll-off": () => "tiny-cut",
  "choke-flick-at-full": () => "lower",
  "plug-look-full": () => "tan",
};

/** The advice followed, every look sound and every test answered, up to the first change or ride. */
function followed(from: BikeCase): readonly Advice[] {
  const pieces: Advice[] = [];
  let told = from;
  for (let at = 20; at < 44; at++) {
    const advice = adviceOf(told);
    pieces.push(advice);
    const { kind, id, opening } = advice.step;
    const answer = ANSWERS[id]?.(opening ?? 0);
    if (kind === "check") told = { ...told, checks: [...told.checks, sound(id, at)] };
    else if (kind === "test" && answer !== undefined)
      told = { ...told, tests: [...told.tests, tested(id, answer, { at, opening, situation: USED })] };
    else break;
  }
  return pieces;
}

describe("[A22] a leaner clip that full throttle holds back", () => {
  const pieces = followed(used());
  const held = pieces.filter(({ waiting }) => waiting.some(({ id }) => id === "clip"));

  test("is named with what it waits for, and so is the test of full throttle that frees it", () => {
    expect(leanChance(weighingOf(used()), "clip")).toBeGreaterThan(LEAN_CHANCE);
    expect(held.length).toBeGreaterThan(0);
    for (const advice of held) {
      const waits = advice.waiting.find(({ id }) => id === "clip")!;
      expect(waits).toMatchObject({ by: "top", opening: 0.25 });
      expect(waits.why).toMatch(/lean 3\/4 to full throttle by about 3 %.*not proved/);
      expect(waits.frees).toMatch(/^Prove full throttle first\. Next for that: [a-z].*\.$/);
      expect(waits.changes).toEqual([{ part: "clip", from: "groove 3", to: "groove 2", inDrawer: true }]);
      const frees = stepsOf(advice).find(({ id }) => id === waits.step!.id)!;
      expect(testById(frees.id)!.wideOpen).toBe(true);
      expect(frees.expect).toMatch(/^Clip up, groove 3 to 2: that would help at 1\/4 throttle\. Prove full/);
      expect(frees.topThrottle).not.toBe("stay below 3/4");
    }
  });

  test("is reached by following the advice: with a bigger main jet the top stays where it is", () => {
    const { step, waiting } = pieces.at(-1)!;
    expect(step).toMatchObject({ kind: "change", id: "main+clip" });
    expect(step.changes[1]).toEqual({ part: "clip", from: "groove 3", to: "groove 2", inDrawer: true });
    expect(waiting).toEqual([]);
    for (const advice of held)
      expect(stepsOf(advice).map(({ title }) => title)).not.toContain(english.steps.ride.rideOn);
  });

  test("full throttle is tried where nothing below is left to try; answered rich, the clip alone may be moved", () => {
    const below = TESTS.filter(({ id, wideOpen }) => !wideOpen && id in ANSWERS).flatMap((test) =>
      (test.openings.length > 0 ? test.openings : [null]).map(
        (opening) => [test.id, ANSWERS[test.id]!(opening ?? 0), opening] as const,
      ),
    );
    // A screw and a pilot that take a day to reach: nothing below pays.
    const minutes = { screw: 600, pilot: 600 };
    const given = { oneChangeAtATime: true, minutes, checks: CHECKS.map(({ id }) => sound(id, 0)) };
    const told = used({ ...given, tests: answered(below) });
    const { step, waiting } = adviceOf(told);
    expect(leanChance(weighingOf(told), "clip")).toBeGreaterThan(LEAN_CHANCE);
    expect(waiting[0]).toMatchObject({ id: "clip", step: { kind: "test", id: step.id } });
    expect(testById(step.id)!.wideOpen).toBe(true);
    const proofs = [
      ["full-pull", "clean", 1],
      ["roll-off", "tiny-cut", 1],
      ["choke-flick-at-full", "lower", 1],
    ] as const;
    const proved = used({ ...given, tests: answered([...below, ...proofs]) });
    expect(leanChance(weighingOf(proved), "clip")).toBeLessThanOrEqual(LEAN_CHANCE);
    const after = adviceOf(proved);
    expect(after.waiting.map(({ id }) => id)).not.toContain("clip");
    expect(stepsOf(after).find(({ id }) => id === "clip")).toMatchObject({
      kind: "change",
      topThrottle: "seconds only",
    });
  });

  test("goes with a bigger main jet where no test of full throttle is left", () => {
    const advice = adviceOf(used({ tests: ALL_TRIED, drawer: mains(182.5, 185) }));
    const [waits] = advice.waiting;
    expect(waits).toMatchObject({ id: "clip", by: "top", step: { kind: "change", id: "main+clip" } });
    expect(waits!.frees).toMatch(/^A bigger main jet keeps full throttle safe\. Next for that: main jet/);
    const pair = stepsOf(advice).find(({ id }) => id === "main+clip")!;
    expect(pair.title).toBe("Main jet 178 to 182.5; clip up, groove 3 to 2");
    expect(pair.expect).toMatch(
      /^Clip up, groove 3 to 2: that would help at 1\/4 throttle\. This comes first\. Leaner/,
    );
    expect(stepsOf(advice).filter(({ id }) => id === "main+clip")).toHaveLength(1);
  });

  test("waits for the bigger main jet alone where one change at a time is insisted on", () => {
    const told = used({ tests: ALL_TRIED, drawer: mains(182.5, 185, 187.5), oneChangeAtATime: true });
    for (const step of stepsOf(adviceOf(told))) expect(step.changes.length).toBeLessThan(2);
    const { waiting } = adviceOf(told);
    expect(waiting[0]).toMatchObject({ id: "clip", step: { kind: "change", id: "main" } });
    expect(waiting[0]!.frees).toMatch(/Next for that: main jet 178 to 18[257.]+\.$/);
  });
});

describe("[A22] a bigger main jet that keeps the top where it is", () => {
  const RICH_QUARTER = sureOf(stateOf((o) => (o > 0.1 && o < 0.6 ? 0.09 : 0.02), 0.035));
  const openIds = (weighing: Weighing) => waysOf(weighing).open.map(({ changes }) => changes.join("+"));

  test("may go with a leaner clip: no leaner than 1 % above 3/4, no richer than one step", () => {
    const weighing = weighingOf(used({ drawer: mains(180, 182.5, 185) }), RICH_QUARTER);
    const { open, held } = waysOf(weighing);
    expect(held.map(({ candidate }) => candidate.changes.join("+"))).toEqual(["clip"]);
    const pair = open.find(({ changes }) => changes.join("+") === "main+clip")!;
    expect(pair.situation.setup.main.part!.number).toBeGreaterThan(178);
    for (const opening of TOP) {
      expect(changeAt(weighing.present, pair, opening)).toBeGreaterThanOrEqual(-0.01);
      expect(changeAt(weighing.present, pair, opening)).toBeLessThanOrEqual(0.035);
    }
    expect(changeAt(weighing.present, pair, QUARTER)).toBeLessThan(-0.05);
  });

  test("does not go with it where it would make the top clearly richer, nor where the top is complained of", () => {
    expect(openIds(weighingOf(used({ drawer: mains(182.5) }), RICH_QUARTER))).toContain("main+clip");
    const far = weighingOf(used({ drawer: mains(190, 195) }), RICH_QUARTER);
    const tooBig = far.candidates.filter(
      (each) =>
        each.changes.join("+") === "main+clip" &&
        Math.max(...TOP.map((opening) => changeAt(far.present, each, opening))) > 0.035,
    );
    expect(openIds({ ...far, candidates: [far.present, ...tooBig] })).not.toContain("main+clip");
    const burbles = ride([...COMPLAINT.reports, saw("will-not-rev-out")], { situation: USED });
    const complained = used({ drawer: mains(182.5), rides: [burbles] });
    expect(openIds(weighingOf(complained, RICH_QUARTER))).not.toContain("main+clip");
  });
});

describe("[A22] whatever holds a change back", () => {
  const RICH_TOP = [ride([saw("will-not-rev-out")])];
  const RICH_EVERYWHERE = sureOf(stateOf(() => 0.09, 0.01));
  const smaller = (given: Partial<BikeCase>, chances: Weighing["chances"] = {}) => {
    const weighing = { ...weighingOf(story({ drawer: DRAWER, ...given }), RICH_EVERYWHERE), chances };
    return { weighing, ...waysOf(weighing) };
  };

  test("what else may feel rich up there: a smaller main waits for a look at it", () => {
    expect(smaller({ rides: RICH_TOP }).held).toEqual([]);
    const { weighing, held } = smaller({ rides: RICH_TOP }, { ignition: 0.2 });
    expect(held[0]).toMatchObject({ by: "other reasons" });
    expect(held[0]!.candidate.changes).toEqual(["main"]);
    const checks = [checkById("spark-and-plug")!, checkById("look-at-boots-and-clamps")!];
    const frees = freeingStep(weighing, checks, held[0]!)!;
    expect(frees).toMatchObject({ kind: "check", id: "spark-and-plug" });
    expect(FEEL_RICH.some((fault) => looksFor(checkById(frees.id)!, fault))).toBe(true);
    expect(freeingStep(weighing, [], held[0]!)).toBeNull();
  });

  test("pinging: everything leaner waits, each part by itself", () => {
    const pinged = ride([saw("dives-below-idle"), saw("will-not-rev-out"), saw("pings-on-roll-on")]);
    const { held, open, weighing } = smaller({ rides: [pinged] });
    expect(new Set(held.map(({ by }) => by))).toEqual(new Set(["pinging"]));
    expect(held.flatMap(({ candidate }) => candidate.changes)).toEqual(
      expect.arrayContaining(["pilot", "screw", "main"]),
    );
    for (const { candidate } of held) expect(candidate.changes).toHaveLength(1);
    for (const candidate of open)
      expect(leansMost(weighing.present, candidate, [QUARTER])).toBeGreaterThanOrEqual(-0.002);
    const { waiting, step } = adviceOf(story({ drawer: DRAWER, rides: [pinged] }));
    for (const each of waiting) {
      expect(each.why).toMatch(/pinged like this/);
      expect(each.frees).toMatch(/^Find what makes it ping/);
    }
    expect(["check", "test", "change", "ride", "read-parts"]).toContain(step.kind);
  });

  test("a needle and a slide wait as a clip does", () => {
    const richBelow = sureOf(stateOf((o) => (o < 0.7 ? 0.09 : 0.0), 0.025));
    const rides = [ride([saw("four-strokes-under-load"), saw("dives-below-idle")])];
    const weighing = weighingOf(story({ drawer: DRAWER, rides }), richBelow);
    const { held, open } = waysOf(weighing);
    const ids = held.map(({ candidate }) => candidate.changes.join("+"));
    expect(ids).toContain("clip");
    for (const { by, candidate, worth } of held) {
      expect(by).toBe("top");
      expect(worth).toBeGreaterThan(0);
      expect(leansMost(weighing.present, candidate, TOP)).toBeLessThan(-0.01);
      expect(open.some(({ changes }) => changes.join() === candidate.changes.join())).toBe(false);
    }
    expect(held.map(({ worth }) => worth)).toEqual(held.map(({ worth }) => worth).sort((a, b) => b - a));
  });
});
