import { describe, expect, test } from "vitest";
import { OPENINGS } from "../units/opening.ts";
import { exampleCheck, exampleCompared, exampleMeasured, exampleSeen, exampleSign } from "./example-sign.ts";
import { factorValue } from "./factor.ts";
import { factorUnder } from "./site.ts";
import { sitesFrom } from "./sites.ts";
import { direction, NO_SHIFT, stretchAt } from "./state.ts";

const nobody = () => [];
const quarter = OPENINGS[4]!;
const needleBy = (by: number) => ({ ...NO_SHIFT, needle: OPENINGS.map(() => by) });
const sign = exampleSign({ faults: { "air-leak": 0.8 } });

describe("evidence from observations", () => {
  test("a sign, a measurement and a verdict each become one piece; a check does not", () => {
    const sites = sitesFrom(
      [exampleCheck(), exampleMeasured(0.02), exampleCompared({ after: needleBy(0.05) }), exampleSeen(sign)],
      nobody,
    );
    expect(sites.map(({ observation: { record, at } }) => [record, at])).toEqual([
      ["r1", 1],
      ["r2", 2],
      ["m1", 3],
    ]);
  });

  test("a sign and a measurement look along the mixture of their own situation", () => {
    const shift = needleBy(0.05);
    const [seen, measured] = sitesFrom(
      [exampleSeen(sign, { shift }), exampleMeasured(0.02, { shift })],
      nobody,
    );
    expect(seen!.along).toEqual(direction(stretchAt(quarter), shift));
    expect(measured!.along).toEqual(direction(stretchAt(quarter), shift));
    expect(measured!.sound.bumps).toEqual([{ weight: 0.95, at: 0.02, sd: 0.02 }]);
    expect(measured!.faults.size).toBe(0);
  });

  test("[B6] a verdict looks half-way between the two situations", () => {
    const [site] = sitesFrom([exampleCompared({ before: needleBy(0.02), after: needleBy(0.08) })], nobody);
    expect(site!.along[4]).toBe(1);
    expect([...site!.along.slice(11)]).toEqual([0, 0, 0, expect.closeTo(0.05, 12), 0, 0]);
    const leaner = sitesFrom(
      [exampleCompared({ before: needleBy(0.08), after: needleBy(0.02) })],
      nobody,
    )[0]!;
    expect(factorValue(leaner.sound, 0.5)).toBeGreaterThan(factorValue(leaner.sound, -0.5));
    expect(factorValue(site!.sound, 0.5)).toBeLessThan(factorValue(site!.sound, -0.5));
  });

  test("[B13] a change under three parts in a thousand is no evidence", () => {
    expect(sitesFrom([exampleCompared({ after: needleBy(0.0029) })], nobody)).toEqual([]);
    expect(sitesFrom([exampleCompared({ after: needleBy(-0.0029) })], nobody)).toEqual([]);
    expect(sitesFrom([exampleCompared({ after: needleBy(0.003) })], nobody)).toHaveLength(1);
    expect(sitesFrom([exampleCompared({ after: needleBy(-0.003) })], nobody)).toHaveLength(1);
  });

  test("[B7] of two verdicts on one situation and opening the later speaks", () => {
    const after = needleBy(0.05);
    const first = exampleCompared({ after, at: 5, felt: "worse", record: "z" });
    const second = exampleCompared({ after, at: 6, felt: "better", record: "a" });
    for (const order of [
      [first, second],
      [second, first],
    ])
      expect(sitesFrom(order, nobody).map(({ observation }) => observation.record)).toEqual(["a"]);
    const same = { ...first, at: 6 };
    for (const order of [
      [same, second],
      [second, same],
    ])
      expect(sitesFrom(order, nobody).map(({ observation }) => observation.record)).toEqual(["z"]);
    const elsewhere = exampleCompared({ after, at: 5, opening: OPENINGS[6]!, record: "z" });
    expect(sitesFrom([first, elsewhere, { ...first, situation: "s3" }], nobody)).toHaveLength(3);
  });

  test("[B2] twins of one record come out in the same order and the same choice, whatever order they came in", () => {
    const twins = [
      exampleMeasured(0.02),
      exampleMeasured(0.02, { sd: 0.03 }),
      exampleMeasured(0.02, { shift: needleBy(0.04) }),
      exampleMeasured(0.01),
      exampleCompared({ after: needleBy(0.05), felt: "better" }),
      exampleCompared({ after: needleBy(0.05), felt: "worse" }),
      exampleCompared({ after: needleBy(0.06), felt: "worse" }),
      exampleSeen(sign, { record: "m1", at: 3 }),
    ];
    const forth = sitesFrom(twins, nobody);
    const back = sitesFrom([...twins].reverse(), nobody);
    expect(back).toEqual(forth);
    expect(forth).toHaveLength(6);
  });

  test("[B2] evidence of one time goes by record, then by what it says", () => {
    const one = exampleSeen(sign, { record: "a", at: 3, situation: "s1" });
    const two = exampleSeen(sign, { record: "b", at: 3, situation: "s2" });
    const three = exampleMeasured(0.02, { record: "b" });
    for (const order of [
      [one, two, three],
      [three, two, one],
      [two, three, one],
    ])
      expect(sitesFrom(order, nobody).map(({ observation }) => observation)).toEqual([one, three, two]);
  });

  test("[B2] of two verdicts of one record the same one speaks in either order, by word and then by change", () => {
    const [small, large] = [needleBy(0.05), needleBy(0.06)];
    const pairs = [
      [exampleCompared({ after: small, felt: "better" }), exampleCompared({ after: large, felt: "worse" })],
      [exampleCompared({ after: large, felt: "better" }), exampleCompared({ after: small, felt: "worse" })],
      [exampleCompared({ after: small }), exampleCompared({ after: large })],
    ] as const;
    for (const [first, second] of pairs) {
      expect(sitesFrom([first, second], nobody).map(({ observation }) => observation)).toEqual([second]);
      expect(sitesFrom([second, first], nobody).map(({ observation }) => observation)).toEqual([second]);
    }
  });

  test("a fault has its own likelihood where it alters the evidence, and the sound one elsewhere", () => {
    const [site] = sitesFrom([exampleSeen(sign)], nobody);
    expect(factorUnder(site!, "air-leak")).toBe(site!.faults.get("air-leak"));
    expect(factorUnder(site!, "air-leak")).not.toBe(site!.sound);
    expect(factorUnder(site!, "reed")).toBe(site!.sound);
    expect(factorUnder(site!, null)).toBe(site!.sound);
  });
});
