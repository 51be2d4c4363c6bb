import { describe, expect, test, vi } from "vitest";
import { english } from "../words/en.ts";
import { checkById } from "./checks.ts";
import { nextStep } from "./next-step.ts";
import { beliefOf, changeBy, judged } from "./test-judged.ts";
import { ride, saw } from "./test-stories.ts";
import { stepsOf } from "./test-weighing.ts";

// Rules of the order that hold for every story. A loaded machine takes longer over them than the usual.
vi.setConfig({ testTimeout: 60_000 });

describe("the order of the steps", () => {
  test("[A6] [A4] a stop stands alone, a mend before all else", () => {
    for (const { steps, story: given } of judged) {
      if (steps.some(({ kind }) => kind === "stop")) expect(steps).toHaveLength(1);
      else {
        const open = beliefOf(given).openFaults;
        expect(steps.slice(0, open.length).map(({ kind, id }) => `${kind} ${id}`)).toEqual(
          open.map((fault) => `mend ${fault}`),
        );
        expect(steps.filter(({ kind }) => kind === "mend")).toHaveLength(open.length);
      }
    }
  });

  test("[A6] after pinging on the parts and air of now nothing leans any opening, and no test rides", () => {
    let richer = 0;
    for (const { story: given } of judged.filter(({ advice }) => advice.step.kind !== "stop").slice(0, 10)) {
      const pinged = ride([saw("pings-on-roll-on")], { at: 900, situation: given.now });
      const outcome = nextStep({ ...given, rides: [...given.rides, pinged] }, english);
      if (!outcome.ok) throw new RangeError(outcome.detail);
      for (const step of stepsOf(outcome.value)) {
        if (step.kind === "test") expect(step.cautions).not.toContain("test-riding");
        if (step.kind === "ride" || step.kind === "change") expect(step.notes.join(" ")).toMatch(/It pinged/);
        if (step.situation === null) continue;
        richer++;
        expect(Math.min(...changeBy(given, step.situation)), step.title).toBeGreaterThanOrEqual(-0.002);
      }
    }
    expect(richer).toBeGreaterThan(0);
  });

  test("[A1] the rest by what they save for a minute, the best first, but for the one put before them", () => {
    for (const { steps, number } of judged) {
      const rest = steps.slice(1).filter(({ kind }) => kind !== "ride" && kind !== "mend");
      for (let i = 1; i < rest.length; i++)
        expect(rest[i]!.worth, `story ${number}`).toBeLessThanOrEqual(rest[i - 1]!.worth);
    }
  });

  test("[A5] a fault likelier than 40 % is looked for first, where a look is on offer", () => {
    for (const { advice, steps, story: given } of judged) {
      const [worst] = advice.suspects;
      if (worst === undefined || worst.chance < 0.4 || beliefOf(given).openFaults.length > 0) continue;
      const looks = steps.filter(
        ({ kind, id }) => kind === "check" && (checkById(id)!.finds[worst.fault] ?? 0) >= 0.4,
      );
      if (looks.length > 0 && advice.step.kind !== "ride")
        expect(["check", "stop"]).toContain(advice.step.kind);
    }
  });

  test("no step stands twice, and there is always one to ride or to mend or to stop", () => {
    for (const { steps, number } of judged) {
      const ids = steps.map(({ kind, id }) => `${kind} ${id}`);
      expect(new Set(ids).size, `story ${number}: ${ids.join(", ")}`).toBe(ids.length);
      expect(steps.some(({ kind }) => kind === "ride" || kind === "stop")).toBe(true);
    }
  });

  test("the picture is in the air and parts of now, and after the step in the step's", () => {
    for (const { advice } of judged) {
      expect(advice.picture.map(({ opening }) => opening)).toEqual([0, 0.125, 0.25, 0.5, 0.75, 1]);
      expect(advice.pictureAfter === null).toBe(advice.step.situation === null);
      for (const { mean, sd } of [...advice.picture, ...(advice.pictureAfter ?? [])]) {
        expect(Number.isFinite(mean)).toBe(true);
        expect(sd).toBeGreaterThan(0);
      }
      expect(
        advice.soundChance + advice.suspects.reduce((sum, { chance }) => sum + chance, 0),
      ).toBeLessThanOrEqual(1 + 1e-9);
    }
  });
});
