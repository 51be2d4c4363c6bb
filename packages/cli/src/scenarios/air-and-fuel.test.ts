import { describe, expect, test } from "vitest";
import { adviceFor, caseFrom } from "./advice-for.ts";
import { ALL_RIGHT, FERN } from "./invented-bikes.ts";
import { changesOffered, neverMoves, waysOf } from "./which-way.ts";

// Scenarios of other air and other fuel. Expected steps: common practice, no source, unless a line says more.

const AIR_UP = `{"id":"r2","kind":"air-measured","at":"2026-05-02T12:00:00Z","bike":"fern","body":{"temperatureC":8,"heightM":2000,"stationPressureHpa":796,"humidityPercent":50}}`;
const AIR_DOWN = (id: string) =>
  `{"id":"${id}","kind":"air-measured","at":"2026-05-02T18:00:00Z","bike":"fern","body":{"temperatureC":12,"heightM":10,"stationPressureHpa":1013,"humidityPercent":50}}`;
const right = `${FERN}
{"id":"r1","kind":"ride-reported","at":"2026-05-02T09:00:00Z","bike":"fern","body":{"reports":[${ALL_RIGHT}]}}`;

describe("right at sea level, taken to 2000 m", () => {
  const up = `${right}
${AIR_UP}`;

  // About 10 % rich at 2000 m: square root of the density ratio, ISO 2533 (1975) air.
  test("is seen to be rich there by about a tenth, without a ride", () => {
    const { picture } = adviceFor(up, "fern");
    for (const { mean } of picture.slice(1)) {
      expect(mean).toBeGreaterThan(0.06);
      expect(mean).toBeLessThan(0.14);
    }
  });

  test("gets leaner parts", () => {
    const advice = adviceFor(up, "fern");
    expect(advice.step.kind).toBe("change");
    const ways = waysOf(caseFrom(up, "fern").now.setup, advice.step);
    expect(Math.min(...Object.values(ways))).toBe(-1);
    expect(neverMoves(caseFrom(up, "fern"), advice, ["main", "clip", "pilot"], 1)).toBe(true);
  });

  test("leaner parts within the lean limit for that height", () => {
    for (const { topThrottle, title } of changesOffered(adviceFor(up, "fern"))) {
      // Leaner than before, so in short pulls first: common practice, no source.
      expect(topThrottle, title).not.toBe("stay below 3/4");
    }
  });
});

describe("leaned for 2000 m and right there, then driven back down", () => {
  const high = `${right}
${AIR_UP}
{"id":"r3","kind":"setup-fitted","at":"2026-05-02T12:30:00Z","bike":"fern","body":{"main":{"number":165},"clip":{"groove":2},"screw":{"turnsOut":2},"why":"for the height"}}
{"id":"r4","kind":"ride-reported","at":"2026-05-02T13:30:00Z","bike":"fern","body":{"reports":[${ALL_RIGHT}]}}`;
  const down = `${high}
${AIR_DOWN("r5")}`;

  test("up there nothing needs changing", () => {
    expect(adviceFor(high, "fern").step).toMatchObject({ kind: "ride", id: "confirm" });
  });

  test("down again it goes richer before it is ridden", () => {
    const { step, picture, pictureAfter } = adviceFor(down, "fern");
    expect(picture[5]!.mean).toBeLessThan(-0.06);
    expect(step.kind).toBe("change");
    const ways = waysOf(caseFrom(down, "fern").now.setup, step);
    expect(ways.main).toBe(1);
    expect(pictureAfter![5]!.mean).toBeGreaterThan(-0.03);
  });

  test("and full throttle is closed to every way that leaves the lean parts in", () => {
    const { step, others } = adviceFor(down, "fern");
    const before = caseFrom(down, "fern").now.setup;
    for (const each of [step, ...others]) {
      if (each.kind !== "change" && each.kind !== "ride") continue;
      const ways = waysOf(before, each);
      if (ways.main !== 1) expect(each.topThrottle, each.title).toBe("stay below 3/4");
    }
  });

  test("with the sea-level parts back in, it reads as it did before the trip", () => {
    const back = `${down}
{"id":"r6","kind":"setup-fitted","at":"2026-05-02T18:30:00Z","bike":"fern","body":{"main":{"number":175},"clip":{"groove":3},"screw":{"turnsOut":1.5},"why":"back down"}}`;
    const now = adviceFor(back, "fern");
    expect(now.step.kind).toBe("ride");
    adviceFor(right, "fern").picture.forEach(({ mean }, i) => {
      // Less than the doubt of either: the ride up there told something of the bottom as well.
      expect(Math.abs(now.picture[i]!.mean - mean)).toBeLessThan(0.04);
    });
  });
});

describe("pump fuel with 10 % ethanol after pure petrol", () => {
  const pure = right.replace('"ethanolPercent":5', '"ethanolPercent":0');
  const e10 = `${pure}
{"id":"r2","kind":"fuel-used","at":"2026-05-02T12:00:00Z","bike":"fern","body":{"ethanolPercent":10,"oil":"40:1"}}`;

  // Stoichiometry: 14.6 becomes about 14.1, so 3 to 4 % leaner, and a little more at idle, where the thicker fuel counts; 5 in a 175 main jet is 3.7 % of fuel.
  test("is foreseen to be about one jet step leaner", () => {
    const before = adviceFor(pure, "fern").picture;
    const after = adviceFor(e10, "fern").picture;
    after.forEach(({ mean }, i) => {
      expect(before[i]!.mean - mean).toBeGreaterThan(0.025);
      expect(before[i]!.mean - mean).toBeLessThan(0.05);
    });
  });

  test("and no way on goes leaner", () => {
    const advice = adviceFor(e10, "fern");
    expect(neverMoves(caseFrom(e10, "fern"), advice, ["main", "clip", "pilot", "screw"], -1)).toBe(true);
  });
});
