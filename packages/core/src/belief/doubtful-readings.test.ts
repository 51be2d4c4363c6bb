import { describe, expect, test } from "vitest";
import { OPENINGS } from "../units/opening.ts";
import { waysToRead } from "./doubtful-readings.ts";
import { exampleMeasured, exampleSeen, exampleSign } from "./example-sign.ts";
import { propagate } from "./expectation-propagation.ts";
import { factorValue } from "./factor.ts";
import { sightOf } from "./moving-gaussian.ts";
import type { Observation } from "./observation.ts";
import { prepare } from "./precision-form.ts";
import { DEFAULT_PRIOR, priorGaussian } from "./prior.ts";
import { sitesFrom } from "./sites.ts";
import { stretchAt } from "./state.ts";

// Neighbours closely tied, so that readings can be at odds with one another.
const prepared = prepare(priorGaussian({ ...DEFAULT_PRIOR, apartSd: OPENINGS.map(() => 1e-3) }));
const ways = (observations: readonly Observation[]) => {
  const sites = sitesFrom(observations, () => []);
  const sights = sites.map((site) => sightOf(site.along));
  const known = propagate(
    prepared,
    sights,
    sites.map((site) => site.sound),
  );
  return { sites, ways: waysToRead(sites, sights, known) };
};
const at = (i: number, error: number, sd = 0.01) =>
  exampleMeasured(error, { record: `m${i}`, at: i, stretch: stretchAt(OPENINGS[i]!), sd });

describe("ways to read the instruments", () => {
  test("[B11] readings that agree are in no doubt, and neither is one far out of all reason", () => {
    expect(ways([at(4, 0.02), at(5, 0.02), at(6, 0.025)]).ways).toEqual([new Map()]);
    expect(
      ways([at(4, 0), at(5, 0), at(6, 0), exampleMeasured(0.29, { record: "odd", sd: 0.01 })]).ways,
    ).toEqual([new Map()]);
    expect(ways([exampleSeen(exampleSign())]).ways).toEqual([new Map()]);
  });

  test("[B11] a reading at odds with its neighbours is once right and once wrong, and both together are its likelihood", () => {
    const { sites, ways: found } = ways([at(3, 0, 0.02), at(5, 0, 0.02), at(6, 0, 0.02), at(4, 0.075, 0.02)]);
    const doubted = [...found[0]!.keys()];
    expect(doubted.map((i) => sites[i]!.observation.record)).toContain("m4");
    expect(found).toHaveLength(2 ** doubted.length);
    for (const i of doubted) {
      const meant = new Set(found.map((way) => way.get(i)!));
      expect(meant.size).toBe(2);
      const [right, wrong] = [...meant];
      expect(right!.constant).toBe(0);
      expect(wrong!.bumps).toEqual([]);
      for (const s of [-0.1, 0, 0.05, 0.2])
        expect(factorValue(right!, s) + factorValue(wrong!, s)).toBeCloseTo(
          factorValue(sites[i]!.sound, s),
          12,
        );
    }
  });

  test("[B11] at most two readings are told apart, those most in doubt", () => {
    const odd = [0.05, 0.048, 0.046].map((error, i) =>
      exampleMeasured(error, { record: `odd${i}`, at: 9 + i, sd: 0.012 }),
    );
    const { ways: found } = ways([at(3, 0), at(5, 0), at(4, 0), at(6, 0), ...odd]);
    expect(found.length).toBeLessThanOrEqual(4);
    for (const way of found) expect(way.size).toBeLessThanOrEqual(2);
  });

  test("[B11] in a log of more than a hundred pieces of evidence one reading at most is told apart", () => {
    const odd = [0.05, 0.048].map((error, i) =>
      exampleMeasured(error, { record: `odd${i}`, at: 9 + i, sd: 0.012 }),
    );
    const readings = [at(3, 0), at(5, 0), at(4, 0), at(6, 0), ...odd];
    const mute = exampleSign({ chance: { rich: 0.5, right: 0.5, lean: 0.5 } });
    const padded = (count: number) => [
      ...readings,
      ...Array.from({ length: count - readings.length }, (_, i) => exampleSeen(mute, { situation: `s${i}` })),
    ];
    expect(ways(padded(100)).ways).toHaveLength(4);
    expect(ways(padded(101)).ways).toHaveLength(2);
  });
});
