import { describe, expect, test } from "vitest";
import { boreJet, fitted, HERE } from "../metering/test-situations.ts";
import { known } from "../parts/known.ts";
import { SPOKEN_OPENINGS } from "../units/opening.ts";
import { mixtureOver } from "./mixture-over.ts";
import { DRAWER, ride, saw, story } from "./test-stories.ts";
import { adviceOf } from "./test-weighing.ts";

const told = story({
  drawer: DRAWER,
  rides: [ride([saw("four-strokes-under-load"), saw("pulls-clean-to-peak")])],
});

describe("the mixture under several situations", () => {
  test("is the picture of now for the situation of now", () => {
    const [now] = mixtureOver(told, [told.now], SPOKEN_OPENINGS);
    expect(now).toEqual(adviceOf(told).picture);
  });

  test("a bigger main jet reads richer at the top, and hardly at the bottom", () => {
    const bigger = { ...told.now, setup: fitted({ main: known(boreJet(185)) }, told.now).setup };
    const [now, then] = mixtureOver(told, [told.now, bigger], SPOKEN_OPENINGS);
    const last = SPOKEN_OPENINGS.length - 1;
    expect(then![last]!.mean).toBeGreaterThan(now![last]!.mean + 0.03);
    expect(Math.abs(then![0]!.mean - now![0]!.mean)).toBeLessThan(0.01);
  });

  test("a situation that cannot be compared has no reading, the others keep theirs", () => {
    const flow = known({ number: 180, numbering: "flow" as const, maker: "" });
    const [other, now] = mixtureOver(told, [fitted({ main: flow }, told.now), told.now], SPOKEN_OPENINGS);
    expect(other).toBeNull();
    expect(now).not.toBeNull();
  });

  test("nothing is read where the setup of now cannot exist", () => {
    const impossible = { ...told, now: fitted({ main: known(boreJet(-3)) }, HERE) };
    expect(mixtureOver(impossible, [HERE, HERE], SPOKEN_OPENINGS)).toEqual([null, null]);
  });
});
