import { describe, expect, test } from "vitest";
import { labourMinutes, provingMinutes } from "./labour.ts";

describe("labour", () => {
  test("one part takes its own minutes", () => {
    expect(labourMinutes(["main"], {})).toBe(15);
    expect(labourMinutes(["pilot"], {})).toBe(25);
    expect(labourMinutes(["screw"], {})).toBe(2);
    expect(labourMinutes([], {})).toBe(0);
  });

  test("parts behind the same cap or bowl share the way in", () => {
    expect(labourMinutes(["main", "pilot"], {})).toBe(25 + 4);
    expect(labourMinutes(["pilot", "main"], {})).toBe(25 + 4);
    expect(labourMinutes(["clip", "slide"], {})).toBe(30 + 4);
    expect(labourMinutes(["main", "clip"], {})).toBe(15 + 15);
    expect(labourMinutes(["main", "pilot", "clip", "screw"], {})).toBe(25 + 4 + 15 + 2);
  });

  test("a shop's own figure replaces the usual one", () => {
    expect(labourMinutes(["main"], { main: 40 })).toBe(40);
    expect(labourMinutes(["main", "pilot"], { main: 40 })).toBe(40 + 4);
  });

  test("the screw alone is proved on the stand, anything else on a ride", () => {
    expect(provingMinutes(["screw"])).toBe(4);
    expect(provingMinutes(["screw", "main"])).toBe(12);
    expect(provingMinutes(["clip"])).toBe(12);
  });
});
