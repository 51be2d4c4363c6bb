import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { seededRandom } from "../numerics/random.ts";
import { fromDegree, fromMillimetre as mm, toMillimetre } from "../units/convert.ts";
import { type NeedleProfile, needleDiameter } from "./needle.ts";
import {
  type MeasuredNeedle,
  type NeedleReading,
  needleFromMeasurements,
} from "./needle-from-measurements.ts";

const MICROMETER = mm(0.003);
const profile = (...tapers: readonly (readonly [number, number])[]): NeedleProfile => ({
  straightDiameter: mm(2.52),
  tapers: tapers.map(([start, angle]) => ({ start: mm(start), includedAngle: fromDegree(angle) })),
  diameterSd: mm(0.001),
});

function readings(
  shape: NeedleProfile,
  n: number,
  seed: number,
  noise = 0.003,
  distanceNoise = 0.1,
): NeedleReading[] {
  const random = seededRandom(seed);
  return Array.from({ length: n }, (_, i) => {
    const at = 4 + (54 * i) / (n - 1);
    return {
      belowTopGroove: mm(at + distanceNoise * random.normal()),
      diameter: mm(toMillimetre(needleDiameter(shape, mm(at))) + noise * random.normal()),
    };
  });
}

const measured = (from: readonly NeedleReading[]): MeasuredNeedle => {
  const outcome = needleFromMeasurements(from, MICROMETER);
  if (!outcome.ok) throw new Error(outcome.detail);
  return outcome.value;
};

test("readings without error give the needle back", () => {
  const shape = profile([24.5, 1.5], [41.3, 3]);
  const found = measured(readings(shape, 28, 1, 0, 0));
  expect(found.profile.straightDiameter * 1e3).toBeCloseTo(2.52, 8);
  expect(found.profile.tapers.map((taper) => toMillimetre(taper.start))).toEqual([
    expect.closeTo(24.5, 5),
    expect.closeTo(41.3, 5),
  ]);
  expect(found.profile.tapers[0]!.includedAngle).toBeCloseTo(fromDegree(1.5), 8);
  expect(found.profile.tapers[1]!.includedAngle).toBeCloseTo(fromDegree(3), 8);
  expect(found.leftOut).toEqual([]);
  expect(found.remarks).toEqual([]);
  expect(found.measured).toEqual({ from: mm(4), to: mm(58) });
});

describe.each([0, 1, 2, 3])("random needles with %i tapers", (tapers) => {
  const runs = 60;
  const inside = { hits: 0, of: 0 };
  let rightCount = 0;
  for (let seed = 0; seed < runs; seed++) {
    const random = seededRandom(500 * tapers + seed);
    let [start, angle] = [16 + 6 * random.uniform(), 0.7 + random.uniform()];
    const truth = profile(
      ...Array.from({ length: tapers }, () => {
        const taper = [start, angle] as const;
        start += 11 + 3 * random.uniform();
        angle += 0.6 + 0.7 * random.uniform();
        return taper;
      }),
    );
    const found = measured(readings(truth, 30, seed + 9000));
    if (found.profile.tapers.length !== tapers) continue;
    rightCount++;
    const tally = (error: number, sd: number): void => {
      inside.of++;
      if (Math.abs(error) < 2 * sd) inside.hits++;
    };
    tally(found.profile.straightDiameter - truth.straightDiameter, found.straightDiameterSd);
    for (const [k, taper] of found.tapers.entries()) {
      tally(found.profile.tapers[k]!.start - truth.tapers[k]!.start, taper.startSd);
      tally(found.profile.tapers[k]!.includedAngle - truth.tapers[k]!.includedAngle, taper.includedAngleSd);
    }
  }

  test("the number of tapers is right in at least 19 of 20", () => {
    expect(rightCount / runs).toBeGreaterThanOrEqual(0.95);
  });

  test("the truth lies within two stated sd in 90 to 99 of 100", () => {
    expect(inside.hits / inside.of).toBeGreaterThan(0.9);
    expect(inside.hits / inside.of).toBeLessThan(0.99);
  });
});

test("the order of the readings does not matter", () => {
  const taken = readings(profile([20, 1.2], [38, 2.6]), 22, 7);
  const once = needleFromMeasurements(taken, MICROMETER);
  fc.assert(
    fc.property(fc.shuffledSubarray(taken, { minLength: taken.length }), (shuffled) => {
      expect(needleFromMeasurements(shuffled, MICROMETER)).toEqual(once);
    }),
    { seed: 2, numRuns: 20 },
  );
});

test.each([3, 8, 15, 20])("one wrong reading (number %i) is left out and named", (wrong) => {
  const shape = profile([20, 1.2], [38, 2.6]);
  const taken = readings(shape, 24, 11);
  const off = { ...taken[wrong]!, diameter: mm(toMillimetre(taken[wrong]!.diameter) + 0.1) };
  const found = measured(taken.map((reading, i) => (i === wrong ? off : reading)));
  expect(found.leftOut.map(({ reading }) => reading)).toEqual([off]);
  expect(toMillimetre(found.leftOut[0]!.expected)).toBeCloseTo(toMillimetre(taken[wrong]!.diameter), 1);
  expect(found.remarks[0]!.code).toBe("needle-reading-left-out");
  expect(found.profile.tapers).toHaveLength(2);
});

test("a slip of the pen by a millimetre does not disturb the rest", () => {
  const taken = readings(profile([20, 1.2]), 24, 12);
  const slip = { ...taken[5]!, diameter: mm(1.52) };
  const found = measured(taken.map((reading, i) => (i === 5 ? slip : reading)));
  expect(found.leftOut[0]!.reading).toBe(slip);
  const without = measured(taken.filter((_, i) => i !== 5)).profile;
  expect(found.profile.straightDiameter).toBeCloseTo(without.straightDiameter, 9);
  expect(found.profile.tapers[0]!.start).toBeCloseTo(without.tapers[0]!.start, 9);
  expect(found.profile.tapers[0]!.includedAngle).toBeCloseTo(without.tapers[0]!.includedAngle, 9);
});

test("a reading of its own doubt counts for less", () => {
  const taken = readings(profile([20, 1.2]), 24, 13);
  const vague = taken.map((reading, i) =>
    i === 2 ? { ...reading, diameter: mm(2.55), sd: mm(0.05) } : reading,
  );
  expect(measured(vague).leftOut).toEqual([]);
  expect(measured(vague).profile.straightDiameter * 1e3).toBeCloseTo(2.52, 2);
});

describe("refused, with what to measure", () => {
  const good = readings(profile([20, 1.2], [38, 2.6]), 24, 14);
  const refusal = (from: readonly NeedleReading[]) => {
    const outcome = needleFromMeasurements(from, MICROMETER);
    return outcome.ok ? "accepted" : `${outcome.reason}: ${outcome.detail}`;
  };

  test("too few and too many", () => {
    expect(refusal([])).toMatch(/^too few: 0 readings/);
    expect(refusal(good.slice(0, 4))).toMatch(/^too few: 4 readings.*two on the straight part/);
    expect(refusal(readings(profile([20, 1.2]), 61, 1))).toMatch(/^too many: 61/);
  });

  test("readings no needle has", () => {
    const bad: Partial<NeedleReading>[] = [
      { diameter: mm(25.2) },
      { diameter: mm(0.2) },
      { diameter: mm(Number.NaN) },
      { belowTopGroove: mm(-1) },
      { belowTopGroove: mm(151) },
      { sd: mm(0) },
      { sd: mm(2) },
    ];
    for (const change of bad)
      expect(refusal([...good, { ...good[0]!, ...change }])).toMatch(/^reading: .*unit/);
  });

  test("counted from the tip: gets thicker", () => {
    const reversed = good.map((reading) => ({
      ...reading,
      belowTopGroove: mm(62 - toMillimetre(reading.belowTopGroove)),
    }));
    expect(refusal(reversed)).toMatch(/^gets thicker: .*from the tip/);
  });

  test("only the tapers measured: no straight part", () => {
    const below = readings(profile([1, 1.2], [30, 2.6]), 24, 15);
    expect(refusal(below)).toMatch(/^no straight part: .*nearer the grooves/);
  });

  test("no shape at all", () => {
    const random = seededRandom(16);
    const junk = good.map((reading) => ({ ...reading, diameter: mm(1 + random.uniform()) }));
    expect(refusal(junk)).toMatch(/^does not fit: .*bent, worn or dirty/);
  });

  test("all readings in one place", () => {
    const spot = good.map((reading) => ({ ...reading, belowTopGroove: mm(10), diameter: mm(2.52) }));
    const outcome = needleFromMeasurements(spot, MICROMETER);
    expect(outcome.ok && outcome.value.profile.tapers).toEqual([]);
    expect(outcome.ok && outcome.value.remarks[0]).toEqual({
      code: "needle-no-taper",
      given: { toMm: expect.closeTo(10, 9) },
    });
  });

  test("a doubt that cannot be is a bug", () => {
    for (const sd of [0, -1, 2, Number.NaN])
      expect(() => needleFromMeasurements(good, mm(sd))).toThrow(RangeError);
    for (const sd of [-0.1, 10])
      expect(() => needleFromMeasurements(good, MICROMETER, mm(sd))).toThrow(RangeError);
  });
});

const codes = ({ remarks }: MeasuredNeedle) => remarks.map(({ code }) => code);

test("remarks: rough readings, no taper, an uncertain start, a thinly read taper", () => {
  const rough = needleFromMeasurements(readings(profile([20, 1.2]), 24, 18, 0.006, 0), MICROMETER, mm(0));
  expect(rough.ok && rough.value.remarks.map(({ code }) => code)).toContain("needle-scatter");
  expect(codes(measured(readings(profile(), 12, 19)))).toEqual(["needle-no-taper"]);
  const shallow = measured(readings(profile([20, 0.12]), 10, 22));
  expect(codes(shallow)).toContain("needle-taper-start");
  const thin = measured(readings(profile([48, 3]), 16, 21));
  expect(codes(thin)).toContain("needle-taper-thin");
});
