import { signById } from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import { describe, expect, test } from "vitest";
import { EngineState } from "../state.ts";
import { rideForm } from "./ride-form.ts";

let next = 0;
function record(kind: string, body: object, bike = "b"): string {
  next++;
  const at = new Date(Date.UTC(2026, 3, 1, 8, next)).toISOString();
  return JSON.stringify({ id: `r${next}`, kind, v: 1, at, bike, body });
}

const described = (strokes: 2 | 4) =>
  record("bike-described", {
    name: "Bramble",
    engine: { strokes, displacementCc: 249 },
    carburetor: { bore: { shape: "round", diameterMm: 36 }, screw: strokes === 2 ? "air" : "fuel" },
  });
const fitted = () =>
  record("setup-fitted", {
    main: { number: 175, numbering: "bore", how: "read by eye" },
    pilot: { number: 45, numbering: "bore", how: "read by eye" },
    needleJet: { boreMm: 2.7, how: "told" },
    needle: {
      marks: "N2",
      grooves: 5,
      groovePitchMm: 0.9,
      straightDiameterMm: 2.52,
      tapers: [{ startMm: 20, includedAngleDeg: 2 }],
      how: "measured",
    },
    clip: { groove: 3, how: "read by eye" },
    asFound: true,
  });
const refitted = (parts: object) => record("setup-fitted", parts);
const jet = (number: number) => ({ number, numbering: "bore", how: "measured" });
const ridden = () => record("ride-reported", { reports: [{ sign: "pulls-smoothly", opening: "1/2" }] });

function formOf(...lines: readonly string[]) {
  const state = new EngineState();
  state.speak(english);
  state.add(lines);
  const form = rideForm(state, { bike: "b" });
  return form.ok ? form.value : null;
}

test("a bike nobody wrote about has no form", () => {
  expect(formOf()).toBeNull();
});

describe("the signs offered", () => {
  test.each([2, 4] as const)("of a %i-stroke fit it, each in one place", (strokes) => {
    const form = formOf(described(strokes))!;
    expect(form.name).toBe("Bramble");
    const atOpenings = Object.values(form.openings).flat();
    const more = form.more.flatMap(({ signs }) => signs);
    for (const { id } of [...atOpenings, ...more]) {
      expect(["both", strokes === 2 ? "two" : "four"]).toContain(signById(id)!.strokes);
    }
    const asked = new Set(atOpenings.map(({ id }) => id));
    expect(more.filter(({ id }) => asked.has(id))).toEqual([]);
    expect(new Set(more.map(({ id }) => id)).size).toBe(more.length);
  });

  test("leave what only a test shows to the test's card, and keep the plug and the smoke", () => {
    const ids = formOf(described(2))!.more.flatMap(({ signs }) => signs.map(({ id }) => id));
    expect(ids).not.toContain("touch-of-choke-better");
    expect(ids).not.toContain("screw-peak-in-the-middle");
    for (const id of ["plug-nose-white", "smokes-when-warm", "cold-start-without-choke", "very-hot-or-boils"])
      expect(ids).toContain(id);
  });

  test("say which of them end the ride and which speak for health", () => {
    const form = formOf(described(2))!;
    const tearing = form.openings.full.find(({ id }) => id === "tearing-note-at-full-throttle");
    expect(tearing?.stop).toBe(true);
    expect(form.healthy).toContain("answers-crisply");
    expect(form.healthy).not.toContain("hangs-after-closing");
  });
});

describe("against the setup before", () => {
  test("is not asked before the first ride, nor when nothing was changed since the last", () => {
    expect(formOf(described(2), fitted())!.against).toBeNull();
    expect(formOf(described(2), fitted(), ridden())!.against).toBeNull();
  });

  test("names what was changed and asks where it can be felt", () => {
    const against = formOf(described(2), fitted(), ridden(), refitted({ pilot: jet(42) }))!.against!;
    expect(against.parts).toEqual([
      { part: "pilot", from: "45 (bore, 1/100 mm)", to: "42 (bore, 1/100 mm)" },
    ]);
    expect(against.openings).toContain("closed");
    expect(against.openings).toContain("1/8");
    expect(against.openings).not.toContain("full");
  });

  test("a main jet is felt at the top alone", () => {
    const { openings } = formOf(described(2), fitted(), ridden(), refitted({ main: jet(165) }))!.against!;
    expect(openings).toContain("full");
    expect(openings).not.toContain("closed");
  });

  test("is no longer asked once the new setup was ridden", () => {
    const changed = [described(2), fitted(), ridden(), refitted({ pilot: jet(42) })];
    expect(formOf(...changed)!.against).not.toBeNull();
    expect(formOf(...changed, ridden())!.against).toBeNull();
  });

  test("asks everywhere when the two cannot be compared", () => {
    const strange = { needle: { marks: "X9", grooves: 5, how: "read by eye" } };
    const { openings } = formOf(described(2), fitted(), ridden(), refitted(strange))!.against!;
    expect(openings).toEqual(["closed", "1/8", "1/4", "1/2", "full"]);
  });
});
