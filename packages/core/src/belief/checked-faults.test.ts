import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { checkedFaults } from "./checked-faults.ts";
import { exampleCheck } from "./example-sign.ts";

// The example check finds an air leak 9 times in 10, a gearbox-side seal 4 in 10, and cries wolf 1 in 20.
const sealed = { finds: { "gearbox-side-seal": 0.9 }, check: "seal", falseAlarm: 0.05 } as const;

describe("mechanical checks", () => {
  test("[B8] a fault found speaks for what the check finds, by its own figures", () => {
    const { logOdds, open } = checkedFaults([exampleCheck()]);
    expect(logOdds("air-leak", 1)).toBeCloseTo(Math.log(0.9 / 0.05), 12);
    expect(logOdds("gearbox-side-seal", 1)).toBeCloseTo(Math.log(0.4 / 0.05), 12);
    expect(logOdds("ignition", 1)).toBe(0);
    expect(open).toEqual([]); // it could be either of the two
  });

  test("[B8] a fault found by name is that one, and open until mended", () => {
    const { logOdds, open } = checkedFaults([exampleCheck({ fault: "air-leak" })]);
    expect(logOdds("air-leak", 1)).toBeCloseTo(Math.log(0.9 / 0.05), 12);
    expect(logOdds("gearbox-side-seal", 1)).toBe(0);
    expect(open).toEqual(["air-leak"]);
  });

  test("[B8] a check that finds one fault alone names it", () => {
    expect(checkedFaults([exampleCheck(sealed)]).open).toEqual(["gearbox-side-seal"]);
  });

  test("[B8] sound speaks against, as strongly as the check is sure to find it", () => {
    const { logOdds } = checkedFaults([exampleCheck({ found: "sound" })]);
    expect(logOdds("air-leak", 1)).toBeCloseTo(Math.log(0.1 / 0.95), 12);
    expect(logOdds("gearbox-side-seal", 1)).toBeCloseTo(Math.log(0.6 / 0.95), 12);
    expect(logOdds("ignition", 1)).toBe(0);
  });

  test("[B8] no check is certain: chances stay between 0.001 and 0.999", () => {
    const sure = { finds: { ignition: 1 }, falseAlarm: 0, check: "sure" } as const;
    expect(checkedFaults([exampleCheck(sure)]).logOdds("ignition", 1)).toBeCloseTo(Math.log(999), 9);
  });

  test("[B8] a look that came out sound leaves a tenth, several together a twenty-fifth", () => {
    const look = (check: string, finds: number) =>
      exampleCheck({ check, record: check, finds: { ignition: finds }, falseAlarm: 0, found: "sound" });
    const left = (...looks: readonly (readonly [string, number])[]) =>
      Math.exp(checkedFaults(looks.map(([check, finds]) => look(check, finds))).logOdds("ignition", 1));
    expect(left(["a", 1])).toBeCloseTo(0.1, 12);
    expect(left(["a", 0.9])).toBeCloseTo(0.1, 12);
    expect(left(["a", 0.85])).toBeCloseTo(0.15, 12);
    expect(left(["a", 0.5], ["b", 0.85])).toBeCloseTo(0.075, 12);
    expect(left(["a", 0.85], ["b", 0.85])).toBeCloseTo(1 / 25, 12);
    expect(left(["a", 0.9], ["b", 0.9], ["c", 0.9])).toBeCloseTo(1 / 25, 12);
    // What was found in another look counts in full beside it.
    const found = exampleCheck({ check: "d", record: "d", finds: { ignition: 0.5 }, falseAlarm: 0.05 });
    const both = [found, look("a", 0.9), look("b", 0.9)];
    expect(Math.exp(checkedFaults(both).logOdds("ignition", 1))).toBeCloseTo(10 / 25, 12);
  });

  test("[B8] a check that finds a fault more rarely than it cries wolf says nothing of it", () => {
    const poor = exampleCheck({ finds: { reed: 0.01 }, check: "poor" });
    expect(checkedFaults([poor]).logOdds("reed", 1)).toBe(0);
  });

  test("[B8] the latest of each check counts alone; other checks add", () => {
    const first = exampleCheck({ at: 1, record: "c1" });
    const second = exampleCheck({ at: 2, record: "c2", found: "sound" });
    for (const order of [
      [first, second],
      [second, first],
    ])
      expect(checkedFaults(order).logOdds("air-leak", 1)).toBeCloseTo(Math.log(0.1 / 0.95), 12);
    const both = checkedFaults([first, exampleCheck({ at: 2, check: "spray", finds: { "air-leak": 0.5 } })]);
    expect(both.logOdds("air-leak", 1)).toBeCloseTo(Math.log(0.9 / 0.05) + Math.log(0.5 / 0.05), 12);
  });

  test("[B8] a good check that comes out sound closes an open fault, a poor one does not", () => {
    const found = exampleCheck({ ...sealed, at: 1 });
    const again = exampleCheck({ ...sealed, at: 2, found: "sound" });
    expect(checkedFaults([found, again]).open).toEqual([]);
    expect(checkedFaults([found, exampleCheck({ at: 2, found: "sound" })]).open).toEqual([
      "gearbox-side-seal",
    ]);
  });

  test("[B8] mending closes a fault, takes its evidence away and leaves 15 % of its prior", () => {
    const found = exampleCheck({ at: 1, fault: "air-leak" });
    const mended = exampleCheck({ at: 2, fault: "air-leak", found: "mended", record: "c2" });
    const { logOdds, open } = checkedFaults([found, mended]);
    expect(open).toEqual([]);
    expect(logOdds("air-leak", 1)).toBeCloseTo(Math.log(0.08), 12);
    expect(logOdds("gearbox-side-seal", 1)).toBe(0);
  });

  test("[B8] mending by a check of one fault needs no name; by a check of several it does", () => {
    const one = checkedFaults([exampleCheck({ ...sealed, found: "mended" })]);
    expect(one.logOdds("gearbox-side-seal", 1)).toBeCloseTo(Math.log(0.08), 12);
    const several = checkedFaults([exampleCheck({ found: "mended" })]);
    expect(several.logOdds("air-leak", 1)).toBe(0);
  });

  test("[B8] a fault found again after mending is open again, and its evidence counts anew", () => {
    const mended = exampleCheck({ at: 1, fault: "air-leak", found: "mended" });
    const again = exampleCheck({ at: 2, fault: "air-leak" });
    const { logOdds, open } = checkedFaults([again, mended]);
    expect(open).toEqual(["air-leak"]);
    expect(logOdds("air-leak", 1)).toBeCloseTo(Math.log(0.08) + Math.log(0.9 / 0.05), 12);
  });

  test("[B8] a fault mended later explains what another check found before, so nobody else is blamed for it", () => {
    const spray = exampleCheck({
      check: "spray",
      at: 1,
      finds: { "air-leak": 0.7, "gearbox-side-seal": 0.3 },
    });
    const mended = exampleCheck({ at: 2, fault: "air-leak", found: "mended" });
    const blamed = checkedFaults([spray]).logOdds("gearbox-side-seal", 1);
    const explained = checkedFaults([spray, mended]);
    expect(blamed).toBeCloseTo(Math.log(0.3 / 0.05), 12);
    expect(explained.logOdds("gearbox-side-seal", 1)).toBe(0);
    expect(explained.logOdds("air-leak", 1)).toBeCloseTo(Math.log(0.08), 12);
    const after = checkedFaults([{ ...spray, at: 3 }, mended]);
    expect(after.logOdds("gearbox-side-seal", 1)).toBeCloseTo(Math.log(0.3 / 0.05), 12);
  });

  test("[B8] a fault mended in the record of a check was there when the check was made", () => {
    const spray = exampleCheck({
      check: "spray",
      at: 2,
      finds: { "air-leak": 0.7, "gearbox-side-seal": 0.3 },
    });
    const mended = exampleCheck({ at: 2, fault: "air-leak", found: "mended" });
    const { logOdds } = checkedFaults([mended, spray]);
    expect(logOdds("air-leak", 1)).toBeCloseTo(Math.log(0.08), 12);
    expect(logOdds("gearbox-side-seal", 1)).toBe(0);
  });

  test("[B8] only what was found is open: a name beside 'sound' opens nothing and narrows nothing", () => {
    const sound = checkedFaults([exampleCheck({ found: "sound", fault: "gearbox-side-seal" })]);
    expect(sound.open).toEqual([]);
    expect(sound.logOdds("air-leak", 1)).toBeCloseTo(Math.log(0.1 / 0.95), 12);
  });

  test("[B8] a check that finds a fault every second time is good enough to close it", () => {
    const named = exampleCheck({ ...sealed, at: 1 });
    const even = exampleCheck({ check: "even", finds: { "gearbox-side-seal": 0.5 }, at: 2, found: "sound" });
    expect(checkedFaults([named, even]).open).toEqual([]);
  });

  test("[B2] [B8] within one record a fault is found, then mended, whatever the order of the two", () => {
    const found = exampleCheck({ fault: "air-leak" });
    const mended = exampleCheck({ fault: "air-leak", found: "mended" });
    for (const order of [
      [found, mended],
      [mended, found],
    ])
      expect(checkedFaults(order).open).toEqual([]);
    const before = { ...mended, record: "b1" };
    for (const order of [
      [found, before],
      [before, found],
    ])
      expect(checkedFaults(order).open).toEqual(["air-leak"]);
  });

  test("[B8] a fault mended later was there at every time before, and not from then on", () => {
    const { presentAt } = checkedFaults([exampleCheck({ at: 5, fault: "air-leak", found: "mended" })]);
    expect(presentAt(4)).toEqual(["air-leak"]);
    expect(presentAt(5)).toEqual([]);
    expect(checkedFaults([]).presentAt(0)).toEqual([]);
  });

  test("[B2] the order of the checks does not matter, even within one record", () => {
    const found = fc.constantFrom("sound" as const, "faulty" as const, "mended" as const);
    const fault = fc.constantFrom(null, "air-leak" as const, "gearbox-side-seal" as const);
    const check = fc
      .record({
        found,
        fault,
        at: fc.integer({ min: 0, max: 2 }),
        record: fc.constantFrom("a", "b"),
        check: fc.constantFrom("p", "q"),
      })
      .map(exampleCheck);
    const faults = ["air-leak", "gearbox-side-seal"] as const;
    fc.assert(
      fc.property(fc.array(check, { maxLength: 6 }), (checks) => {
        const forth = checkedFaults(checks);
        const back = checkedFaults([...checks].reverse());
        expect(back.open).toEqual(forth.open);
        for (const one of faults) expect(back.logOdds(one, 1)).toBe(forth.logOdds(one, 1));
        expect(back.presentAt(1)).toEqual(forth.presentAt(1));
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });
});
