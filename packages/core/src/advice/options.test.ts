import { describe, expect, test } from "vitest";
import type { Situation } from "../metering/situation.ts";
import { boreJet, FUEL_SCREW, fitted, flowJet, mm, NEEDLE } from "../metering/test-situations.ts";
import { EMPTY_DRAWER } from "../parts/drawer.ts";
import { known, UNKNOWN } from "../parts/known.ts";
import type { Setup } from "../parts/setup.ts";
import { type Option, optionsFor } from "./options.ts";
import { DRAWER, FOUND } from "./test-stories.ts";

const one = <Part>(part: Part) => ({ part, count: 1 });
const places = (now: Situation, drawer = EMPTY_DRAWER) => {
  const { mainBranch, pilotBranch } = optionsFor(now, drawer);
  const [main, needle, needleJet, slide] = mainBranch;
  const [pilot, screw] = pilotBranch;
  const fill = (place: readonly Option[] | undefined): readonly Setup[] =>
    place!.map((option) => option.fit(now.setup));
  return {
    main: main!,
    mains: fill(main).map((setup) => setup.main.part?.number),
    pilots: fill(pilot).map((setup) => setup.pilot.part?.number),
    needles: fill(needle).map((setup) => `${setup.needle.part?.marks} ${setup.clip.part}`),
    needleJets: fill(needleJet).map((setup) => setup.needleJet.part),
    slides: fill(slide).map((setup) => setup.cutaway.part),
    turns: fill(screw).map((setup) => setup.screw.part?.turnsOut),
  };
};

describe("[A13] what can be fitted next", () => {
  test("what is fitted comes first at every place, and changes nothing", () => {
    const { mainBranch, pilotBranch } = optionsFor(FOUND, DRAWER);
    for (const place of [...mainBranch, ...pilotBranch]) {
      expect(place[0]).toMatchObject({ changes: [], toBuy: [] });
      expect(place[0]!.fit(FOUND.setup)).toBe(FOUND.setup);
      for (const option of place.slice(1)) expect(option.changes).toHaveLength(1);
    }
  });

  test("without a drawer: four sizes as sold to either side, all to buy; jets from stock are not", () => {
    const bare = places(FOUND);
    expect(bare.mains).toEqual([175, 165, 167.5, 170, 172.5, 177.5, 180, 182.5, 185]);
    expect(bare.pilots).toEqual([42, 38, 40, 44, 46]); // 34, 36, 48 and 50 lie further off than the widest step
    expect(bare.main.slice(1).every(({ toBuy }) => toBuy.join() === "main")).toBe(true);
    const owned = places(FOUND, {
      ...EMPTY_DRAWER,
      mains: [one(boreJet(180)), { part: boreJet(170), count: 0 }],
    });
    const toBuy = new Map(owned.main.map((option, i) => [owned.mains[i], option.toBuy.length > 0]));
    expect([toBuy.get(180), toBuy.get(170), toBuy.get(175)]).toEqual([false, true, false]);
  });

  test("an odd size from stock counts; jets of other numbering, maker or far size do not", () => {
    const stock = [
      boreJet(168),
      flowJet(178),
      { ...boreJet(179), maker: "Theirs" },
      boreJet(230),
      boreJet(140),
    ];
    const { mains } = places(FOUND, { ...EMPTY_DRAWER, mains: stock.map(one) });
    expect(mains).toContain(168);
    for (const number of [178, 179, 230, 140]) expect(mains).not.toContain(number);
  });

  test("sizes stay within 30 % of the area, to either side", () => {
    // A bore jet's area goes by its number squared.
    for (const number of places(FOUND, { ...EMPTY_DRAWER, pilots: [36, 37, 47, 48].map(boreJet).map(one) })
      .pilots) {
      const ratio = (number! / 42) ** 2;
      expect(ratio).toBeLessThan(1.3);
      expect(ratio).toBeGreaterThan(1 / 1.3);
    }
    const { pilots } = places(FOUND, { ...EMPTY_DRAWER, pilots: [36, 37, 47, 48].map(boreJet).map(one) });
    expect(pilots).toEqual([42, 37, 38, 40, 44, 46, 47]);
  });

  test("the clip one groove at a time, and every groove of an owned needle of known shape", () => {
    const other = { ...NEEDLE, marks: "N2", grooves: 4 };
    const list = (needles: readonly { part: typeof NEEDLE; count: number }[], now = FOUND) =>
      places(now, { ...EMPTY_DRAWER, needles }).needles;
    expect(list([])).toEqual(["N1 3", "N1 2", "N1 4"]);
    expect(list([], fitted({ clip: known(1) }, FOUND))).toEqual(["N1 1", "N1 2"]);
    expect(list([], fitted({ clip: known(5) }, FOUND))).toEqual(["N1 5", "N1 4"]);
    expect(list([one(other)]).slice(3)).toEqual(["N2 1", "N2 2", "N2 3", "N2 4"]);
    expect(list([{ part: other, count: 0 }])).toHaveLength(3);
    expect(list([one({ ...other, profile: null })])).toHaveLength(3);
    expect(list([one(NEEDLE)])).toHaveLength(3);
    const shapeless = fitted({ needle: known({ ...NEEDLE, profile: null }) }, FOUND);
    expect(list([one(other)], shapeless)).toHaveLength(3);
  });

  test("slides and needle jets from stock only, of another size", () => {
    const drawer = {
      ...EMPTY_DRAWER,
      slides: [one(mm(3.5)), one(mm(4)), { part: mm(3), count: 0 }],
      needleJets: [one(mm(2.7)), one(mm(2.72))],
    };
    const { slides, needleJets } = places(FOUND, drawer);
    expect(slides).toEqual([mm(3.5), mm(4)]);
    expect(needleJets).toEqual([mm(2.7), mm(2.72)]);
  });

  test.each(["air", "fuel"] as const)(
    "the %s screw by quarters from ¾ to 2¾, the present turns apart",
    (kind) => {
      const at = (turnsOut: number) =>
        places(fitted({ ...(kind === "fuel" ? FUEL_SCREW : {}), screw: known({ kind, turnsOut }) }, FOUND))
          .turns;
      expect(at(1.5)).toEqual([1.5, 0.75, 1, 1.25, 1.75, 2, 2.25, 2.5, 2.75]);
      expect(at(1.45)).toEqual([1.45, 0.75, 1, 1.25, 1.75, 2, 2.25, 2.5, 2.75]);
      expect(at(1.375)).toHaveLength(10);
      expect(at(3.5)).toEqual([3.5, 0.75, 1, 1.25, 1.5, 1.75, 2, 2.25, 2.5, 2.75]);
    },
  );

  test("[A8] a part that is not known is left alone, and a needle too whose clip is not known", () => {
    const nothing = fitted(
      { main: UNKNOWN, pilot: UNKNOWN, clip: UNKNOWN, needleJet: UNKNOWN, cutaway: UNKNOWN, screw: UNKNOWN },
      FOUND,
    );
    const { mainBranch, pilotBranch } = optionsFor(nothing, DRAWER);
    for (const place of [...mainBranch, ...pilotBranch]) expect(place).toHaveLength(1);
    const noNeedle = places(fitted({ needle: UNKNOWN }, FOUND), DRAWER);
    expect(noNeedle.needleJets).toHaveLength(1);
    expect(noNeedle.needles).toEqual(["undefined 3", "undefined 2", "undefined 4"]);
  });
});
