import { describe, expect, test } from "vitest";
import { SetupTimeline } from "./setup-timeline.ts";

const numbers = (timeline: SetupTimeline): unknown[] =>
  timeline.setups.map(({ parts }) =>
    parts.main === undefined || parts.main === "unknown" ? (parts.main ?? null) : parts.main.number,
  );

describe("[R20] what is fitted", () => {
  test("only the parts named change; the rest stays", () => {
    const timeline = new SetupTimeline();
    timeline.take("a", 1, { main: { number: 175 }, clip: { groove: 3 } });
    timeline.take("b", 2, { clip: { groove: 2 } });
    expect(timeline.setups.map(({ record }) => record)).toEqual([null, "a", "b"]);
    expect(timeline.current).toEqual({
      record: "b",
      at: 2,
      parts: { main: { number: 175 }, clip: { groove: 2 } },
    });
    expect(timeline.setups[0]!.parts).toEqual({});
  });

  test("a part becomes unknown when it is said to be", () => {
    const timeline = new SetupTimeline();
    timeline.take("a", 1, { main: { number: 175 } });
    timeline.take("b", 2, { main: "unknown" });
    expect(numbers(timeline)).toEqual([null, 175, "unknown"]);
  });

  test("parts found were there before as well, back to when the part was last known", () => {
    const timeline = new SetupTimeline();
    timeline.take("a", 1, { main: { number: 175 } });
    timeline.take("b", 2, { main: "unknown" });
    timeline.take("c", 3, { clip: { groove: 3 } });
    expect(timeline.take("d", 4, { asFound: true, main: { number: 170 }, pilot: { number: 42 } })).toEqual(
      [],
    );
    expect(numbers(timeline)).toEqual([null, 175, 170, 170]);
    expect(timeline.setups.map(({ parts }) => parts.pilot)).toEqual(Array(4).fill({ number: 42 }));
    expect(timeline.setups).toHaveLength(4);
  });

  test("found again as it was: what is told now is added, and nothing was changed", () => {
    const timeline = new SetupTimeline();
    timeline.take("a", 1, { main: { number: 175, how: "told" } });
    timeline.take("b", 2, { clip: { groove: 2 } });
    timeline.take("c", 3, { asFound: true, main: { number: 175, maker: "M", how: "measured" } });
    expect(timeline.setups).toHaveLength(3);
    expect(timeline.setups[1]!.parts.main).toEqual({ number: 175, maker: "M", how: "measured" });
    expect(timeline.setups[2]!.parts.main).toEqual({ number: 175, maker: "M", how: "measured" });
  });

  test("found to be another: a new setup from then on, and it is named", () => {
    const timeline = new SetupTimeline();
    timeline.take("a", 1, { main: { number: 175 }, slide: { cutawayMm: 3.5 } });
    const surprises = timeline.take("b", 2, {
      asFound: true,
      main: { number: 178 },
      slide: { cutawayMm: 3.5 },
      needle: { marks: "N" },
    });
    expect(surprises).toEqual(["main"]);
    expect(numbers(timeline)).toEqual([null, 175, 178]);
    expect(timeline.setups.map(({ parts }) => parts.needle)).toEqual(Array(3).fill({ marks: "N" }));
  });

  test("found, and nobody can tell what it is: nothing is learnt", () => {
    const timeline = new SetupTimeline();
    timeline.take("a", 1, { main: { number: 175 } });
    expect(timeline.take("b", 2, { asFound: true, main: "unknown" })).toEqual([]);
    expect(numbers(timeline)).toEqual([null, 175]);
  });
});
