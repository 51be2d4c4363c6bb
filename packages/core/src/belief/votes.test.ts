import { describe, expect, test } from "vitest";
import { SPOKEN_OPENINGS } from "../units/opening.ts";
import { exampleSeen, exampleSign } from "./example-sign.ts";
import { factorValue } from "./factor.ts";
import { NO_SHIFT, stretchAt, stretchOf } from "./state.ts";
import { votes } from "./votes.ts";

const strong = exampleSign({ id: "z-strong", chance: { rich: 0.8, right: 0.1, lean: 0.1 } });
const weak = exampleSign({ id: "weak", chance: { rich: 0.3, right: 0.1, lean: 0.1 } });
const nobody = () => [];
const chosen = (...seen: Parameters<typeof votes>[0]) =>
  votes(seen, nobody).map(({ observation }) => observation);

describe("votes", () => {
  test("[B7] of one group's signs in one ride, the one that tells most speaks", () => {
    const told = [exampleSeen(weak), exampleSeen(strong)];
    expect(chosen(...told)).toEqual([told[1]]);
    expect(chosen(...[...told].reverse())).toEqual([told[1]]);
  });

  test("[B7] the latest ride speaks, however weakly", () => {
    const early = exampleSeen(strong, { at: 1, record: "r9" });
    const late = exampleSeen(weak, { at: 2, record: "r1" });
    expect(chosen(late, early)).toEqual([late]);
    expect(chosen(early, late)).toEqual([late]);
  });

  test("[B7] at the same time the later record id speaks", () => {
    const one = exampleSeen(strong, { record: "r1" });
    const two = exampleSeen(weak, { record: "r2" });
    expect(chosen(one, two)).toEqual([two]);
    expect(chosen(two, one)).toEqual([two]);
  });

  test("[B7] other groups, situations and openings have votes of their own", () => {
    const other = exampleSign({ id: "other", group: "another" });
    const told = [
      exampleSeen(strong),
      exampleSeen(other),
      exampleSeen(strong, { situation: "s2" }),
      exampleSeen(strong, { stretch: stretchAt(SPOKEN_OPENINGS[5]!) }),
    ];
    expect(chosen(...told)).toEqual(told);
  });

  test("[B7] stretches share a vote when the same spoken opening is nearest to their middle", () => {
    const [, , quarter, half] = SPOKEN_OPENINGS;
    const leaning = stretchOf([
      [quarter!, 3],
      [half!, 1],
    ]); // middle 0.3125
    const told = [exampleSeen(weak, { stretch: leaning }), exampleSeen(strong)];
    expect(chosen(...told)).toEqual([told[1]]);
    const beyond = stretchOf([
      [quarter!, 1],
      [half!, 3],
    ]); // middle 0.4375
    expect(chosen(exampleSeen(weak, { stretch: beyond }), exampleSeen(strong))).toHaveLength(2);
  });

  test("[B2] [B7] equals are told apart by sign, then seen before not seen, then where they look", () => {
    const twin = { ...strong, id: "a-twin" };
    expect(chosen(exampleSeen(strong), exampleSeen(twin))[0]!.sign).toBe(twin);
    expect(chosen(exampleSeen(twin), exampleSeen(strong))[0]!.sign).toBe(twin);
    const even = exampleSign({ id: "even", chance: { rich: 0.75, right: 0.25, lean: 0.25 } });
    const seen = exampleSeen(even);
    const unseen = exampleSeen(even, { seen: false });
    expect(chosen(seen, unseen)).toEqual([seen]);
    expect(chosen(unseen, seen)).toEqual([seen]);
    const [, , quarter, half] = SPOKEN_OPENINGS;
    const wide = exampleSeen(strong, {
      stretch: stretchOf([
        [quarter!, 7],
        [half!, 1],
      ]),
    });
    const capped = exampleSeen(strong);
    expect(chosen(wide, capped)).toEqual(chosen(capped, wide));
  });

  test("[B8] a fault known to have been there at the time is handed to the likelihood", () => {
    const sign = exampleSign({ faults: { "air-leak": 0.9 } });
    const asked: number[] = [];
    const [vote] = votes([exampleSeen(sign, { at: 7 })], (at) => {
      asked.push(at);
      return ["air-leak"];
    });
    expect(asked).toEqual([7]);
    expect(vote!.likelihood.faults.size).toBe(0);
  });

  describe("[B21] what one fault leaves well", () => {
    const healthy = (group: string, chance = 0.2) =>
      exampleSign({
        id: group,
        group,
        healthy: true,
        chance: { rich: 0.8, right: 0.8, lean: 0.8 },
        faults: { ignition: chance },
      });
    /** How many times less likely the sign is with the fault than without, vote by vote in the order given. */
    const against = (...seen: Parameters<typeof votes>[0]) =>
      votes(seen, nobody).map(
        ({ likelihood }) =>
          factorValue(likelihood.faults.get("ignition")!, 0) / factorValue(likelihood.sound, 0),
      );

    test("says less against it each time, by the rule of succession", () => {
      const [first, second, third] = against(
        exampleSeen(healthy("a"), { at: 1 }),
        exampleSeen(healthy("b"), { at: 2 }),
        exampleSeen(healthy("c"), { at: 3, situation: "s2" }),
      );
      expect(first).toBeCloseTo(0.25, 9);
      expect(second).toBeCloseTo((3 * 0.25 + 0.75) / 3.75, 9);
      expect(third).toBeCloseTo((3 * 0.25 + 1.5) / 4.5, 9);
    });

    test("in the order of time, whatever the order told", () => {
      const early = exampleSeen(healthy("a"), { at: 1 });
      const late = exampleSeen(healthy("b"), { at: 2 });
      const told = against(early, late);
      expect(against(late, early)).toEqual([...told].reverse());
    });

    test("a sign of health that was missed is no such news, and one the fault does not touch is none", () => {
      const after = (first: Parameters<typeof votes>[0][number]) =>
        against(first, exampleSeen(healthy("b"), { at: 2 }))[1];
      expect(after(exampleSeen(healthy("a"), { at: 1, seen: false }))).toBeCloseTo(0.25, 9);
      expect(after(exampleSeen(healthy("a", 0.8), { at: 1 }))).toBeCloseTo(0.25, 9);
    });

    test("signs of trouble speak as before", () => {
      const trouble = exampleSign({ group: "t", faults: { ignition: 0.7 } });
      const alone = votes([exampleSeen(trouble, { at: 2 })], nobody)[0]!.likelihood;
      const [, beside] = votes([exampleSeen(healthy("a")), exampleSeen(trouble, { at: 2 })], nobody);
      expect(beside!.likelihood).toEqual(alone);
    });
  });

  describe("[B24] trouble that was told before", () => {
    // With the jets right it is seen once in ten, with the fault in one half of what is left: 0.55 in all.
    const trouble = exampleSign({
      group: "t",
      chance: { rich: 0.1, right: 0.1, lean: 0.1 },
      faults: { ignition: 0.55 },
    });
    const odds = (...seen: Parameters<typeof votes>[0]) =>
      votes(seen, nobody).map(
        ({ likelihood }) =>
          factorValue(likelihood.faults.get("ignition")!, 0) / factorValue(likelihood.sound, 0),
      );
    const at = (time: number, what: Parameters<typeof exampleSeen>[1] = {}) =>
      exampleSeen(trouble, { at: time, situation: `s${time}`, ...what });
    const counted = (share: number): number => (0.1 + share * 0.5 * 0.9) / 0.1;

    test("counts half for the fault the second time, a third the third, in whatever order it is told", () => {
      const [first, second, third] = odds(at(1), at(2), at(3));
      expect(first).toBeCloseTo(counted(1), 9);
      expect(second).toBeCloseTo(counted(1 / 2), 9);
      expect(third).toBeCloseTo(counted(1 / 3), 9);
      expect(odds(at(3), at(2), at(1))).toEqual([third, second, first]);
    });

    test("of another group is news, and so is what was looked for and not there before", () => {
      const other = exampleSeen({ ...trouble, id: "other", group: "u" }, { at: 1 });
      expect(odds(other, at(2))[1]).toBeCloseTo(counted(1), 9);
      expect(odds(at(1, { seen: false }), at(2))[1]).toBeCloseTo(counted(1), 9);
      expect(odds(at(1), at(2, { seen: false }))[1]).toBeCloseTo(0.45 / 0.9, 9);
    });

    test("on parts that change the mixture there by 2 % it is news", () => {
      const richer = (by: number) => ({ ...NO_SHIFT, pilot: NO_SHIFT.pilot.map(() => by) });
      expect(odds(at(1), at(2, { shift: richer(0.021) }))[1]).toBeCloseTo(counted(1), 9);
      expect(odds(at(1), at(2, { shift: richer(0.019) }))[1]).toBeCloseTo(counted(1 / 2), 9);
    });

    test("says of the mixture what it always says", () => {
      const [first, second] = votes([at(1), at(2)], nobody);
      expect(second!.likelihood.sound).toEqual(first!.likelihood.sound);
    });
  });
});
