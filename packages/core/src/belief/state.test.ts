import { describe, expect, test } from "vitest";
import { CIRCUITS } from "../units/circuit.ts";
import { OPENINGS } from "../units/opening.ts";
import type { Opening } from "../units/quantity.ts";
import { FAULTS } from "./catalogue.ts";
import { FAULT_REACH, reaches } from "./reach.ts";
import {
  direction,
  FIRST_CIRCUIT,
  NO_SHIFT,
  nominalShift,
  openingIndex,
  STATE_SIZE,
  stretchAt,
  stretchCentre,
  stretchOf,
} from "./state.ts";

const [closed, , eighth, , quarter, , half] = OPENINGS;

describe("state and stretches", () => {
  test("the state holds eleven openings and six answers", () => {
    expect(STATE_SIZE).toBe(17);
    expect(FIRST_CIRCUIT).toBe(11);
  });

  test("weights of a stretch are scaled to sum to 1, and those of one opening add", () => {
    const stretch = stretchOf([
      [quarter!, 1],
      [half!, 2],
      [quarter!, 1],
    ]);
    expect(stretch[4]).toBe(0.5);
    expect(stretch[6]).toBe(0.5);
    expect(stretch.reduce((sum, weight) => sum + weight, 0)).toBe(1);
    expect(stretchCentre(stretch)).toBe(0.375);
  });

  test("bad stretches and openings are our own mistakes, and say so", () => {
    expect(() => stretchOf([[quarter!, -1]])).toThrow(/at least 0, got -1 at 0.25/);
    expect(() => stretchOf([[quarter!, Number.NaN]])).toThrow(RangeError);
    expect(() => stretchOf([])).toThrow(/weight above 0/);
    expect(() => stretchOf([[quarter!, 0]])).toThrow(/weight above 0/);
    expect(() => openingIndex(0.3 as Opening)).toThrow(/0.3 is not one of the eleven/);
    expect(openingIndex(eighth!)).toBe(2);
    expect(openingIndex(closed!)).toBe(0);
  });

  test("[B12] a situation is looked at along its stretch and its shifts", () => {
    const shift = { ...NO_SHIFT, needle: OPENINGS.map((_, i) => i / 100), air: OPENINGS.map(() => 0.02) };
    const stretch = stretchOf([
      [quarter!, 1],
      [half!, 3],
    ]);
    const along = direction(stretch, shift);
    expect([...along.slice(0, 11)]).toEqual([...stretch]);
    const answers = Object.fromEntries(CIRCUITS.map((circuit, c) => [circuit, along[FIRST_CIRCUIT + c]]));
    expect(answers).toEqual({
      pilot: 0,
      screw: 0,
      slide: 0,
      needle: expect.closeTo(0.055, 12),
      main: 0,
      air: 0.02,
    });
    expect(nominalShift(stretch, shift)).toBeCloseTo(0.075, 12);
    expect(nominalShift(stretchAt(quarter!), NO_SHIFT)).toBe(0);
  });
});

describe("where a fault hides a change", () => {
  test("both ends belong to the stretch, what is beyond does not", () => {
    expect(reaches("air-leak", 0)).toBe(true);
    expect(reaches("air-leak", 0.5)).toBe(true);
    expect(reaches("air-leak", 0.51)).toBe(false);
    expect(reaches("fuel-supply", 0.5)).toBe(true);
    expect(reaches("fuel-supply", 0.49)).toBe(false);
    expect(reaches("fuel-supply", 1)).toBe(true);
  });

  test("every fault reaches somewhere between closed and full", () => {
    for (const fault of FAULTS) {
      const [from, to] = FAULT_REACH[fault];
      expect(from).toBeGreaterThanOrEqual(0);
      expect(to).toBeLessThanOrEqual(1);
      expect(from).toBeLessThan(to);
    }
  });

  test("leaks and idle faults spare full throttle, supply and exhaust faults spare idle (common practice, no source)", () => {
    for (const fault of ["air-leak", "blocked-pilot", "idle-stop", "choke-not-seating"] as const)
      expect([reaches(fault, 0), reaches(fault, 1)]).toEqual([true, false]);
    for (const fault of ["fuel-supply", "exhaust-blocked", "power-valve"] as const)
      expect([reaches(fault, 0), reaches(fault, 1)]).toEqual([false, true]);
  });
});
