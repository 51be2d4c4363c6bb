import { describe, expect, test } from "vitest";
import { adviceFor } from "./advice-for.ts";
import { ALL_RIGHT, FERN } from "./invented-bikes.ts";
import { changesOffered } from "./which-way.ts";

// A fault that was found: mend first, and what was noticed before it no longer moves the jets. Common practice, no source.

const hangs = `${FERN}
{"id":"r1","kind":"ride-reported","at":"2026-05-02T09:00:00Z","bike":"fern","body":{"reports":[{"sign":"hangs-after-closing"},{"sign":"hang-grows-with-heat"},{"sign":"bogs-hollow-no-smoke","opening":"1/8"}]}}
{"id":"r2","kind":"test-done","at":"2026-05-02T09:20:00Z","bike":"fern","body":{"test":"screw-sweep-air","outcome":"nearly-closed"}}`;
const found = `${hangs}
{"id":"r3","kind":"check-done","at":"2026-05-02T10:00:00Z","bike":"fern","body":{"check":"pressure-test","found":"faulty","fault":"air-leak","words":"2 psi in a minute, bubbles at the ignition side"}}`;
const mended = `${found}
{"id":"r4","kind":"check-done","at":"2026-05-03T10:00:00Z","bike":"fern","body":{"check":"pressure-test","found":"mended","fault":"air-leak","words":"new seal, holds 6 psi"}}`;

test("a fault found and not mended is mended before anything else", () => {
  const { step } = adviceFor(found, "fern");
  expect(step).toMatchObject({ kind: "mend", id: "air-leak", topThrottle: "stay below 3/4" });
  expect(step.why.map(({ record }) => record)).toEqual(["r3"]);
});

describe("after the mend", () => {
  test("the lean signs from before it hardly move the picture any more", () => {
    const before = adviceFor(hangs, "fern").picture[0]!.mean;
    const after = adviceFor(mended, "fern").picture[0]!.mean;
    const never = adviceFor(FERN, "fern").picture[0]!.mean;
    expect(before).toBeLessThan(never - 0.04);
    expect(Math.abs(after - never)).toBeLessThan(0.6 * Math.abs(before - never));
  });

  test("it is ridden and reported again before any jet of the bottom", () => {
    const advice = adviceFor(mended, "fern");
    expect(advice.step.kind).toBe("ride");
    for (const { changes } of changesOffered(advice)) {
      expect(changes.every(({ part }) => part === "main")).toBe(true);
    }
  });

  test("and ridden clean, nothing needs changing", () => {
    const clean = `${mended}
{"id":"r5","kind":"ride-reported","at":"2026-05-03T12:00:00Z","bike":"fern","body":{"reports":[${ALL_RIGHT},{"sign":"hangs-after-closing","seen":false}]}}`;
    expect(adviceFor(clean, "fern").step).toMatchObject({ kind: "ride", id: "confirm" });
  });

  test("found sound later counts as the mend did not: the suspicion is gone as well", () => {
    const chance = (log: string) =>
      adviceFor(log, "fern").suspects.find(({ fault }) => fault === "air-leak")?.chance ?? 0;
    expect(chance(found)).toBeGreaterThan(0.9);
    expect(chance(mended)).toBeLessThan(0.2);
  });
});
