import { readFileSync } from "node:fs";
import { CAUTIONS, CHECKS, TESTS } from "@jetwright/core";
import { english } from "@jetwright/core/words/en";
import { describe, expect, test } from "vitest";
import { EngineState } from "../state.ts";
import { adviceFor } from "./advice.ts";
import { checkCard } from "./check-card.ts";
import { fuelFlow } from "./fuel-flow.ts";
import { testCard } from "./test-card.ts";
import { throttleMarks } from "./throttle-marks.ts";

const DEMO = readFileSync(new URL("../../../../../demo/shop.jsonl", import.meta.url), "utf8")
  .split("\n")
  .filter((line) => line !== "");
const stateOf = (lines: readonly string[]) => {
  const state = new EngineState();
  state.speak(english);
  state.add(lines);
  return state;
};
const demo = stateOf(DEMO);

const cardOf = (test: string, opening: string | null = null, state = demo) => {
  const card = testCard(state, { bike: "bramble", test, opening });
  if (!card.ok) throw new RangeError(card.detail);
  return card.value;
};

describe("a test's card", () => {
  test.each(TESTS.map(({ id }) => id))("%s can be worked from", (id) => {
    const card = cardOf(id);
    expect(card.outcomes.length).toBeGreaterThanOrEqual(2);
    expect(card.openings).toContain(card.opening);
    for (const caution of card.cautions) expect(CAUTIONS.map((each) => each.id)).toContain(caution);
  });

  test("is made where asked for, however the address says it", () => {
    for (const said of ["1/4", "0.25", "1%2F4", "1%2f4"]) expect(cardOf("roll-on", said).opening).toBe("1/4");
    expect(cardOf("roll-on", "full").opening).not.toBe("full");
    expect(cardOf("idle-hold", "0").opening).toBe("closed");
  });

  test("is made where advised when nobody chose", () => {
    const advice = adviceFor(demo, { bike: "bramble" });
    if (!advice.ok) throw new RangeError(advice.detail);
    const advised = [advice.value.step, ...advice.value.others].filter(({ kind }) => kind === "test");
    for (const step of advised) {
      const { opening } = cardOf(step.id);
      const value = opening === "closed" ? 0 : opening === "full" ? 1 : numberOf(opening!);
      expect(value).toBe(step.opening);
    }
  });

  test("says which outcomes end the ride, and which tests are ridden", () => {
    expect(
      cardOf("full-pull")
        .outcomes.filter(({ stop }) => stop)
        .map(({ id }) => id),
    ).toEqual(["tearing"]);
    expect(
      cardOf("plug-look-part")
        .outcomes.filter(({ stop }) => stop)
        .map(({ id }) => id),
    ).toEqual(["specks"]);
    expect(cardOf("full-pull").ridden).toBe(true);
    expect(cardOf("idle-hold").ridden).toBe(false);
  });

  test("of a sweep names the outcome of every quarter turn", () => {
    const { sweep } = cardOf("screw-sweep-air");
    const outcome = (turns: number) => sweep!.quarters.find((each) => each.turns === turns)?.outcome;
    expect(outcome(0)).toBe("nearly-closed");
    expect(outcome(0.75)).toBe("nearly-closed");
    expect(outcome(1)).toBe("middle");
    expect(outcome(2.5)).toBe("middle");
    expect(outcome(2.75)).toBe("far-out");
    expect(outcome(5)).toBe("far-out");
    expect(sweep!.quarters).toHaveLength(21);
    expect(sweep!.quarters.map(({ turns }) => turns)).toContain(sweep!.now);
    expect(cardOf("idle-hold").sweep).toBeNull();
  });

  test("of a name we do not know is refused with the names there are", () => {
    const card = testCard(demo, { bike: "bramble", test: "guess", opening: null });
    expect(card.ok).toBe(false);
    expect(!card.ok && card.detail).toContain("sweep the air screw");
  });
});

/** "1/4" as a number. */
function numberOf(fraction: string): number {
  const [over, under] = fraction.split("/").map(Number);
  return over! / under!;
}

const found = (check: string, what: string, fault?: string) =>
  JSON.stringify({
    id: `c-${check}-${what}`,
    kind: "check-done",
    v: 1,
    at: "2026-05-02T08:00:00Z",
    bike: "b",
    body: { check, found: what, ...(fault ? { fault } : {}) },
  });

const checked = (check: string, ...lines: readonly string[]) => {
  const card = checkCard(stateOf(lines), { bike: "b", check });
  if (!card.ok) throw new RangeError(card.detail);
  return card.value;
};

describe("a check's card", () => {
  test.each(CHECKS.map(({ id }) => id))("%s can be worked from", (id) => {
    const card = checked(id);
    expect(card.id).toBe(id);
    expect(card.faults.length).toBeGreaterThanOrEqual(1);
    expect(card.last).toBeNull();
  });

  test("names the likeliest fault first", () => {
    expect(checked("pressure-test").faults.map(({ id }) => id)).toEqual([
      "air-leak",
      "gearbox-side-seal",
      "loose-head",
    ]);
  });

  test("says what it found last time", () => {
    const { last } = checked("pressure-test", found("pressure-test", "faulty", "gearbox-side-seal"));
    expect(last).toMatchObject({ found: "faulty", fault: "gearbox-side-seal" });
    expect(checked("reeds", found("pressure-test", "sound")).last).toBeNull();
  });

  test("answers to a fault with the check that found it, or the first that can", () => {
    expect(checked("air-leak", found("pressure-test", "faulty")).id).toBe("pressure-test");
    expect(checked("air-leak", found("pressure-test", "sound")).id).toBe("look-at-boots-and-clamps");
    expect(checked("reed").id).toBe("reeds");
  });

  test("of a name we do not know is refused", () => {
    expect(checkCard(demo, { bike: "bramble", check: "luck" }).ok).toBe(false);
  });
});

describe("throttle marks", () => {
  const bike = (carburetor: object) =>
    JSON.stringify({
      id: "b1",
      kind: "bike-described",
      v: 1,
      at: "2026-05-01T08:00:00Z",
      bike: "b",
      body: { name: "B", engine: { strokes: 2, displacementCc: 249 }, carburetor },
    });
  const marksOf = (line: string) => throttleMarks(stateOf([line]), { bike: "b" });

  test("are shares of the height of the bore", () => {
    const marks = marksOf(bike({ bore: { shape: "round", diameterMm: 36 } }))!;
    expect(marks.assumed).toBe(false);
    expect(marks.marks.map(({ opening }) => opening)).toEqual(["closed", "1/8", "1/4", "1/2", "3/4", "full"]);
    for (const [i, lift] of [0, 4.5, 9, 18, 27, 36].entries())
      expect(marks.marks[i]!.liftMm).toBeCloseTo(lift, 9);
    expect(marksOf(bike({ bore: { shape: "oval", widthMm: 30, heightMm: 40 } }))!.heightMm).toBeCloseTo(
      40,
      9,
    );
  });

  test("say when the bore is only what is usual, and nothing of an engine nobody described", () => {
    expect(marksOf(bike({}))!.assumed).toBe(true);
    expect(throttleMarks(demo, { bike: "nobody" })).toBeNull();
  });
});

describe("fuel flow", () => {
  const flow = (...can: readonly (number | null)[]) => fuelFlow(demo, { can });

  test("is what each minute added to the can", () => {
    expect(flow(260, 470)).toEqual({ perMinute: [260, 210], fell: false });
    expect(flow(260, null)).toEqual({ perMinute: [260, null], fell: false });
    expect(flow(null, 470)).toEqual({ perMinute: [null, null], fell: false });
  });

  test("cannot run backwards", () => {
    expect(flow(260, 200)).toEqual({ perMinute: [260, null], fell: true });
  });
});
