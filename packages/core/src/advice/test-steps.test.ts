import { describe, expect, test } from "vitest";
import { FUEL_SCREW } from "../metering/test-situations.ts";
import { OPENINGS } from "../units/opening.ts";
import { english } from "../words/en.ts";
import type { BikeCase } from "./case.ts";
import { CHECKS } from "./checks.ts";
import { testSteps } from "./test-steps.ts";
import { DRAWER, FOUND, ride, saw, story, tested } from "./test-stories.ts";
import { stateOf, sureOf, weighingOf } from "./test-weighing.ts";
import { testById } from "./tests-on-engine.ts";

const steps = (given: Partial<BikeCase>, belief = {}) =>
  testSteps(weighingOf(story({ drawer: DRAWER, ...given }), belief), CHECKS);
const ids = (list: readonly { readonly id: string }[]) => list.map(({ id }) => id);
const offered = (given: Partial<BikeCase>, belief = {}) => ids(steps(given, belief));

describe("[A1] tests by what they save for a minute", () => {
  test("four at most, the best first, each once and at its best place", () => {
    const list = steps({});
    expect(list).toHaveLength(4);
    expect(new Set(ids(list)).size).toBe(4);
    for (let i = 1; i < list.length; i++) expect(list[i]!.worth).toBeLessThanOrEqual(list[i - 1]!.worth);
    for (const { worth, minutes } of list) expect(worth * minutes).toBeGreaterThanOrEqual(1);
  });

  test("nothing is asked where everything is known", () => {
    expect(
      steps({}, { ...sureOf(stateOf(() => 0.01, 0.004)), hypotheses: [{ fault: null, probability: 1 }] }),
    ).toEqual([]);
  });

  test("a test of the other kind of engine or screw is never asked", () => {
    const four = { strokes: 4 as const, displacement: null, acceleratorPump: true };
    for (const id of offered({ engine: four })) expect(testById(id)!.strokes).not.toBe("two");
    for (const id of offered({})) expect(testById(id)!.strokes).not.toBe("four");
    const now = { ...FOUND, setup: FUEL_SCREW };
    for (const given of [{}, { now, reference: now }]) {
      const kind = (given as Partial<BikeCase>).now ? "fuel" : "air";
      for (const id of offered(given)) expect([null, kind]).toContain(testById(id)!.screw);
    }
  });
});

test("half a turn against the hang is only tried where a hang was noticed since the last mend", () => {
  const asked = (given: Partial<BikeCase>) => offered(given).includes("half-turn-for-the-hang");
  expect(asked({ rides: [ride([saw("hangs-after-closing")])] })).toBe(true);
  expect(asked({ rides: [ride([saw("runs-only-on-choke")])] })).toBe(false);
  expect(asked({ rides: [ride([saw("hangs-after-closing")])], freshStartAt: 2 })).toBe(false);
  expect(asked({})).toBe(false);
});

describe("an answer once given", () => {
  test("on the parts and air of now, at that place, is not asked for again", () => {
    const first = steps({})[0]!;
    expect(first.id).toBe("quick-opening");
    const at = [OPENINGS[2]!, OPENINGS[4]!];
    const answers = at.map((opening, i) => tested("quick-opening", "crisp", { opening, at: i + 1 }));
    expect(offered({ tests: answers })).not.toContain("quick-opening");
    expect(offered({ rides: [ride(at.map((opening) => saw("answers-crisply", opening)))] })).not.toContain(
      "quick-opening",
    );
  });

  test("on other parts it may be", () => {
    const other = { ...FOUND, setup: { ...FOUND.setup, clip: { part: 4, how: "read by eye" as const } } };
    const answers = [2, 4].map((i) =>
      tested("quick-opening", "bog", { opening: OPENINGS[i]!, at: i, situation: other }),
    );
    expect(offered({ tests: answers })).toContain("quick-opening");
  });
});

describe("[A3] a test wide open", () => {
  const wide = (signs: readonly string[]) =>
    offered({ rides: [ride(signs.map((sign) => saw(sign)))] }).filter((id) => testById(id)!.wideOpen);

  test("is never asked while the top may be lean", () => {
    expect(wide(["roll-off-picks-up"])).toEqual([]);
    expect(wide(["drops-straight-to-idle"])).toEqual([]);
  });

  test("for a few seconds while it is not proved, as trouble rich on top calls for", () => {
    const asked = wide(["will-not-rev-out", "pulls-smoothly", "drops-straight-to-idle"]);
    expect(asked[0]).toBe("roll-off");
    for (const id of asked) expect(testById(id)!.minutes).toBeLessThan(15);
  });
});

describe("[A9] the complaint first", () => {
  test("while the top has trouble, a test that says nothing of it counts a quarter", () => {
    const weighing = weighingOf(story({ drawer: DRAWER, rides: [ride([saw("will-not-rev-out")])] }));
    const troubled = testSteps(weighing, CHECKS);
    const calm = testSteps({ ...weighing, belief: { ...weighing.belief, sites: [] } }, CHECKS);
    const worth = (list: typeof calm, id: string) => list.find((step) => step.id === id)!.worth;
    const below = ["quick-opening", "chop-warm", "touch-of-choke", "idle-hold"].filter((id) =>
      [calm, troubled].every((list) => list.some((step) => step.id === id)),
    );
    expect(below.length).toBeGreaterThan(0);
    for (const id of below) expect(worth(calm, id) / worth(troubled, id)).toBeCloseTo(4, 9);
    expect(calm.slice(0, 2).map(({ id }) => id)).toContain("screw-sweep-air");
  });
});

describe("[A6] after pinging", () => {
  test("no test rides", () => {
    const list = steps({ rides: [ride([saw("pings-on-roll-on")])] });
    expect(list.length).toBeGreaterThan(0);
    for (const { cautions } of list) expect(cautions).not.toContain("test-riding");
    expect(steps({}).some(({ cautions }) => cautions.includes("test-riding"))).toBe(true);
  });
});

describe("[A11] a test in full", () => {
  test("its likeliest answer, its steps and tools, and what it rests on", () => {
    const list = steps({ rides: [ride([saw("jerks-at-constant-grip")])] });
    expect(list.length).toBeGreaterThan(2);
    for (const { id, expect: text, how, tools, sure, undo, why } of list) {
      const made = testById(id)!;
      expect(how).toEqual(english.tests[made.id].steps);
      expect(tools).toEqual(english.tests[made.id].tools);
      const words = Object.values(english.tests[made.id].outcomes);
      const said =
        /^Likeliest: (.*), about (\d+) times in ten\. Each answer leads on to another step\.$/.exec(text)!;
      expect(words.map((each) => each.charAt(0).toLowerCase() + each.slice(1))).toContain(said[1]);
      expect(Number(said[2])).toBe(Math.round(sure.chance * 10));
      expect(sure.chance).toBeGreaterThanOrEqual(1 / made.outcomes.length);
      expect(undo).toMatch(/Put back/);
      expect(why.every(({ record }) => record === "ride-1")).toBe(true);
    }
    expect(list.some(({ why }) => why.length > 0)).toBe(true);
  });

  test("names its place where it has a choice, but not closed from a little open", () => {
    for (const given of [
      {},
      { rides: [ride([saw("hangs-after-closing")])] },
      { rides: [ride([saw("pulls-clean-to-peak")])] },
      { rides: [ride([saw("will-not-rev-out")])] },
    ]) {
      for (const { id, title } of steps(given)) {
        const made = testById(id)!;
        const choice = made.openings.length > 1 && made.openings.some((opening) => opening >= 1 / 8);
        if (choice) expect(title).toMatch(/, at (closed|1\/8|1\/4|1\/2|3\/4|full) throttle$/);
        else expect(title).toBe(english.tests[made.id].words);
      }
    }
  });
});
