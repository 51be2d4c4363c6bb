import { describe, expect, test } from "vitest";
import { signById } from "../belief/signs/all.ts";
import { stretchAt, stretchOf } from "../belief/state.ts";
import { boreJet, dryAir } from "../metering/test-situations.ts";
import { known } from "../parts/known.ts";
import { OPENINGS } from "../units/opening.ts";
import type { BikeCase } from "./case.ts";
import { evidenceFrom, fits } from "./evidence.ts";
import { partsKey, situationKey } from "./situation-key.ts";
import { FOUND, notThere, ride, saw, story, tested } from "./test-stories.ts";

const richer = { ...FOUND, setup: { ...FOUND.setup, main: known(boreJet(180)) } };
const from = (given: Partial<BikeCase>) => evidenceFrom(story(given)).observations;

describe("evidence from a bike's story", () => {
  test("a sign becomes one observation, seen or not, with its own stretch or the one reported", () => {
    const [hang, bog] = from({
      rides: [ride([saw("hangs-after-closing"), notThere("bogs-hollow-no-smoke")])],
    });
    expect(hang).toMatchObject({ kind: "sign", record: "ride-1", at: 1, seen: true });
    expect(hang).toMatchObject({ stretch: stretchOf(signById("hangs-after-closing")!.speaksOf) });
    expect(bog).toMatchObject({ seen: false });
    const [there] = from({ rides: [ride([saw("bogs-hollow-no-smoke", OPENINGS[6]!)])] });
    expect(there).toMatchObject({ stretch: stretchAt(OPENINGS[6]!) });
  });

  test("the shift of a situation is against the reference", () => {
    const [found] = from({ rides: [ride([saw("will-not-rev-out")])] });
    const [changed] = from({ rides: [ride([saw("will-not-rev-out")], { situation: richer })] });
    expect(found).toMatchObject({ shift: { main: OPENINGS.map(() => 0) } });
    const { shift } = changed as { shift: { main: readonly number[] } };
    expect(shift.main[10]).toBeGreaterThan(0.02);
  });

  test("a cold ride counts only signs of a cold engine, an unknown sign and another engine's sign none", () => {
    const reports = [
      saw("hangs-after-closing"),
      saw("cold-start-without-choke"),
      saw("no-such-sign"),
      saw("black-dry-smoke-four-stroke"),
    ];
    const kinds = (warm: boolean) =>
      from({ rides: [ride(reports, { warm })] }).map((each) => (each.kind === "sign" ? each.sign.id : ""));
    expect(kinds(false)).toEqual(["cold-start-without-choke"]);
    expect(kinds(true)).toEqual(["hangs-after-closing", "cold-start-without-choke"]);
    expect(fits("both", 2) && fits("two", 2) && fits("four", 4)).toBe(true);
    expect(fits("two", 4) || fits("four", 2)).toBe(false);
  });

  test("a verdict compares with the situation it names", () => {
    const verdicts = [{ opening: OPENINGS[10]!, felt: "worse" as const }];
    const [compared] = from({
      rides: [ride([], { situation: richer, against: { situation: FOUND, verdicts } })],
    });
    expect(compared).toMatchObject({ kind: "compared", opening: 1, felt: "worse" });
    const { before, after, situation } = compared as unknown as {
      before: { main: number[] };
      after: { main: number[] };
      situation: string;
    };
    expect(after.main[10]).toBeGreaterThan(before.main[10]!);
    expect(situation).toBe(`${situationKey(FOUND)}>${situationKey(richer)}`);
  });

  test("a test's outcome is its sign; a screw sweep with turns is a measurement of the bottom with the screw there", () => {
    const [sign] = from({ tests: [tested("screw-sweep-air", "far-out")] });
    expect(sign).toMatchObject({ kind: "sign", sign: { id: "air-screw-best-far-out" } });
    const [measured] = from({
      tests: [tested("screw-sweep-air", "far-out", { numbers: { bestTurns: 2.5 } })],
    });
    expect(measured).toMatchObject({ kind: "measured", error: 0, sd: 0.03 });
    const { shift, stretch } = measured as {
      shift: { screw: readonly number[] };
      stretch: readonly number[];
    };
    expect(shift.screw[0]).toBeLessThan(-0.02); // an air screw further out is leaner than where it stood
    expect(stretch[0]! + stretch[1]!).toBeCloseTo(1, 12);
    expect(stretch[0]).toBeGreaterThan(stretch[1]!);
  });

  test("checks, measurements, and nothing from before a fresh start", () => {
    const given = {
      rides: [ride([saw("hangs-after-closing")], { at: 5 })],
      tests: [tested("screw-sweep-air", "middle", { at: 5 })],
      checks: [{ record: "c", at: 5, check: "pressure-test", found: "faulty" as const, fault: "air-leak" }],
      measurements: [{ record: "m", at: 5, situation: FOUND, opening: OPENINGS[10]!, error: 0.03, sd: 0.02 }],
    };
    expect(from(given).map(({ kind }) => kind)).toEqual(["sign", "sign", "checked", "measured"]);
    expect(from({ ...given, freshStartAt: 5 })).toHaveLength(4);
    expect(from({ ...given, freshStartAt: 6 })).toHaveLength(0);
    const checked = from(given)[2];
    expect(checked).toMatchObject({
      check: "pressure-test",
      found: "faulty",
      fault: "air-leak",
      falseAlarm: 0.02,
    });
    expect(from({ ...given, checks: [{ ...given.checks[0]!, check: "no-such-check" }] })).toHaveLength(3);
    for (const fault of ["no-such-fault", null])
      expect(from({ checks: [{ ...given.checks[0]!, fault }] })[0]).toMatchObject({ fault: "air-leak" });
  });

  test("[A14] what cannot be compared is left out, with the record and the reason", () => {
    const foreign = {
      ...FOUND,
      setup: { ...FOUND.setup, main: known({ ...boreJet(170), maker: "Theirs" }) },
    };
    const { observations, leftOut } = evidenceFrom(
      story({
        rides: [
          ride([saw("hangs-after-closing")], { situation: foreign, at: 3 }),
          ride([saw("pulls-smoothly")]),
        ],
      }),
    );
    expect(observations).toHaveLength(1);
    expect(leftOut).toHaveLength(1);
    expect(leftOut[0]!.record).toBe("ride-3");
    expect(leftOut[0]!.why.detail).toContain("makers");
  });
});

describe("the same situation", () => {
  test("same parts in nearly the same air are one; other parts or clearly other air are not", () => {
    expect(situationKey({ ...FOUND, air: dryAir(1.2005) })).toBe(situationKey(FOUND));
    expect(situationKey({ ...FOUND, air: dryAir(1.17) })).not.toBe(situationKey(FOUND));
    expect(situationKey(richer)).not.toBe(situationKey(FOUND));
    expect(partsKey(richer.setup)).not.toBe(partsKey(FOUND.setup));
    expect(partsKey({ ...FOUND.setup, screw: known({ kind: "air", turnsOut: 2 }) })).not.toBe(
      partsKey(FOUND.setup),
    );
    expect(partsKey({ ...FOUND.setup, clip: known(2) })).not.toBe(partsKey(FOUND.setup));
  });

  test("other fuel is another situation", () => {
    const oxygenated = { ...FOUND, fuel: { ...FOUND.fuel, stoichiometricRatio: 14.01 } };
    expect(situationKey(oxygenated)).not.toBe(situationKey(FOUND));
    const oily = { ...FOUND, fuel: { ...FOUND.fuel, fuelShare: 0.95 } };
    expect(situationKey(oily)).not.toBe(situationKey(FOUND));
  });
});
