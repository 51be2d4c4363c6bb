import { describe, expect, test } from "vitest";
import { SPOKEN_OPENINGS } from "../units/opening.ts";
import { exampleSeen, exampleSign } from "./example-sign.ts";
import { stretchAt, stretchOf } from "./state.ts";
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
});
