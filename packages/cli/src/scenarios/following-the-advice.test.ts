import { type Advice, OPENINGS } from "@jetwright/core";
import { describe, expect, test } from "vitest";
import { adviceFor } from "./advice-for.ts";
import { Rider, SOUND, straight, type Truth, type Turn } from "./hidden-truth.ts";
import { FERN, HERON } from "./invented-bikes.ts";

// The advice followed step by step on bikes whose true mixture the rider does not know. The truth is not the belief: other
// answers to each circuit, no doubt, no prior.

const TOP = OPENINGS.indexOf(OPENINGS.find((opening) => opening >= 0.75)!);
const leanestTop = (mixture: readonly number[]): number => Math.min(...mixture.slice(TOP));

function follow(log: string, bike: string, truth: Truth, most: number) {
  const rider = new Rider(log, bike, truth);
  rider.ride("seconds only");
  const turns: Turn[] = [];
  let advice: Advice = adviceFor(rider.log, bike);
  while (turns.length < most && advice.step.id !== "confirm") {
    turns.push(rider.follow(advice));
    advice = adviceFor(rider.log, bike);
  }
  const text = turns.map(
    ({ step, after }) => `${step.title} -> ${after.map((m) => (100 * m).toFixed(0)).join(" ")}`,
  );
  return { turns, advice, end: rider.mixture(), story: text.join("\n") };
}

const CASES: readonly { name: string; log: string; bike: string; most: number; truth: Truth }[] = [
  {
    name: "rich all over, the bottom most",
    log: FERN,
    bike: "fern",
    most: 8,
    truth: { ...SOUND, asFound: straight(0.13, 0.09), answers: { ...SOUND.answers, pilot: 1.2, main: 0.95 } },
  },
  {
    name: "lean at the bottom, right on top",
    log: FERN,
    bike: "fern",
    most: 8,
    truth: { ...SOUND, asFound: straight(-0.12, 0.02), answers: { ...SOUND.answers, screw: 0.8 } },
  },
  {
    name: "rich on top, right at the bottom",
    log: FERN,
    bike: "fern",
    most: 8,
    truth: { ...SOUND, asFound: straight(0, 0.11) },
  },
  {
    name: "lean on top, right at the bottom",
    log: FERN,
    bike: "fern",
    most: 8,
    truth: { ...SOUND, asFound: straight(0, -0.08) },
  },
  {
    name: "a four-stroke, rich at the bottom",
    log: HERON,
    bike: "heron",
    most: 10,
    truth: { ...SOUND, asFound: straight(0.12, 0.02) },
  },
  {
    name: "an air leak that looks lean",
    log: FERN,
    bike: "fern",
    most: 10,
    truth: {
      ...SOUND,
      asFound: straight(0.01, 0.02),
      fault: "air-leak",
      faultShift: OPENINGS.map((opening) => -0.14 * Math.max(0, 1 - 2 * opening)),
    },
  },
];

describe.each(CASES)("$name: following the advice", ({ log, bike, truth, most }) => {
  const { turns, advice, end, story } = follow(log, bike, truth, most);

  test("ends with a ride that confirms", () => {
    expect(advice.step.id, story).toBe("confirm");
  });

  test("ends right: no opening clearly off, the top not lean", () => {
    for (const error of end) expect(Math.abs(error), story).toBeLessThan(0.085);
    expect(leanestTop(end), story).toBeGreaterThan(-0.04);
  });

  test("never passes through a lean top that it made itself, nor opens one", () => {
    for (const { step, truth: before, after } of turns) {
      expect(leanestTop(after), story).toBeGreaterThan(Math.min(-0.06, leanestTop(before) - 1e-9) - 1e-9);
      if (step.kind === "change" && step.topThrottle === "free") {
        expect(leanestTop(after), story).toBeGreaterThan(-0.06);
      }
    }
  });

  test("changes no part while a fault stands", () => {
    for (const { step, faultStill } of turns)
      if (step.kind === "change") expect(faultStill, story).toBe(false);
  });
});
