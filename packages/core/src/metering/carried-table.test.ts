import { describe, expect, test } from "vitest";
import { known } from "../parts/known.ts";
import type { NeedleProfile } from "../parts/needle.ts";
import { fuelAndDryAir, mainBranch, pilotBranch } from "./branches.ts";
import { compare } from "./compare.ts";
import { pilotShareAt } from "./frame.ts";
import { baselineOf, otherSide } from "./shift.ts";
import type { Situation } from "./situation.ts";
import { boreJet, dryAir, fitted, HERE, inAir, mm, NEEDLE, withScrew } from "./test-situations.ts";

// Regression figures carried over from an earlier working-out of this very model: they hold the code to what was
// meant, they prove nothing about carburetors. Percent more fuel per unit air on the 36 mm body of
// test-situations.ts; columns closed, 1/8, 1/4, 3/8, 1/2, 5/8, 3/4, full.
const COLUMNS = [0, 2, 4, 5, 6, 7, 8, 10] as const;

const profile = NEEDLE.profile as NeedleProfile;
const needle = (change: Partial<NeedleProfile>) => known({ ...NEEDLE, profile: { ...profile, ...change } });
const earlier = [
  { ...profile.tapers[0]!, start: mm(profile.tapers[0]!.start * 1000 - 1) },
  profile.tapers[1]!,
];

const ROWS: readonly (readonly [string, Situation, readonly number[]])[] = [
  ["main 175 -> 177.5", fitted({ main: known(boreJet(177.5)) }), [0, 0.1, 0.2, 0.5, 0.7, 1.0, 1.4, 1.9]],
  ["main 175 -> 180", fitted({ main: known(boreJet(180)) }), [0, 0.2, 0.4, 0.9, 1.5, 2.0, 2.7, 3.7]],
  ["clip one groove lower", fitted({ clip: known(4) }), [0, 0, 8.0, 5.0, 3.2, 3.1, 2.2, 0.7]],
  ["clip one groove higher", fitted({ clip: known(2) }), [0, 0, -8.3, -5.3, -3.4, -2.3, -2.4, -0.8]],
  ["half-groove shim", fitted({ clip: known(3.5) }), [0, 0, 4.1, 2.5, 1.6, 1.1, 1.1, 0.4]],
  ["cutaway -0.5 mm", fitted({ cutaway: known(mm(3)) }), [3.4, 4.4, 2.6, 0.9, 0.2, 0, 0, 0]],
  ["cutaway +0.5 mm", fitted({ cutaway: known(mm(4)) }), [-3.0, -4.0, -2.5, -0.8, -0.2, 0, 0, 0]],
  ["pilot 42 -> 44", fitted({ pilot: known(boreJet(44)) }), [8.5, 5.1, 1.8, 0.7, 0.5, 0.5, 0.5, 0.5]],
  ["pilot 42 -> 45", fitted({ pilot: known(boreJet(45)) }), [12.8, 7.8, 2.7, 1.1, 0.8, 0.7, 0.7, 0.7]],
  ["air screw 1.5 -> 1.0", withScrew(1), [3.5, 2.1, 0.7, 0.3, 0.2, 0.2, 0.2, 0.2]],
  ["air screw 1.5 -> 2.0", withScrew(2), [-2.4, -1.5, -0.5, -0.2, -0.2, -0.1, -0.1, -0.1]],
  ["needle jet +0.01", fitted({ needleJet: known(mm(2.71)) }), [0.7, 2.5, 3.7, 2.5, 1.7, 1.2, 0.7, 0.3]],
  ["needle jet +0.02", fitted({ needleJet: known(mm(2.72)) }), [1.4, 5.0, 7.4, 4.9, 3.3, 2.3, 1.3, 0.6]],
  [
    "needle straight -0.01",
    fitted({ needle: needle({ straightDiameter: mm(2.51) }) }),
    [0.7, 2.4, 3.4, 2.2, 1.4, 0.9, 0.5, 0.2],
  ],
  [
    "taper 1 mm earlier",
    fitted({ needle: needle({ tapers: earlier }) }),
    [0, 0, 8.9, 5.6, 3.6, 2.4, 1.2, 0.4],
  ],
  ["float level +1 mm", fitted({ fuelLift: known(mm(11)) }), [0.4, 0.4, 0.4, 0.3, 0.3, 0.3, 0.2, 0.2]],
  ["air at 1000 m", inAir(dryAir(1.111643)), [4.4, 4.4, 4.5, 4.5, 4.6, 4.6, 4.7, 4.7]],
  ["air at 2000 m", inAir(dryAir(1.00649)), [9.0, 9.1, 9.3, 9.4, 9.5, 9.6, 9.6, 9.7]],
  ["air 15 -> 35 °C", inAir(dryAir((1.225 * 288.15) / 308.15)), [3.0, 3.1, 3.1, 3.1, 3.2, 3.2, 3.2, 3.2]],
  [
    "air 15 -> -15 °C",
    inAir(dryAir((1.225 * 288.15) / 258.15)),
    [-4.9, -4.9, -4.9, -5.0, -5.0, -5.0, -5.1, -5.1],
  ],
];

/** The form the figures were worked out in: the two flows added by the first side's shares. Not reversible. */
function addedFlows(to: Situation, i: number): number {
  const base = baselineOf(HERE);
  if (!base.ok) throw new Error(base.detail);
  const { frame, side } = base.value;
  const other = otherSide(base.value, to);
  if (!other.ok) throw new Error(other.detail);
  const main = Object.values(mainBranch(frame, side, other.value, i)).reduce((a, b) => a + b, 0);
  const pilot = Object.values(pilotBranch(frame, side, other.value)).reduce((a, b) => a + b, 0);
  const w = frame.pilotShare[i]!;
  const ratio = (1 - w) * Math.exp(main) + w * Math.exp(pilot);
  return (ratio * Math.exp(fuelAndDryAir(HERE, to).common) - 1) * 100;
}

describe("carried figures of our own model, not proof", () => {
  test.each(ROWS)("%s: both branches", (_name, to, row) => {
    row.forEach((want, k) => {
      expect(Math.abs(addedFlows(to, COLUMNS[k]!) - want), `column ${k}`).toBeLessThan(0.06);
    });
  });

  // Our reversible form differs from added flows in the second order only: by w(1-w)/2 times the square of how far
  // the two branches move apart. Above 0.15 points that happens in four cells, all with a branch moved by 13 % or more.
  test.each(ROWS)("%s: in the reversible form", (name, to, row) => {
    const result = compare(HERE, to);
    if (!result.ok) throw new Error(result.detail);
    row.forEach((want, k) => {
      const opening = COLUMNS[k]!;
      const far = (name.startsWith("cutaway") && opening === 0) || (name === "pilot 42 -> 45" && opening > 0);
      const gap = Math.abs((result.value.at[opening]!.ratio - 1) * 100 - want);
      expect(gap, `column ${k}`).toBeLessThan(far ? 0.37 : 0.15);
    });
  });

  test("pilot share by opening", () => {
    const want = [0.87, 0.53, 0.18, 0.08, 0.05, 0.05, 0.05, 0.05];
    [0.045, 1 / 8, 1 / 4, 3 / 8, 1 / 2, 5 / 8, 3 / 4, 1].forEach((x, k) => {
      expect(Math.abs(pilotShareAt(x) - want[k]!)).toBeLessThan(0.006);
    });
  });
});
