import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Gaussian, priorGaussian } from "../belief/prior.ts";
import { direction, STATE_SIZE, stretchAt } from "../belief/state.ts";
import { shiftBetween } from "../metering/shift.ts";
import { boreJet, dryAir } from "../metering/test-situations.ts";
import { dot, quadraticForm } from "../numerics/matrix.ts";
import { seededRandom } from "../numerics/random.ts";
import { OPENINGS } from "../units/opening.ts";
import { labourMinutes, provingMinutes } from "./labour.ts";
import { expectedLinex, LEAN_LIMIT, MINUTES, STEEPNESS } from "./loss.ts";
import { type Option, optionsFor } from "./options.ts";
import { type Candidate, expectedTrouble, flatShift, searchSetups } from "./search.ts";
import { DRAWER, FOUND } from "./test-stories.ts";

/** A belief with everything correlated, so that no cross term can hide. */
function randomBelief(seed: number, offset = 0): Gaussian {
  const random = seededRandom(seed);
  const { mean, covariance } = priorGaussian();
  for (let i = 0; i < STATE_SIZE; i++)
    mean[i] = mean[i]! + 0.05 * random.normal() + (i < OPENINGS.length ? offset : 0);
  for (let k = 0; k < 4; k++) {
    const along = Float64Array.from({ length: STATE_SIZE }, () => 0.02 * random.normal());
    for (let i = 0; i < STATE_SIZE; i++) {
      for (let j = 0; j < STATE_SIZE; j++) {
        covariance[i * STATE_SIZE + j] = covariance[i * STATE_SIZE + j]! + along[i]! * along[j]!;
      }
    }
  }
  return { mean, covariance };
}

/** The slow way: every combination by itself, each figure from the definitions. */
function oneByOne(
  belief: Gaussian,
  places: readonly (readonly Option[])[],
): { name: string; total: number }[] {
  let combinations: (readonly Option[])[] = [[]];
  for (const place of places) {
    combinations = combinations.flatMap((sofar) => place.map((option) => [...sofar, option]));
  }
  const out: { name: string; total: number }[] = [];
  for (const combination of combinations) {
    const setup = combination.reduce((fitted, option) => option.fit(fitted), NOW.setup);
    const shift = shiftBetween(FOUND, { ...NOW, setup });
    if (!shift.ok) continue;
    let trouble = 0;
    OPENINGS.forEach((opening, i) => {
      const along = direction(stretchAt(opening), shift.value);
      const variance = quadraticForm(belief.covariance, STATE_SIZE, along);
      trouble += MINUTES[i]! * expectedLinex(STEEPNESS[i]!, dot(along, belief.mean), variance);
    });
    const changes = combination.flatMap((option) => option.changes);
    const buys = combination.some((option) => option.toBuy.length > 0);
    const minutes =
      changes.length === 0 ? 0 : labourMinutes(changes, {}) + provingMinutes(changes) + (buys ? 45 : 0);
    out.push({ name: nameOf(setup), total: trouble + minutes });
  }
  return out.sort((a, b) => a.total - b.total);
}

const nameOf = ({
  main,
  pilot,
  needle,
  clip,
  needleJet,
  cutaway,
  screw,
}: Candidate["situation"]["setup"]): string =>
  [
    main.part?.number,
    pilot.part?.number,
    needle.part?.marks,
    clip.part,
    needleJet.part,
    cutaway.part,
    screw.part?.turnsOut,
  ].join("/");

const NOW = { ...FOUND, air: dryAir(1.1) };
const small = { ...DRAWER, mains: DRAWER.mains.slice(2, 5), pilots: DRAWER.pilots.slice(1, 3) };

describe("search of setups", () => {
  test("[A13] the same answer in the same order as weighing each combination by itself", () => {
    const whole = optionsFor(NOW, small);
    const options = {
      mainBranch: whole.mainBranch.map((place) => place.slice(0, 5)),
      pilotBranch: whole.pilotBranch.map((place) => place.slice(0, 5)),
    };
    for (const seed of [1, 2, 3]) {
      const belief = randomBelief(seed, -0.06);
      const slow = oneByOne(belief, [...options.mainBranch, ...options.pilotBranch]);
      const fast = searchSetups(belief, FOUND, NOW, options, {});
      const present = fast.find(({ changes }) => changes.length === 0)!;
      const better = slow.filter(({ total }) => total < present.total - 1e-9);
      expect(better.length).toBeGreaterThan(5);
      expect(fast.slice(0, better.length).map(({ situation }) => nameOf(situation.setup))).toEqual(
        better.map(({ name }) => name),
      );
      better.forEach(({ total }, i) => {
        expect(fast[i]!.total).toBeCloseTo(total, 7);
      });
    }
  });

  test("the setup as it is comes in, at no minutes", () => {
    const found = searchSetups(randomBelief(5), FOUND, NOW, optionsFor(NOW, small), {});
    const present = found.filter(({ changes }) => changes.length === 0);
    expect(present).toHaveLength(1);
    expect(present[0]!.minutes).toBe(0);
    expect(present[0]!.situation.setup).toEqual(NOW.setup);
  });

  test("the spread above the lean limit is the leanest of the top", () => {
    const belief = randomBelief(8);
    for (const { shift, topSpread } of searchSetups(belief, FOUND, NOW, optionsFor(NOW, small), {}).slice(
      0,
      30,
    )) {
      const spreads = [8, 9, 10].map((i) => {
        const along = direction(stretchAt(OPENINGS[i]!), shift);
        const sd = Math.sqrt(quadraticForm(belief.covariance, STATE_SIZE, along));
        return (dot(along, belief.mean) - LEAN_LIMIT) / sd;
      });
      expect(topSpread).toBeCloseTo(Math.min(...spreads), 7);
    }
  });

  test("the quick figure for one setup is the search's own", () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 999 }), (seed) => {
        const belief = randomBelief(seed);
        for (const { shift, trouble } of searchSetups(belief, FOUND, NOW, optionsFor(NOW, small), {}).slice(
          0,
          10,
        )) {
          expect(expectedTrouble(belief, flatShift(shift))).toBeCloseTo(trouble, 7);
        }
      }),
      { seed: 20261125, numRuns: 8 },
    );
  });

  test("a part to buy costs the way to the shop, a shop's own minutes count", () => {
    const options = { mainBranch: [optionsFor(NOW, small).mainBranch[0]!], pilotBranch: [] };
    const found = searchSetups(randomBelief(2), FOUND, NOW, options, { main: 30 });
    for (const { changes, toBuy, minutes, total, trouble } of found) {
      if (changes.length === 0) continue;
      expect(minutes).toBe(30 + 12 + (toBuy.length > 0 ? 45 : 0));
      expect(total).toBe(trouble + minutes);
    }
    expect(found.some(({ toBuy }) => toBuy.length > 0)).toBe(true);
    expect(found.some(({ toBuy, changes }) => changes.length > 0 && toBuy.length === 0)).toBe(true);
  });

  test("a present setup that cannot be compared with the reference gives nothing", () => {
    const other = { ...NOW, setup: { ...NOW.setup, main: { part: boreJet(170), how: "told" as const } } };
    const foreign = {
      ...FOUND,
      setup: { ...FOUND.setup, main: { part: { ...boreJet(170), maker: "Theirs" }, how: "told" as const } },
    };
    expect(searchSetups(randomBelief(3), foreign, other, optionsFor(other, small), {})).toEqual([]);
  });
});
