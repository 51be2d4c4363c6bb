import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { direction, FIRST_CIRCUIT, STATE_SIZE, stretchAt } from "../../belief/state.ts";
import { shiftBetween } from "../../metering/shift.ts";
import { dryAir } from "../../metering/test-situations.ts";
import { dot, quadraticForm } from "../../numerics/matrix.ts";
import { normalCumulative } from "../../numerics/normal.ts";
import { CIRCUITS } from "../../units/circuit.ts";
import { OPENINGS } from "../../units/opening.ts";
import { LEAN_LIMIT, linex, MINUTES, STEEPNESS } from "../loss.ts";
import { FOUND } from "../test-stories.ts";
import { collapseAt } from "./collapsed.ts";
import { type DrawerSpace, drawerSpace, shiftOfChoice } from "./drawer-space.ts";
import { effortFor, maskOf } from "./effort.ts";
import { LeanEdge } from "./lean-edge.ts";
import { LeanTest } from "./lean-test.ts";
import { CIRCUIT_COUNT, expectedLoss, leanChance, lossTable, SHIFT_SIZE } from "./loss-table.ts";
import { OwnPart } from "./own-part.ts";
import { partnerTree } from "./partner-tree.ts";
import { trialBelief, trialPlaces } from "./trial-drawer.ts";

const NOW = {
  ...FOUND,
  air: dryAir(1.08),
  fuel: { ...FOUND.fuel, density: 715 as typeof FOUND.fuel.density, viscosityRatio: 0.9 },
};

function spaceOf(seed: number, width: number, parts = 4): DrawerSpace {
  const made = drawerSpace({
    belief: trialBelief(parts, width, seed),
    reference: FOUND,
    now: NOW,
    places: trialPlaces({ needles: 5, clips: 3, mains: 6, pilots: 7, screws: 5, slides: 3 }, "spread", seed),
    leanChance: 0.02,
    countMinutes: false,
    minutes: {},
  });
  if (!made.ok) throw new Error(made.detail);
  return made.value;
}

const seeds = { seed: 20261125, numRuns: 25 };
const anySpace = fc
  .record({ seed: fc.integer({ min: 1, max: 9999 }), width: fc.constantFrom(0.2, 1, 1.6) })
  .map(({ seed, width }) => spaceOf(seed, width));

const shiftOf = fc.array(fc.double({ min: -0.4, max: 0.4, noNaN: true }), {
  minLength: SHIFT_SIZE,
  maxLength: SHIFT_SIZE,
});

describe("the figures of a drawer", () => {
  test("shifts added up from the places are those of the whole setup", () => {
    const space = spaceOf(3, 1);
    const { places, partners } = space;
    let tried = 0;
    for (let n = 0; n < places.needles.length; n += 4) {
      for (let m = 0; m < places.mains.length; m += 2) {
        for (let k = 0; k < partners.count; k += 13) {
          const pairs = places.pilots.length * places.screws.length;
          const chosen = [
            places.needles[n]!,
            places.mains[m]!,
            places.slides[Math.floor(k / pairs)]!,
            places.pilots[Math.floor((k % pairs) / places.screws.length)]!,
            places.screws[k % places.screws.length]!,
          ];
          const setup = chosen.reduce((fitted, option) => option.fit(fitted), NOW.setup);
          const whole = shiftBetween(FOUND, { ...NOW, setup });
          if (!whole.ok) throw new Error(whole.detail);
          const sum = shiftOfChoice(space, n, m, k);
          OPENINGS.forEach((_, u) => {
            CIRCUITS.forEach((circuit, c) => {
              expect(sum[u * CIRCUIT_COUNT + c]).toBeCloseTo(whole.value[circuit][u]!, 11);
            });
          });
          tried++;
        }
      }
    }
    expect(tried).toBeGreaterThan(90);
  });

  test("loss and lean chance are those of the definitions, part by part of the belief", () => {
    fc.assert(
      fc.property(shiftOf, fc.integer({ min: 1, max: 999 }), (values, seed) => {
        const belief = trialBelief(5, 1, seed);
        const shift = Float64Array.from(values);
        const byCircuit = Object.fromEntries(
          CIRCUITS.map((circuit, c) => [circuit, OPENINGS.map((_, u) => shift[u * CIRCUIT_COUNT + c]!)]),
        ) as unknown as Parameters<typeof direction>[1];
        let trouble = 0;
        let chance = 0;
        OPENINGS.forEach((opening, u) => {
          const along = direction(stretchAt(opening), byCircuit);
          let lean = 0;
          for (const { probability, gaussian } of belief) {
            const mean = dot(along, gaussian.mean);
            const variance = quadraticForm(gaussian.covariance, STATE_SIZE, along);
            const a = STEEPNESS[u]!;
            trouble +=
              probability * MINUTES[u]! * (Math.exp(-a * mean + 0.5 * a * a * variance) + a * mean - 1);
            lean += probability * normalCumulative((LEAN_LIMIT - mean) / Math.sqrt(variance));
          }
          if (opening >= 0.75) chance = Math.max(chance, lean);
        });
        const table = lossTable(belief);
        expect(expectedLoss(table, shift) / trouble).toBeCloseTo(1, 9);
        expect(leanChance(table, shift)).toBeCloseTo(chance, 10);
      }),
      seeds,
    );
  });

  test("a belief without doubt costs what the mixture costs", () => {
    const mean = new Float64Array(STATE_SIZE);
    OPENINGS.forEach((_, u) => {
      mean[u] = 0.02 * u - 0.1;
    });
    for (let c = 0; c < CIRCUIT_COUNT; c++) mean[FIRST_CIRCUIT + c] = 1;
    const sure = { mean, covariance: new Float64Array(STATE_SIZE * STATE_SIZE) };
    const table = lossTable([{ probability: 1, gaussian: sure }]);
    const shift = new Float64Array(SHIFT_SIZE).fill(0.01);
    const known = OPENINGS.reduce(
      (sum, _, u) => sum + MINUTES[u]! * linex(STEEPNESS[u]!, mean[u]! + 0.06),
      0,
    );
    expect(expectedLoss(table, shift)).toBeCloseTo(known, 7);
  });

  test("a part of the belief without weight changes nothing", () => {
    const belief = trialBelief(3, 1);
    const shift = new Float64Array(SHIFT_SIZE).fill(0.03);
    const more = [...belief, { ...trialBelief(1, 1, 9)[0]!, probability: 0 }];
    expect(expectedLoss(lossTable(more), shift)).toBe(expectedLoss(lossTable(belief), shift));
  });
});

describe("floors", () => {
  test("one exponential for each opening lies below the whole belief, and touches it at the centre", () => {
    fc.assert(
      fc.property(shiftOf, shiftOf, fc.integer({ min: 1, max: 999 }), (there, here, seed) => {
        const table = lossTable(trialBelief(6, 1.3, seed));
        const [centre, shift] = [Float64Array.from(here), Float64Array.from(there)];
        const collapsed = collapseAt(table, centre);
        const floorAt = (at: Float64Array): number => {
          let sum = collapsed.base;
          OPENINGS.forEach((_, u) => {
            let exponent = collapsed.height[u]!;
            for (let c = 0; c < CIRCUIT_COUNT; c++) {
              const o = u * CIRCUIT_COUNT + c;
              const x = at[o]! - centre[o]!;
              exponent += collapsed.gradient[o]! * x;
              sum += collapsed.slope[o]! * x;
              for (let e = 0; e < CIRCUIT_COUNT; e++) {
                const y = at[u * CIRCUIT_COUNT + e]! - centre[u * CIRCUIT_COUNT + e]!;
                exponent += 0.5 * x * y * collapsed.curvature[o * CIRCUIT_COUNT + e]!;
              }
            }
            sum += Math.exp(exponent);
          });
          return sum;
        };
        const whole = expectedLoss(table, shift);
        expect(floorAt(shift)).toBeLessThanOrEqual(whole + 1e-9 * Math.abs(whole));
        const own = expectedLoss(table, centre);
        expect(Math.abs(floorAt(centre) - own)).toBeLessThan(1e-9 * (1 + Math.abs(own)) + 1e-7);
        // Close by it is nearly the belief itself: a floor that only held would not do.
        const near = centre.map((value, i) => value + (i % 2 === 0 ? 0.002 : -0.002));
        const nearby = expectedLoss(table, near);
        expect(nearby - floorAt(near)).toBeLessThan(1e-3 * Math.abs(nearby) + 0.01);
      }),
      seeds,
    );
  });

  test("a node's floor lies below each of its partners', and that below the loss", () => {
    fc.assert(
      fc.property(anySpace, fc.nat(), fc.nat(), (space, away, pick) => {
        const { needles, mains } = space.places;
        const k0 = away % space.partners.count;
        const collapsed = collapseAt(
          space.loss,
          shiftOfChoice(space, away % needles.length, away % mains.length, k0),
        );
        const kept = Array.from({ length: space.partners.count }, (_, k) => k);
        const tree = partnerTree(space.partners, kept, collapsed);
        const own = new OwnPart(space, collapsed, tree);
        const [n, m] = [pick % needles.length, pick % mains.length];
        own.shift(n, m);
        own.weigh();
        const losses = kept.map((_, place) =>
          expectedLoss(space.loss, shiftOfChoice(space, n, m, tree.order[place]!)),
        );
        for (let node = 0; node < tree.nodes; node++) {
          const floor = own.floorOver(node);
          for (let place = tree.from[node]!; place < tree.to[node]!; place++) {
            const single = own.floorWith(place);
            expect(floor).toBeLessThanOrEqual(single + 1e-7 + 1e-9 * Math.abs(single));
            expect(single).toBeLessThanOrEqual(losses[place]! + 1e-7 + 1e-9 * Math.abs(losses[place]!));
          }
        }
        expect([...tree.order].sort((a, b) => a - b)).toEqual(kept);
        expect(tree.nodes).toBeGreaterThan(10);
      }),
      { ...seeds, numRuns: 12 },
    );
  });

  test("what the lean edge rules out breaks the limit with every partner of the node", () => {
    let ruled = 0;
    let kept = 0;
    fc.assert(
      fc.property(anySpace, fc.constantFrom(0.02, 0.1, 0.4), (space, limit) => {
        const collapsed = collapseAt(space.loss, shiftOfChoice(space, 0, 0, 0));
        const all = Array.from({ length: space.partners.count }, (_, k) => k);
        const tree = partnerTree(space.partners, all, collapsed);
        const edge = new LeanEdge(space.loss, tree, limit);
        const own = new OwnPart(space, collapsed, tree);
        const { needles, mains } = space.places;
        for (let i = 0; i < needles.length * mains.length; i += 7) {
          const [n, m] = [Math.floor(i / mains.length), i % mains.length];
          own.shift(n, m);
          for (let node = 0; node < tree.nodes; node += 3) {
            const out = edge.rulesOut(node, own.needle, own.main);
            let leastChance = Infinity;
            for (let place = tree.from[node]!; place < tree.to[node]!; place++) {
              const chance = leanChance(space.loss, shiftOfChoice(space, n, m, tree.order[place]!));
              leastChance = Math.min(leastChance, chance);
            }
            if (out) expect(leastChance).toBeGreaterThan(limit);
            if (leastChance > limit && out) ruled++;
            if (leastChance > limit && !out) kept++;
          }
        }
      }),
      { ...seeds, numRuns: 6 },
    );
    // It rules out most of what could be.
    expect(ruled).toBeGreaterThan(4 * kept);
  }, 30_000);

  test("the quick test of the lean limit says what the whole sum says", () => {
    fc.assert(
      fc.property(shiftOf, shiftOf, fc.integer({ min: 1, max: 99 }), (values, centre, seed) => {
        const table = lossTable(trialBelief(7, 1, seed, 0.1));
        const shift = Float64Array.from(values);
        const chance = leanChance(table, shift);
        for (const limit of [0.02, 0.3, chance, chance * (1 - 1e-15), 1]) {
          expect(new LeanTest(table, Float64Array.from(centre), limit).keeps(shift)).toBe(chance <= limit);
        }
      }),
      { ...seeds, numRuns: 200 },
    );
  });

  test("the floor of the minutes is the least of what holds the same parts and more", () => {
    const { minutes, floor } = effortFor({ clip: 1, needle: 3, main: 0 });
    for (let mask = 0; mask < minutes.length; mask++) {
      let least = Infinity;
      for (let more = 0; more < minutes.length; more++) least = Math.min(least, minutes[mask | more]!);
      expect(floor[mask]).toBe(least);
    }
    const screw = maskOf({ changes: ["screw"], toBuy: [], fit: (s) => s });
    const bought = maskOf({ changes: ["pilot"], toBuy: ["pilot"], fit: (s) => s });
    expect(minutes[0]).toBe(0);
    expect(minutes[screw]).toBe(6);
    expect(minutes[bought]).toBe(25 + 12 + 45);
  });
});
