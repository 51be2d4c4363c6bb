import { describe, expect, test } from "vitest";
import { english } from "../words/en.ts";
import { faultsTold } from "../words/faults-told.ts";
import { FAULTS, type FaultId } from "./catalogue.ts";
import { FAULT_CATALOGUE, faultById } from "./faults.ts";

const prior = (id: FaultId, strokes: "two" | "four") => faultById(id).prior[strokes];

describe("the fault catalogue", () => {
  test("holds every fault once, in the order of the ids", () => {
    expect(FAULT_CATALOGUE.map(({ id }) => id)).toEqual([...FAULTS]);
  });

  test("finds by id and throws on a name that is not one", () => {
    expect(english.faults[faultById("reed").id].words).toBe("chipped or tired reeds");
    expect(() => faultById("gremlins" as FaultId)).toThrow(/"gremlins" is not in the catalogue/);
  });

  test.each(["two", "four"] as const)("%s-stroke: about a third of complaints are mechanical", (strokes) => {
    // 22 of 72 rider questions and case stories read had a mechanical fault behind them: 0.306 ± 0.054.
    const sum = FAULT_CATALOGUE.reduce((total, fault) => total + fault.prior[strokes], 0);
    expect(sum).toBeCloseTo(0.33, 9);
    expect(Math.abs(sum - 22 / 72)).toBeLessThan(Math.sqrt(((22 / 72) * (50 / 72)) / 72));
    for (const fault of FAULT_CATALOGUE) expect(fault.prior[strokes]).toBeGreaterThanOrEqual(0);
  });

  test("what an engine does not have cannot fail", () => {
    for (const id of ["gearbox-side-seal", "reed", "power-valve"] as const) {
      expect(prior(id, "four")).toBe(0);
      expect(prior(id, "two")).toBeGreaterThan(0);
    }
    for (const id of ["accelerator-pump", "valve-clearance"] as const) {
      expect(prior(id, "two")).toBe(0);
      expect(prior(id, "four")).toBeGreaterThan(0);
    }
  });

  test("air leak, fuel supply and dirt, float and ignition come first", () => {
    for (const strokes of ["two", "four"] as const) {
      const commonest: FaultId[] = [
        "air-leak",
        "fuel-supply",
        "blocked-pilot",
        "float-level",
        "float-valve",
        "ignition",
      ];
      const least = Math.min(...commonest.map((id) => prior(id, strokes)));
      for (const { id } of FAULT_CATALOGUE) {
        if (!commonest.includes(id)) expect(prior(id, strokes), id).toBeLessThan(least);
      }
      expect(prior("air-leak", strokes)).toBe(
        Math.max(...FAULT_CATALOGUE.map((fault) => fault.prior[strokes])),
      );
    }
  });

  test("every fault is told in words a technician uses, one sentence", () => {
    for (const { id, source } of FAULT_CATALOGUE) {
      const { words } = english.faults[id];
      const { does, touches } = faultsTold[id];
      expect(words).toMatch(/^[a-z]/);
      expect(does).toMatch(/^[A-Z].*[.]$/);
      expect(touches).not.toBe("");
      expect(source).toMatch(/\[estimate\]/);
    }
  });
});
