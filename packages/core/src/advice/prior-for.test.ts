import { describe, expect, test } from "vitest";
import { STATE_SIZE } from "../belief/state.ts";
import { shiftBetween } from "../metering/shift.ts";
import type { Situation } from "../metering/situation.ts";
import { boreJet, fitted, withScrew } from "../metering/test-situations.ts";
import { known, UNKNOWN } from "../parts/known.ts";
import type { Setup } from "../parts/setup.ts";
import { CIRCUITS } from "../units/circuit.ts";
import { OPENINGS } from "../units/opening.ts";
import { priorFor } from "./prior-for.ts";
import { FOUND } from "./test-stories.ts";

/** What going from one situation to another does at each opening. */
function change(from: Situation, to: Situation): readonly number[] {
  const shift = shiftBetween(from, to);
  if (!shift.ok) throw new RangeError(shift.detail);
  return OPENINGS.map((_, i) => CIRCUITS.reduce((sum, circuit) => sum + shift.value[circuit][i]!, 0));
}

const spread = (situation: Situation, i: number, j: number): number =>
  priorFor(situation).covariance[i * STATE_SIZE + j]!;

describe("[B20] the prior of a bike as found", () => {
  // Without the part the prior lacks exactly what that part wrong by one standard deviation does.
  test.each<[string, Partial<Setup>, Situation, number]>([
    ["main jet: a step and a half", { main: UNKNOWN }, fitted({ main: known(boreJet(177.5)) }, FOUND), 1.5],
    ["pilot jet: a step", { pilot: UNKNOWN }, fitted({ pilot: known(boreJet(44)) }, FOUND), 1],
    ["clip: a groove", { clip: UNKNOWN }, fitted({ clip: known(4) }, FOUND), 1],
    ["screw: half a turn", { screw: UNKNOWN }, withScrew(2, FOUND), 1],
  ])("%s", (_, without, wrong, times) => {
    const effect = change(FOUND, wrong).map((each) => times * each);
    expect(Math.max(...effect.map(Math.abs))).toBeGreaterThan(0.01);
    const bare = fitted(without, FOUND);
    for (const i of [0, 2, 4, 6, 10])
      for (const j of [0, 4, 10])
        expect(spread(FOUND, i, j) - spread(bare, i, j)).toBeCloseTo(effect[i]! * effect[j]!, 10);
  });

  test("a clip in the last groove is wrong the other way, by as much", () => {
    const last = fitted({ clip: known(5) }, FOUND);
    const effect = change(last, fitted({ clip: known(4) }, last));
    const bare = fitted({ clip: UNKNOWN }, last);
    expect(spread(last, 4, 4) - spread(bare, 4, 4)).toBeCloseTo(effect[4]! * effect[4]!, 4);
  });

  test("a needle nobody measured may answer by a third more or less, a measured one by 8 %", () => {
    const answer = (situation: Situation) => {
      const i = OPENINGS.length + CIRCUITS.indexOf("needle");
      return Math.sqrt(spread(situation, i, i));
    };
    const needle = FOUND.setup.needle.part!;
    expect(needle.profile).not.toBeNull();
    expect(answer(FOUND)).toBeCloseTo(0.08, 9);
    expect(answer(fitted({ needle: known({ ...needle, profile: null }) }, FOUND))).toBeCloseTo(0.3, 9);
    expect(answer(fitted({ needle: UNKNOWN }, FOUND))).toBeCloseTo(0.3, 9);
  });

  test("what is wrong for other reasons is smooth: neighbours move together, by 6 % at the bottom and 5 % at the top", () => {
    const nothing = fitted({ main: UNKNOWN, pilot: UNKNOWN, clip: UNKNOWN, screw: UNKNOWN }, FOUND);
    expect(Math.sqrt(spread(nothing, 0, 0))).toBeCloseTo(Math.hypot(0.03, 0.06, 0.025), 6);
    expect(Math.sqrt(spread(nothing, 10, 10))).toBeCloseTo(Math.hypot(0.03, 0.045, 0.005), 6);
    expect(
      spread(nothing, 9, 10) / Math.sqrt(spread(nothing, 9, 9) * spread(nothing, 10, 10)),
    ).toBeGreaterThan(0.95);
  });
});
