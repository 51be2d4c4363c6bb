import { expect, test } from "vitest";
import { mm, NEEDLE } from "../metering/test-situations.ts";
import { known } from "../parts/known.ts";
import { english } from "../words/en.ts";
import { nextStep } from "./next-step.ts";
import { DRAWER, FOUND, ride, saw, story } from "./test-stories.ts";

const withNeedle = (marks: string) => ({
  ...FOUND,
  setup: { ...FOUND.setup, needle: known({ ...NEEDLE, marks, profile: null }) },
});

test("[A14] after a change from a needle nobody measured the advice goes on from what is fitted now", () => {
  const before = withNeedle("old one");
  const now = withNeedle("new one");
  const advice = nextStep(
    story({
      reference: before,
      now,
      drawer: DRAWER,
      rides: [
        ride([saw("bogs-hollow-no-smoke")], { situation: before, at: 1 }),
        ride([saw("dives-below-idle"), saw("stumbles-with-smoke")], { situation: now, at: 2 }),
      ],
    }),
    english,
  );
  if (!advice.ok) throw new Error(advice.detail);
  expect(advice.value.leftOut.map(({ record }) => record)).toEqual(["ride-1"]);
  expect(advice.value.leftOut[0]!.why).toContain("needle");
  expect(advice.value.picture[0]!.mean).toBeGreaterThan(0.03);
});

test("[A14] a setup that cannot be worked out is refused with what to mend", () => {
  const impossible = { ...FOUND, setup: { ...FOUND.setup, needleJet: known(mm(2.4)) } };
  const advice = nextStep(story({ now: impossible }), english);
  expect(advice.ok).toBe(false);
  expect(!advice.ok && advice.detail).toMatch(/needle/i);
});
