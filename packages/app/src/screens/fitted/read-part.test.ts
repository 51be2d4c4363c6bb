import { FITTED_PARTS, readLog, writeRecord } from "@jetwright/records";
import { describe, expect, test } from "vitest";
import { fitted } from "../../words/en/fitted.ts";
import { type PartTyped, readPart, typedFrom } from "./read-part.ts";

const words = fitted.edit;
const read = (
  part: (typeof FITTED_PARTS)[number],
  typed: PartTyped,
  before?: unknown,
  grooves: number | null = 5,
) => readPart(part, typed, "read by eye", words, { before, grooves });
const wrong = (...args: Parameters<typeof read>) => {
  const outcome = read(...args);
  if (outcome.ok) throw new RangeError(`${JSON.stringify(args)} was taken`);
  return outcome.reason;
};
const value = (...args: Parameters<typeof read>) => {
  const outcome = read(...args);
  if (!outcome.ok) throw new RangeError(outcome.detail);
  return outcome.value;
};

describe("a part as typed", () => {
  test("is taken as a technician types it", () => {
    expect(value("main", { number: "162,5", maker: " Alder " })).toEqual({
      number: 162.5,
      maker: "Alder",
      how: "read by eye",
    });
    expect(value("screw", { number: "1 1/2" })).toEqual({ turnsOut: 1.5, how: "read by eye" });
    expect(value("clip", { number: "2nd from bottom" })).toEqual({ groove: 4, how: "read by eye" });
    expect(value("slide", { number: "35" })).toEqual({ cutawayMm: 3.5, how: "read by eye" });
    expect(value("needleJet", { number: "2,7 mm" })).toEqual({ boreMm: 2.7, how: "read by eye" });
    expect(value("fuelLevel", { number: "-2" })).toEqual({ liftMm: -2, how: "read by eye" });
    expect(value("needle", { marks: "N2K", grooves: "5", pitch: "0,9" })).toEqual({
      marks: "N2K",
      grooves: 5,
      groovePitchMm: 0.9,
      how: "read by eye",
    });
  });

  test("keeps what was told of the same needle, and drops it with another", () => {
    const before = { marks: "N2K", grooves: 5, straightDiameterMm: 2.52, how: "told" };
    expect(value("needle", { marks: "N2K" }, before)).toEqual({ ...before, how: "read by eye" });
    expect(value("needle", { marks: "N3" }, before)).toEqual({ marks: "N3", how: "read by eye" });
  });

  test("keeps what a jet's number means", () => {
    expect(value("pilot", { number: "42" }, { number: 45, numbering: "flow" })).toEqual({
      number: 42,
      numbering: "flow",
      how: "read by eye",
    });
  });

  test("is refused by the field that is wrong", () => {
    expect(wrong("main", { number: "" })).toBe("number");
    expect(wrong("main", { number: "1.75" })).toBe("number");
    expect(wrong("clip", { number: "6" })).toBe("number");
    expect(wrong("clip", { number: "middle" }, undefined, null)).toBe("number");
    expect(wrong("screw", { number: "9" })).toBe("number");
    expect(wrong("needleJet", { number: "6.1" })).toBe("number");
    expect(wrong("fuelLevel", { number: "61" })).toBe("number");
    expect(wrong("needle", { marks: " " })).toBe("marks");
    expect(wrong("needle", { marks: "A", grooves: "2.5" })).toBe("grooves");
    expect(wrong("needle", { marks: "A", grooves: "13" })).toBe("grooves");
    expect(wrong("needle", { marks: "A", pitch: "0" })).toBe("pitch");
  });

  test("takes a clip by its number where nobody counted the grooves", () => {
    expect(value("clip", { number: "3" }, undefined, null)).toEqual({ groove: 3, how: "read by eye" });
  });

  test.each(FITTED_PARTS)("%s comes back as it was told, and the log can use it", (part) => {
    const typed =
      part === "needle" ? { marks: "N2K", grooves: "5" } : { number: part === "main" ? "170" : "3" };
    const jet = part.endsWith("Jet") && part !== "needleJet";
    const taken = value(part, jet || part === "pilot" ? { number: "40" } : typed);
    const log = readLog([
      writeRecord({
        id: "f1",
        kind: "setup-fitted",
        v: 1,
        at: "2026-05-01T10:00:00Z",
        bike: "bramble",
        body: { [part]: taken },
      }),
    ]);
    expect(log.problems).toEqual([]);
    expect(log.counts.used).toBe(1);
    expect(value(part, typedFrom(part, taken), taken)).toEqual(taken);
  });
});
