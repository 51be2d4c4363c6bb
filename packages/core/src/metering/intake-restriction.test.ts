import { describe, expect, test } from "vitest";
import { known } from "../parts/known.ts";
import { OPENINGS } from "../units/opening.ts";
import type { Pascal } from "../units/quantity.ts";
import { compare } from "./compare.ts";
import { intakeRestriction } from "./intake-restriction.ts";
import type { Situation } from "./situation.ts";
import { BODY, boreJet, fitted, HERE } from "./test-situations.ts";

function restricted(situation: Situation, pascal: number) {
  const result = intakeRestriction(situation, pascal as Pascal);
  if (!result.ok) throw new Error(result.detail);
  return result.value;
}

describe("an intake that holds back", () => {
  test("richens a free-vented bowl, most at full throttle", () => {
    const { logRatio, mainAreaFactor } = restricted(HERE, 250);
    // √((1600 - 87 + 250)/(1600 - 87)) through 95 % of the fuel
    expect(logRatio[10]).toBeCloseTo(0.95 * 0.5 * Math.log((1600 - 87.088 + 250) / (1600 - 87.088)), 4);
    for (let i = 2; i < OPENINGS.length; i++) expect(logRatio[i]!).toBeGreaterThan(logRatio[i - 1]!);
    expect(logRatio[0]).toBeLessThan(0.001);
    // flow at half lift is 0.63 of that at full: 40 % of the 250 Pa on 1213 Pa
    expect(logRatio[6]).toBeCloseTo(0.946 * 0.5 * Math.log(1 + (0.63 * 0.63 * 250) / 1213), 3);
    const main = Math.sqrt(mainAreaFactor!) * 175;
    const back = compare(HERE, fitted({ main: known(boreJet(main)) }));
    expect(back.ok && back.value.at[10]!.logRatio).toBeCloseTo(-logRatio[10]!, 9);
  });

  test("does nothing to a bowl vented behind it, nor does no restriction", () => {
    const behind = restricted(fitted({ body: { ...BODY, bowlVent: "airbox" } }), 4000);
    expect(behind.logRatio.every((x) => x === 0)).toBe(true);
    expect(behind.mainAreaFactor).toBe(1);
    expect(restricted(HERE, 0).logRatio.every((x) => x === 0)).toBe(true);
  });

  test("refuses what no intake does, and impossible parts", () => {
    for (const pascal of [-1, 20_001, Number.NaN]) {
      expect(intakeRestriction(HERE, pascal as Pascal)).toMatchObject({
        ok: false,
        reason: "impossible restriction",
      });
    }
    expect(intakeRestriction(fitted({ main: known(boreJet(1)) }), 100 as Pascal)).toMatchObject({
      ok: false,
    });
  });
});
