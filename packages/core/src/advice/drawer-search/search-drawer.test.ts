import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { dryAir } from "../../metering/test-situations.ts";
import { FOUND } from "../test-stories.ts";
import { mergeLists } from "./best-list.ts";
import { type DrawerQuestion, type DrawerSpace, drawerSpace } from "./drawer-space.ts";
import { everySetup } from "./every-setup.ts";
import { leanChance } from "./loss-table.ts";
import { bestSetups, newTally, searchDrawer, shiftOfFound } from "./search-drawer.ts";
import { type DrawerSize, type Needles, trialBelief, trialPlaces } from "./trial-drawer.ts";

const NOW = { ...FOUND, air: dryAir(1.1) };
const SMALL: DrawerSize = { needles: 6, clips: 3, mains: 7, pilots: 5, screws: 4, slides: 3 };
const KINDS: readonly Needles[] = ["spread", "near twins", "twins", "never matter"];

function spaceOf(given: Partial<DrawerQuestion>): DrawerSpace {
  const made = drawerSpace({
    belief: trialBelief(4, 1),
    reference: FOUND,
    now: NOW,
    places: trialPlaces(SMALL),
    leanChance: 0.02,
    countMinutes: false,
    minutes: {},
    ...given,
  });
  if (!made.ok) throw new Error(made.detail);
  return made.value;
}

const size = fc.record({
  needles: fc.integer({ min: 1, max: 6 }),
  clips: fc.integer({ min: 1, max: 4 }),
  mains: fc.integer({ min: 1, max: 8 }),
  pilots: fc.integer({ min: 1, max: 5 }),
  screws: fc.integer({ min: 1, max: 5 }),
  slides: fc.integer({ min: 1, max: 3 }),
});

const drawn = fc
  .record({
    size,
    kind: fc.constantFrom(...KINDS),
    parts: fc.integer({ min: 1, max: 6 }),
    width: fc.constantFrom(0.15, 0.5, 1, 1.5),
    offset: fc.constantFrom(-0.15, 0, 0.1),
    seed: fc.integer({ min: 1, max: 9999 }),
    leanChance: fc.constantFrom(1, 0.1, 0.02),
    countMinutes: fc.boolean(),
  })
  .map(({ size, kind, parts, width, offset, seed, leanChance, countMinutes }) =>
    spaceOf({
      places: trialPlaces(size, kind, seed),
      belief: trialBelief(parts, width, seed, offset),
      leanChance,
      countMinutes,
    }),
  );

describe("search of a whole drawer", () => {
  test("[A13] the same list, to the last bit, as weighing every combination", () => {
    fc.assert(
      fc.property(drawn, fc.integer({ min: 1, max: 20 }), (space, wanted) => {
        expect(bestSetups(space, wanted)).toEqual(everySetup(space, wanted));
      }),
      { seed: 20261125, numRuns: 120 },
    );
  }, 60_000);

  test("[A13] the same on a drawer large enough for a first look and a tree of several levels", () => {
    const places = (kind: Needles) =>
      trialPlaces({ needles: 60, clips: 3, mains: 24, pilots: 4, screws: 3, slides: 2 }, kind, 5);
    for (const kind of KINDS) {
      for (const leanChance of [1, 0.02]) {
        const space = spaceOf({ places: places(kind), belief: trialBelief(2, 0.6, 7, 0.02), leanChance });
        expect(bestSetups(space, 20)).toEqual(everySetup(space, 20));
      }
    }
  }, 60_000);

  test("flat: sizes so close that hundreds of setups are as good as one another", () => {
    const close = trialPlaces(SMALL);
    const places = {
      ...close,
      // Every jet again, a hair larger.
      mains: close.mains.flatMap((option) => [0, 1e-9, 1e-6].map((more) => larger(option, more))),
    };
    for (const countMinutes of [false, true]) {
      const space = spaceOf({ places, countMinutes });
      expect(bestSetups(space, 20)).toEqual(everySetup(space, 20));
    }
  });

  test("equal setups go by the numbers of their options", () => {
    const places = trialPlaces({ ...SMALL, needles: 30, clips: 1 }, "twins");
    const list = bestSetups(spaceOf({ places }), 20);
    expect(list.map(({ needle }) => needle)).toEqual(Array.from({ length: 20 }, (_, i) => i));
    expect(new Set(list.map(({ total }) => total)).size).toBe(1);
  });

  test("equal totals go to the setup that changes fewer parts", () => {
    const base = trialPlaces({ ...SMALL, needles: 1, clips: 1 });
    const stay = { ...base.needles[0]!, changes: [] };
    const space = spaceOf({ places: { ...base, needles: [...base.needles, stay] } });
    expect(bestSetups(space, 2).map(({ needle, changes }) => [needle, changes])).toEqual([
      [1, 4],
      [0, 5],
    ]);
  });

  test("[A2] every setup of the list keeps the lean limit, and the limit decides", () => {
    const given = { belief: trialBelief(5, 1, 3) };
    const free = bestSetups(spaceOf({ ...given, leanChance: 1 }), 20);
    const held = spaceOf(given);
    const list = bestSetups(held, 20);
    expect(list).toHaveLength(20);
    for (const found of list)
      expect(leanChance(held.loss, shiftOfFound(held, found))).toBeLessThanOrEqual(0.02);
    expect(free.some((found) => leanChance(held.loss, shiftOfFound(held, found)) > 0.02)).toBe(true);
  });

  test("where nothing keeps the limit the list is empty", () => {
    const space = spaceOf({ belief: trialBelief(3, 0.3, 2, -1.5) });
    expect(bestSetups(space, 20)).toEqual([]);
    expect(everySetup(space, 20)).toEqual([]);
  });

  test("shared out by needle and put together again, the list is the same", () => {
    fc.assert(
      fc.property(drawn, fc.array(fc.nat({ max: 24 }), { maxLength: 4 }), (space, cuts) => {
        const end = space.places.needles.length;
        const at = [0, ...cuts.filter((cut) => cut < end), end].sort((a, b) => a - b);
        const lists = at.slice(1).map((to, i) => bestSetups(space, 20, [at[i]!, to]));
        expect(mergeLists(lists, 20)).toEqual(bestSetups(space, 20));
      }),
      { seed: 20261125, numRuns: 40 },
    );
  });

  test("a step at a time: progress only grows, what is shown only gets better, and it can be dropped", () => {
    const space = spaceOf({ places: trialPlaces({ ...SMALL, needles: 200, mains: 20, pilots: 12 }) });
    let done = -1;
    let steps = 0;
    let first = Infinity;
    const search = searchDrawer(space, 20);
    let step = search.next();
    for (; !step.done; step = search.next()) {
      expect(step.value.done).toBeGreaterThanOrEqual(done);
      expect(step.value.done).toBeLessThanOrEqual(1);
      done = step.value.done;
      steps++;
      const top = step.value.best[0]?.total;
      if (top !== undefined && done >= 0.2) first = Math.min(first, top);
    }
    expect(steps).toBeGreaterThan(5);
    expect(step.value[0]!.total).toBeLessThanOrEqual(first);
    const dropped = searchDrawer(space, 20);
    dropped.next();
    dropped.next();
    dropped.return([]);
    expect(bestSetups(space, 20)).toEqual(step.value);
  });

  test("115 million combinations with little work and memory", () => {
    const places = trialPlaces({ needles: 400, clips: 5, mains: 40, pilots: 24, screws: 12, slides: 5 });
    for (const leanChance of [1, 0.02]) {
      const space = spaceOf({ places, belief: trialBelief(20, 1, 3), leanChance });
      expect(space.size).toBe(115_200_000);
      const tally = newTally();
      expect(bestSetups(space, 20, undefined, tally)).toHaveLength(20);
      expect(tally.bytes).toBeLessThan(20e6);
      expect(tally.opened).toBeLessThan(0.15 * tally.pairs);
      expect(tally.floors).toBeLessThan(90_000);
      expect(tally.losses).toBeLessThan(4500);
    }
  }, 60_000);

  test("what metering cannot compare is left out and counted", () => {
    const base = trialPlaces(SMALL);
    const wrong = {
      ...base.mains[0]!,
      fit: (setup: typeof NOW.setup) => ({ ...setup, main: impossible(setup) }),
    };
    const space = spaceOf({ places: { ...base, mains: [wrong, ...base.mains] } });
    expect(space.leftOut).toBe(1);
    expect(space.size).toBe(6 * 3 * 7 * 5 * 4 * 3);
  });

  test("a setup of now that cannot be is refused", () => {
    const made = drawerSpace({
      belief: trialBelief(1, 1),
      reference: FOUND,
      now: { ...NOW, setup: { ...NOW.setup, main: impossible(NOW.setup) } },
      places: trialPlaces(SMALL),
      leanChance: 1,
      countMinutes: false,
      minutes: {},
    });
    expect(made).toMatchObject({ ok: false, reason: "impossible part" });
  });
});

type Option = ReturnType<typeof trialPlaces>["mains"][number];

const larger = (option: Option, more: number): Option => ({
  ...option,
  fit: (setup) => {
    const made = option.fit(setup);
    return {
      ...made,
      main: { ...made.main, part: { ...made.main.part!, number: made.main.part!.number + more } },
    };
  },
});

const impossible = ({ main }: typeof NOW.setup): typeof NOW.setup.main => ({
  ...main,
  part: { ...main.part!, number: 1 },
});
