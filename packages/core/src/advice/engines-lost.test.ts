import { describe, expect, test } from "vitest";
import { boreJet } from "../metering/test-situations.ts";
import { known } from "../parts/known.ts";
import type { Advice } from "./advice.ts";
import type { CheckResult } from "./case.ts";
import { checkById } from "./checks.ts";
import { DRAWER, FOUND, ride, saw, story } from "./test-stories.ts";
import { adviceOf, stepsOf } from "./test-weighing.ts";

// What riders said of virtual bikes whose engine the tool once lost, one story for each way it happened
// (docs/proving.md): a weak spark and a blocked exhaust felt rich on top, a poor supply starved it when held for long.

const on = (main: number) => ({ ...FOUND, setup: { ...FOUND.setup, main: known(boreJet(main)) } });
const sound = (check: string): CheckResult => ({
  record: `check-${check}`,
  at: 8,
  check,
  found: "sound",
  fault: null,
});
const smallerMains = (advice: Advice) =>
  stepsOf(advice).filter(({ changes }) =>
    changes.some(({ part, to }) => part === "main" && Number(to) < 175),
  );
const looksFor = (advice: Advice, fault: "ignition" | "exhaust-blocked" | "fuel-supply") =>
  stepsOf(advice).filter(({ id, kind }) => kind === "check" && checkById(id)!.finds[fault] !== undefined);

const MISSES = [saw("answers-crisply"), saw("pulls-smoothly"), saw("will-not-rev-out")];

describe("[A20] a weak spark felt rich on top", () => {
  const advice = adviceOf(
    story({
      drawer: DRAWER,
      rides: [
        ride(MISSES, { situation: on(180) }),
        ride([...MISSES, saw("misses-more-the-harder-it-pulls")], { at: 2 }),
      ],
    }),
  );

  test("[B21] a bottom that runs well hardly clears it: it only shows under load", () => {
    expect(advice.suspects[0]).toMatchObject({ fault: "ignition" });
  });

  test("the spark is looked at, and the main jet not made smaller once more", () => {
    expect(looksFor(advice, "ignition").length).toBeGreaterThan(0);
    expect(smallerMains(advice)).toEqual([]);
  });
});

describe("[A20] a blocked exhaust felt rich on top", () => {
  const said = [saw("lazy-and-heavy"), saw("answers-crisply"), saw("will-not-rev-out")];
  const after = (...checks: string[]) =>
    adviceOf(
      story({
        drawer: DRAWER,
        rides: [ride(said, { situation: on(180) }), ride(said, { at: 2 })],
        checks: checks.map(sound),
      }),
    );

  test("a smaller jet that cured nothing is not followed by one smaller still, filter and spark found sound or not", () => {
    expect(smallerMains(after())).toEqual([]);
    expect(smallerMains(after("air-filter", "spark-and-plug"))).toEqual([]);
  });
});

describe("[A3] a poor supply starved it at long full throttle", () => {
  const rides = [
    ride([saw("over-revs-thin-and-sharp")]),
    ride([saw("idles-steadily"), saw("answers-crisply"), saw("pulls-smoothly"), saw("will-not-rev-out")], {
      at: 2,
    }),
  ];

  test("the throttle is not held open for long before the flow was looked at, and the look is on offer", () => {
    const advice = adviceOf(story({ drawer: DRAWER, rides }));
    for (const { kind, topThrottle } of stepsOf(advice))
      if (kind === "ride" || kind === "change") expect(topThrottle).not.toBe("free");
    expect(looksFor(advice, "fuel-supply").length).toBeGreaterThan(0);
  });
});
