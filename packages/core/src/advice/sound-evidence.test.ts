import { describe, expect, test } from "vitest";
import { boreJet } from "../metering/test-situations.ts";
import { jetArea } from "../parts/jet.ts";
import { OPENINGS } from "../units/opening.ts";
import type { SoundResult } from "./case.ts";
import { evidenceFrom } from "./evidence.ts";
import { optionsFor, withoutLeanerMain } from "./options.ts";
import { mainMayGoLeaner } from "./sound-evidence.ts";
import { DRAWER, FOUND, ride, saw, story } from "./test-stories.ts";
import { adviceOf, stepsOf } from "./test-weighing.ts";

const sound = (figures: Record<string, number>, at = 1): SoundResult => ({
  record: `sound-${at}`,
  at,
  situation: FOUND,
  figures: { confidence: 1, closings: 3, ...figures },
});
const heard = (figures: Record<string, number>) =>
  evidenceFrom(story({ sounds: [sound(figures)] })).observations.flatMap((each) =>
    each.kind === "sign" ? [each] : [],
  );

describe("what was heard, as evidence", () => {
  test("a long hang is the sign of a hang, a short one its absence, and both less sure than a rider's word", () => {
    const [long] = heard({ hangSeconds: 2 });
    const [none] = heard({ hangSeconds: 0 });
    expect(long).toMatchObject({
      seen: true,
      record: "sound-1",
      sign: { id: "hangs-after-closing", reliability: "C" },
    });
    expect(none).toMatchObject({ seen: false });
    // 0.9 sure: 0.9 × 0.6 + 0.1 × 0.4 lean, 0.9 × 0.06 + 0.1 × 0.94 right.
    expect(long!.sign.chance.lean).toBeCloseTo(0.58, 3);
    expect(long!.sign.chance.right).toBeCloseTo(0.148, 3);
    expect(long!.sign.faults["air-leak"]).toBeCloseTo(0.7, 3);
  });

  test("one hardly heard tells nothing, and a single closing less than three", () => {
    const [none] = heard({ hangSeconds: 3, confidence: 0 });
    expect(none!.sign.chance).toEqual({ rich: 0.5, right: 0.5, lean: 0.5 });
    const lean = (closings: number): number => heard({ hangSeconds: 3, closings })[0]!.sign.chance.lean;
    expect(lean(1)).toBeLessThan(lean(2));
    expect(lean(2)).toBeLessThan(lean(3));
    expect(lean(7)).toBe(lean(3));
  });

  test("a late answer speaks against a right mixture and for neither side; a prompt one tells nothing", () => {
    const [late] = heard({ delaySeconds: 0.4 });
    expect(late).toMatchObject({ seen: false, sign: { id: "answers-crisply" } });
    const { rich, right, lean } = late!.sign.chance;
    // Not seen: 1 − the chance of it.
    expect(1 - right).toBeLessThan(1 - rich);
    expect((1 - lean) / (1 - rich)).toBeLessThan(1.15);
    expect(heard({ delaySeconds: 0.05 })).toEqual([]);
  });

  test("a dive and a stall are signs; rise, skipping, sag and hunting have no weight", () => {
    expect(heard({ undershootPercent: 20 })[0]).toMatchObject({
      seen: true,
      sign: { id: "dives-below-idle" },
    });
    expect(heard({ stalls: 1 })[0]).toMatchObject({ seen: true, sign: { id: "stalls-on-closing" } });
    expect(heard({ riseSeconds: 1, skipIndex: 6, skipping: 1, bogPercent: 20, huntingPercent: 12 })).toEqual(
      [],
    );
  });

  test("a hang heard by itself turns the next step to the leak or the screw", () => {
    const before = adviceOf(story({ drawer: DRAWER, rides: [ride([saw("pulls-clean-to-peak")])] }));
    const after = adviceOf(
      story({
        drawer: DRAWER,
        rides: [ride([saw("pulls-clean-to-peak")])],
        sounds: [sound({ hangSeconds: 2.5 }, 2)],
      }),
    );
    const leak = (advice: typeof after) =>
      advice.suspects.find(({ fault }) => fault === "air-leak")?.chance ?? 0;
    expect(leak(after)).toBeGreaterThan(2 * leak(before));
    expect(after.step.why.some(({ record }) => record === "sound-2")).toBe(true);
  });

  test("evidence of before a fresh start is void", () => {
    expect(
      evidenceFrom(story({ sounds: [sound({ hangSeconds: 2 })], freshStartAt: 5 })).observations,
    ).toEqual([]);
  });
});

describe("[A17] sound alone never leans the main jet", () => {
  test("nothing heard lets the main go leaner, nor do signs from below half throttle", () => {
    const sounds = [sound({ undershootPercent: 30 })];
    const allowed = (given: Parameters<typeof story>[0]) =>
      mainMayGoLeaner(evidenceFrom(story(given)).observations, given?.sounds ?? []);
    expect(allowed({ sounds })).toBe(false);
    expect(allowed({ sounds, rides: [ride([saw("dives-below-idle")])] })).toBe(false);
    expect(allowed({ sounds, rides: [ride([saw("four-strokes-under-load", OPENINGS[10]!)])] })).toBe(true);
    expect(allowed({})).toBe(true);
  });

  test("no step proposes it, however loudly the sound speaks for rich", () => {
    const sounds = [1, 2, 3, 4, 5, 6].map((at) => sound({ undershootPercent: 40, stalls: 1 }, at));
    const told = story({ drawer: DRAWER, sounds });
    for (const step of stepsOf(adviceOf(told))) {
      const main = step.situation?.setup.main.part;
      if (main) expect(jetArea(main)).toBeGreaterThanOrEqual(jetArea(FOUND.setup.main.part!));
    }
  });

  test("leaner mains are taken out and nothing else", () => {
    const all = optionsFor(FOUND, DRAWER);
    const held = withoutLeanerMain(all, FOUND);
    const mains = (options: typeof all) =>
      options.mainBranch[0]!.map((option) => option.fit(FOUND.setup).main.part!.number);
    const fitted = FOUND.setup.main.part!.number;
    expect(mains(held)).toEqual(mains(all).filter((number) => number >= fitted));
    expect(mains(held).length).toBeLessThan(mains(all).length);
    expect(held.mainBranch.slice(1)).toEqual(all.mainBranch.slice(1));
    expect(boreJet(fitted).number).toBe(fitted);
  });
});
